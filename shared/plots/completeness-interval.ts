import type { PlotOptions } from "../words/plot-words.ts";
import { shareBounds } from "../words/share-bounds.ts";
import { textureIn } from "./case-plan/surface.ts";
import { hatchLines } from "./case-plan/texture-lines.ts";
import { imageDrawing, stroke, vertical, writing } from "./drawing/image-drawing.ts";
import { coordinate, element } from "./drawing/svg-markup.ts";
import { shortened } from "./drawing/text-lines.ts";
import { textWidth } from "./drawing/text-width.ts";
import { type Breadth, twoWidths, unitsAcross } from "./drawing/two-widths.ts";

/** Shares in 0..1; low <= high. */
export interface IntervalBounds {
  readonly low: number;
  readonly high: number;
}

const size = 12;
const lineHeight = 16;
const depth = 13;
const gap = 12;

/** How much is there for certain, how much more is possible, and how much is not there, along one rule. */
export function completenessInterval(bounds: IntervalBounds, options: PlotOptions): string {
  return twoWidths("completeness-interval", options.idPrefix, (breadth, idPrefix) =>
    drawInterval(bounds, options, breadth, idPrefix),
  );
}

function drawInterval(
  { low, high }: IntervalBounds,
  { words, label }: PlotOptions,
  breadth: Breadth,
  idPrefix: string,
): string {
  const { share } = words.numbers;
  const say = words.plots.completeness;
  const { certain, possible } = shareBounds({ low, high }, words.numbers);
  const from = 1;
  const to = unitsAcross[breadth] - 1;
  const x = (part: number) => from + Math.min(1, Math.max(0, part)) * (to - from);
  const texts = [say.certain(certain), ...(possible === null ? [] : [say.possible(possible)])].map((text) =>
    shortened(text, size, to - from),
  );
  const widths = texts.map((text) => textWidth(text, size));
  const ends = [x(low), x(high)];
  const places = besideTheirEnds(widths, ends, { from, to });
  const rows = Math.max(...places.map(({ row }) => row)) + 1;
  const top = rows * lineHeight + 5;
  const bar = { y: top, height: depth };
  const labels = texts.map((text, at) => {
    const { left, row } = places[at] ?? { left: from, row: 0 };
    const baseline = top - 8 - row * lineHeight;
    return writing(text, left, baseline, { size, kind: at === 0 ? undefined : "soft" });
  });
  const scale = [0, 0.25, 0.5, 0.75, 1].map((part) =>
    vertical(x(part), top + depth, top + depth + (part % 0.5 === 0 ? 5 : 3)),
  );
  const marks = [0, 0.5, 1].map((part) =>
    writing(share(part), x(part), top + depth + 16, {
      size: 10.5,
      kind: "soft",
      anchor: part === 0 ? "start" : part === 1 ? "end" : "middle",
    }),
  );
  return imageDrawing(
    { idPrefix, label, description: say.description(certain, possible), breadth, height: top + depth + 20 },
    high > low ? (textureIn("unverified", { x: x(low), width: x(high) - x(low), ...bar }) ?? "") : "",
    low > 0 ? element("rect", { class: "plot-solid", x: from, width: x(low) - from, ...bar }) : "",
    element("rect", { class: "plot-outline", x: from, width: to - from, ...bar }),
    stroke(
      "end",
      ends
        .slice(0, texts.length)
        .map((end) => vertical(end, top - 5, top + depth))
        .join(""),
    ),
    stroke("hairline", scale.join("")),
    ...labels,
    ...marks,
  );
}

/**
 * What is certain is labelled from its end backwards, what is possible from its end onwards. Near the edges the
 * labels give way to one another, and stand in two rows only where one row has no room for both.
 */
function besideTheirEnds(
  [certain = 0, possible]: readonly number[],
  [low = 0, high = 0]: readonly number[],
  { from, to }: { readonly from: number; readonly to: number },
): readonly { readonly left: number; readonly row: number }[] {
  if (possible === undefined) return [{ left: Math.max(from, low - certain), row: 0 }];
  if (certain + gap + possible > to - from) {
    return [
      { left: Math.max(from, low - certain), row: 1 },
      { left: Math.min(high, to - possible), row: 0 },
    ];
  }
  const left = Math.max(from, Math.min(low, to - possible - gap) - certain);
  return [
    { left, row: 0 },
    { left: Math.max(left + certain + gap, Math.min(high, to - possible)), row: 0 },
  ];
}

/** The interval as a mark for lists, silent beside its text. */
export function completenessMark({ low, high }: IntervalBounds): string {
  const [width, height] = [96, 7];
  const possible = { x: low * width, y: 0, width: (high - low) * width, height };
  return element(
    "svg",
    {
      class: "completeness-mark",
      "aria-hidden": "true",
      viewBox: `-0.5 -0.5 ${width + 1} ${height + 1}`,
      width: width + 1,
      height: height + 1,
    },
    low > 0 ? element("rect", { class: "plot-solid", width: low * width, height }) : "",
    high > low
      ? stroke("hatching", `${hatchLines(possible, 3)}M${coordinate(high * width)} 0V${height}`)
      : "",
    element("rect", { class: "plot-outline", width, height }),
  );
}
