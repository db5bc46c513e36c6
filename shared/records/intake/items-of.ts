import type { Item } from "../item.ts";
import { itemFrom } from "../written-item.ts";
import type { Intake } from "./intake.ts";
import { itemValidators } from "./item-validators.ts";
import { namedRecords } from "./named-records.ts";
import type { References } from "./references-of.ts";

/** The items, each held against its variant; `publish` is what the collection chooses for them. */
export function itemsOf(
  { recordsOf, validator, report, fittingOfVariant, unsound }: Intake,
  { families, variantOf }: References,
  publish: Item["publish"],
): ReadonlyMap<string, Item> {
  const items = new Map<string, Item>();
  const validatorFor = itemValidators(validator, families);
  for (const record of namedRecords(recordsOf("item"), "a different id for each item", report)) {
    const variant = variantOf(record.document);
    const document = fittingOfVariant(record.document, validatorFor(variant));
    const item = itemFrom(record.id, document, publish);
    items.set(record.key, item);
    if (document.leftOut || !record.isNamed || !variant) unsound.add(item);
  }
  return items;
}
