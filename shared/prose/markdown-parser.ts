import MarkdownIt from "markdown-it";
import { citationPattern } from "./citation.ts";
import { referencePattern } from "./reference.ts";

/** What a token of ours was written as, and where in the inline text that it was found in. */
export interface Mark {
  readonly raw: string;
  readonly offset: number;
}

/** The word after the fence that opens a block of assertions. */
export const expectFence = "expect";

/**
 * CommonMark and GFM tables, without raw HTML, and two tokens of our own: `<figure:…>`, which is an autolink
 * with a scheme of ours, and `[@source, p. 31]`. Neither is looked for inside code.
 */
export function markdownParser(): MarkdownIt {
  const parser = new MarkdownIt({ html: false, typographer: true, linkify: false });
  for (const [name, pattern, opening, before] of [
    ["reference", referencePattern, "<", "autolink"],
    ["citation", citationPattern, "[", "link"],
  ] as const) {
    parser.inline.ruler.before(before, name, (state, silent) => {
      if (state.src[state.pos] !== opening) return false;
      const raw = pattern.exec(state.src.slice(state.pos, state.posMax))?.[0];
      if (raw === undefined) return false;
      if (!silent) state.push(name, "", 0).meta = { raw, offset: state.pos } satisfies Mark;
      state.pos += raw.length;
      return true;
    });
  }
  return parser;
}
