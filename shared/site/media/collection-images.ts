import path from "node:path";
import type { ImageFile, Images } from "../../images/image-set.ts";
import { renderImages } from "../../images/render-images.ts";
import type { PublishedCollection } from "../../publication/published.ts";
import type { CopiedFile } from "../assets/assets.ts";
import { cacheFolder } from "../folders/cache-folder.ts";

export interface CollectionImages {
  readonly images: Images;
  readonly copied: readonly CopiedFile[];
  readonly refused: readonly {
    readonly file: string;
    readonly reason: string;
    readonly remedy?: string | undefined;
  }[];
}

/** Every photograph of the collection, made ready in a cache that public and private builds share. */
export async function renderCollectionImages(
  root: string,
  collection: PublishedCollection,
  onProgress?: (done: number, of: number) => void,
): Promise<CollectionImages> {
  const originals = [
    ...new Set(collection.items.flatMap(({ photos }) => photos.map(({ original }) => original))),
  ];
  if (originals.length === 0) return { images: new Map(), copied: [], refused: [] };
  const cache = cacheFolder(root);
  const outFolder = path.join(cache, "site");
  const { images, refused } = await renderImages({
    root,
    originals,
    cacheFolder: cache,
    outFolder,
    onProgress,
  });
  const files: ImageFile[] = [...images.values()].flatMap(({ sources, fallback }) => [
    ...sources.flatMap((source) => source.files),
    fallback,
  ]);
  const addresses = new Set(files.map(({ address }) => address));
  return {
    images,
    copied: [...addresses].map((address) => ({ from: path.join(outFolder, address), address })),
    refused,
  };
}
