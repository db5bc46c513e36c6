import type { PublishedFamily } from "../../publication/published.ts";
import { addresses } from "../addresses/addresses.ts";
import type { CollectionIndex } from "../collection-index.ts";
import { jsonFile, type OutputFile } from "./output-file.ts";
import { figuresAddress } from "./variant-data.ts";

/** `/data/families/<id>.json`: the features that tell its variants apart, their comparison and the key. */
export const familyData = (
  family: PublishedFamily,
  { versions }: Pick<CollectionIndex, "versions">,
): OutputFile =>
  jsonFile(addresses.familyData(family.id), {
    ...family,
    variants: family.variants.map((variant) => ({
      ...variant,
      figures: versions.get(figuresAddress(variant.id)),
    })),
    address: addresses.family(family.id),
  });
