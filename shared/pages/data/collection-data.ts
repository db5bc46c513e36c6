import { figureData } from "../../publication/figure-data.ts";
import type { PublishedItem, PublishedVariant } from "../../publication/published.ts";
import { addresses } from "../addresses/addresses.ts";
import type { CatalogueIndex } from "../listed/catalogue-index.ts";
import { itemsById } from "./items-by-id.ts";
import { jsonFile, type OutputFile } from "./output-file.ts";

/** What `/data/collection.json` says of a variant, */
export const variantSummary = ({ id, name, family, issued, rarity }: PublishedVariant) => ({
  id,
  name,
  family: family.id,
  issued,
  address: addresses.variant(id),
  data: addresses.variantData(id),
  sightings: rarity.sightings,
  distinct: rarity.distinct,
  made: figureData(rarity.made),
  survivors: figureData(rarity.survivors),
});

/** and of an item; its figures are in the file that it names. */
export const itemSummary = (item: PublishedItem) => ({
  id: item.id,
  title: item.title,
  family: item.family.id,
  variant: item.variant.id,
  serial: item.serial,
  status: item.status,
  address: addresses.item(item.id),
  data: addresses.itemData(item.id),
  verdict: item.identification.verdict,
  weighted: item.completeness.weighted,
  counted: item.completeness.counted,
  level: item.completeness.level,
  assembled: item.assembled,
  rank: item.rarity.rank,
});

/** `/data/collection.json`: what there is, and where its data are. */
export function collectionData({ collection, listed }: CatalogueIndex): OutputFile {
  const { settings, scale } = collection;
  return jsonFile(addresses.collectionData, {
    ...settings,
    // Which pages the site has is no fact of the collection.
    fieldReference: undefined,
    scale,
    families: listed.map(({ id, name, maker, variants }) => ({
      id,
      name,
      maker,
      address: addresses.family(id),
      variants: variants.map((variant) => variant.id),
    })),
    variants: listed.flatMap(({ variants }) => variants.map(({ data }) => data)),
    items: itemsById(listed).map(({ data }) => data),
    sources: collection.sources.map(({ fields }) => fields),
  });
}
