import { figuresData } from "../../publication/figure-data.ts";
import type { PublishedVariant } from "../../publication/published.ts";
import { levelFigures, variantFigures } from "../../words/figure-names.ts";
import { addresses } from "../addresses/addresses.ts";
import { jsonFile, type OutputFile } from "./output-file.ts";

/** `/data/variants/<id>.json`: the reference, its figures with all their inputs, and the log they rest on. */
export const variantData = (variant: PublishedVariant): OutputFile =>
  jsonFile(addresses.variantData(variant.id), {
    ...variant,
    rarity: rarityData(variant),
    address: addresses.variant(variant.id),
    // The rates stand once, under rarity.
    parts: variant.parts.map(({ rate: _, ...part }) => part),
  });

/**
 * All figures of a variant, as they stand in its data file. The data of any page that shows them name their version,
 * so that the page has another version when the figures change.
 */
export const figuresFile = (variant: PublishedVariant): OutputFile => ({
  address: figuresAddress(variant.id),
  text: JSON.stringify(rarityData(variant)),
});

/** With the place in the file as a JSON Pointer (RFC 6901). */
export const figuresAddress = (variant: string): string => `${addresses.variantData(variant)}#/rarity`;

/** Every figure of a variant, with its caveats as sentences. */
export const rarityData = ({ rarity }: PublishedVariant) => ({
  ...rarity,
  ...figuresData(rarity, variantFigures),
  parts: figuresData(rarity.parts),
  levels: Object.fromEntries(
    Object.entries(rarity.levels).map(([id, figures]) => [id, figuresData(figures, levelFigures)]),
  ),
});
