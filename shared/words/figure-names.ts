/** The figures of a variant, in the order in which they are told. */
export const variantFigures = [
  "made",
  "survivors",
  "survivorsTwoList",
  "survivalRate",
  "appearance",
  "wait",
  "coverage",
] as const;

/** Those of a level of completeness. */
export const levelFigures = ["share", "survivors", "appearance", "wait"] as const;

/** Those of one that is as complete as the outfit at hand. */
export const itemFigures = ["asComplete", "asCompleteSurvivors", "asCompleteWait"] as const;

type Names<Figures extends readonly string[]> = Readonly<Record<Figures[number], string>>;

/** What a figure is called, wherever it is named; a method that makes one figure alone has its name. */
export interface FigureNames {
  readonly variant: Names<typeof variantFigures>;
  readonly level: Names<typeof levelFigures>;
  readonly item: Names<typeof itemFigures>;
}
