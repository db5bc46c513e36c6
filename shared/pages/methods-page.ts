import type { Method, PublishedFigure } from "../publication/published.ts";
import { addresses } from "./addresses.ts";
import type { CollectionIndex } from "./collection-index.ts";
import { type FigureView, figureView } from "./figure-view.ts";
import { formulasOf } from "./formulas.ts";
import { linkedData } from "./linked-data.ts";
import type { Link, PageHead } from "./page.ts";

export interface MethodView {
  readonly id: string;
  readonly name: string;
  readonly asks: string;
  readonly formula: string;
  /** MathML. */
  readonly mathematics: readonly string[];
  readonly source: string;
  readonly assumes: string;
  /** What would change a figure of it. */
  readonly changes: string | null;
  /** A figure of this collection that the method made. */
  readonly example: { readonly label: string; readonly at: Link; readonly figure: FigureView } | null;
}

export interface MethodsPage extends PageHead {
  readonly kind: "methods";
  readonly counted: readonly MethodView[];
  readonly estimated: readonly MethodView[];
}

interface Shown {
  readonly label: string;
  readonly at: Link;
  readonly figure: PublishedFigure;
}

/** Every figure that a page shows, with its name and the page. */
function* shownFigures({ collection, words }: CollectionIndex): Generator<Shown> {
  const { variant: say, item: ofItem } = words.pages;
  for (const variant of collection.variants) {
    const at = { address: addresses.variant(variant.id), name: variant.name };
    const { rarity } = variant;
    yield { label: say.made, at, figure: rarity.made };
    yield { label: say.survivors, at, figure: rarity.survivors };
    yield { label: say.survivorsTwoList, at, figure: rarity.survivorsTwoList };
    yield { label: say.survivalRate, at, figure: rarity.survivalRate };
    yield { label: say.coverage, at, figure: rarity.coverage };
    yield { label: say.appearance, at, figure: rarity.appearance };
    yield { label: say.wait, at, figure: rarity.wait };
    for (const { name, rate } of variant.parts) yield { label: name, at, figure: rate };
  }
  for (const item of collection.items) {
    const at = { address: addresses.item(item.id), name: item.title };
    yield { label: ofItem.asComplete, at, figure: item.rarity.asComplete };
    yield { label: ofItem.asCompleteSurvivors, at, figure: item.rarity.asCompleteSurvivors };
    yield { label: ofItem.asCompleteWait, at, figure: item.rarity.asCompleteWait };
  }
}

/** An example teaches most where its interval is open: a share of none or of all comes last. */
const teaches = ({ value, low, high }: PublishedFigure): number => {
  if (value === null) return 0;
  return low !== null && high !== null && low < value && value < high ? 2 : 1;
};

export function methodsPage(index: CollectionIndex): MethodsPage {
  const { collection, words } = index;
  const say = words.pages.methods;
  const best = new Map<Method, Shown>();
  for (const shown of shownFigures(index)) {
    const known = best.get(shown.figure.method);
    if (teaches(shown.figure) > (known ? teaches(known.figure) : 0)) best.set(shown.figure.method, shown);
  }
  return {
    kind: "methods",
    address: addresses.methods,
    title: say.title,
    description: say.description,
    trail: [{ address: addresses.home, name: collection.settings.title }],
    linkedData: linkedData(collection, "TechArticle", addresses.methods, {
      headline: say.title,
      description: say.description,
    }),
    counted: (["completeness", "identification", "dating", "custody", "likeness"] as const).map((id) => ({
      id,
      ...say[id],
      mathematics: [],
      changes: null,
      example: null,
    })),
    estimated: Object.entries(words.methods).map(([id, method]) => {
      const example = best.get(id as Method);
      return {
        id,
        ...method,
        mathematics: formulasOf(id as Method, words.pages.methods),
        example: example ? { ...example, figure: figureView(example.figure, index) } : null,
      };
    }),
  };
}
