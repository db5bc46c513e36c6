import { numberInRange as numberWithin, tight } from "../records/serial.ts";
import type { PublishedSerialRange } from "./published.ts";

/** Whoever draws serials goes by the rules by which they were counted: which are one, and which lie in a range. */
export { rangeOf, serialKey } from "../records/serial.ts";

export const publishedNumberInRange = (
  { prefix, from, to }: PublishedSerialRange,
  serial: string,
): number | undefined => numberWithin({ prefix, from: from ?? undefined, to: to ?? undefined }, serial);

/** The form in which the prefixes of two ranges are one, so that their numbers are of one run. */
export const prefixKey = ({ prefix }: PublishedSerialRange): string => tight(prefix);
