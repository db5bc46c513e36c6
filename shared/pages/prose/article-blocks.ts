import type { Token } from "markdown-it";
import type { Mark } from "../../prose/markdown-parser.ts";
import { isAlone } from "../../prose/mentions.ts";
import { type DataReference, referenceFrom } from "../../prose/reference.ts";
import { plotAt } from "../../publication/references/plot-at.ts";
import { tableAt } from "../../publication/references/table-at.ts";
import { addresses } from "../addresses/addresses.ts";
import { relativeAddress } from "../addresses/relative-address.ts";
import { type ComparisonTable, comparisonTable } from "../family/family-page.ts";
import type { Link } from "../page.ts";
import { drawing, drawingLabel } from "../views/drawings.ts";
import { type ItemTable, itemTable } from "./item-table.ts";
import { type MarkdownContext, parseMarkdown, printMarkdown } from "./markdown.ts";

/** A stretch of an article: its own words, or something that the data put between them. */
export type ArticleBlock =
  | { readonly kind: "prose"; readonly html: string }
  | {
      readonly kind: "variants";
      readonly caption: Link;
      readonly variants: readonly Link[];
      readonly table: ComparisonTable;
    }
  | ({ readonly kind: "items" } & ItemTable)
  | {
      readonly kind: "plot";
      /** As the style sheets name the drawing. */
      readonly drawing: string;
      readonly svg: string;
      readonly caption: Link;
    };

/** An article in the order in which it is read. */
export function articleBlocks(text: string, context: MarkdownContext): ArticleBlock[] {
  const blocks: ArticleBlock[] = [];
  let prose: Token[] = [];
  const flush = () => {
    const html = printMarkdown(prose, context);
    if (html.trim() !== "") blocks.push({ kind: "prose", html });
    prose = [];
  };
  const tokens = parseMarkdown(text, context);
  for (let at = 0; at < tokens.length; at++) {
    const [paragraph, inline] = [tokens[at], tokens[at + 1]];
    const block = inline && isAlone(paragraph, inline) ? blockOf(inline, context, blocks.length) : null;
    if (block) {
      flush();
      blocks.push(block);
      // The words between a paragraph's beginning and its end were the reference.
      at += 2;
    } else if (paragraph) prose.push(paragraph);
  }
  flush();
  return blocks;
}

function blockOf({ children }: Token, { page, index }: MarkdownContext, place: number): ArticleBlock | null {
  const mark = children?.[0]?.meta as Mark | undefined;
  if (!mark) return null;
  const reference = referenceFrom(mark.raw);
  if (reference.scheme === "table") return tableBlock(reference, index);
  if (reference.scheme !== "plot") return null;
  const found = plotAt(reference.path, index);
  if ("problem" in found) return null;
  const { value: at } = found;
  const home = at.kind === "variant" ? addresses.variant(at.variant.id) : addresses.item(at.item.id);
  const svg = drawing(at, index, {
    idPrefix: `block-${place}`,
    linkPrefix: `${relativeAddress(page, home)}#part-`,
  });
  if (svg === null) return null;
  const label = drawingLabel(at, index);
  const name = at.kind === "variant" || at.plot === "case-plan" ? label : `${label}: ${at.item.title}`;
  const anchor = at.plot === "parts" ? "rates" : at.plot === "case-plan" ? "plan" : at.plot;
  return { kind: "plot", drawing: anchor, svg, caption: { address: `${home}#${anchor}`, name } };
}

function tableBlock(reference: DataReference, index: MarkdownContext["index"]): ArticleBlock | null {
  const found = tableAt(reference, index);
  if ("problem" in found) return null;
  if (found.value.kind === "items") return { kind: "items", ...itemTable(found.value, index) };
  const { family, variants, rows } = found.value;
  return {
    kind: "variants",
    caption: {
      address: `${addresses.family(family.id)}#comparison`,
      name: `${index.words.pages.family.comparison}: ${family.name}`,
    },
    variants: variants.map(({ id, name }) => ({ address: addresses.variant(id), name })),
    table: comparisonTable(rows, index),
  };
}
