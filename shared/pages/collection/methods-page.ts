import type { Method } from "../../publication/published.ts";
import { addresses } from "../addresses/addresses.ts";
import { linkedData } from "../citation/linked-data.ts";
import type { CatalogueIndex } from "../listed/catalogue-index.ts";
import { bestExamples } from "../listed/method-examples.ts";
import type { Link, PageHead } from "../page.ts";
import { type FigureView, figureView } from "../views/figure-view.ts";
import { countedMethods, formulasOf } from "./formulas.ts";

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
  /** An invented case, small enough to be reckoned by hand. */
  readonly worked: string | null;
  /** A figure of this collection that the method made. */
  readonly example: { readonly label: string; readonly at: Link; readonly figure: FigureView } | null;
}

export interface MethodsPage extends PageHead {
  readonly kind: "methods";
  readonly counted: readonly MethodView[];
  readonly estimated: readonly MethodView[];
}

export function methodsPage(index: CatalogueIndex): MethodsPage {
  const { collection, words } = index;
  const say = words.pages.methods;
  const best = bestExamples(index.listed.flatMap(({ examples }) => Object.values(examples)));
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
    counted: countedMethods.map((id) => ({
      id,
      ...say[id],
      mathematics: formulasOf(id, say),
      changes: null,
      example: null,
    })),
    estimated: Object.entries(words.methods).map(([id, method]) => {
      const example = best[id as Method];
      return {
        id,
        ...method,
        mathematics: formulasOf(id as Method, say),
        worked: null,
        example: example ? { ...example, figure: figureView(example.figure, index) } : null,
      };
    }),
  };
}
