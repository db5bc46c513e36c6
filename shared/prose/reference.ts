/** What a reference asks for: a phrase in a sentence, a table or a drawing. */
export const schemes = ["figure", "table", "plot"] as const;

export interface DataReference {
  readonly raw: string;
  /** As written: one of `schemes`, or a slip of the finger. */
  readonly scheme: string;
  /** What stands before the question mark, name by name. */
  readonly path: readonly string[];
  /** Conditions and choices; a comma parts alternatives. */
  readonly query: readonly (readonly [name: string, values: readonly string[]])[];
}

/**
 * An autolink (CommonMark 0.31.2, section 6.5) with one of our schemes, or with another before a path that could
 * only be ours.
 */
export const referencePattern =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: CommonMark's own definition of what an autolink ends at
  /^<(?:(?:figure|table|plot):[^<>\u0000-\u0020]*|[a-zA-Z][a-zA-Z0-9+.-]{1,31}:(?:items|variants)[/?][^<>\u0000-\u0020]*)>/;

const list = (text: string, between: string): string[] => text.split(between).filter((each) => each !== "");

export function referenceFrom(raw: string): DataReference {
  const inside = raw.slice(1, -1);
  const colon = inside.indexOf(":");
  const target = inside.slice(colon + 1);
  const question = target.indexOf("?");
  const path = question < 0 ? target : target.slice(0, question);
  const query = question < 0 ? "" : target.slice(question + 1);
  return {
    raw,
    scheme: inside.slice(0, colon),
    path: path.split("/"),
    query: list(query, "&").map((condition) => {
      const equals = condition.indexOf("=");
      return equals < 0
        ? [condition, []]
        : [condition.slice(0, equals), list(condition.slice(equals + 1), ",")];
    }),
  };
}
