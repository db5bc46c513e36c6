import type { PublishedSerialRange } from "../../publication/published.ts";
import type { PlotOptions } from "../../words/plot-words.ts";
import { horizontal, imageDrawing, stroke, vertical, writing } from "../drawing/image-drawing.ts";
import { roundTicks } from "../drawing/round-ticks.ts";
import { coordinate, element } from "../drawing/svg-markup.ts";
import { brokenLines, shortened } from "../drawing/text-lines.ts";
import { textWidth } from "../drawing/text-width.ts";
import { type Breadth, twoWidths, unitsAcross } from "../drawing/two-widths.ts";
import { type SerialRow, type SerialSeries, serialRows } from "./serial-rows.ts";

interface SerialRangesOptions extends PlotOptions {
  /** The serial of this example, where it is shown. */
  readonly own?: string | null;
}

const size = 12;
const small = 10.5;
const lineHeight = 15;
const rail = 11;
/** Room for the arrow of a range whose end is not known. */
const openEnd = 34;
/** On a common scale no range may become shorter. */
const shortest = 18;

/** Each range of serials as a rail, to scale, with a stroke for each serial seen and a mark for this one. */
export const serialRanges = (
  ranges: readonly PublishedSerialRange[],
  /** `seen`: serials of the sightings. */
  { seen, ...options }: SerialRangesOptions & { readonly seen: readonly string[] },
): string => rangesSideBySide([{ name: null, ranges, seen }], options);

/** The ranges of several variants, those of one prefix on one scale: what a serial alone can decide between them. */
export function rangesSideBySide(series: readonly SerialSeries[], options: SerialRangesOptions): string {
  return twoWidths("serial-ranges", options.idPrefix, (breadth, idPrefix) =>
    drawRanges(series, options, breadth, idPrefix),
  );
}

function drawRanges(
  series: readonly SerialSeries[],
  options: SerialRangesOptions,
  breadth: Breadth,
  idPrefix: string,
): string {
  const { words, label } = options;
  const across = unitsAcross[breadth];
  const { groups, unplaced, misplaced } = serialRows(series, options.own ?? null);
  const notes = [
    ...(groups.length === 0 ? [words.plots.serialRanges.none.replace(/\.$/, "")] : []),
    ...(unplaced > 0 ? [words.plots.serialRanges.unplaced(words.numbers.count(unplaced), unplaced)] : []),
    ...(misplaced > 0 ? [words.plots.serialRanges.misplaced(words.numbers.count(misplaced), misplaced)] : []),
  ];
  const content: string[] = [];
  let y = 0;
  for (const group of groups) {
    for (const piece of drawGroup(group, options, across)) {
      content.push(element("g", { transform: `translate(0 ${coordinate(y)})` }, piece.markup));
      y += piece.height;
    }
  }
  for (const line of notes.flatMap((note) => brokenLines(note, size, across))) {
    content.push(writing(line, 0, y + 12, { size, kind: "remark" }));
    y += lineHeight + 2;
  }
  const description = words.plots.serialRanges.description(
    groups.flat().map((row) => describeRow(row, options)),
    notes,
  );
  return imageDrawing({ idPrefix, label, description, breadth, height: y + 2 }, ...content);
}

interface Piece {
  readonly markup: string;
  readonly height: number;
}

interface Scale {
  readonly x: (number: number) => number;
  readonly low: number;
  readonly high: number;
}

function scaleOf(rows: readonly SerialRow[], across: number): Scale {
  const low = Math.min(...rows.map((row) => row.low));
  const high = Math.max(...rows.map((row) => row.high));
  const from = rows.some(({ range }) => range.from === null) ? openEnd : 1;
  const to = across - (rows.some(({ range }) => range.to === null) ? openEnd : 1);
  // A number takes a place of its own, so that a range of one has a length.
  return { x: (number) => from + ((number - low) / (high - low + 1)) * (to - from), low, high };
}

/** On one scale where every range is long enough to be seen on it, else each on its own. */
function drawGroup(
  rows: readonly SerialRow[],
  options: SerialRangesOptions,
  across: number,
): readonly Piece[] {
  const common = scaleOf(rows, across);
  const fits = rows.every((row) => common.x(row.high + 1) - common.x(row.low) >= shortest);
  if (fits)
    return [...rows.map((row) => drawRow(row, common, options, across)), drawAxis(rows, common, across)];
  return rows.flatMap((row) => {
    const own = scaleOf([row], across);
    return [drawRow(row, own, options, across), drawAxis([row], own, across)];
  });
}

function spanOf({ range }: SerialRow, { words }: SerialRangesOptions): string {
  const { prefix, from, to } = range;
  return words.plots.serialRanges.span(prefix, from, to);
}

