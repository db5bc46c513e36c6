import type { PublishedFigure, PublishedPart } from "../publication/published.ts";
import type { PlotOptions } from "../words/plot-words.ts";
import { horizontal, imageDrawing, stroke, vertical, writing } from "./drawing/image-drawing.ts";
import { element } from "./drawing/svg-markup.ts";
import { brokenLines, shortened } from "./drawing/text-lines.ts";
import { textWidth } from "./drawing/text-width.ts";
import { type Breadth, twoWidths, unitsAcross } from "./drawing/two-widths.ts";

/** A part with its rate among the recorded examples. */
export interface RatedPart extends Pick<PublishedPart, "id" | "name" | "quantity"> {
  readonly rate: Pick<PublishedFigure, "value" | "low" | "high" | "unit">;
}

const size = 12;
const lineHeight = 14.5;
const ticks = [0, 0.25, 0.5, 0.75, 1];

/**
 * Of the examples whose state of a part is recorded, the share that has it: a dot, with a line for its interval.
 * The scarcest part first; parts of which nothing is recorded last, and said so.
 */
export function partRates(parts: readonly RatedPart[], options: PlotOptions): string {
  const ordered = [...parts].sort(
    (a, b) => (a.rate.value ?? Number.POSITIVE_INFINITY) - (b.rate.value ?? Number.POSITIVE_INFINITY) || 0,
  );
  return twoWidths("part-rates", options.idPrefix, (breadth, idPrefix) =>
    drawRates(ordered, options, breadth, idPrefix),
  );
}

interface Columns {
  readonly nameWidth: number;
  readonly from: number;
  readonly to: number;
  /** Where values end. */
  readonly edge: number;
  /** Whether the line stands below the name, not beside it. */
  readonly below: boolean;
}

function columnsOf(breadth: Breadth, valueWidth: number): Columns {
  const across = unitsAcross[breadth];
  if (breadth === "narrow") {
    return {
      nameWidth: across - valueWidth - 8,
      from: 4,
      to: across - 6,
      edge: across,
      below: true,
    };
  }
  return { nameWidth: 186, from: 204, to: across - valueWidth - 14, edge: across, below: false };
}

function drawRates(
  parts: readonly RatedPart[],
  options: PlotOptions,
  breadth: Breadth,
  idPrefix: string,
): string {
  const { words, label } = options;
  const { share } = words.numbers;
  const across = unitsAcross[breadth];
  const withheld = shortened(words.plots.partRates.withheld, size, 110);
  const values = parts.map(({ rate }) => (rate.value === null ? withheld : share(rate.value)));
  const valueWidth = Math.max(...[share(1), ...values].map((text) => textWidth(text, size)));
  const columns = columnsOf(breadth, valueWidth);
  const x = (part: number) => columns.from + part * (columns.to - columns.from);

  const axis = brokenLines(words.plots.partRates.axis, 11, columns.to - columns.from);
  const top = axis.length * 14 + 18;
  let y = top;
  const rows = parts.map((part, at) => {
    const row = drawRow(part, values[at] ?? "", y, columns, options);
    y += row.height;
    return row.markup;
  });
  const tickLabels = [0, 0.5, 1].map((part) => {
    const text = share(part);
    const half = textWidth(text, 10.5) / 2;
    return writing(text, Math.max(half, Math.min(x(part), across - half)), top - 6, {
      size: 10.5,
      anchor: "middle",
      kind: "soft",
    });
  });
  return imageDrawing(
    { idPrefix, label, description: describe(parts, options), breadth, height: y + 2 },
    ...axis.map((text, at) => writing(text, columns.from, 11 + at * 14, { size: 11, kind: "soft" })),
    ...tickLabels,
    columns.below ? "" : stroke("grid", ticks.map((part) => vertical(x(part), top - 2, y)).join("")),
    ...rows,
  );
}

function drawRow(
  part: RatedPart,
  value: string,
  top: number,
  columns: Columns,
  { words }: PlotOptions,
): { readonly markup: string; readonly height: number } {
  const { rate } = part;
  const text = words.plots.casePlan.part(part.name, part.quantity);
  const lines = brokenLines(text, size, columns.nameWidth);
  const namesHeight = lines.length * lineHeight;
  const height = columns.below ? namesHeight + 20 : namesHeight + 8;
  const middle = columns.below ? top + namesHeight + 7 : top + height / 2;
  const firstLine = columns.below ? top + 11.5 : middle - namesHeight / 2 + 11;
  const x = (share: number) => columns.from + share * (columns.to - columns.from);
  const markup = [
    ...lines.map((line, at) => writing(line, 0, firstLine + at * lineHeight, { size })),
    stroke("leader", horizontal(x(0), x(1), middle)),
    columns.below
      ? stroke("grid", ticks.map((part) => vertical(x(part), middle - 3, middle + 3)).join(""))
      : "",
  ];
  const baseline = columns.below ? firstLine : middle + 4;
  markup.push(
    writing(value, columns.edge, baseline, {
      size,
      anchor: "end",
      kind: rate.value === null ? "remark" : undefined,
    }),
  );
  if (rate.value !== null) {
    const [low, high] = [rate.low ?? rate.value, rate.high ?? rate.value];
    markup.push(
      stroke("interval", horizontal(x(low), x(high), middle)),
      element("circle", { class: "plot-dot", cx: x(rate.value), cy: middle, r: 3.6 }),
    );
  }
  return { markup: markup.join(""), height };
}

function describe(parts: readonly RatedPart[], { words }: PlotOptions): string {
  const { description, part: write } = words.plots.partRates;
  return description(
    parts.map(({ name, quantity, rate }) =>
      write(words.plots.casePlan.part(name, quantity), words.phrase(rate)),
    ),
  );
}
