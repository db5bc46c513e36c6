import type { PublishedVariant } from "../../publication/published.ts";
import { jsonFile, type OutputFile } from "./output-file.ts";

/** `/data/variants/<id>.json`: the reference, its figures with all their inputs, and the log they rest on. */
export function variantData(variant: PublishedVariant): OutputFile {
  return jsonFile(`/data/variants/${variant.id}.json`, {
    ...variant,
    address: `/variants/${variant.id}/`,
    // The rates stand once, under rarity.
    parts: variant.parts.map(({ rate: _, ...part }) => part),
  });
}
