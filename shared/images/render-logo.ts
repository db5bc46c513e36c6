import { hash } from "node:crypto";
import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import sharp from "sharp";
import type { ImageFile } from "./image-set.ts";
import { readOriginal } from "./original-bytes.ts";
import { uprightSize } from "./upright-picture.ts";

/** At two device pixels to the CSS pixel, as high as a title page has it, and as wide as a phone. */
const most = { width: 640, height: 240 };

/**
 * A collection's sign, as a PNG that keeps what is transparent, without its metadata. A drawing as SVG is refused
 * like any other file that is no photograph: it can hold scripts, and addresses that tell who reads the page.
 * Throws RefusedFile.
 */
export async function renderLogo(root: string, file: string, outFolder: string): Promise<ImageFile> {
  const bytes = await readOriginal(root, file);
  await uprightSize(bytes);
  const { data, info } = await sharp(bytes, { failOn: "warning" })
    .autoOrient()
    .toColourspace("srgb")
    .resize({ ...most, fit: "inside", withoutEnlargement: true })
    .ensureAlpha()
    .raw({ depth: "uchar" })
    .toBuffer({ resolveWithObject: true });
  // What lies hidden under full transparency is not published.
  for (let at = 0; at < data.length; at += 4) if (data[at + 3] === 0) data.fill(0, at, at + 3);
  const { width, height } = info;
  const png = await sharp(data, { raw: { width, height, channels: 4 } })
    .png()
    .toBuffer();
  const address = `/images/logo.${hash("sha256", png).slice(0, 10)}.png`;
  await mkdir(path.join(outFolder, "images"), { recursive: true });
  await writeFile(path.join(outFolder, address), png);
  return { address, width, height };
}
