import sharp, { type Sharp } from "sharp";
import { describe, expect, it } from "vitest";
import { averageColour } from "../../shared/images/average-colour.ts";
import { pictureFolder } from "./picture-folder.ts";
import {
  type Colour,
  expectQuarters,
  height,
  plain,
  type Quarters,
  quartersPicture,
  width,
} from "./quarters.ts";

/** What three lossy formats may do to the middle of a flat field. */
const lossy = 8;
/**
 * A press's profile, there and back, dulls what it prints; libvips's own by up to 25 here. Inks taken for light, or
 * inverted, as happens where a decoder overlooks Adobe's marker, would be off by more than 100.
 */
const viaInks = 26;

async function published(file: string, picture: Sharp, quarters: Quarters, tolerance = lossy): Promise<void> {
  const folder = await pictureFolder();
  await folder.put(file, await picture.toBuffer());
  const { images, refused } = await folder.render(file);
  expect(refused).toEqual([]);
  await expectQuarters(folder, images.get(file), quarters, tolerance);
}

describe("every format that is read", () => {
  it.each([
    ["a.jpg", (it: Sharp) => it.jpeg({ quality: 95 })],
    ["progressive.jpg", (it: Sharp) => it.jpeg({ quality: 95, progressive: true })],
    ["a.png", (it: Sharp) => it.png()],
    ["interlaced.png", (it: Sharp) => it.png({ progressive: true })],
    ["palette.png", (it: Sharp) => it.png({ palette: true })],
    ["a.webp", (it: Sharp) => it.webp({ quality: 95 })],
    ["lossless.webp", (it: Sharp) => it.webp({ lossless: true })],
    ["a.avif", (it: Sharp) => it.avif({ quality: 90 })],
    ["a.tif", (it: Sharp) => it.tiff()],
    ["tiled.tif", (it: Sharp) => it.tiff({ tile: true, compression: "deflate" })],
    ["jpeg-in.tif", (it: Sharp) => it.tiff({ compression: "jpeg", quality: 95 })],
    ["big.tif", (it: Sharp) => it.tiff({ bigtiff: true, compression: "lzw" })],
    ["a.gif", (it: Sharp) => it.gif()],
  ])("%s", async (file, encode) => {
    await published(file, encode(quartersPicture()), plain);
  });

  it("by what is in it, whatever it is called", async () => {
    await published("really-a-png.jpg", quartersPicture().png(), plain);
    await published("really-a-jpeg.heic", quartersPicture().jpeg({ quality: 95 }), plain);
    await published("no-ending", quartersPicture().webp({ lossless: true }), plain);
  });
});

