import type { PartSummary, PublishedFigure, PublishedPart } from "../publication/published.ts";
import type { PlotOptions } from "../words/plot-words.ts";
import { type CasePlanPart, filledShare } from "./case-plan-part.ts";
import { horizontal, imageDrawing, stroke, vertical, writing } from "./image-drawing.ts";
import { surfaceDefinitions, surfaceMarkup } from "./surface.ts";
import { element } from "./svg-markup.ts";
import { brokenLines, shortened } from "./text-lines.ts";
import { textWidth } from "./text-width.ts";
import { type Breadth, twoWidths, unitsAcross } from "./two-widths.ts";

/** A part with its rate among the recorded examples; with `summary`, how it stands with this one. */
export interface RatedPart extends Pick<PublishedPart, "id" | "name" | "quantity"> {
  readonly rate: Pick<PublishedFigure, "value" | "low" | "high" | "unit">;
  readonly summary?: PartSummary;
  readonly units?: CasePlanPart["units"];
}

export interface PartRatesOptions extends PlotOptions {
  readonly stateWord: (summary: PartSummary, ofSome: boolean) => string;
}

const size = 12;
const lineHeight = 14.5;
const swatch = 10;
const ticks = [0, 0.25, 0.5, 0.75, 1];

/**
 * Of the examples whose state of a part is recorded, the share that has it: a dot, with a line for its interval.
 * The scarcest part first; parts of which nothing is recorded last, and said so.
 */
export function partRates(parts: readonly RatedPart[], options: PartRatesOptions): string {
  const ordered = [...parts].sort(
    (a, b) => (a.rate.value ?? Number.POSITIVE_INFINITY) - (b.rate.value ?? Number.POSITIVE_INFINITY) || 0,
  );
  return twoWidths("part-rates", options.idPrefix, (breadth, idPrefix) =>
    drawRates(ordered, options, breadth, idPrefix),
  );
}

interface Columns {
  readonly name: number;
  readonly nameWidth: number;
  readonly from: number;
  readonly to: number;
  /** Where values end. */
  readonly edge: number;
  /** Whether the line stands below the name, not beside it. */
  readonly below: boolean;
}

function columnsOf(breadth: Breadth, marked: boolean, valueWidth: number): Columns {
  const across = unitsAcross[breadth];
  const name = marked ? swatch + 7 : 0;
  if (breadth === "narrow") {
    return {
      name,
      nameWidth: across - name - valueWidth - 8,
      from: name + 4,
      to: across - 6,
      edge: across,
      below: true,
    };
  }
  return { name, nameWidth: 186 - name, from: 204, to: across - valueWidth - 14, edge: across, below: false };
}

function drawRates(
  parts: readonly RatedPart[],
  options: PartRatesOptions,
  breadth: Breadth,
  idPrefix: string,
): string {
  const { words, label } = options;
  const { share } = words.numbers;
  const across = unitsAcross[breadth];
  const withheld = shortened(words.plots.partRates.withheld, size, 110);
  const values = parts.map(({ rate }) => (rate.value === null ? withheld : share(rate.value)));
  const valueWidth = Math.max(...[share(1), ...values].map((text) => textWidth(text, size)));
  const columns = columnsOf(
    breadth,
    parts.some(({ summary }) => summary !== undefined),
    valueWidth,
  );
  const x = (part: number) => columns.from + part * (columns.to - columns.from);

  const axis = brokenLines(words.plots.partRates.axis, 11, columns.to - columns.from);
  const top = axis.length * 14 + 18;
  let y = top;
  const rows = parts.map((part, at) => {
    const row = drawRow(part, values[at] ?? "", y, columns, options, idPrefix);
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
    surfaceDefinitions(
      parts.flatMap(({ summary }) => summary ?? []),
      idPrefix,
    ),
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
  { words, stateWord }: PartRatesOptions,
  idPrefix: string,
): { readonly markup: string; readonly height: number } {
  const { part: nameOf, partState } = words.plots.casePlan;
  const { summary, rate } = part;
  const filled = filledShare(part);
  const name = nameOf(part.name, part.quantity);
  // Presence is the rule; what departs from it is said in words as well.
  const text = summary && summary !== "present" ? partState(name, stateWord(summary, filled !== null)) : name;
  const lines = brokenLines(text, size, columns.nameWidth);
  const namesHeight = lines.length * lineHeight;
  const height = columns.below ? namesHeight + 20 : namesHeight + 8;
  const middle = columns.below ? top + namesHeight + 7 : top + height / 2;
  const firstLine = columns.below ? top + 11.5 : middle - namesHeight / 2 + 11;
  const x = (share: number) => columns.from + share * (columns.to - columns.from);
  const markup = [
    summary
      ? element(
          "g",
          { class: `surface-${summary}` },
          surfaceMarkup(
            summary,
            { x: 0.5, y: firstLine - swatch + 0.5, width: swatch, height: swatch },
            idPrefix,
            { filled, rounding: 1.5 },
          ),
        )
      : "",
    ...lines.map((line, at) => writing(line, columns.name, firstLine + at * lineHeight, { size })),
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

function describe(parts: readonly RatedPart[], { words, stateWord }: PartRatesOptions): string {
  const { description, part: write } = words.plots.partRates;
  return description(
    parts.map(({ name, quantity, rate, summary, units }) =>
      write(
        words.plots.casePlan.part(name, quantity),
        words.phrase(rate),
        summary ? stateWord(summary, filledShare({ summary, units }) !== null) : null,
      ),
    ),
  );
}
