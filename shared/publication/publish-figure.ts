import type { Figure } from "../assessments/figure.ts";
import type { Words } from "../words/words.ts";
import type { PublishedFigure } from "./published.ts";

export const publishFigure = (figure: Figure, words: Words): PublishedFigure => ({
  ...figure,
  caveats: figure.caveats.map(words.statement),
  insufficient: figure.insufficient && words.statement(figure.insufficient),
});