describe("colours come out as sRGB", () => {
  it("from Display P3: its (234, 51, 35) is sRGB's pure red", async () => {
    // color(display-p3 0.917488 0.200287 0.138561) and color(display-p3 0.458402 0.985265 0.298295) are #f00 and
    // #0f0: conversion by the sample code of CSS Color Module Level 4 (W3C), as the `coloraide` documentation and
    // others print it; times 255.
    const pure: Quarters = {
      topLeft: [255, 0, 0],
      topRight: [0, 255, 0],
      bottomLeft: [0, 0, 255],
      bottomRight: [255, 255, 255],
    };
    const inP3: Colour[] = [
      [234, 51, 35],
      [117, 251, 76],
    ];
    const picture = quartersPicture(pure).withIccProfile("p3").png();
    const raw = await sharp(await picture.toBuffer(), { ignoreIcc: true })
      .raw()
      .toBuffer();
    for (const [n, x] of [width / 4, (3 * width) / 4].entries()) {
      const at = ((height / 4) * width + x) * 3;
      for (const c of [0, 1, 2])
        expect(Math.abs((raw[at + c] ?? NaN) - (inP3[n]?.[c] ?? NaN))).toBeLessThan(2);
    }
    await published("p3.png", picture, pure, 12);
    await published("p3.jpg", quartersPicture(pure).withIccProfile("p3").jpeg({ quality: 98 }), pure, 12);
    await published("p3.avif", quartersPicture(pure).withIccProfile("p3").avif({ quality: 90 }), pure, 12);
    await published("p3.webp", quartersPicture(pure).withIccProfile("p3").webp({ lossless: true }), pure, 12);
  });

  /** Within the reach of inks. The last is bare paper. */
  const printable: Quarters = {
    topLeft: [160, 70, 60],
    topRight: [70, 120, 80],
    bottomLeft: [80, 90, 130],
    bottomRight: [255, 255, 255],
  };

  it("from CMYK", async () => {
    const inks = () => quartersPicture(printable).toColourspace("cmyk");
    for (const [file, made] of [
      ["cmyk.jpg", inks().jpeg({ quality: 98 })],
      ["cmyk.tif", inks().tiff({ compression: "lzw" })],
      ["cmyk-with-profile.tif", inks().withIccProfile("cmyk").tiff({ compression: "lzw" })],
    ] as const) {
      expect(await sharp(await made.toBuffer()).metadata()).toMatchObject({ space: "cmyk", channels: 4 });
      await published(file, made, printable, viaInks);
    }
  });

  it("from CIELAB", async () => {
    await published(
      "lab.tif",
      quartersPicture(printable).toColourspace("lab").tiff({ compression: "lzw" }),
      printable,
    );
  });

  it("from 16 bits: half of 65,535 is half of 255", async () => {
    const rgb = new Uint16Array(width * height * 3);
    const eight = await quartersPicture().raw().toBuffer();
    for (const [n, value] of eight.entries()) rgb[n] = value * 257;
    const picture = () => sharp(rgb, { raw: { width, height, channels: 3 } }).toColourspace("rgb16");
    for (const [file, made] of [
      ["deep.png", picture().png()],
      ["deep.tif", picture().tiff({ compression: "lzw" })],
    ] as const) {
      expect(await sharp(await made.toBuffer()).metadata()).toMatchObject({ depth: "ushort" });
      await published(file, made, plain);
    }
  });

  const grey: Quarters = {
    topLeft: [30, 30, 30],
    topRight: [128, 128, 128],
    bottomLeft: [200, 200, 200],
    bottomRight: [250, 250, 250],
  };

  it("from grey, of 8 and of 16 bits", async () => {
    const bw = () => quartersPicture(grey).toColourspace("b-w");
    expect(await sharp(await bw().png().toBuffer()).metadata()).toMatchObject({ channels: 1 });
    await published("grey.png", bw().png(), grey);
    await published("grey.jpg", bw().jpeg({ quality: 95 }), grey);
    const deep = quartersPicture(grey).toColourspace("grey16").png();
    expect(await sharp(await deep.toBuffer()).metadata()).toMatchObject({ channels: 1, depth: "ushort" });
    await published("grey16.png", deep, grey);
    await published(
      "fax.tif",
      quartersPicture({
        ...grey,
        topLeft: [0, 0, 0],
        topRight: [255, 255, 255],
        bottomLeft: [0, 0, 0],
        bottomRight: [255, 255, 255],
      }).tiff({ bitdepth: 1 }),
      {
        topLeft: [0, 0, 0],
        topRight: [255, 255, 255],
        bottomLeft: [0, 0, 0],
        bottomRight: [255, 255, 255],
      },
    );
  });

  it("with transparency on white, so that nothing hidden under it comes back", async () => {
    const rgba = Buffer.alloc(width * height * 4);
    for (let y = 0; y < height; y++) {
      for (let x = 0; x < width; x++) {
        // Red everywhere; clear on the left, half clear at the bottom right.
        const alpha = x < width / 2 ? 0 : y < height / 2 ? 255 : 128;
        rgba.set([200, 0, 0, alpha], (y * width + x) * 4);
      }
    }
    const picture = () => sharp(rgba, { raw: { width, height, channels: 4 } });
    const shown: Quarters = {
      topLeft: [255, 255, 255],
      topRight: [200, 0, 0],
      bottomLeft: [255, 255, 255],
      // Porter and Duff (1984), "over": 128/255 of the colour and the rest of white.
      bottomRight: [227, 127, 127],
    };
    await published("clear.png", picture().png(), shown);
    await published("clear.webp", picture().webp({ lossless: true, exact: true }), shown);
    await published("clear.avif", picture().avif({ quality: 90 }), shown);
    await published("clear.tif", picture().tiff({ compression: "lzw" }), shown);
  });
});

describe("the colour that stands in for a picture", () => {
  it("is the mean of its pixels", async () => {
    expect(averageColour(Uint8Array.of(255, 0, 0, 1, 0, 255))).toBe("#800080");
    expect(averageColour(Uint8Array.of(7, 8, 9))).toBe("#070809");
    const folder = await pictureFolder();
    await folder.put("a.png", await quartersPicture().png().toBuffer());
    const { images } = await folder.render("a.png");
    // (200 + 40 + 40 + 230) / 4 = 127.5, (40 + 160 + 60 + 220) / 4 = 120, (40 + 60 + 190 + 190) / 4 = 120.
    expect(images.get("a.png")?.colour).toMatch(/^#(7f|80)7878$/);
  });
});
