import { appendFile, readFile, stat } from "node:fs/promises";
import path from "node:path";
import sharp, { type Sharp } from "sharp";
import { describe, expect, it } from "vitest";
import { metadataTool } from "./metadata-tool.ts";
import { type PictureFolder, pictureFolder } from "./picture-folder.ts";
import { quartersPicture } from "./quarters.ts";

const exiftool = metadataTool();

/** In every secret, so that one search finds any of them. */
const canary = "CANARY";
const latitude = 47.123456;
const longitude = 11.654321;

/** What a camera and its owner leave in a photograph, all of it invented. */
const exif = {
  Artist: `${canary}-artist`,
  Copyright: `${canary}-copyright`,
  ImageDescription: `${canary}-description`,
  OwnerName: `${canary}-owner`,
  SerialNumber: `${canary}-body-serial`,
  LensSerialNumber: `${canary}-lens-serial`,
  LensModel: `${canary}-lens`,
  Make: `${canary}-make`,
  Model: `${canary}-model`,
  Software: `${canary}-software`,
  UserComment: `${canary}-comment`,
  ImageUniqueID: `${canary}-unique`,
  HostComputer: `${canary}-host`,
  DateTimeOriginal: "2026:03:14 15:09:26",
  GPSLatitude: latitude,
  GPSLatitudeRef: "N",
  GPSLongitude: longitude,
  GPSLongitudeRef: "E",
  GPSAreaInformation: `${canary}-area`,
};
const xmp = {
  "XMP-dc:Creator": `${canary}-xmp-creator`,
  "XMP-dc:Description": `${canary}-xmp-description`,
  "XMP-aux:SerialNumber": `${canary}-xmp-serial`,
  "XMP-aux:OwnerName": `${canary}-xmp-owner`,
  "XMP-iptcExt:PersonInImage": `${canary}-xmp-person`,
  "XMP-photoshop:City": `${canary}-xmp-city`,
};
const iptc = { "IPTC:By-line": `${canary}-iptc-byline`, "IPTC:City": `${canary}-iptc-city` };

/** Written by ExifTool, tag by tag; fails where any of it did not arrive. */
async function loaded(
  folder: PictureFolder,
  file: string,
  picture: Sharp,
  tags: Record<string, string | number>,
) {
  const full = await folder.put(file, await picture.toBuffer());
  await exiftool.write(full, tags);
  const found = JSON.stringify(await exiftool.read(full));
  for (const secret of Object.values(tags)) expect(found, `${file} before`).toContain(String(secret));
  return full;
}

function holds(bytes: Buffer, text: string): boolean {
  const utf16 = Buffer.from(text, "utf16le");
  return [Buffer.from(text), utf16, Buffer.from(utf16).swap16()].some((form) => bytes.includes(form));
}

/** What says how the pixels are packed; every other tag would be news of where they came from. */
const structure: readonly RegExp[] = [
  /^(ExifTool|System|Composite):/,
  /^File:(FileType|FileTypeExtension|MIMEType|ImageWidth|ImageHeight)$/,
  /^File:(EncodingProcess|BitsPerSample|ColorComponents|YCbCrSubSampling)$/,
  /^JFIF:/,
  /^RIFF:(VP8Version|ImageWidth|ImageHeight|HorizontalScale|VerticalScale)$/,
  /^QuickTime:(MajorBrand|MinorVersion|CompatibleBrands|HandlerType|AV1ConfigurationVersion|SeqProfile)$/,
  /^QuickTime:(SeqLevelIdx0|SeqTier0|HighBitDepth|TwelveBit|ChromaFormat|ChromaSamplePosition)$/,
  /^QuickTime:(InitialDelaySamples|ImageSpatialExtent|ImagePixelDepth|MediaData(Size|Offset)?)$/,
  /^Meta:PrimaryItemReference$/,
];

async function expectNothingLeft(folder: PictureFolder, files: readonly string[]): Promise<void> {
  const { images, refused } = await folder.render(...files);
  expect(refused).toEqual([]);
  expect([...images.keys()]).toEqual(files);
  const everything = await folder.everything();
  expect(everything.size).toBeGreaterThan(3);
  for (const [name, bytes] of everything) {
    expect(name).not.toContain(canary);
    expect(holds(bytes, canary), `${canary} in ${name}`).toBe(false);
  }
  for (const { sources, fallback } of images.values()) {
    for (const { address } of [...sources.flatMap((source) => source.files), fallback]) {
      expect(address).toMatch(/^\/images\/[0-9a-f]{24}-\d+\.(avif|webp|jpg)$/);
      const full = path.join(folder.outFolder, address);
      const tags = await exiftool.read(full);
      const news = Object.keys(tags).filter((tag) => !structure.some((known) => known.test(tag)));
      expect(news, address).toEqual([]);
      expect(JSON.stringify(tags)).not.toMatch(/47\.123|11\.654|GPS|2026:03:14/);
      const own = await sharp(full).metadata();
      expect(own).not.toHaveProperty("exif");
      for (const part of ["icc", "xmp", "iptc", "orientation", "comments", "gainMap"]) {
        expect(own, address).not.toHaveProperty(part);
      }
    }
  }
}

describe("no published file carries anything of the photograph but its pixels", () => {
  it("JPEG: position, owner, serials, persons, comments, thumbnail, and what hangs on behind", async () => {
    const folder = await pictureFolder();
    const file = `${canary} house/${canary}-no-118.jpg`;
    const picture = quartersPicture().withIccProfile("p3").jpeg();
    const tags = { ...exif, ...xmp, ...iptc, Comment: `${canary}-jpeg-comment` };
    const full = await loaded(folder, file, picture, tags);
    await exiftool.write(full, { ThumbnailImage: await quartersPicture().resize(60).jpeg().toBuffer() });
    expect(Object.keys(await exiftool.read(full))).toContain("IFD1:ThumbnailImage");
    // As phones hang a video on a photograph.
    await appendFile(full, Buffer.from(`${canary}-behind the end`));
    expect((await readFile(full)).includes(canary)).toBe(true);
    await expectNothingLeft(folder, [file]);
  });

  it.each([
    ["a.png", (it: Sharp) => it.png(), { ...exif, ...xmp, "PNG:Author": `${canary}-png` }],
    ["a.webp", (it: Sharp) => it.webp(), { ...exif, ...xmp }],
    ["a.tif", (it: Sharp) => it.tiff({ compression: "lzw" }), { ...exif, ...xmp, ...iptc }],
    ["a.avif", (it: Sharp) => it.avif({ effort: 0 }), { ...exif, ...xmp }],
    ["a.gif", (it: Sharp) => it.gif(), { ...xmp, Comment: `${canary}-gif-comment` }],
  ])("%s", async (file, encode, tags) => {
    const folder = await pictureFolder();
    await loaded(folder, file, encode(quartersPicture()), tags);
    await expectNothingLeft(folder, [file]);
  });

  it("no original is linked or copied to the site", async () => {
    const folder = await pictureFolder();
    const full = await loaded(folder, "a.jpg", quartersPicture().jpeg(), exif);
    const original = await readFile(full);
    const { ino } = await stat(full);
    await folder.render("a.jpg");
    for (const [name, bytes] of await folder.everything()) {
      expect(bytes.equals(original), name).toBe(false);
      const there = await stat(path.join(path.dirname(folder.root), name));
      expect(there.ino, name).not.toBe(ino);
    }
  });
});
