import { figureData, figuresData } from "../../publication/figure-data.ts";
import type { PublishedVariant } from "../../publication/published.ts";
import { addresses } from "../addresses.ts";
import { jsonFile, type OutputFile } from "./output-file.ts";

/** `/data/variants/<id>.json`: the reference, its figures with all their inputs, and the log they rest on. */
export function variantData(variant: PublishedVariant): OutputFile {
  const { rarity } = variant;
  return jsonFile(addresses.variantData(variant.id), {
    ...variant,
    rarity: {
      ...rarity,
      made: figureData(rarity.made),
      coverage: figureData(rarity.coverage),
      survivors: figureData(rarity.survivors),
      survivorsTwoList: figureData(rarity.survivorsTwoList),
      survivalRate: figureData(rarity.survivalRate),
      parts: figuresData(rarity.parts),
      appearance: figureData(rarity.appearance),
      wait: figureData(rarity.wait),
      levels: Object.fromEntries(
        Object.entries(rarity.levels).map(([id, { share, survivors, appearance, wait }]) => [
          id,
          figuresData({ share, survivors, appearance, wait }),
        ]),
      ),
    },
    address: addresses.variant(variant.id),
    // The rates stand once, under rarity.
    parts: variant.parts.map(({ rate: _, ...part }) => part),
  });
}
