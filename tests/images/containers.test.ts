import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { colourCodes, isHighDynamicRange, isNearSrgb } from "../../shared/images/colour-codes.ts";
import { pngChunks } from "../../shared/images/png-chunks.ts";
import { rasterFormat } from "../../shared/images/raster-format.ts";
import { tiffPictures } from "../../shared/images/tiff-pictures.ts";
import { fileTypeBox, tiff, withPngChunk } from "./handmade.ts";
import { quartersPicture } from "./quarters.ts";

describe("the format of a file, by its opening bytes", () => {
  // The signatures: JPEG, ITU-T T.81 B.1.1.3; PNG, third edition, 5.2; GIF89a, 17; WebP, RFC 9649, 2.4;
  // TIFF 6.0, section 2; AVIF (AOMedia), 9.1.1.
  it.each([
    ["jpeg", "\xff\xd8\xff\xe0"],
    ["png", "\x89PNG\r\n\x1a\n"],
    ["gif", "GIF87a"],
    ["gif", "GIF89a"],
    ["webp", "RIFF\0\0\0\0WEBP"],
    ["tiff", "II*\0"],
    ["tiff", "MM\0*"],
    ["tiff", "II+\0"],
    ["avif", fileTypeBox("avif", "mif1").toString("latin1")],
    ["avif", fileTypeBox("mif1", "mif1", "avif", "miaf").toString("latin1")],
  ])("%s", (format, opening) => {
    expect(rasterFormat(Buffer.from(opening, "latin1"))).toBe(format);
  });

  it.each(["", "R", "RIFF", "\0\0\0", "\0\0\0\x08ftyp", "\xff\xff\xff\xffftypheic", "RIFF\0\0\0\0WAVE"])(
    "%j is none, however short",
    (opening) => {
      expect(() => rasterFormat(Buffer.from(opening, "latin1"))).toThrow(/^a /);
    },
  );
});

describe("the pictures of a TIFF", () => {
  // NewSubfileType is tag 254; bit 0 a reduced version, bit 1 a page, bit 2 a mask (TIFF 6.0, section 8).
  it.each([
    ["one", [{ 256: 9 }] as readonly Record<number, number>[], { firstIsReduced: false, whole: 1 }],
    ["one that says so", [{ 254: 0 }], { firstIsReduced: false, whole: 1 }],
    ["one with a preview", [{ 254: 0 }, { 254: 1 }], { firstIsReduced: false, whole: 1 }],
    ["one with a mask", [{ 256: 9 }, { 254: 4 }], { firstIsReduced: false, whole: 1 }],
    ["two pages", [{ 254: 2 }, { 254: 2 }], { firstIsReduced: false, whole: 2 }],
    ["a preview first, as in a raw file", [{ 254: 1 }, { 254: 0 }], { firstIsReduced: true, whole: 1 }],
    ["none", [], { firstIsReduced: false, whole: 0 }],
  ])("%s", (_, directories, expected) => {
    for (const big of [false, true]) {
      for (const motorola of [false, true]) {
        expect(tiffPictures(tiff(directories, { big, motorola })), `${big} ${motorola}`).toEqual(expected);
      }
    }
  });

  it("of a real one", async () => {
    expect(tiffPictures(await quartersPicture().tiff().toBuffer()).whole).toBe(1);
    expect(tiffPictures(await quartersPicture().tiff({ bigtiff: true }).toBuffer()).whole).toBe(1);
    const pyramid = await sharp({ create: { width: 600, height: 600, channels: 3, background: "#888" } })
      .tiff({ pyramid: true, tile: true })
      .toBuffer();
    expect(tiffPictures(pyramid)).toMatchObject({ firstIsReduced: false });
  });

  it("ends where the file is damaged, and goes round no circle", () => {
    const circle = tiff([{ 254: 0 }]);
    circle.writeUInt32LE(8, circle.length - 4);
    expect(tiffPictures(circle).whole).toBe(1);
    const far = tiff([{ 254: 0 }]);
    far.writeUInt32LE(0xfffffff0, 4);
    expect(tiffPictures(far).whole).toBe(0);
    expect(tiffPictures(tiff([{ 254: 0 }]).subarray(0, 12)).whole).toBe(0);
    const many = tiff([{ 254: 0 }]);
    many.writeUInt16LE(0xffff, 8);
    expect(tiffPictures(many).whole).toBe(0);
  });
});

describe("the chunks of a PNG before its pixels", () => {
  it("are found, and a broken length ends the reading", async () => {
    const png = withPngChunk(await quartersPicture().png().toBuffer(), "cICP", Buffer.from([12, 13, 0, 1]));
    expect([...pngChunks(png).keys()]).toEqual(expect.arrayContaining(["IHDR", "cICP"]));
    expect(pngChunks(png).has("IDAT")).toBe(false);
    expect(colourCodes("png", png)).toEqual({ primaries: 12, transfer: 13 });
    const broken = Buffer.from(png);
    broken.writeUInt32BE(0xffffffff, 8);
    expect([...pngChunks(broken).keys()]).toEqual(["IHDR"]);
  });
});

describe("colours told by code points (Rec. ITU-T H.273)", () => {
  it.each([
    ["sRGB", 1, 13, true, false],
    ["BT.709", 1, 1, true, false],
    ["unspecified", 2, 2, true, false],
    ["BT.601, 625 lines", 5, 6, true, false],
    ["Display P3", 12, 13, false, false],
    ["BT.2020", 9, 14, false, false],
    ["BT.2100 PQ", 9, 16, false, true],
    ["BT.2100 HLG", 9, 18, false, true],
    ["linear", 1, 8, false, false],
  ])("%s: primaries %d, transfer %d", (_, primaries, transfer, near, high) => {
    expect(isNearSrgb({ primaries, transfer })).toBe(near);
    expect(isHighDynamicRange({ primaries, transfer })).toBe(high);
  });
});
