import type { PublishedItem } from "../../publication/published.ts";
import type { Words } from "../../words/words.ts";

/** A word where the evidence speaks against what an outfit is catalogued as. */
export const contradictionOf = (item: PublishedItem | undefined, words: Words): string | null =>
  item?.identification.verdict === "contradicted" ? words.pages.verdicts.contradicted.short : null;
