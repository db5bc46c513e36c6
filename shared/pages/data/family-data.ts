import type { PublishedFamily } from "../../publication/published.ts";
import { jsonFile, type OutputFile } from "./output-file.ts";

/** `/data/families/<id>.json`: the features that tell its variants apart, their comparison and the key. */
export const familyData = (family: PublishedFamily): OutputFile =>
  jsonFile(`/data/families/${family.id}.json`, { ...family, address: `/families/${family.id}/` });
