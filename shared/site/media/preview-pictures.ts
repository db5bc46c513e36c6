import { availableParallelism } from "node:os";
import path from "node:path";
import type { Images } from "../../images/image-set.ts";
import { type PreviewText, previewSize } from "../../images/preview-picture/preview-drawing.ts";
import type { PreviewPictures } from "../../images/preview-picture/preview-picture.ts";
import { renderPreviewPicture } from "../../images/preview-picture/render-preview-picture.ts";
import { slots } from "../../images/slots.ts";
import { shareInterval } from "../../pages/views/completeness-words.ts";
import type { PublishedCollection, PublishedItem } from "../../publication/published.ts";
import type { Words } from "../../words/words.ts";
import type { CopiedFile } from "../assets/assets.ts";

/** A preview picture for every item that has a photograph, from the cache where it is there. */
export async function renderPreviewPictures(
  cacheFolder: string,
  { items, settings }: PublishedCollection,
  words: Words,
  images: Images,
): Promise<{ readonly previewPictures: PreviewPictures; readonly copied: readonly CopiedFile[] }> {
  const workers = slots(availableParallelism());
  const site = path.join(cacheFolder, "site");
  const made = await Promise.all(
    items.flatMap((item) => {
      const [image] = item.photos.flatMap(({ original }) => images.get(original) ?? []);
      return image
        ? [
            workers(async () => {
              const content = {
                text: previewText(item, settings.title, words),
                parts: item.parts,
                accent: settings.theme.accent,
              };
              const photograph = path.join(site, image.fallback.address);
              const picture = await renderPreviewPicture(
                content,
                photograph,
                cacheFolder,
                path.join(site, "images"),
              );
              return { id: item.id, address: `/images/${picture.name}`, from: picture.file };
            }),
          ]
        : [];
    }),
  );
  return {
    previewPictures: new Map(made.map(({ id, address }) => [id, { address, ...previewSize }])),
    copied: [...new Map(made.map(({ from, address }) => [address, { from, address }])).values()],
  };
}

function previewText(item: PublishedItem, collection: string, words: Words): PreviewText {
  const { item: say, verdicts, photographs } = words.pages;
  const { weighted } = item.completeness;
  return {
    collection,
    title: item.title,
    held: `${say.heldToBe} ${item.variant.name}: ${verdicts[item.identification.verdict].short}`,
    complete: weighted && shareInterval(weighted, words),
    completeWords:
      item.assembled.length > 0
        ? `${photographs.card.complete}, ${words.pages.assembled}`
        : photographs.card.complete,
  };
}
