import type { SerialRange } from "../../records/serial.ts";
import { english } from "../../words/english.ts";

/** "H2001 to H2412 (1931 to 1938)": where a serial may lie. */
export const rangeWords = (ranges: readonly SerialRange[]): string =>
  ranges
    .map(({ prefix, from, to, made }) => {
      const end = (number: number | undefined) =>
        number === undefined ? "an unknown end" : `${prefix}${number}`;
      const start = from === undefined ? "an unknown start" : `${prefix}${from}`;
      return `${start} to ${end(to)}${made ? ` (${english.date(made.text)})` : ""}`;
    })
    .join("; ");
