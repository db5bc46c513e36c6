import type { PlotOptions, YearsOf } from "../../words/plot-words.ts";
import { horizontal, imageDrawing, stroke, vertical, writing } from "../drawing/image-drawing.ts";
import { legendLine } from "../drawing/legend-line.ts";
import { lowerHalf, markShape } from "../drawing/mark-shape.ts";
import { brokenLines, shortened } from "../drawing/text-lines.ts";
import { textWidth } from "../drawing/text-width.ts";
import { type Breadth, twoWidths, unitsAcross } from "../drawing/two-widths.ts";
import { yearAxis } from "../drawing/year-axis.ts";
import { type SightingColumns, sightingColumns } from "./sighting-columns.ts";
import {
  type DatedSighting,
  isYear,
  type SightingSeries,
  type SightingSeriesSet,
  sightingSeries,
} from "./sighting-series.ts";

export type { DatedSighting };

export interface SightingsOptions extends PlotOptions {
  readonly yearsOf: YearsOf;
  /** EDTF interval over which offers were watched for. */
  readonly watching?: string | null;
}

const side = 14;
const pitch = 9;
const radius = 3.2;
const mostRows = 14;

/**
 * When examples were seen: a mark for each sighting, stacked on its years, its shape telling the kind, and how far it is
 * filled what is known of its completeness.
 */
export function sightingsOverYears(sightings: readonly DatedSighting[], options: SightingsOptions): string {
  return twoWidths("sightings-over-years", options.idPrefix, (breadth, idPrefix) =>
    drawSightings(sightings, options, breadth, idPrefix),
  );
}

function drawSightings(
  sightings: readonly DatedSighting[],
  options: SightingsOptions,
  breadth: Breadth,
  idPrefix: string,
): string {
  const { words, label, yearsOf, watching } = options;
  const across = unitsAcross[breadth];
  const set = sightingSeries(sightings, yearsOf);
  const undated = sightings.length - set.placed.length;
  const head = { idPrefix, label, description: describe(set, sightings, options), breadth };
  if (set.placed.length === 0) {
    const { none, undated: write } = words.plots.sightings;
    const text = undated === 0 ? none : write(words.numbers.count(undated), undated);
    const lines = brokenLines(text, 12, across);
    return imageDrawing(
      { ...head, height: 4 + 16 * lines.length },
      ...lines.map((line, at) => writing(line, 0, 13 + at * 16, { size: 12, kind: "remark" })),
    );
  }

  const watched = watching ? yearsOf(watching) : null;
  // Years that were watched and brought nothing are shown with the others.
  const years = [...set.placed.map(({ year }) => year), ...[watched?.first, watched?.last].filter(isYear)];
  const span = years.reduce(
    ({ first, last }, year) => ({ first: Math.min(first, year), last: Math.max(last, year) }),
    { first: years[0] ?? 0, last: years[0] ?? 0 },
  );
  const columns = sightingColumns(set.placed, span, { width: across - 2 * side, pitch, mostRows });
  const legend = drawLegend(set.series, columns.each, undated, options, across);
  const base = legend.height + 10 + columns.rows * pitch;
  const x = (year: number) =>
    side + ((year - columns.first) / (columns.end - columns.first)) * (across - 2 * side);
  const axis = yearAxis({ ...columns, from: side, to: across - side, y: base + 4, across });
  const bracket = drawWatching(watched, columns, x, base + axis.height + 6, options, across);
  return imageDrawing(
    { ...head, height: base + axis.height + 6 + bracket.height },
    legend.markup,
    drawMarks(columns, set.series, x, base),
    axis.markup,
    bracket.markup,
  );
}

const markKind = ({ shape, surface }: SightingSeries): string =>
  surface === "own" ? `mark-${shape}` : surface === "filled" ? "mark-filled" : "mark-hollow";

