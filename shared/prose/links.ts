import type { Token } from "markdown-it";
import { type LinkMark, type Mark, markdownParser } from "./markdown-parser.ts";
import type { Stretch } from "./mentions.ts";
import { linesOf, placer } from "./place-of-mark.ts";

/** A link or a picture in a text, at the address that it was given. */
export interface TextLink extends Stretch {
  readonly isPicture: boolean;
  /** As written, without its brackets. */
  readonly address: string;
  /** As a page has it. */
  readonly href: string;
}

export const hasScheme = (address: string): boolean => /^[a-z][a-z0-9+.-]*:/i.test(address);

/** No scheme but the web's and mail's; whatever has none stays within the site. */
export function isSafeLink(address: string): boolean {
  const trimmed = address.trim();
  return /^(?:https?:|mailto:)/i.test(trimmed) || (!hasScheme(trimmed) && !trimmed.startsWith("//"));
}

// A link that no page makes is to be told of, too.
const parser = markdownParser();
parser.validateLink = () => true;

/** Every link and picture of a text, in the order in which they stand in it. */
export function linksIn(text: string): TextLink[] {
  if (!text.includes("](") && !text.includes("]:")) return [];
  const lines = linesOf(text);
  const place = placer(text, lines);
  const links: TextLink[] = [];
  let definitions: ReadonlyMap<string, Mark> | undefined;
  let row = 0;
  for (const token of parser.parse(text, {})) {
    if (token.type === "tr_open") row = token.map?.[0] ?? row;
    const found = (token.children ?? []).filter(
      ({ type, markup }) => (type === "link_open" || type === "image") && markup !== "autolink",
    );
    const offsetOf = ({ meta }: Token) => (meta as LinkMark).offset;
    // A picture among the words of a link comes before the address of the link.
    for (const { type, meta, attrs } of found.sort((a, b) => offsetOf(a) - offsetOf(b))) {
      const href = attrs?.find(([name]) => name === "href" || name === "src")?.[1] ?? "";
      const mark = meta as LinkMark;
      const start = place(token, token.map?.[0] ?? row, mark);
      definitions ??= mark.isBeside ? undefined : definitionsIn(text);
      const defined = mark.isBeside ? undefined : definitions?.get(href);
      const { raw, offset } = defined ?? { raw: mark.raw, offset: start };
      const address = mark.isBeside || defined ? raw : href;
      links.push({ isPicture: type === "image", address, href, start: offset, end: offset + raw.length });
    }
  }
  return links;
}

/** Addresses that stand in a line of their own, each where it does so first (CommonMark 0.31.2, section 4.7). */
function definitionsIn(text: string): ReadonlyMap<string, Mark> {
  const definitions = new Map<string, Mark>();
  for (const match of text.matchAll(/(?<=\]:\s{0,40})(?:<([^<>\n]*)>|([^\s<>]+))/g)) {
    const raw = match[1] ?? match[2] ?? "";
    const href = parser.normalizeLink(parser.utils.unescapeAll(raw));
    if (!definitions.has(href))
      definitions.set(href, { raw, offset: match.index + (match[1] === undefined ? 0 : 1) });
  }
  return definitions;
}
