import type { PublishedFamily } from "../../publication/published.ts";
import { addresses } from "../addresses.ts";
import { jsonFile, type OutputFile } from "./output-file.ts";

/** `/data/families/<id>.json`: the features that tell its variants apart, their comparison and the key. */
export const familyData = (family: PublishedFamily): OutputFile =>
  jsonFile(addresses.familyData(family.id), { ...family, address: addresses.family(family.id) });
