import { type Item, itemFrom } from "../item.ts";
import type { Intake } from "./intake.ts";
import { itemValidators } from "./item-validators.ts";
import { namedRecords } from "./named-records.ts";
import type { References } from "./references-of.ts";

/** The items that are sound, and of a variant that is; `publish` is what the collection chooses for them. */
export function itemsOf(
  { recordsOf, validator, report, isSoundOfVariant }: Intake,
  { families, variantOf }: References,
  publish: Item["publish"],
): ReadonlyMap<string, Item> {
  const items = new Map<string, Item>();
  const validatorFor = itemValidators(validator, families);
  for (const { id, document } of namedRecords(recordsOf("item"), "a different id for each item", report)) {
    const variant = variantOf(document);
    if (isSoundOfVariant(document, validatorFor(variant)) && variant)
      items.set(id, itemFrom(id, document, publish));
  }
  return items;
}
