import type { PlotOptions, YearsOf } from "../../words/plot-words.ts";
import { horizontal, imageDrawing, stroke, vertical, writing } from "../drawing/image-drawing.ts";
import { roundTicks } from "../drawing/round-ticks.ts";
import { spreadOut } from "../drawing/spread-out.ts";
import { coordinate, element } from "../drawing/svg-markup.ts";
import { brokenLines } from "../drawing/text-lines.ts";
import { textWidth } from "../drawing/text-width.ts";
import { unitsAcross } from "../drawing/two-widths.ts";
import { anchorYear, type Custody, type CustodyMark, custodyMarks } from "./custody-marks.ts";

export type { Custody };

export interface CustodyOptions extends PlotOptions {
  readonly yearsOf: YearsOf;
  /** EDTF. */
  readonly issued?: string | null;
  readonly examined?: string | null;
}

const size = 12;
const lineHeight = 15;
const between = 5;
const top = 8;
const unitsPerYear = 3.4;
const [shortest, longest] = [90, 420];

/** A line of years needs no width: one drawing serves a telephone, and stands beside the list of events on a desk. */
const breadth = "narrow";
const across = unitsAcross[breadth];

/** Custody down a line of years, with its events beside it; where none is recorded the line is broken. */
export const custodyLine = (custody: Custody, options: CustodyOptions): string =>
  element("div", { class: "plot custody-line" }, drawCustody(custody, options));

function drawCustody(custody: Custody, options: CustodyOptions): string {
  const { words, label } = options;
  const idPrefix = `${options.idPrefix}-line`;
  const { marks, undated } = custodyMarks(custody, options);
  const { none, undated: undatedWords, dated, gapBetween, description } = words.plots.custody;
  const notes = undated > 0 ? [undatedWords(words.numbers.count(undated), undated)] : [];
  if (marks.length === 0) {
    const lines = (notes.length > 0 ? notes : [none]).flatMap((note) => brokenLines(note, size, across));
    return imageDrawing(
      {
        idPrefix,
        label,
        description: notes.length > 0 ? description(notes) : none,
        breadth,
        height: lines.length * 16 + 4,
      },
      ...lines.map((line, at) => writing(line, 0, 13 + at * 16, { size, kind: "remark" })),
    );
  }
  const first = Math.min(...marks.map((mark) => mark.first));
  const end = Math.max(...marks.map((mark) => mark.last)) + 1;
  const yearWidth = Math.max(...[first, end].map((year) => textWidth(String(year), 10.5)));
  const line = yearWidth + 14;
  const left = line + 26;

  const labels = marks.map((mark) => labelOf(mark, across - left));
  const labelsHeight = labels.reduce((sum, { height }) => sum + height + between, 0);
  const scaled = Math.max(shortest, Math.min(longest, (end - first) * unitsPerYear));
  const length = Math.max(scaled, labelsHeight - 2 * top);
  const y = (year: number) => top + ((year - first) / (end - first)) * length;
  const middles = spreadOut(
    labels.map(({ height }, at) => {
      const mark = marks[at];
      return { at: mark ? y(anchorYear(mark)) : 0, size: height + between };
    }),
    0,
  );
  const placed = labels.map((each, at) => {
    const middle = middles[at] ?? 0;
    return each.lines
      .map(({ text, row, kind }) =>
        writing(text, left, middle - each.height / 2 + 11 + row * lineHeight, { size: null, kind }),
      )
      .join("");
  });
  const lastLabel = labels.reduce((low, { height }, at) => Math.max(low, (middles[at] ?? 0) + height / 2), 0);
  let height = Math.max(top + length + 10, lastLabel + 6);
  const noteLines = notes.flatMap((note) => brokenLines(note, size, across));
  const noteMarkup = noteLines.map((text) => {
    height += lineHeight;
    return writing(text, 0, height - 3, { size, kind: "remark" });
  });
  return imageDrawing(
    {
      idPrefix,
      label,
      description: description([
        ...marks.map((mark) =>
          mark.kind === "gap"
            ? gapBetween(String(mark.first), String(mark.last), mark.text)
            : dated(mark.date, mark.text),
        ),
        ...notes,
      ]),
      breadth,
      height: height + 4,
    },
    drawYears(first, end, y, line, yearWidth),
    drawLine(marks, y, line, first, end),
    drawLeaders(marks, middles, labels, y, line, left),
    element("g", { "font-size": size }, ...placed),
    ...noteMarkup,
  );
}

