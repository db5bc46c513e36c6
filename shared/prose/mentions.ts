import type { Token } from "markdown-it";
import { type Cite, citesIn } from "./citation.ts";
import { type Mark, markdownParser, type SlipMark } from "./markdown-parser.ts";
import { type Line, linesOf, placer } from "./place-of-mark.ts";
import { type DataReference, referenceFrom } from "./reference.ts";
import { expectFence, fenceSlip, footnotesOf, type Slip } from "./slip.ts";

/** A stretch of the text: offsets, the end exclusive. */
export interface Stretch {
  readonly start: number;
  readonly end: number;
}

export type Mention = Stretch &
  (
    | {
        readonly kind: "reference";
        readonly reference: DataReference;
        /** In a paragraph of its own, which is in nothing else: where a table or a drawing has room. */
        readonly alone: boolean;
      }
    | { readonly kind: "citation"; readonly cite: Cite }
    | { readonly kind: "expectation"; readonly line: string }
    | { readonly kind: "slip"; readonly slip: Slip }
  );

const parser = markdownParser();

/** Most texts hold none of it, and need not be parsed to know. */
const mayMention = /[<@]|\[\^|(?:```|~~~)[ \t]*\S/;

/** A paragraph at the top of the text that holds one reference and nothing else. */
export const isAlone = (paragraph: Token | undefined, inline: Token): boolean =>
  paragraph?.type === "paragraph_open" &&
  paragraph.level === 0 &&
  inline.children?.length === 1 &&
  inline.children[0]?.type === "reference";

/** Everything that a text takes from the data, with its place; what stands in code is left alone. */
export function mentionsIn(text: string): Mention[] {
  if (!mayMention.test(text)) return [];
  const lines = linesOf(text);
  const tokens = parser.parse(text, {});
  const mentions: Mention[] = [];
  const place = placer(text, lines);
  const isFootnote = footnotesOf(text);
  let row = 0;
  for (const [at, token] of tokens.entries()) {
    if (token.type === "tr_open") row = token.map?.[0] ?? row;
    if (token.type === "fence" && token.map) mentions.push(...ofFence(token, token.map[0], lines));
    if (token.type !== "inline") continue;
    const first = token.map?.[0] ?? row;
    const alone = isAlone(tokens[at - 1], token);
    for (const mark of marksOf(token.children ?? [])) {
      const start = place(token, first, mark.meta);
      if (mark.type === "reference") {
        const end = start + mark.meta.raw.length;
        mentions.push({ kind: "reference", reference: referenceFrom(mark.meta.raw), alone, start, end });
        continue;
      }
      if (mark.type === "slip") {
        const { slip } = mark.meta as SlipMark;
        if (slip.kind === "footnote" && !isFootnote(slip.raw, start)) continue;
        mentions.push({ kind: "slip", slip, start, end: start + slip.raw.length });
        continue;
      }
      for (const cite of citesIn(mark.meta.raw)) {
        mentions.push({ kind: "citation", cite, start: start + cite.start, end: start + cite.end });
      }
    }
  }
  return mentions;
}

interface MarkToken {
  readonly type: string;
  readonly meta: Mark;
}

/** The tokens of ours in an inline text, those in the alternative text of its pictures included. */
const marksOf = (children: readonly Token[]): MarkToken[] =>
  children.flatMap((child) =>
    child.type === "reference" || child.type === "citation" || child.type === "slip"
      ? [{ type: child.type, meta: child.meta as Mark }]
      : child.type === "image"
        ? marksOf(child.children ?? [])
        : [],
  );

function ofFence(fence: Token, opening: number, lines: readonly Line[]): Mention[] {
  const slip = fenceSlip(fence.info);
  if (slip) {
    const line = lines[opening];
    const start = (line?.start ?? 0) + Math.max(0, line?.text.indexOf(slip.raw) ?? 0);
    return [{ kind: "slip", slip, start, end: start + slip.raw.length }];
  }
  if (fence.info.trim() !== expectFence) return [];
  return fence.content.split("\n").flatMap((content, at): Mention[] => {
    const line = content.trim();
    const source = lines[opening + 1 + at];
    if (line === "" || line.startsWith("#") || !source) return [];
    const start = source.start + Math.max(0, source.text.indexOf(line));
    return [{ kind: "expectation", line, start, end: start + line.length }];
  });
}
