import type { Token } from "markdown-it";
import { hasScheme, isSafeLink } from "../../prose/links.ts";
import { markdownParser } from "../../prose/markdown-parser.ts";
import { expectFence } from "../../prose/slip.ts";
import { addressFrom, relativeAddress } from "../addresses/relative-address.ts";
import { keptNumbers } from "../views/kept-numbers.ts";
import { type TextPlace, telling } from "./marks-in-html.ts";

export interface MarkdownContext extends TextPlace {
  /** The page from which its links lead, where that is another than the one on which it stands. */
  readonly from?: string;
  /** Level of the heading above the text; its own highest stands one below, whichever its writer took. */
  readonly below: number;
}

/** As browsers read addresses, escaped dots are dots (WHATWG URL, 4.1: double-dot URL path segment). */
const stepsUp = /(?:^|\/)(?:\.|%2e){2}(?:[/?#]|$)/i;

/** The way from a page to wherever a text leads within the site; however many steps up it takes, not out of it. */
function wayWithin({ page, from = page }: MarkdownContext, to: string): string {
  if (hasScheme(to)) return to;
  if (from === page && (/^(?:[#?]|$)/.test(to) || (!to.startsWith("/") && !stepsUp.test(to)))) return to;
  const way = addressFrom(from, to);
  return way ? relativeAddress(page, way.path + way.rest) : to;
}

function attribute(token: Token, name: string, change: (value: string) => string): void {
  const value = token.attrGet(name);
  if (value !== null) token.attrSet(name, change(value));
}

const parser = markdownParser();
parser.validateLink = isSafeLink;

/** A text shows no pictures: what stands for one are the words of its alternative text, without the links in it. */
const asWords = (children: readonly Token[]): Token[] =>
  children.flatMap((child) =>
    child.type === "image"
      ? asWords(child.children ?? []).filter(({ type }) => type !== "link_open" && type !== "link_close")
      : [child],
  );

/** Figures and citations in words, before quotation marks are turned after the letters beside them. */
parser.core.ruler.before("replacements", "data", ({ tokens, env, md }) => {
  md.options.quotes = (env as MarkdownContext).index.words.pages.quotes;
  for (const token of tokens) {
    if (!token.children) continue;
    token.children = asWords(token.children);
    let depth = 0;
    for (const child of token.children) {
      depth += child.type === "link_open" ? 1 : child.type === "link_close" ? -1 : 0;
      // What is none of ours is a sign like any other.
      if (child.type === "slip") child.type = "text";
      if (child.type === "text") child.content = keptNumbers(child.content);
      if (child.type !== "reference" && child.type !== "citation") continue;
      const { text, html } = telling(child, env as MarkdownContext, depth > 0);
      child.content = text;
      child.meta = { ...(child.meta as object), html };
    }
  }
});

const toldInHtml = (tokens: readonly Token[], at: number): string =>
  (tokens[at]?.meta as { readonly html: string } | undefined)?.html ?? "";
parser.renderer.rules.reference = toldInHtml;
parser.renderer.rules.citation = toldInHtml;

/** What a text expects of the data is for its writer, and is not printed. */
parser.core.ruler.push("expectations", (state) => {
  state.tokens = state.tokens.filter(({ type, info }) => type !== "fence" || info.trim() !== expectFence);
});

parser.core.ruler.push("site", ({ tokens, env }) => {
  const context = env as MarkdownContext;
  const { below } = context;
  const levels = tokens.flatMap(({ type, tag }) => (type === "heading_open" ? [Number(tag.slice(1))] : []));
  const highest = Math.min(...levels);
  const shift = (tag: string) => `h${Math.min(6, Number(tag.slice(1)) - highest + below + 1)}`;
  for (const token of tokens) {
    if (token.type === "heading_open" || token.type === "heading_close") token.tag = shift(token.tag);
    if (token.type !== "inline" || !token.children) continue;
    for (const child of token.children)
      if (child.type === "link_open") attribute(child, "href", (href) => wayWithin(context, href));
  }
});

/** The columns of a table are set by a class: the site's own policy lets no style stand in a page. */
const alignments: Readonly<Record<string, string>> = { center: "align-center", right: "align-end" };
parser.core.ruler.push("alignment", ({ tokens }) => {
  for (const token of tokens) {
    const style = token.type === "th_open" || token.type === "td_open" ? token.attrGet("style") : null;
    if (style === null) continue;
    token.attrs = null;
    const alignment = alignments[style.replace("text-align:", "")];
    if (alignment !== undefined) token.attrSet("class", alignment);
  }
});

/** Wide tables scroll by themselves, and a keyboard reaches what scrolls. */
parser.renderer.rules.table_open = () => '<div class="scroll" tabindex="0"><table>\n';
parser.renderer.rules.table_close = () => "</table></div>\n";

/** A text in its blocks, from which parts may be left out before it is printed. */
export const parseMarkdown = (text: string, context: MarkdownContext): Token[] => parser.parse(text, context);

export const printMarkdown = (tokens: Token[], context: MarkdownContext): string =>
  parser.renderer.render(tokens, parser.options, context);

/**
 * A writer's Markdown as HTML: no raw HTML, no script, nothing fetched from elsewhere.
 */
export const renderMarkdown = (text: string, context: MarkdownContext): string =>
  parser.render(text, context);

/** The words of a text alone, for where no markup can be. */
export const plainText = (text: string, context: Pick<MarkdownContext, "index">): string => {
  const words = (children: readonly Token[]): string =>
    children
      .map(({ type, content }) => (type === "softbreak" || type === "hardbreak" ? " " : content))
      .join("");
  return parser
    .parse(text, { page: "/", below: 1, ...context })
    .flatMap(({ children }) => (children ? [words(children)] : []))
    .join(" ");
};
