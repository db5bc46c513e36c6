import type { PublishedVariant } from "../../publication/published.ts";
import { addresses } from "../addresses.ts";
import { jsonFile, type OutputFile } from "./output-file.ts";

/** `/data/variants/<id>.json`: the reference, its figures with all their inputs, and the log they rest on. */
export function variantData(variant: PublishedVariant): OutputFile {
  return jsonFile(addresses.variantData(variant.id), {
    ...variant,
    address: addresses.variant(variant.id),
    // The rates stand once, under rarity.
    parts: variant.parts.map(({ rate: _, ...part }) => part),
  });
}
