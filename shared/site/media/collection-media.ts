import type { Media } from "../../images/media.ts";
import type { OutputFile } from "../../pages/data/output-file.ts";
import type { PublishedCollection } from "../../publication/published.ts";
import type { Collection } from "../../records/collection.ts";
import type { Words } from "../../words/words.ts";
import type { CopiedFile } from "../assets/assets.ts";
import { cacheFolder } from "../folders/cache-folder.ts";
import type { OnPhotographs } from "../progress.ts";
import { type CollectionImages, renderCollectionImages } from "./collection-images.ts";
import { placeRecordings } from "./collection-recordings.ts";
import { renderPreviewPictures } from "./preview-pictures.ts";

export interface CollectionMedia extends Media {
  readonly copied: readonly CopiedFile[];
  readonly files: readonly OutputFile[];
  readonly refused: CollectionImages["refused"];
}

/** Photographs, the preview pictures made of them, and recordings, in a cache that public and private builds share. */
export async function collectionMedia(
  root: string,
  published: PublishedCollection,
  collection: Collection,
  words: Words,
  onPhotographs?: OnPhotographs,
): Promise<CollectionMedia> {
  const cache = cacheFolder(root);
  const photographs = await renderCollectionImages(root, published, onPhotographs);
  const previews = await renderPreviewPictures(cache, published, words, photographs.images);
  const spoken = await placeRecordings(root, cache, published, collection);
  return {
    images: photographs.images,
    previewPictures: previews.previewPictures,
    recordings: spoken.recordings,
    copied: [...photographs.copied, ...previews.copied, ...spoken.copied],
    files: spoken.files,
    refused: [...photographs.refused, ...spoken.refused],
  };
}
