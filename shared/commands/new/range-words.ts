import type { SerialRange } from "../../records/serial.ts";
import { english } from "../../words/en/english.ts";
import type { Words } from "../../words/words.ts";

/** "H2001 to H2412 (1931 to 1938)": where a serial may lie. */
export const rangeWords = (ranges: readonly SerialRange[], words: Words = english): string =>
  ranges
    .map(({ prefix, from, to, made }) => {
      const range = words.pages.variant.rangeFrom(prefix, from ?? null, to ?? null);
      return made ? `${range} (${words.date(made.text)})` : range;
    })
    .join("; ");
