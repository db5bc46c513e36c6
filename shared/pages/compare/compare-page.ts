import { casePlanThumbnail } from "../../plots/case-plan/case-plan.ts";
import type { PublishedItem, PublishedPair } from "../../publication/published.ts";
import { addresses } from "../addresses/addresses.ts";
import { linkedData } from "../citation/linked-data.ts";
import type { CollectionIndex } from "../collection-index.ts";
import type { Link, PageHead } from "../page.ts";
import { type ComparedOutfit, type CompareTable, compareTable } from "./compare-rows.ts";

/** Two outfits of one variant, part by part. */
export interface ComparePage extends PageHead {
  readonly kind: "comparison";
  readonly variant: Link;
  readonly table: CompareTable;
  /** SVG, one of each: what is there, without its writing. */
  readonly plans: readonly string[];
  readonly likeness: {
    readonly phrase: string;
    readonly basis: string | null;
    readonly features: string;
    readonly parts: string;
    readonly method: Link;
  };
  readonly others: readonly Link[];
}

const comparedOutfit = (item: PublishedItem): ComparedOutfit => ({
  ...item,
  verdict: item.identification.verdict,
  issued: item.dating.issued,
});

const othersAtMost = 24;

export function comparePage(comparison: PublishedPair, index: CollectionIndex): ComparePage {
  const { collection, words, items } = index;
  const { compare: say, catalogue, list, methods } = words.pages;
  const { share } = words.numbers;
  const [first, second] = comparison.items.map((id) => items.get(id));
  if (!first || !second) throw new Error(`No item of the pair "${comparison.items.join(" ")}" is published.`);
  const address = addresses.comparison(first.id, second.id);
  const title = say.pair(first.title, second.title);
  const description = say.pairDescription(first.title, second.title, comparison.variant.name);
  const contrasts = {
    feature: new Map(comparison.features.map(({ id, contrast }) => [id, contrast])),
    part: new Map(comparison.parts.map(({ id, contrast }) => [id, contrast])),
  };
  const namesOf = (
    from: readonly { readonly id: string; readonly name: string }[],
    ids: readonly string[],
  ) => {
    const names = ids.flatMap((id) => from.find((each) => each.id === id)?.name ?? []);
    return names.length === 0 ? say.nothing : list(names);
  };
  const { compared, likeness } = comparison;
  return {
    kind: "comparison",
    address,
    title,
    description,
    trail: [
      { address: addresses.home, name: collection.settings.title },
      { address: addresses.items, name: catalogue.title },
      { address: addresses.comparisons, name: say.title },
    ],
    linkedData: linkedData(collection, "WebPage", address, { name: title, description }),
    variant: { address: addresses.variant(comparison.variant.id), name: comparison.variant.name },
    table: compareTable(
      [first, second].map(comparedOutfit),
      (kind, id) => contrasts[kind].get(id) ?? "alike",
      words,
    ),
    plans: [first, second].map((item) => casePlanThumbnail(item.parts)),
    likeness: {
      phrase: likeness === null ? say.likenessNone : say.likenessOf(share(likeness)),
      basis: likeness === null ? null : say.likenessBasis(compared.features.length, compared.parts.length),
      features: namesOf(first.features, compared.features),
      parts: namesOf(first.parts, compared.parts),
      method: { address: addresses.method("likeness"), name: methods.title },
    },
    others: collection.comparisons
      .filter((other) => other !== comparison && comparison.items.some((id) => other.items.includes(id)))
      .slice(0, othersAtMost)
      .map((other) => {
        const [a, b] = other.items;
        const names = other.items.map((id) => items.get(id)?.title ?? id);
        return {
          address: addresses.comparison(a, b),
          name:
            other.likeness === null
              ? say.pair(names[0] ?? a, names[1] ?? b)
              : `${say.pair(names[0] ?? a, names[1] ?? b)} (${share(other.likeness)})`,
        };
      }),
  };
}

/** Where a pair is set side by side: its own page where it has one, else the page that composes any. */
export function comparisonAddress(
  first: string,
  second: string,
  { pairs }: Pick<CollectionIndex, "pairs">,
): string {
  const [a, b] = first < second ? [first, second] : [second, first];
  return pairs.has(`${a} ${b}`) ? addresses.comparison(a, b) : addresses.comparing(a, b);
}
