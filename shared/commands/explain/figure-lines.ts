import { confidenceOf, figureInputs } from "../../pages/views/figure-view.ts";
import type { PublishedFigure } from "../../publication/published.ts";
import type { Words } from "../../words/words.ts";
import type { Paint } from "../terminal/paint.ts";
import { wrappedLines } from "../terminal/wrapped-lines.ts";

export interface Setting {
  readonly words: Words;
  readonly paint: Paint;
  readonly width: number;
  /** The title of a source, by its id. */
  readonly titleOf: (source: string) => string;
}

/** A label in its column and the text beside it, broken to the width. */
export function labelled(label: string, text: string, { paint, width }: Setting, indent = 2): string[] {
  const column = 16;
  const lines = wrappedLines(text, Math.max(30, width - indent - column));
  return lines.map((line, at) => {
    const head = at === 0 ? paint("dim", label.padEnd(column - 1)) : " ".repeat(column - 1);
    return `${" ".repeat(indent)}${head} ${line}`;
  });
}

/**
 * A figure with everything that it rests on: its method, inputs, sources and caveats. Formulas and titles, which
 * several figures share, stand once at the end of a report.
 */
export function figureLines(name: string, figure: PublishedFigure, setting: Setting): string[] {
  const { words, paint } = setting;
  const withheld = figure.insufficient !== null;
  const phrase = withheld ? `${words.phrase(figure)}. ${figure.insufficient}` : words.phrase(figure);
  const confidence = confidenceOf(figure, setting);
  const detail = (label: string, text: string) => (text === "" ? [] : labelled(label, text, setting, 4));
  return [
    `  ${name}: ${paint(withheld ? "yellow" : "bold", phrase)}`,
    ...detail(
      "method",
      `${words.methods[figure.method].name}${confidence === null ? "" : `, ${confidence} interval`}`,
    ),
    ...detail(
      "inputs",
      figureInputs(figure, setting)
        .map(({ name, value }) => `${name} ${value}`)
        .join(", "),
    ),
    ...detail("sources", figure.sources.join(", ")),
    ...figure.caveats.flatMap(({ text }, at) => detail(at === 0 ? "bear in mind" : "", text)),
  ];
}

/** How the figures of a report were reached: each method once. */
export function methodLines(figures: readonly PublishedFigure[], setting: Setting): string[] {
  const used = new Set(figures.map(({ method }) => method));
  return [...used].flatMap((id) => {
    const { name, asks, formula, source, assumes, changes } = setting.words.methods[id];
    return [
      `  ${name} (${id}). ${asks}`,
      ...labelled("formula", formula, setting, 4),
      ...labelled("from", source, setting, 4),
      ...labelled("assumes", assumes, setting, 4),
      ...labelled("changes with", changes, setting, 4),
    ];
  });
}

export function sourceLines(
  figures: readonly PublishedFigure[],
  others: readonly string[],
  setting: Setting,
): string[] {
  const cited = new Set([...figures.flatMap(({ sources }) => sources), ...others]);
  return [...cited].sort().flatMap((id) => [`  ${id}`, ...labelled("", setting.titleOf(id), setting, 0)]);
}
