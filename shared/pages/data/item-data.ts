import { largestJpeg } from "../../images/image-set.ts";
import { figuresData } from "../../publication/figure-data.ts";
import type { PublishedItem } from "../../publication/published.ts";
import { itemFigures } from "../../words/figure-names.ts";
import { addresses } from "../addresses/addresses.ts";
import type { CollectionIndex } from "../collection-index.ts";
import { confidentialView } from "../item/item-confidential.ts";
import { jsonFile, type OutputFile } from "./output-file.ts";
import { figuresAddress } from "./variant-data.ts";

/** `/data/items/<id>.json`: what the item's page says, to the last digit. Rates of parts are with the variant. */
export function itemData(item: PublishedItem, index: CollectionIndex): OutputFile {
  const { parts, photos, video, levels, confidential: _, ...rest } = item;
  const confidential = confidentialView(item, index);
  return jsonFile(addresses.itemData(item.id), {
    ...rest,
    rarity: {
      ...item.rarity,
      ...figuresData(item.rarity, itemFigures),
    },
    variant: { ...item.variant, figures: index.versions.get(figuresAddress(item.variant.id)) },
    address: addresses.item(item.id),
    parts: Object.fromEntries(
      parts.map((part) => [
        part.id,
        {
          name: part.name,
          group: part.group,
          standing: part.standing,
          quantity: part.quantity,
          weight: part.weight,
          summary: part.summary,
          units: part.units,
          share: part.share,
          marksExpected: part.marks,
          lines: part.lines,
          hazards: part.hazards,
          matching: part.matching,
          dating: part.dating,
          assembled: part.assembled,
        },
      ]),
    ),
    levels,
    photos: photos.map(({ original, alt, caption, callouts }) => {
      const image = index.images.get(original);
      return { ...(image ? { address: largestJpeg(image) } : {}), alt, caption, callouts };
    }),
    ...(video ? { video: { caption: video.caption, moments: video.moments } } : {}),
    ...(confidential ? { confidential } : {}),
  });
}
