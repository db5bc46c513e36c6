import MarkdownIt, { type Token } from "markdown-it";
import { relativeAddress } from "./relative-address.ts";

const allowed = /^(?:https?:|mailto:)/i;
const hasScheme = /^[a-z][a-z0-9+.-]*:/i;

/** No scheme but the web's and mail's; whatever has none stays within the site. */
const isSafeLink = (url: string): boolean => {
  const trimmed = url.trim();
  return allowed.test(trimmed) || (!hasScheme.test(trimmed) && !trimmed.startsWith("//"));
};

/** A picture from elsewhere would tell its host who reads this page. */
const isOwnImage = (url: string): boolean => !hasScheme.test(url) && !/^[/\\]{2}/.test(url);

interface Surroundings {
  /** Address of the page that the text stands on: what begins with a slash is linked from there. */
  readonly page: string;
  /** Level of the heading above the text; its own highest stands one below, whichever its writer took. */
  readonly below: number;
}

function attribute(token: Token, name: string, change: (value: string) => string): void {
  const value = token.attrGet(name);
  if (value !== null) token.attrSet(name, change(value));
}

const parser = new MarkdownIt({ html: false, typographer: true, linkify: false });
parser.validateLink = isSafeLink;

parser.core.ruler.push("site", ({ tokens, env }) => {
  const { page, below } = env as Surroundings;
  const levels = tokens.flatMap(({ type, tag }) => (type === "heading_open" ? [Number(tag.slice(1))] : []));
  const highest = Math.min(...levels);
  const shift = (tag: string) => `h${Math.min(6, Number(tag.slice(1)) - highest + below + 1)}`;
  for (const token of tokens) {
    if (token.type === "heading_open" || token.type === "heading_close") token.tag = shift(token.tag);
    if (token.type !== "inline" || !token.children) continue;
    token.children = token.children.filter(
      (child) => child.type !== "image" || isOwnImage(child.attrGet("src") ?? ""),
    );
    for (const child of token.children) {
      if (child.type === "link_open") attribute(child, "href", (href) => relativeAddress(page, href));
      if (child.type === "image") {
        attribute(child, "src", (src) => relativeAddress(page, src));
        child.attrSet("loading", "lazy");
      }
    }
  }
});

/** Wide tables scroll by themselves, and a keyboard reaches what scrolls. */
parser.renderer.rules.table_open = () => '<div class="scroll" tabindex="0"><table>\n';
parser.renderer.rules.table_close = () => "</table></div>\n";

/**
 * A writer's Markdown as HTML: no raw HTML, no script, nothing fetched from elsewhere.
 */
export const renderMarkdown = (text: string, surroundings: Surroundings): string =>
  parser.render(text, surroundings);

/** One paragraph without a block of its own. */
export const renderInline = (text: string, surroundings: Surroundings): string =>
  parser.renderInline(text, surroundings);
