import { execFile } from "node:child_process";
import { mkdir, mkdtemp, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { promisify } from "node:util";
import sharp, { type Sharp } from "sharp";
import { describe, expect, it, onTestFinished } from "vitest";
import { renderImages } from "../../shared/images/render-images.ts";
import { fileTypeBox, tiff, withColourCodes, withJpegSize, withPngChunk } from "./handmade.ts";
import { metadataTool } from "./metadata-tool.ts";
import { pictureFolder } from "./picture-folder.ts";
import { expectQuarters, plain, quartersPicture } from "./quarters.ts";

const exiftool = metadataTool();

async function reasonFor(file: string, bytes: Buffer | string): Promise<string> {
  const folder = await pictureFolder();
  await folder.put(file, bytes);
  await folder.put("good.png", await quartersPicture().png().toBuffer());
  const { images, refused, encoded } = await folder.render(file, "good.png");
  expect([...images.keys()], "the picture beside it").toEqual(["good.png"]);
  expect(encoded).toBe(1);
  expect(refused.map((it) => it.file)).toEqual([file]);
  const reason = refused[0]?.reason ?? "";
  expect(reason, "one line, no path and no stack").not.toMatch(/\n|Error|Vips|undefined/);
  expect(reason).not.toContain(tmpdir());
  return reason;
}

/** Something that compresses badly, so that a file has a middle to be damaged in. */
function busy() {
  const rgb = Buffer.alloc(300 * 200 * 3);
  let state = 1;
  for (let n = 0; n < rgb.length; n++) {
    state = (state * 1664525 + 1013904223) >>> 0;
    rgb[n] = state >>> 24;
  }
  return sharp(rgb, { raw: { width: 300, height: 200, channels: 3 } });
}

const encoders: readonly [string, (picture: Sharp) => Sharp][] = [
  ["jpg", (it) => it.jpeg()],
  ["png", (it) => it.png()],
  ["webp", (it) => it.webp()],
  ["avif", (it) => it.avif({ effort: 1 })],
  ["tif", (it) => it.tiff({ compression: "lzw" })],
  ["gif", (it) => it.gif()],
];

describe("a damaged file is refused with a reason, and stops no other", () => {
  it.each(encoders)(
    "%s that breaks off, at a hundredth, a third and near the end",
    async (ending, encode) => {
      const whole = await encode(busy()).toBuffer();
      for (const share of [0.01, 0.3, 0.98]) {
        const reason = await reasonFor(`cut.${ending}`, whole.subarray(0, Math.floor(whole.length * share)));
        expect(reason).toMatch(/^a picture that (is damaged or )?breaks off/);
      }
    },
  );

  // WebP and bare baseline JPEG carry no check sums: bits may turn there into others that are just as valid.
  it.each(encoders.filter(([ending]) => !["jpg", "webp"].includes(ending)))(
    "%s with a hole in its middle",
    async (ending, encode) => {
      const bytes = await encode(busy()).toBuffer();
      bytes.fill(0, Math.floor(bytes.length * 0.4), Math.floor(bytes.length * 0.6));
      expect(await reasonFor(`hole.${ending}`, bytes)).toMatch(/^a picture that (is damaged or )?breaks off/);
    },
  );

  it("a progressive JPEG with a hole in its middle", async () => {
    const bytes = await busy().jpeg({ progressive: true }).toBuffer();
    bytes.fill(0, Math.floor(bytes.length * 0.4), Math.floor(bytes.length * 0.6));
    expect(await reasonFor("hole.jpg", bytes)).toMatch(/^a picture that is damaged/);
  });

  it("an empty file", async () => {
    expect(await reasonFor("empty.jpg", "")).toBe("an empty file (0 bytes)");
  });

  it.each(["\xff\xd8\xff", "\x89PNG\r\n\x1a\n", "GIF89a", "RIFF\x10\0\0\0WEBP", "II*\0", "MM\0*", "II+\0"])(
    "nothing but the opening bytes %j",
    async (opening) => {
      expect(await reasonFor("stub", Buffer.from(opening, "latin1"))).toMatch(
        /^a picture that is damaged|breaks off/,
      );
    },
  );

  it("opening bytes of a picture with noise after them", async () => {
    const noise = await busy().raw().toBuffer();
    for (const opening of ["\xff\xd8\xff\xe0", "\x89PNG\r\n\x1a\n", "GIF89a", "II*\0"]) {
      await reasonFor("noise", Buffer.concat([Buffer.from(opening, "latin1"), noise]));
    }
    await reasonFor("noise", Buffer.concat([fileTypeBox("avif", "avif", "mif1"), noise]));
  });
});

describe("what is no raster that is read is refused by its kind", () => {
  const square =
    '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><image href="secret.png"/></svg>';
  it.each([
    ["drawing.svg", square, "a drawing (SVG)"],
    ["drawing.jpg", `\uFEFF<?xml version="1.0"?>\n<!-- a case -->\n${square}`, "a drawing (SVG)"],
    ["paper.pdf", "%PDF-1.7\n%\xe2\xe3", "a PDF"],
    ["phone.heic", fileTypeBox("heic", "mif1", "heic"), "a HEIC"],
    ["phone.jpg", fileTypeBox("mif1", "mif1", "heic"), "a HEIC"],
    ["clip.jpg", fileTypeBox("isom", "isom", "mp42"), "a video or raw file"],
    ["moving.avif", fileTypeBox("avis", "avis", "msf1"), "a moving picture (AVIF sequence)"],
    ["page.jpg", "<!DOCTYPE html><title>Not found</title>", "a file that is not a JPEG"],
    ["words.png", "Only words.", "a file that is not a JPEG"],
    ["archive.jpg", "PK\x03\x04", "a file that is not a JPEG"],
    ["bitmap.jpg", "BM\x46\0\0\0", "a file that is not a JPEG"],
    ["vips.jpg", "\x08\xf2\xa6\xb6", "a file that is not a JPEG"],
  ])("%s", async (file, bytes, reason) => {
    expect(await reasonFor(file, bytes)).toContain(reason);
  });

  it("a camera's raw file, which would show its preview", async () => {
    const folder = await pictureFolder();
    const full = await folder.put("raw.tif", await quartersPicture().tiff().toBuffer());
    await exiftool.write(full, { SubfileType: 1 });
    const { refused } = await folder.render("raw.tif");
    expect(refused[0]?.reason).toBe("a camera's raw file, of which only the preview could be read");
    expect(await reasonFor("raw.cr2", Buffer.from("II*\0\x10\0\0\0CR\x02\0", "latin1"))).toContain(
      "raw file",
    );
  });
});

describe("a photograph is one still", () => {
  const frames = async () => {
    const still = (background: string) =>
      sharp({ create: { width: 40, height: 30, channels: 3, background } })
        .png()
        .toBuffer();
    return sharp(await Promise.all(["#111", "#222", "#333"].map(still)), { join: { animated: true } });
  };

  it("a moving GIF, WebP and PNG are refused: the other frames would be left out in silence", async () => {
    expect(await reasonFor("a.gif", await (await frames()).gif().toBuffer())).toContain(
      "a moving picture of 3 frames",
    );
    expect(await reasonFor("a.webp", await (await frames()).webp().toBuffer())).toContain(
      "a moving picture of 3 frames",
    );
    const moving = withPngChunk(await quartersPicture().png().toBuffer(), "acTL", Buffer.alloc(8, 1));
    expect(await reasonFor("a.png", moving)).toContain("a moving picture (animated PNG)");
  });

  it("a TIFF of several pictures is refused too", async () => {
    const pages = tiff([{ 256: 1 }, { 256: 1 }]);
    expect(await reasonFor("pages.tif", pages)).toContain("a file of 2 pictures");
  });
});

describe("what is too large is refused, and how large it is", () => {
  it("a raster of 4,225 megapixels", async () => {
    const bomb = withJpegSize(await quartersPicture().jpeg().toBuffer(), 65000, 65000);
    expect(await reasonFor("bomb.jpg", bomb)).toBe(
      "a picture of 65000 × 65000 pixels (4225 megapixels), where at most 200 megapixels are read",
    );
  });

  it("but a long strip is shown", async () => {
    const folder = await pictureFolder();
    await folder.put("wide.png", await quartersPicture(plain, 9000, 30).png().toBuffer());
    await folder.put("tall.png", await quartersPicture(plain, 30, 9000).png().toBuffer());
    const { images, refused } = await folder.render("wide.png", "tall.png");
    expect(refused).toEqual([]);
    expect(images.get("wide.png")).toMatchObject({ width: 2200, height: 7 });
    expect(images.get("tall.png")).toMatchObject({ width: 11, height: 3300 });
  });
});

describe("colours that cannot be told are refused", () => {
  const withProfile = () => quartersPicture().withIccProfile("p3").avif().toBuffer();

  it("high dynamic range, by the code points of AVIF and PNG (PQ 16, HLG 18)", async () => {
    const avif = await withProfile();
    const png = await quartersPicture().png().toBuffer();
    for (const transfer of [16, 18]) {
      expect(await reasonFor("hdr.avif", withColourCodes(avif, 9, transfer))).toContain("high dynamic range");
      const codes = Buffer.from([9, transfer, 0, 1]);
      expect(await reasonFor("hdr.png", withPngChunk(png, "cICP", codes))).toContain("high dynamic range");
    }
  });

  it("a wide gamut told by code points alone (P3 is 12)", async () => {
    const avif = await withProfile();
    expect(await reasonFor("p3.avif", withColourCodes(avif, 12, 13))).toContain("wide gamut");
  });

  it("but code points that say sRGB are no hindrance", async () => {
    const folder = await pictureFolder();
    const png = await quartersPicture().png().toBuffer();
    await folder.put("a.png", withPngChunk(png, "cICP", Buffer.from([1, 13, 0, 1])));
    const { images } = await folder.render("a.png");
    await expectQuarters(folder, images.get("a.png"), plain, 8);
  });

  it("channels of floating point", async () => {
    const float = quartersPicture().toColourspace("scrgb").tiff({ compression: "lzw" });
    expect(await reasonFor("float.tif", await float.toBuffer())).toContain("not whole numbers");
  });
});

describe("where the file lies", () => {
  it("missing, a folder, a pipe", async () => {
    const folder = await pictureFolder();
    await mkdir(path.join(folder.root, "folder.jpg"));
    await promisify(execFile)("mkfifo", [path.join(folder.root, "pipe.jpg")]);
    const { refused } = await folder.render("gone.jpg", "folder.jpg", "pipe.jpg", "gone/too.jpg");
    expect(refused).toEqual([
      { file: "gone.jpg", reason: "no file there" },
      { file: "folder.jpg", reason: "a folder" },
      { file: "pipe.jpg", reason: "a pipe, socket or device" },
      { file: "gone/too.jpg", reason: "no file there" },
    ]);
  });

  it("a link inside the collection is followed; one that leads out, nowhere or round is not", async () => {
    const folder = await pictureFolder();
    const outside = await mkdtemp(path.join(tmpdir(), "outside-"));
    onTestFinished(() => rm(outside, { recursive: true }));
    const bytes = await quartersPicture().png().toBuffer();
    await writeFile(path.join(outside, "secret.png"), bytes);
    await folder.put("items/real.png", bytes);
    const at = (file: string) => path.join(folder.root, file);
    await symlink(at("items/real.png"), at("inside.png"));
    await symlink(path.join(outside, "secret.png"), at("out.png"));
    await symlink(outside, at("out"));
    await symlink(at("nowhere"), at("dangling.png"));
    await symlink(at("round.png"), at("round.png"));
    const { images, refused } = await folder.render(
      "inside.png",
      "out.png",
      "out/secret.png",
      "dangling.png",
      "round.png",
      "../root/items/../../../etc/hostname",
    );
    expect([...images.keys()]).toEqual(["inside.png"]);
    expect(refused.map((it) => it.reason)).toEqual([
      "a link that leads out of the collection",
      "a link that leads out of the collection",
      "no file there",
      "a link that leads back to itself",
      expect.stringMatching(/leads out|no file/),
    ]);
  });

  it("works where the root itself is a link", async () => {
    const folder = await pictureFolder();
    await folder.put("a.png", await quartersPicture().png().toBuffer());
    const root = `${folder.root}-link`;
    await symlink(folder.root, root);
    const { images } = await renderImages({ ...folder, root, originals: ["a.png"] });
    expect(images.size).toBe(1);
  });
});

it("keeps to the order of the originals, names each once, and counts them off", async () => {
  const folder = await pictureFolder();
  await folder.put("z.png", await quartersPicture(plain, 800, 600).png().toBuffer());
  await folder.put("a.png", await quartersPicture(plain, 20, 20).png().toBuffer());
  const steps: string[] = [];
  const { images, refused } = await renderImages({
    ...folder,
    originals: ["z.png", "no.png", "a.png", "z.png", "constructor"],
    onProgress: (done, of) => steps.push(`${done}/${of}`),
  });
  expect([...images.keys()]).toEqual(["z.png", "a.png"]);
  expect(refused.map((it) => it.file)).toEqual(["no.png", "constructor"]);
  expect(steps).toEqual(["1/4", "2/4", "3/4", "4/4"]);
});
