import { markOfSet, setPlace } from "../../terms/set-place.ts";

/** A mark of the reference as it is to be looked for, where the set's number may not be known. */
export const markWords = (mark: string, set: string | undefined): string =>
  set === undefined && mark === setPlace ? "the set’s number" : markOfSet(mark, set ?? "…");
