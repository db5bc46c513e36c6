import type { PublishedFigure } from "./published.ts";

/** A figure as data files have it: what it takes for granted stands there in sentences alone. */
export const figureData = (figure: PublishedFigure) => ({
  ...figure,
  caveats: figure.caveats.map(({ text }) => text),
});

/** Figures by name, all or some of them, as data files have them. */
export const figuresData = <Name extends string>(
  figures: Readonly<Record<Name, PublishedFigure>>,
  names: readonly Name[] = Object.keys(figures) as Name[],
) => Object.fromEntries(names.map((name) => [name, figureData(figures[name])]));
