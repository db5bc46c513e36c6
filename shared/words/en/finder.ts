import { inDigits, plural } from "./plural.ts";

const quoted = (words: readonly string[]): string =>
  new Intl.ListFormat("en-GB", { style: "long", type: "disjunction" }).format(
    words.map((word) => `“${word}”`),
  );

/** Lists of outfits, and what a reader asks of them. */
export const englishFinder = {
  label: "Search the outfits",
  q: "Words",
  find: "Find",
  hint: "Of the title or the text, part of a word too; a place, a set number, a serial as it is published.",
  narrow: "Narrow and order the list",
  outfits: "Outfits",
  any: "any",
  /** Each stands before what may be chosen or typed; together they read as one sentence. */
  phrases: {
    family: "of the family",
    variant: "of the variant",
    from: "issued from",
    to: "to",
    place: "once at",
    level: "for certain at the level",
    least: "certainly complete to at least",
    most: "possibly to no more than",
    evidence: "by their evidence",
    class: "in the class of rarity",
    hazard: "with the hazard",
    missing: "without the part",
    status: "standing as",
    sort: "in the order of",
  },
  year: "year",
  percent: "%",
  /** Beside a blank in which something stands that is neither; what else is asked holds all the same. */
  noYear: "Not understood, and ignored; expected a year, such as 1920.",
  noPercent: "Not understood, and ignored; expected a number from 0 to 100, such as 80.",
  orders: {
    "": "the catalogue, the best answers first",
    title: "their titles",
    complete: "completeness, the fullest first",
    year: "issue, the earliest first",
    rare: "rarity, the fewest surviving first",
    place: "their place among their kind",
  },
  found: (count: number, of: number) =>
    count === of
      ? of === 1
        ? "The one outfit"
        : `All ${plural(of, "outfit")}`
      : `${inDigits(count)} of ${plural(of, "outfit")}`,
  none: (of: number) =>
    of === 1
      ? "The one outfit does not match all of this."
      : `None of the ${plural(of, "outfit")} matches all of this.`,
  instead: (typed: string, taken: readonly string[]) =>
    `Nothing has “${typed}”; searched instead for ${quoted(taken)}.`,
  ofParts: (typed: string, names: readonly string[]) =>
    `No entry says “${typed}”; shown instead: what was issued with ${quoted(names.slice(0, 3))}.`,
  reading: "The texts are being looked through as well.",
  textsUnread:
    "Not all texts could be fetched. What only they say may be missing here; the next search tries again.",
  noAnswer:
    "The search needs a script, which has not run or has not got its data. The lists below lead to every outfit all the same.",
  all: "Show all again",
  results: "What was found",
  page: (page: number, of: number) => `Page ${inDigits(page)} of ${inDigits(of)}`,
  pages: "Pages of this list",
  previous: "Previous page",
  next: "Next page",
  titleOfPage: (title: string, page: number, of: number) =>
    `${title}, page ${inDigits(page)} of ${inDigits(of)}`,
  lists: "Lists",
  byFamily: "By family",
  byVariant: "By variant",
  byLevel: "By level, for certain",
  ofFamily: (family: string) => `Outfits of the family ${family}`,
  ofVariant: (variant: string) => `Outfits of the variant ${variant}`,
  ofLevel: (level: string) => `Outfits at the level: ${level}`,
  leadOf: (count: number) => `${plural(count, "outfit")} of this catalogue.`,
  compare: "Set beside",
  tick: (title: string) => `Tick to set beside others: ${title}`,
  ticked: (count: number) => `${plural(count, "outfit")} ticked.`,
  tickMore: "Tick another to set beside it.",
  setBeside: "Set them side by side",
  untick: "Untick all",
};
