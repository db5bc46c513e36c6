import type { PublishedItem } from "../publication/published.ts";
import type { Words } from "../words/words.ts";
import { standingOf } from "./standing-words.ts";

export interface Particular {
  readonly label: string;
  readonly value: string;
}

/** Serial, set, dates, standing: as label and value, without what is not known or not shown. */
export function itemParticulars(item: PublishedItem, words: Words): readonly Particular[] {
  const say = words.pages.item;
  const rows: readonly (readonly [string, string | null])[] = [
    [say.serial, item.serial],
    [say.set, item.set],
    [say.issued, item.dating.issued && words.date(item.dating.issued)],
    [say.examined, item.examined && words.date(item.examined)],
    [say.updated, item.updated === item.examined ? null : item.updated && words.date(item.updated)],
    [say.materials, item.materials],
    [say.measurements, item.measurements.length === 0 ? null : item.measurements.join("; ")],
    [say.status, standingOf(item, words)],
    [say.price, item.price && words.numbers.money(item.price.amount, item.price.currency)],
  ];
  return rows.flatMap(([label, value]) => (value === null ? [] : [{ label, value }]));
}
