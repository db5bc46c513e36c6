import { wellFormedId } from "../diagnostics/plain-words.ts";
import type { LeftOut } from "../source/left-out.ts";

interface Incomplete {
  readonly leftOut?: LeftOut | undefined;
}

/** Parts or features of which what is said does not fit, while their names do: they are there. */
export const namesLeftOut = ({ leftOut }: Incomplete, field: "parts" | "features"): string[] =>
  (leftOut?.paths ?? []).flatMap(([top, name, ...more]) =>
    top === field && typeof name === "string" && more.length === 0 && wellFormedId.test(name) ? [name] : [],
  );

/** Whether a record may have more parts or features than those that could be read: then none is unknown to it. */
export const mayHaveMore = ({ leftOut }: Incomplete, field: "parts" | "features"): boolean =>
  (leftOut?.paths ?? []).some(
    ([top, name]) => top === undefined || (top === field && !wellFormedId.test(String(name ?? ""))),
  );
