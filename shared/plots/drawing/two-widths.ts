import { element } from "./svg-markup.ts";

export type Breadth = "wide" | "narrow";

/** Units across a drawing, which are pixels where it stands at its natural size: text stays text. */
export const unitsAcross: Readonly<Record<Breadth, number>> = { wide: 640, narrow: 288 };

/**
 * A drawing made twice, for a wide and for a narrow place. The style sheet shows one of them and takes the other
 * out of the page, for readers of every kind. SVG scales its text with everything else, so one drawing cannot
 * serve a telephone and a desk.
 */
export function twoWidths(
  className: string,
  idPrefix: string,
  draw: (breadth: Breadth, idPrefix: string) => string,
): string {
  const drawing = (breadth: Breadth) =>
    element("div", { class: `plot-${breadth}` }, draw(breadth, `${idPrefix}-${breadth}`));
  return element("div", { class: `plot ${className}` }, drawing("wide"), drawing("narrow"));
}
