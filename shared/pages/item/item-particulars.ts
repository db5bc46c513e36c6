import type { PublishedItem } from "../../publication/published.ts";
import type { Words } from "../../words/words.ts";
import { standingOf } from "../views/standing-words.ts";

export interface Particular {
  readonly label: string;
  readonly value: string;
  /** Whether the value is in the words of the site, and not in those of the record. */
  readonly isOurs: boolean;
}

/** Serial, set, dates, standing: as label and value, without what is not known or not shown. */
export function itemParticulars(item: PublishedItem, words: Words): readonly Particular[] {
  const say = words.pages.item;
  const theirs = (label: string, value: string | null) => ({ label, value, isOurs: false });
  const ours = (label: string, value: string | null) => ({ label, value, isOurs: true });
  const { price } = item;
  const rows = [
    theirs(say.serial, item.serial),
    theirs(say.set, item.set),
    ours(say.issued, item.dating.issued && words.date(item.dating.issued)),
    ours(say.examined, item.examined && words.date(item.examined)),
    ours(say.updated, item.updated === item.examined ? null : item.updated && words.date(item.updated)),
    theirs(say.materials, item.materials),
    theirs(say.measurements, item.measurements.length === 0 ? null : item.measurements.join("; ")),
    ours(say.status, standingOf(item, words)),
    ours(say.price, price && words.numbers.money(price.amount, price.currency)),
  ];
  return rows.flatMap(({ value, ...row }) => (value === null ? [] : [{ ...row, value }]));
}
