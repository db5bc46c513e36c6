import MarkdownIt, { type StateInline } from "markdown-it";
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

/** The address of a link or a picture; where it is not beside its words, the words and the name of where it stands. */
export interface LinkMark extends Mark {
  readonly isBeside: boolean;
}

/** One of the rules by which Markdown is read. */
function ruleFor(name: "link" | "image") {
  const { ruler } = new MarkdownIt().inline;
  ruler.enableOnly(name);
  return ruler.getRules("")[0];
}

/**
 * CommonMark and GFM tables, without raw HTML, and two tokens of our own: `<figure:…>`, which is an autolink
 * with a scheme of ours, and `[@source, p. 31]`. Neither is looked for inside code. Of what only looks like one of them the
 * first sign is a token of its own, and the rest is read as it would be without it. Links and pictures bear the mark of
 * their address, or of their words where the address stands elsewhere.
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
  // Where its note is one word, a footnote is a link to Markdown.
  for (const [name, openings, before] of [
    ["footnote", ["[^"], "link"],
    ["slip", ["<", "["], "autolink"],
  ] as const) {
    parser.inline.ruler.before(before, name, (state, silent) => {
      if (!openings.some((opening) => state.src.startsWith(opening, state.pos))) return false;
      const slip = slipAt(state.src.slice(state.pos, state.posMax));
      if (!slip) return false;
      if (!silent) {
        const token = state.push("slip", "", 0);
        token.content = state.src.charAt(state.pos);
        token.meta = { raw: slip.raw, offset: state.pos, slip } satisfies SlipMark;
      }
      state.pos += 1;
      return true;
    });
  }
  for (const [name, type] of [
    ["link", "link_open"],
    ["image", "image"],
  ] as const) {
    const rule = ruleFor(name);
    parser.inline.ruler.at(name, (state, silent) => {
      const [start, before] = [state.pos, state.tokens.length];
      if (!rule?.(state, silent)) return false;
      const token = silent
        ? undefined
        : state.tokens.slice(before, before + 2).find((each) => each.type === type);
      if (token) token.meta = linkMark(state, start + (name === "image" ? 1 : 0), name === "link");
      return true;
    });
  }
  return parser;
}

/** Where the address of a link stands that has just been read, from the bracket before its words. */
function linkMark(state: StateInline, opening: number, isLink: boolean): LinkMark {
  const { src, pos, md } = state;
  const words = md.helpers.parseLinkLabel(state, opening, isLink) + 1;
  // Without an address in parentheses a link ends with the bracket after its words, or after its name.
  if (src[words] !== "(" || pos <= words + 1)
    return { raw: src.slice(opening, pos), offset: opening, isBeside: false };
  const space = /^\s*/.exec(src.slice(words + 1, pos))?.[0].length ?? 0;
  const from = words + 1 + space;
  const to = md.helpers.parseLinkDestination(src, from, pos).pos;
  const written = src.slice(from, to);
  const isBracketed = written.startsWith("<");
  return {
    raw: isBracketed ? written.slice(1, -1) : written,
    offset: from + (isBracketed ? 1 : 0),
    isBeside: true,
  };
}
