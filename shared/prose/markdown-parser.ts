import MarkdownIt from "markdown-it";
import { citationPattern } from "./citation.ts";
import { referencePattern } from "./reference.ts";
import { type Slip, slipAt } from "./slip.ts";

/** What a token of ours was written as, and where in the inline text that it was found in. */
export interface Mark {
  readonly raw: string;
  readonly offset: number;
}

/** The first sign of what only looks like one of them. */
export interface SlipMark extends Mark {
  readonly slip: Slip;
}

/**
 * CommonMark and GFM tables, without raw HTML, and two tokens of our own: `<figure:…>`, which is an autolink
 * with a scheme of ours, and `[@source, p. 31]`. Neither is looked for inside code. Of what only looks like one of them the
 * first sign is a token of its own, and the rest is read as it would be without it.
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
  parser.inline.ruler.before("autolink", "slip", (state, silent) => {
    const sign = state.src[state.pos] ?? "";
    if (sign !== "<" && sign !== "[") return false;
    const slip = slipAt(state.src.slice(state.pos, state.posMax));
    if (!slip) return false;
    if (!silent) {
      const token = state.push("slip", "", 0);
      token.content = sign;
      token.meta = { raw: slip.raw, offset: state.pos, slip } satisfies SlipMark;
    }
    state.pos += 1;
    return true;
  });
  return parser;
}
