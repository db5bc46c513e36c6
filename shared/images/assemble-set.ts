import type { ImageFile, ImageSet, ImageSource } from "./image-set.ts";
import { encodingsAt, fallbackWidth, type Size } from "./plan-image.ts";

/** What a picture is published as: one name for the picture, by its content, and sizes, smallest first. */
export interface PublishedPicture {
  readonly hash: string;
  readonly colour: string;
  readonly sizes: readonly [Size, ...Size[]];
}

export const entryName = (width: number, extension: string) => `${width}.${extension}`;
export const publishedName = (hash: string, entry: string) => `${hash}-${entry}`;

/** The names of all files of a picture, without the picture's own. */
export function entryNames(sizes: readonly Size[]): string[] {
  return sizes.flatMap(({ width }) => encodingsAt(width).map(({ extension }) => entryName(width, extension)));
}

export function assembleSet({ hash, colour, sizes }: PublishedPicture): ImageSet {
  const largest = sizes.at(-1) ?? sizes[0];
  const sources: ImageSource[] = encodingsAt(largest.width).map(({ type, extension }) => ({
    type,
    files: sizes.map((size) => fileOf(hash, size, extension)),
  }));
  const fallbackSize = sizes.find(({ width }) => width === fallbackWidth(sizes)) ?? largest;
  return {
    width: largest.width,
    height: largest.height,
    colour,
    sources,
    fallback: fileOf(hash, fallbackSize, "jpg"),
  };
}

function fileOf(hash: string, { width, height }: Size, extension: string): ImageFile {
  return { address: `/images/${publishedName(hash, entryName(width, extension))}`, width, height };
}
