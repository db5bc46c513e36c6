import { markOfSet, setPlace } from "../../terms/set-place.ts";
import { englishBench } from "../../words/en/bench.ts";

/** A mark of the reference as it is to be looked for, where the set's number may not be known. */
export const markWords = (mark: string, set: string | undefined, say = englishBench): string =>
  set === undefined && mark === setPlace ? say.setNumber : markOfSet(mark, set ?? "…");
