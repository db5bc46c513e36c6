import { createHash, randomUUID } from "node:crypto";
import { mkdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import sharp from "sharp";
import { bandsOf } from "../../plots/case-plan/case-plan-part.ts";
import { packageVersion } from "../../source/package-folder.ts";
import { askedFor } from "../asked-for.ts";
import { type CardContent, cardDrawing, photographBox } from "./card-drawing.ts";

/** Raise it where the code alone changes what a card looks like; each release of the package does so too. */
const pipeline = 2;
const encoding = { quality: 82, progressive: true, mozjpeg: false } as const;

/** A card is made anew unless the cached one is whole: its digest stands at the head of its file. */
const digestLength = 32;

/**
 * Puts a photograph on its card and keeps the JPEG in the cache, by all that decides what it shows. Returns its
 * name, which is its content's, and its path. To draw a card takes a hundredth of a second, so a card that is
 * known is not drawn.
 */
export async function renderCard(
  content: CardContent,
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
  const known = await wholeCard(cached);
  const card = known ?? (await composed(cardDrawing(content), picture));
  await (known ? askedFor(cached) : write(cached, Buffer.concat([digestOf(card), card])));
  await write(file, card);
  return { name, file };
}

/** Of the parts only what the plan shows of them. */
const keyOf = ({ text, parts, accent }: CardContent): unknown => [
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

const digestOf = (bytes: Buffer): Buffer => createHash("sha256").update(bytes).digest();

async function wholeCard(cached: string): Promise<Buffer | null> {
  const bytes = await readFile(cached).catch(() => null);
  if (!bytes) return null;
  const card = bytes.subarray(digestLength);
  return digestOf(card).equals(bytes.subarray(0, digestLength)) ? card : null;
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
