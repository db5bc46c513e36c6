/** One source within a citation. */
export interface Cite {
  /** The id of a source; empty where none could be read. */
  readonly source: string;
  /** Where in it, as written: "p. 31", "fol. 1"; empty where unsaid. */
  readonly locator: string;
  /** All of it, without its brackets. */
  readonly text: string;
  /** The stretch of the citation that is this one's. */
  readonly start: number;
  readonly end: number;
}

/** `[@a, p. 31; @b]`, or with a comma between, and not the text of a link that happens to begin with an at sign. */
export const citationPattern = /^\[@[^[\]]+\](?!\(|\[(?!@))/;

const one = /^@([^\s,;]+)\s*(?:,\s*([\s\S]*))?$/;

export function citesIn(raw: string): Cite[] {
  let end = 0;
  return raw
    .slice(1, -1)
    .split(/;|,(?=\s*@)/)
    .map((text, at) => {
      // The first has the bracket that opens, the last the one that closes: a stretch without gaps.
      const start = at === 0 ? 0 : end + 1 + (/^\s*/.exec(text)?.[0].length ?? 0);
      end = at === 0 ? 1 + text.length : end + 1 + text.length;
      const written = text.trim().replace(/\s+/g, " ");
      const [, source = "", locator = ""] = one.exec(written) ?? [];
      return { source, locator: locator.trim(), text: written, start, end };
    });
}