function drawRow(row: SerialRow, { x }: Scale, options: SerialRangesOptions, across: number): Piece {
  const { range } = row;
  const { own, made, skipped } = options.words.plots.serialRanges;
  const span = spanOf(row, options);
  const heading = brokenLines(row.name ?? span, size, across);
  const facts = [
    ...(row.name === null ? [] : [span]),
    ...(range.made === null ? [] : [made(options.words.date(range.made))]),
    ...(range.skipped ? [skipped] : []),
  ].join(" · ");
  const lastWidth = textWidth(heading.at(-1) ?? "", size);
  const beside = facts !== "" && lastWidth + 14 + textWidth(facts, 11) <= across;
  const factLines = facts === "" || beside ? [] : brokenLines(facts, 11, across);
  const headingHeight = (heading.length + factLines.length) * lineHeight;
  const top = headingHeight + 6;
  const [left, right] = [x(row.low), x(row.high + 1)];
  const middle = top + rail / 2;
  const strokes = [...new Set(row.seen.map((number) => coordinate(x(number + 0.5))))];

  const markup = [
    ...heading.map((line, at) => writing(line, 0, 12.5 + at * lineHeight, { size })),
    beside
      ? writing(facts, lastWidth + 14, 12.5 + (heading.length - 1) * lineHeight, { size: 11, kind: "remark" })
      : "",
    ...factLines.map((line, at) =>
      writing(line, 0, 12.5 + (heading.length + at) * lineHeight, { size: 11, kind: "remark" }),
    ),
    element("rect", {
      class: range.skipped ? "plot-rail plot-rail-skipped" : "plot-rail",
      x: left,
      y: top,
      width: right - left,
      height: rail,
    }),
    stroke("seen", strokes.map((at) => `M${at} ${coordinate(top)}v${rail}`).join("")),
    range.from === null ? arrow(left, middle, -1) : "",
    range.to === null ? arrow(right, middle, 1) : "",
  ];
  let height = top + rail + 6;
  if (row.own !== null) {
    const at = x(row.own + 0.5);
    const text = shortened(own(`${range.prefix}${row.own}`), size, across);
    const half = textWidth(text, size) / 2;
    const centre = Math.max(half, Math.min(at, across - half));
    markup.push(
      stroke(
        "own",
        `${vertical(at, top - 3, top + rail + 3)}M${coordinate(at)} ${coordinate(top + rail + 2)}l4 6h-8z`,
      ),
      writing(text, centre, top + rail + 20, { size, anchor: "middle", kind: "own-name" }),
    );
    height += 18;
  }
  return { markup: markup.join(""), height };
}

/** An end that is not known: the rail goes on in ever shorter strokes, and points on. */
function arrow(at: number, y: number, direction: 1 | -1): string {
  const tip = at + direction * (openEnd - 5);
  const dashes = [0, 7, 13, 18].map((from, index) => {
    const length = 5 - index;
    return [-rail / 2, rail / 2].map((side) =>
      horizontal(at + direction * from, at + direction * (from + length), y + side),
    );
  });
  const head = `M${coordinate(tip - direction * 5)} ${coordinate(y - 3.5)}L${coordinate(tip)} ${coordinate(y)}L${coordinate(tip - direction * 5)} ${coordinate(y + 3.5)}`;
  return stroke("axis", dashes.flat().join("") + head);
}

function drawAxis(rows: readonly SerialRow[], { x, low, high }: Scale, across: number): Piece {
  const prefix = rows[0]?.range.prefix ?? "";
  const width = Math.max(...[low, high].map((number) => textWidth(`${prefix}${number}`, small)));
  const ticks = roundTicks(low, high, (width + 16) / (x(low + 1) - x(low)));
  const shown = ticks.filter((tick) => x(tick + 0.5) - width / 2 >= 0 && x(tick + 0.5) + width / 2 <= across);
  const markup =
    stroke("axis", horizontal(x(low), x(high + 1), 2)) +
    stroke("hairline", shown.map((tick) => vertical(x(tick + 0.5), 2, 7)).join("")) +
    shown
      .map((tick) =>
        writing(`${prefix}${tick}`, x(tick + 0.5), 18, { size: small, anchor: "middle", kind: "soft" }),
      )
      .join("");
  return { markup, height: 32 };
}

function describeRow(row: SerialRow, options: SerialRangesOptions): string {
  const { words } = options;
  const { range, made, skipped, seen, own } = words.plots.serialRanges;
  const count = row.seen.length;
  const span = spanOf(row, options);
  return range(row.name === null ? span : `${row.name}: ${span}`, [
    ...(row.range.made === null ? [] : [made(words.date(row.range.made))]),
    ...(row.range.skipped ? [skipped] : []),
    seen(words.numbers.count(count), count),
    ...(row.own === null ? [] : [own(`${row.range.prefix}${row.own}`)]),
  ]);
}
