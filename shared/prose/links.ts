import MarkdownIt, { type Token } from "markdown-it";
import type { Stretch } from "./mentions.ts";

/** A link or a picture in a text, at the address that it was given. */
export interface TextLink extends Stretch {
  readonly isPicture: boolean;
  /** As written, without its brackets. */
  readonly address: string;
}

export const hasScheme = (address: string): boolean => /^[a-z][a-z0-9+.-]*:/i.test(address);

/** No scheme but the web's and mail's; whatever has none stays within the site. */
export function isSafeLink(address: string): boolean {
  const trimmed = address.trim();
  return /^(?:https?:|mailto:)/i.test(trimmed) || (!hasScheme(trimmed) && !trimmed.startsWith("//"));
}

// Addresses stay as they are written, those included of which no link is made.
const parser = new MarkdownIt({ html: false });
parser.normalizeLink = (address) => address;
parser.validateLink = () => true;

/** Every link and picture of a text, in the order in which they stand in it. */
export function linksIn(text: string): TextLink[] {
  if (!text.includes("](") && !text.includes("]:")) return [];
  const links: TextLink[] = [];
  let from = 0;
  const gather = (tokens: readonly Token[]) => {
    for (const { type, markup, children, attrs } of tokens) {
      if (children) gather(children);
      if ((type !== "link_open" && type !== "image") || markup === "autolink") continue;
      const address = attrs?.find(([name]) => name === "href" || name === "src")?.[1] ?? "";
      const start = placeOf(text, address, from);
      if (start > from) from = start;
      links.push({ isPicture: type === "image", address, start, end: start + address.length });
    }
  };
  gather(parser.parse(text, {}));
  return links;
}

/** Beside its text, or in a line of its own (CommonMark 0.31.2, sections 6.3 and 4.7). */
function placeOf(text: string, address: string, from: number): number {
  for (const [opening, after] of [
    ["](", from],
    ["](<", from],
    ["]: ", 0],
    ["", 0],
  ] as const) {
    const at = text.indexOf(opening + address, after);
    if (at >= 0) return at + opening.length;
  }
  return from;
}