interface LabelText {
  readonly height: number;
  readonly lines: readonly {
    readonly text: string;
    readonly row: number;
    readonly kind: string | undefined;
  }[];
}

/** A date, and below it what happened. */
function labelOf(mark: CustodyMark, width: number): LabelText {
  const lines = (text: string, kind: string | undefined) =>
    text === "" ? [] : brokenLines(text, size, width).map((each) => ({ text: each, kind }));
  const all =
    mark.kind === "gap"
      ? lines(mark.text, "remark")
      : [...lines(mark.date, undefined), ...lines(mark.text, undefined)];
  return { height: all.length * lineHeight, lines: all.map((line, row) => ({ ...line, row })) };
}

function drawYears(
  first: number,
  end: number,
  y: (year: number) => number,
  line: number,
  width: number,
): string {
  const ticks = roundTicks(first, end, 26 / (y(first + 1) - y(first)));
  return (
    stroke("hairline", ticks.map((year) => horizontal(line - 6, line, y(year))).join("")) +
    element(
      "g",
      { class: "plot-soft", "font-size": 10.5, "text-anchor": "end" },
      ...ticks.map((year) => writing(String(year), width, y(year) + 3.7, { size: null })),
    )
  );
}

/**
 * Solid where custody is documented or follows on, broken through the gaps, heavy through the years that an event
 * certainly lasts; beside it, thin, those in any of which one may lie.
 */
function drawLine(
  marks: readonly CustodyMark[],
  y: (year: number) => number,
  line: number,
  first: number,
  end: number,
): string {
  const gaps = marks.filter(({ kind }) => kind === "gap");
  let from = first;
  let solid = "";
  let broken = "";
  for (const gap of [...gaps].sort((a, b) => a.first - b.first)) {
    // A gap lies between years: after the middle of the one, before the middle of the other.
    const [start, stop] = [gap.first + 0.5, gap.last + 0.5];
    if (start > from) solid += vertical(line, y(from), y(start));
    broken += vertical(line, y(Math.max(from, start)), y(stop));
    from = Math.max(from, stop);
  }
  if (end > from) solid += vertical(line, y(from), y(end));
  const within = (year: number) => Math.min(end, Math.max(first, year));
  const lasting = marks.flatMap(({ kind, through, open }) => {
    if (kind !== "event" || !through || (!open && through.last === through.first)) return [];
    return vertical(line, y(within(through.first)), y(within(open ? end : through.last + 1)));
  });
  const vague = marks.flatMap((mark) =>
    mark.kind === "event" && !mark.through ? vertical(line + 4, y(mark.first), y(mark.last + 1)) : [],
  );
  const open = marks.some((mark) => mark.open);
  const tip = coordinate(y(end) + 7);
  return (
    stroke("custody", solid) +
    stroke("custody-gap", broken) +
    stroke("custody-lasting", lasting.join("")) +
    stroke("custody-vague", vague.join("")) +
    (open
      ? stroke(
          "axis",
          `M${coordinate(line - 3.5)} ${coordinate(y(end) + 2)}L${coordinate(line)} ${tip}L${coordinate(line + 3.5)} ${coordinate(y(end) + 2)}`,
        )
      : "")
  );
}

function drawLeaders(
  marks: readonly CustodyMark[],
  middles: readonly number[],
  labels: readonly LabelText[],
  y: (year: number) => number,
  line: number,
  left: number,
): string {
  const leaders = marks.map((mark, at) => {
    const from = y(anchorYear(mark));
    // To the first line of its label.
    const to = (middles[at] ?? 0) - (labels[at]?.height ?? 0) / 2 + 7;
    const path = `M${coordinate(line + 4)} ${coordinate(from)}L${coordinate(left - 8)} ${coordinate(to)}H${coordinate(left - 4)}`;
    const dot =
      mark.kind === "gap"
        ? ""
        : element("circle", {
            class: mark.kind === "bound" || !mark.through ? "plot-ring" : "plot-dot",
            cx: line,
            cy: from,
            r: 3.2,
          });
    return (mark.kind === "gap" ? "" : stroke("hairline", path)) + dot;
  });
  return leaders.join("");
}
