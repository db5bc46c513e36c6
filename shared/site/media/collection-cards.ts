import { availableParallelism } from "node:os";
import path from "node:path";
import type { Card } from "../../images/card/card.ts";
import { type CardText, cardSize } from "../../images/card/card-drawing.ts";
import { renderCard } from "../../images/card/render-card.ts";
import type { Images } from "../../images/image-set.ts";
import { slots } from "../../images/slots.ts";
import { shareInterval } from "../../pages/views/completeness-words.ts";
import type { PublishedCollection, PublishedItem } from "../../publication/published.ts";
import type { Words } from "../../words/words.ts";
import type { CopiedFile } from "../assets/assets.ts";

/** A card for every item that has a photograph, from the cache where it is there. */
export async function renderCards(
  cacheFolder: string,
  { items, settings }: PublishedCollection,
  words: Words,
  images: Images,
): Promise<{ readonly cards: ReadonlyMap<string, Card>; readonly copied: readonly CopiedFile[] }> {
  const workers = slots(availableParallelism());
  const site = path.join(cacheFolder, "site");
  const made = await Promise.all(
    items.flatMap((item) => {
      const [image] = item.photos.flatMap(({ original }) => images.get(original) ?? []);
      return image
        ? [
            workers(async () => {
              const content = {
                text: cardText(item, settings.title, words),
                parts: item.parts,
                accent: settings.theme.accent,
              };
              const photograph = path.join(site, image.fallback.address);
              const card = await renderCard(content, photograph, cacheFolder, path.join(site, "images"));
              return { id: item.id, address: `/images/${card.name}`, from: card.file };
            }),
          ]
        : [];
    }),
  );
  return {
    cards: new Map(made.map(({ id, address }) => [id, { address, ...cardSize }])),
    copied: [...new Map(made.map(({ from, address }) => [address, { from, address }])).values()],
  };
}

function cardText(item: PublishedItem, collection: string, words: Words): CardText {
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
