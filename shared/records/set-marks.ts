import { foldSerial } from "./serial.ts";

/** What stands in a mark of the reference for the number of the set that the part belongs to. */
export const setPlace = "{set}";

/** A mark of the reference as a part of this set bears it. */
export const markOfSet = (mark: string, set: string): string => mark.replaceAll(setPlace, () => set);

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
