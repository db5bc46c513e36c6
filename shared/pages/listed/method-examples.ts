import type {
  Method,
  PublishedFigure,
  PublishedItem,
  PublishedVariant,
} from "../../publication/published.ts";
import { itemFigures, variantFigures } from "../../words/figure-names.ts";
import { addresses } from "../addresses/addresses.ts";
import type { CollectionIndex } from "../collection-index.ts";
import type { Link } from "../page.ts";

/** A figure that some page shows, with its name there. */
export interface MethodExample {
  readonly label: string;
  readonly at: Link;
  readonly figure: PublishedFigure;
}

/** For each method the figure that teaches most. */
export type MethodExamples = Readonly<Partial<Record<Method, MethodExample>>>;

function* ofVariant(variant: PublishedVariant, { words }: CollectionIndex): Generator<MethodExample> {
  const at = { address: addresses.variant(variant.id), name: variant.name };
  for (const name of variantFigures)
    yield { label: words.figures.variant[name], at, figure: variant.rarity[name] };
  for (const { name, rate } of variant.parts) yield { label: name, at, figure: rate };
}

function* ofItem(item: PublishedItem, { words }: CollectionIndex): Generator<MethodExample> {
  const at = { address: addresses.item(item.id), name: item.title };
  for (const name of itemFigures) yield { label: words.figures.item[name], at, figure: item.rarity[name] };
}

/** An example teaches most where its interval is open: a share of none or of all comes last. */
const teaches = ({ value, low, high }: PublishedFigure): number => {
  if (value === null) return 0;
  return low !== null && high !== null && low < value && value < high ? 2 : 1;
};

export function bestExamples(shown: Iterable<MethodExample>): MethodExamples {
  const best: Partial<Record<Method, MethodExample>> = {};
  for (const example of shown) {
    const known = best[example.figure.method];
    if (teaches(example.figure) > (known ? teaches(known.figure) : 0)) best[example.figure.method] = example;
  }
  return best;
}

export function methodExamples(
  variants: readonly PublishedVariant[],
  items: readonly PublishedItem[],
  index: CollectionIndex,
): MethodExamples {
  function* shown() {
    for (const variant of variants) yield* ofVariant(variant, index);
    for (const item of items) yield* ofItem(item, index);
  }
  return bestExamples(shown());
}
