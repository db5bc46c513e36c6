import { markOfSet } from "../terms/set-place.ts";
import { foldSerial } from "./serial.ts";

/** The last figures of a set's number, where something stands before them. */
const lastFigures = (set: string): string[] => /^.*?\D(\d+)$/.exec(set.trim())?.slice(1) ?? [];

/**
 * The numbers by which a part is told to be of this set: small ones bear its last figures only, 90 for E 90. Common
 * practice, no source.
 */
export const numbersOfSet = (set: string): string[] => [set, ...lastFigures(set)];

/** Whether a mark that was read is the one that the reference expects of a part of this set. */
export const isMarkOfSet = (read: string, mark: string, set: string): boolean =>
  numbersOfSet(set).some((number) => foldSerial(markOfSet(mark, number)) === foldSerial(read));
