import { createHash, hash, randomUUID } from "node:crypto";
import { mkdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import sharp from "sharp";
import { bandsOf } from "../../plots/case-plan/case-plan-part.ts";
import { packageVersion } from "../../source/package-folder.ts";
import { askedFor } from "../asked-for.ts";
import { type PreviewContent, photographBox, previewDrawing } from "./preview-drawing.ts";

/** Raise it where the code alone changes what a preview picture looks like; each release of the package does so too. */
const pipeline = 2;
const encoding = { quality: 82, progressive: true, mozjpeg: false } as const;

/** A preview picture is made anew unless the cached one is whole: its digest stands at the head of its file. */
const digestLength = 32;

/**
 * Puts a photograph on its preview picture and keeps the JPEG in the cache, by all that decides what it shows. Returns
 * its name, which is its content's, and its path. To draw one takes a hundredth of a second, so one that is known is
 * not drawn.
 */
export async function renderPreviewPicture(
  content: PreviewContent,
  photograph: string,
  cacheFolder: string,
  outFolder: string,
): Promise<{ readonly name: string; readonly file: string }> {
  const picture = await readFile(photograph);
  const key = createHash("sha256")
    .update(JSON.stringify([pipeline, packageVersion, encoding, photographBox, sharp.versions]))
    .update(JSON.stringify(keyOf(content)))
    .update(picture)
    .digest("hex")
    .slice(0, 24);
  const name = `${key}-card.jpg`;
  const file = path.join(outFolder, name);
  const cached = path.join(cacheFolder, "cards", key);
  const known = await wholePicture(cached);
  const preview = known ?? (await composed(previewDrawing(content), picture));
  await (known ? askedFor(cached) : write(cached, Buffer.concat([digestOf(preview), preview])));
  await write(file, preview);
  return { name, file };
}

/** Of the parts only what the plan shows of them. */
const keyOf = ({ text, parts, accent }: PreviewContent): unknown => [
  text,
  accent,
  parts.map((part) => [part.weight, part.plan, part.summary, bandsOf(part)]),
];

async function composed(drawing: string, picture: Buffer): Promise<Buffer> {
  const { width, height, x, y } = photographBox;
  const photograph = await sharp(picture).resize(width, height, { fit: "cover" }).toBuffer();
  return sharp(Buffer.from(drawing))
    .flatten({ background: "#ffffff" })
    .composite([{ input: photograph, left: x, top: y }])
    .toColourspace("srgb")
    .jpeg(encoding)
    .toBuffer();
}

const digestOf = (bytes: Buffer): Buffer => hash("sha256", bytes, "buffer");

async function wholePicture(cached: string): Promise<Buffer | null> {
  const bytes = await readFile(cached).catch(() => null);
  if (!bytes) return null;
  const picture = bytes.subarray(digestLength);
  return digestOf(picture).equals(bytes.subarray(0, digestLength)) ? picture : null;
}

/** Under another name first: a file that has its name is whole. */
async function write(file: string, bytes: Buffer): Promise<void> {
  await mkdir(path.dirname(file), { recursive: true });
  const part = `${file}.${randomUUID()}`;
  try {
    await writeFile(part, bytes);
    await rename(part, file);
  } catch (problem) {
    await rm(part, { force: true });
    throw problem;
  }
}
