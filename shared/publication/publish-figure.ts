import type { Figure } from "../assessments/figure.ts";
import type { Words } from "../words/words.ts";
import type { PublishedFigure } from "./published.ts";

export const publishFigure = (figure: Figure, words: Words): PublishedFigure => ({
  ...figure,
  caveats: figure.caveats.map((caveat) => ({ says: caveat.says, text: words.statement(caveat) })),
  insufficient: figure.insufficient && words.statement(figure.insufficient),
});
