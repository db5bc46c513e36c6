import { fold } from "../../diagnostics/fold.ts";
import { isMasked } from "../../publication/masked-sign.ts";
import { betweenWords } from "./folded-words.ts";
import { unpackNumbers } from "./packed-numbers.ts";
import type { SearchDetails, SearchIndex } from "./search-index.ts";

/** The index as it is searched. */
export interface OpenCatalogue {
  readonly index: SearchIndex;
  readonly titles: readonly string[];
  readonly ids: readonly string[];
  readonly serials: readonly string[];
  /** Folded and without what stands between letters and digits; of masked ones only, the others are in `heads`. */
  readonly masked: readonly (readonly [entry: number, serial: string])[];
  /** A line an entry: its title, serial and set number, folded. */
  readonly heads: string;
  /** Where each entry's line begins, and where the last ends. */
  readonly starts: Int32Array;
  /** Name, family and maker of each variant, folded. */
  readonly variantTexts: readonly string[];
  readonly columns: Readonly<Record<Column, readonly number[]>>;
  readonly hazards: readonly string[];
  /** Each entry's place in the order of titles; made when it is first wanted. */
  readonly titleOrder: () => Int32Array;
}

const columns = [
  "variant",
  "verdict",
  "status",
  "assembled",
  "level",
  "low",
  "high",
  "place",
  "of",
  "year",
] as const;
export type Column = (typeof columns)[number];

const lines = (text: string, count: number): string[] => {
  const found = text.split("\n");
  while (found.length < count) found.push("");
  return found;
};

const joined = (serial: string): string => fold(serial).replace(betweenWords, "");

/** Titles in the order of a reader: numbers by their value. */
function titleOrder(titles: readonly string[]): Int32Array {
  const keys = titles.map((title) => fold(title).replace(/\d+/g, (digits) => digits.padStart(9, "0")));
  const sorted = Array.from(keys.keys()).sort((a, b) => {
    const [first = "", second = ""] = [keys[a], keys[b]];
    return first < second ? -1 : first > second ? 1 : a - b;
  });
  const order = new Int32Array(keys.length);
  sorted.forEach((entry, place) => {
    order[entry] = place;
  });
  return order;
}

export function openCatalogue(index: SearchIndex): OpenCatalogue {
  const { count } = index;
  const titles = lines(index.titles, count);
  const serials = lines(index.serials, count);
  const sets = lines(index.sets, count);
  const masked: [number, string][] = [];
  const starts = new Int32Array(count + 1);
  const heads: string[] = [];
  let at = 0;
  for (let entry = 0; entry < count; entry++) {
    const serial = serials[entry] ?? "";
    const close = serial === "" ? "" : joined(serial);
    if (isMasked(close)) masked.push([entry, close]);
    const spaced = fold(serial);
    const head = `${fold(titles[entry] ?? "")}\t${close}${spaced === close ? "" : `\t${spaced}`}\t${fold(sets[entry] ?? "")}\n`;
    starts[entry] = at;
    at += head.length;
    heads.push(head);
  }
  starts[count] = at;
  let order: Int32Array | null = null;
  return {
    index,
    titles,
    ids: lines(index.ids, count),
    serials,
    masked,
    heads: heads.join(""),
    starts,
    variantTexts: index.variants.map(({ id, name, family }) => {
      const of = index.families[family];
      return fold([name, id, of?.name, of?.id, of?.maker].filter(Boolean).join("\t"));
    }),
    columns: Object.fromEntries(columns.map((name) => [name, unpackNumbers(index[name])])) as Record<
      Column,
      number[]
    >,
    hazards: lines(index.hazard, count),
    titleOrder: () => {
      order ??= titleOrder(titles);
      return order;
    },
  };
}

/** The details as they are searched. */
export interface OpenDetails {
  readonly details: SearchDetails;
  readonly missing: readonly string[];
  readonly places: readonly string[];
}

export const openDetails = (details: SearchDetails, count: number): OpenDetails => ({
  details,
  missing: lines(details.missing, count),
  places: lines(details.placesOf, count),
});
