import sharp, { type Metadata, type Sharp } from "sharp";
import { colourCodes, isHighDynamicRange, isNearSrgb } from "./colour-codes.ts";
import { background, type Size } from "./plan-image.ts";
import { pngChunks } from "./png-chunks.ts";
import { type RasterFormat, rasterFormat } from "./raster-format.ts";
import { RefusedFile } from "./refused-file.ts";
import { tiffPictures } from "./tiff-pictures.ts";

/** 8-bit sRGB, three channels, upright, opaque: what every output is made of. Nothing else of the file is kept. */
export interface Pixels extends Size {
  readonly rgb: Buffer;
}

/** As many as the largest sensors have. Decoded and turned, that is 600 MB at 8 bits. */
const mostPixels = 200_000_000;

const megapixels = (pixels: number) => `${Math.round(pixels / 1e6)} megapixels`;

/** The size of a picture when upright, from its header. Throws RefusedFile for whatever is no still photograph. */
export async function uprightSize(bytes: Buffer): Promise<Size> {
  const format = rasterFormat(bytes);
  refuseManyPictures(format, bytes);
  // Counted here, so that the answer can say how large it is.
  const header = await decoding(() => sharp(bytes, { limitInputPixels: false }).metadata());
  const { width, height } = header.autoOrient;
  if (width * height > mostPixels) {
    throw new RefusedFile(
      `a picture of ${width} × ${height} pixels (${megapixels(width * height)}), ` +
        `where at most ${megapixels(mostPixels)} are read`,
    );
  }
  if ((header.pages ?? 1) > 1 && format !== "tiff") {
    // To show the first frame would leave the others out in silence.
    throw new RefusedFile(`a moving picture of ${header.pages} frames, where a photograph is a still`);
  }
  refuseUnknownColours(format, bytes, header);
  return { width, height };
}

/** Decodes a picture once, straight to the size of its largest output. */
export function decodeUpright(bytes: Buffer, size: Size): Promise<Pixels> {
  return decoding(() =>
    pixels(
      sharp(bytes, { limitInputPixels: mostPixels, failOn: "warning" })
        .autoOrient()
        .toColourspace("srgb")
        // In every format alike: what a picture hides under its transparency must not come back in one of them.
        .flatten({ background }),
      size,
    ),
  );
}

export async function resized(from: Pixels, size: Size): Promise<Pixels> {
  const { rgb, width, height } = from;
  if (size.width === width && size.height === height) return from;
  return pixels(sharp(rgb, { raw: { width, height, channels: 3 } }), size);
}

async function pixels(picture: Sharp, { width, height }: Size): Promise<Pixels> {
  const rgb = await picture.resize(width, height, { fit: "fill" }).raw({ depth: "uchar" }).toBuffer();
  if (rgb.length !== width * height * 3)
    throw new RefusedFile("a picture whose colours are not red, green and blue");
  return { rgb, width, height };
}

function refuseManyPictures(format: RasterFormat, bytes: Buffer): void {
  if (format === "png" && pngChunks(bytes).has("acTL")) {
    throw new RefusedFile("a moving picture (animated PNG), where a photograph is a still");
  }
  if (format !== "tiff") return;
  const { firstIsReduced, whole } = tiffPictures(bytes);
  if (firstIsReduced) throw new RefusedFile("a camera's raw file, of which only the preview could be read");
  if (whole > 1) throw new RefusedFile(`a file of ${whole} pictures, where a photograph is only one`);
}

function refuseUnknownColours(format: RasterFormat, bytes: Buffer, header: Metadata): void {
  const codes = colourCodes(format, bytes);
  if (codes && isHighDynamicRange(codes)) {
    throw new RefusedFile("a picture in high dynamic range, whose colours would come out wrong");
  }
  if (codes && !isNearSrgb(codes) && !header.hasProfile) {
    throw new RefusedFile("a picture in a wide gamut that has no colour profile; embed the profile");
  }
  // CIELAB is decoded to fractions whatever the file held.
  if (header.space !== "lab" && header.depth !== "uchar" && header.depth !== "ushort") {
    throw new RefusedFile(`a picture whose channels are not whole numbers of 8 or 16 bits (${header.depth})`);
  }
}

/** A decoder's complaint as a reason. */
async function decoding<T>(decode: () => Promise<T>): Promise<T> {
  try {
    return await decode();
  } catch (problem) {
    if (problem instanceof RefusedFile) throw problem;
    throw new RefusedFile(inPlainWords(problem instanceof Error ? problem.message : String(problem)));
  }
}

const breaksOff = /premature|unexpected end|end of file/i;
/** What a decoder says of its own doings, which tells a reader nothing. */
const ownDoings = /^(?:source: bad seek|error in tile|Warning treated as error)/;
const speaker = /^(?:Input buffer [a-z ]+(?:: )?)?(?:\w+: )?/;

function inPlainWords(complaint: string): string {
  const said = complaint.split("\n").filter((line) => line.trim() !== "" && !ownDoings.test(line));
  const words = (said[0] ?? "").replace(speaker, "").trim();
  const what = breaksOff.test(complaint)
    ? "a picture that breaks off before its end"
    : "a picture that is damaged or breaks off";
  return words === "" ? what : `${what} (the decoder says: ${words})`;
}
