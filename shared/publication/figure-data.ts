import type { PublishedFigure } from "./published.ts";

/** A figure as data files have it: what it takes for granted stands there in sentences alone. */
export const figureData = (figure: PublishedFigure) => ({
  ...figure,
  caveats: figure.caveats.map(({ text }) => text),
});

/** Figures by name, as data files have them. */
export const figuresData = <Name extends string>(figures: Readonly<Record<Name, PublishedFigure>>) =>
  Object.fromEntries(
    Object.entries<PublishedFigure>(figures).map(([name, figure]) => [name, figureData(figure)]),
  );
