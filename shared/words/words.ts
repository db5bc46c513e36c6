import type { Method, Unit } from "../assessments/figure.ts";
import type { Statement } from "../assessments/statement.ts";
import type { PageWords } from "./en/pages.ts";
import type { FigureNames } from "./figure-names.ts";
import type { NumberWords } from "./numbers.ts";
import type { PlotWords } from "./plot-words.ts";

export interface MethodWords {
  readonly name: string;
  /** The question that it answers. */
  readonly asks: string;
  readonly formula: string;
  readonly source: string;
  readonly assumes: string;
  /** What would change a figure of it. */
  readonly changes: string;
}

export interface FigurePhrase {
  readonly value: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly unit: Unit;
}

/** Every word that the site says of itself, in one language. */
export interface Words {
  readonly language: string;
  readonly numbers: NumberWords;
  readonly interval: (low: string, high: string) => string;
  readonly date: (edtf: string) => string;
  /** A date in a sentence, of one event: "on 5 June 2021". */
  readonly when: (edtf: string) => string;
  /** How an example without a name is called: by when it was seen. */
  readonly seen: (edtf: string) => string;
  readonly statement: (statement: Statement) => string;
  /** A figure as a reader meets it: "about 26, 22 to 44". */
  readonly phrase: (figure: FigurePhrase) => string;
  readonly figures: FigureNames;
  readonly methods: Readonly<Record<Method, MethodWords>>;
  /** What the drawings say of themselves. */
  readonly plots: PlotWords;
  /** What the pages say of themselves. */
  readonly pages: PageWords;
}
