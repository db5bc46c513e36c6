import type { PublishedCollection } from "../../publication/published.ts";
import { jsonFile, type OutputFile } from "./output-file.ts";

/** `/data/collection.json`: what there is, and where its data are. */
export function collectionData(collection: PublishedCollection): OutputFile {
  const { settings, scale } = collection;
  return jsonFile("/data/collection.json", {
    ...settings,
    scale,
    families: collection.families.map(({ id, name, maker, variants }) => ({
      id,
      name,
      maker,
      address: `/families/${id}/`,
      variants: variants.map((variant) => variant.id),
    })),
    variants: collection.variants.map(({ id, name, family, issued, rarity }) => ({
      id,
      name,
      family: family.id,
      issued,
      address: `/variants/${id}/`,
      data: `/data/variants/${id}.json`,
      sightings: rarity.sightings,
      distinct: rarity.distinct,
      made: rarity.made,
      survivors: rarity.survivors,
    })),
    items: collection.items.map((item) => ({
      id: item.id,
      title: item.title,
      family: item.family.id,
      variant: item.variant.id,
      serial: item.serial,
      status: item.status,
      address: `/items/${item.id}/`,
      data: `/data/items/${item.id}.json`,
      verdict: item.identification.verdict,
      weighted: item.completeness.weighted,
      counted: item.completeness.counted,
      level: item.completeness.level,
      assembled: item.assembled,
      rank: item.rarity.rank,
      asComplete: item.rarity.asComplete,
    })),
    sources: collection.sources.map(({ fields }) => fields),
  });
}