/** Each series is one path, or two, however many its marks. */
function drawMarks(
  { columns, each, abreast, step }: SightingColumns,
  series: readonly SightingSeries[],
  x: (year: number) => number,
  base: number,
): string {
  const marks = series.map((): string[] => []);
  const halves: string[] = [];
  for (const { year, counts } of columns) {
    const left = (x(year) + x(year + step)) / 2 - ((abreast - 1) * pitch) / 2;
    let place = 0;
    series.forEach(({ id, shape, surface }, at) => {
      const most = place + Math.ceil((counts.get(id) ?? 0) / each);
      for (; place < most; place++) {
        const [column, row] = [place % abreast, Math.floor(place / abreast)];
        const middle = [left + column * pitch, base - (row + 0.5) * pitch] as const;
        marks[at]?.push(markShape(shape, ...middle, radius));
        if (surface === "half") halves.push(lowerHalf(shape, ...middle, radius));
      }
    });
  }
  const whole = series.map((one, at) => stroke(markKind(one), (marks[at] ?? []).join("")));
  return stroke("mark-half", halves.join("")) + whole.join("");
}

function drawLegend(
  series: readonly SightingSeries[],
  each: number,
  undated: number,
  { words }: SightingsOptions,
  across: number,
): ReturnType<typeof legendLine> {
  const { kind, each: eachWords, undated: undatedWords, surfaces } = words.plots.sightings;
  const { count } = words.numbers;
  const ofKinds = [...new Map(series.map((one) => [one.kind, one])).values()];
  return legendLine(
    [
      ...ofKinds.map((one) => ({
        text: kind(one.kind),
        mark: { shape: one.shape, kind: one.surface === "own" ? markKind(one) : "mark-hollow" },
      })),
      ...[
        ...(["filled", "half", "hollow"] as const).flatMap((surface) =>
          series.some((one) => one.surface === surface) ? [surfaces[surface]] : [],
        ),
        ...(each > 1 ? [eachWords(count(each))] : []),
        ...(undated > 0 ? [undatedWords(count(undated), undated)] : []),
      ].map((text) => ({ text, mark: null })),
    ],
    across,
  );
}

function drawWatching(
  watched: ReturnType<YearsOf>,
  { first, end }: SightingColumns,
  x: (year: number) => number,
  y: number,
  { words, watching }: SightingsOptions,
  across: number,
): { readonly markup: string; readonly height: number } {
  if (!watched || !watching) return { markup: "", height: 0 };
  const from = Math.max(first, watched.first ?? first);
  const to = Math.min(end, (watched.last ?? end) + 1);
  const text = shortened(words.plots.sightings.watching(words.date(watching)), 11, across);
  const width = textWidth(text, 11);
  const left = Math.max(0, Math.min((x(from) + x(to) - width) / 2, across - width));
  const markup =
    stroke(
      "bracket",
      horizontal(x(from), x(to), y + 4) + vertical(x(from), y, y + 8) + vertical(x(to), y, y + 8),
    ) + writing(text, left, y + 21, { size: 11, kind: "remark" });
  return { markup, height: 26 };
}

function describe(
  { series, placed }: SightingSeriesSet,
  sightings: readonly DatedSighting[],
  { words }: SightingsOptions,
): string {
  const { none, kindCount, again, span, description, undated: undatedWords, reach } = words.plots.sightings;
  const { count } = words.numbers;
  const total = sightings.length;
  const relisted = sightings.filter((sighting) => sighting.relisted).length;
  if (total === 0) return none;
  const seriesOf = new Map(series.map((one) => [one.id, one]));
  const placedWhere = (is: (one: SightingSeries) => boolean) =>
    placed.filter((sighting) => {
      const one = seriesOf.get(sighting.series);
      return one !== undefined && is(one);
    }).length;
  const kinds = [...new Set(series.map(({ kind }) => kind))].map((kind) => {
    const number = placedWhere((one) => one.kind === kind);
    return kindCount(kind, count(number), number);
  });
  const reached = (["filled", "half", "hollow"] as const).flatMap((surface) => {
    const number = placedWhere((one) => one.surface === surface);
    return number === 0 ? [] : [reach[surface](count(number), number)];
  });
  const years = placed.map(({ year }) => year).sort((a, b) => a - b);
  const undated = total - placed.length;
  const facts = [
    ...kinds,
    ...(relisted > 0 ? [again(count(relisted))] : []),
    ...(undated > 0 ? [undatedWords(count(undated), undated)] : []),
  ];
  const when = years.length === 0 ? null : span(String(years[0]), String(years.at(-1)));
  return description(count(total), total, facts, when, reached);
}
