import { RefusedFile, readFormats } from "./refused-file.ts";

export type RasterFormat = "jpeg" | "png" | "webp" | "avif" | "tiff" | "gif";

/** The brands of the `ftyp` box, ISO/IEC 14496-12; those of HEIC are in ISO/IEC 23008-12, Annex B. */
const heicBrands = ["heic", "heix", "heim", "heis", "hevc", "hevx", "hevm", "hevs", "mif1", "msf1"];

/**
 * By the first bytes, since a name may say anything. Only rasters: a drawing can pull in other files, and a
 * decoder that nobody expected is one more that a hostile file can reach.
 * Throws RefusedFile, naming what the file is where that is known.
 */
export function rasterFormat(bytes: Buffer): RasterFormat {
  const starts = (text: string, at = 0) => bytes.toString("latin1", at, at + text.length) === text;
  if (starts("\xff\xd8\xff")) return "jpeg";
  if (starts("\x89PNG\r\n\x1a\n")) return "png";
  if (starts("GIF87a") || starts("GIF89a")) return "gif";
  if (starts("RIFF") && starts("WEBP", 8)) return "webp";
  if (["II*\0", "MM\0*", "II+\0", "MM\0+"].some((magic) => starts(magic))) {
    // Canon's raw files call themselves TIFF, with a mark of their own at the eighth byte.
    if (starts("CR", 8)) throw new RefusedFile(`a camera's raw file; expected ${readFormats}`);
    return "tiff";
  }
  if (starts("ftyp", 4)) {
    const brands = brandsOf(bytes);
    if (brands[0] === "avis") {
      throw new RefusedFile("a moving picture (AVIF sequence), where a photograph is a still");
    }
    if (brands.includes("avif")) return "avif";
    if (brands.some((brand) => heicBrands.includes(brand))) throw refused("HEIC");
    throw refused("video or raw file");
  }
  if (starts("%PDF")) throw refused("PDF");
  const opening = bytes.toString("utf8", 0, 4096);
  if (/<svg[\s>]/i.test(opening)) throw refused("drawing (SVG)");
  throw new RefusedFile(`a file that is not a ${readFormats}`);
}

function refused(kind: string): RefusedFile {
  return new RefusedFile(`a ${kind}, where a photograph is ${readFormats}`);
}

function brandsOf(bytes: Buffer): string[] {
  const end = Math.min(bytes.readUInt32BE(0), bytes.length, 1024);
  const brands = [bytes.toString("latin1", 8, 12)];
  for (let at = 16; at + 4 <= end; at += 4) brands.push(bytes.toString("latin1", at, at + 4));
  return brands;
}
