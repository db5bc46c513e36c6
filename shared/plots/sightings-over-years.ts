import type { PublishedSighting } from "../publication/published.ts";
import { horizontal, imageDrawing, stroke, vertical, writing } from "./image-drawing.ts";
import { labelsInRows } from "./labels-in-rows.ts";
import { markShape, type Shape } from "./mark-shape.ts";
import type { PlotOptions, YearsOf } from "./plot-words.ts";
import { type SightingColumns, sightingColumns } from "./sighting-columns.ts";
import { brokenLines, shortened } from "./text-lines.ts";
import { textWidth } from "./text-width.ts";
import { type Breadth, twoWidths, unitsAcross } from "./two-widths.ts";
import { yearAxis } from "./year-axis.ts";

export type DatedSighting = Pick<PublishedSighting, "seen" | "kind">;

export interface SightingsOptions extends PlotOptions {
  readonly yearsOf: YearsOf;
  /** EDTF interval over which offers were watched for. */
  readonly watching?: string | null;
}

/** Shapes tell the kinds apart, in this order; a kind beyond the third shares the last. */
const shapes: readonly Shape[] = ["disc", "square", "triangle"];
const order: readonly string[] = ["offer", "record", "mention"];

const size = 11;
const lineHeight = 15;
const pitch = 9;
const mostRows = 14;

/** When examples were seen: a mark for each sighting, stacked on its years, its shape telling the kind. */
export function sightingsOverYears(sightings: readonly DatedSighting[], options: SightingsOptions): string {
  return twoWidths("sightings-over-years", options.idPrefix, (breadth, idPrefix) =>
    drawSightings(sightings, options, breadth, idPrefix),
  );
}

interface Years {
  readonly first: number;
  readonly last: number;
}

function finiteYears(edtf: string, yearsOf: YearsOf): Years | null {
  const years = yearsOf(edtf);
  return years && isYear(years.first) && isYear(years.last) ? { first: years.first, last: years.last } : null;
}

const isYear = (year: number | null | undefined): year is number =>
  typeof year === "number" && Number.isFinite(year);

function drawSightings(
  sightings: readonly DatedSighting[],
  options: SightingsOptions,
  breadth: Breadth,
  idPrefix: string,
): string {
  const { words, label, yearsOf, watching } = options;
  const { none, undated: undatedWords } = words.plots.sightings;
  const { count } = words.numbers;
  const across = unitsAcross[breadth];
  // One of several years stands in the middle of them.
  const dated = sightings.flatMap(({ seen, kind }) => {
    const years = finiteYears(seen, yearsOf);
    return years ? [{ year: Math.floor((years.first + years.last) / 2), kind }] : [];
  });
  const description = describe(dated, sightings.length, options);
  if (dated.length === 0) {
    const lines = brokenLines(
      sightings.length === 0 ? none : undatedWords(count(sightings.length), sightings.length),
      12,
      across,
    );
    const markup = lines.map((line, at) => writing(line, 0, 14 + at * 16, { size: 12, kind: "remark" }));
    return imageDrawing(
      { idPrefix, label, description, breadth, height: 20 + 16 * (lines.length - 1) },
      ...markup,
    );
  }

  const years = dated.map(({ year }) => year);
  const watched = watching ? yearsOf(watching) : null;
  // Years that were watched and brought nothing are shown with the others.
  const spanned = [...years, ...[watched?.first, watched?.last].flatMap((year) => (isYear(year) ? [year] : []))];
  const span = { first: Math.min(...spanned), last: Math.max(...spanned) };
  const side = 14;
  const columns = sightingColumns(dated, span, { width: across - 2 * side, pitch, mostRows });
  const kinds = kindsOf(dated);
  const legend = drawLegend(kinds, columns.each, sightings.length - dated.length, options, across);
  const base = legend.height + 10 + columns.rows * pitch;
  const x = (year: number) =>
    side + ((year - columns.first) / (columns.end - columns.first)) * (across - 2 * side);
  const axis = yearAxis({
    first: columns.first,
    end: columns.end,
    from: side,
    to: across - side,
    y: base + 4,
    across,
  });
  const bracket = drawWatching(watched, columns, x, base + axis.height + 6, options, across);
  return imageDrawing(
    { idPrefix, label, description, breadth, height: base + axis.height + 6 + bracket.height },
    legend.markup,
    drawMarks(columns, kinds, x, base),
    axis.markup,
    bracket.markup,
  );
}

function kindsOf(sightings: readonly { readonly kind: string }[]): readonly string[] {
  const place = (kind: string) => (order.includes(kind) ? order.indexOf(kind) : order.length);
  return [...new Set(sightings.map(({ kind }) => kind))].sort(
    (a, b) => place(a) - place(b) || (a < b ? -1 : 1),
  );
}

/** A known kind keeps its shape where others are missing. */
function shapeOf(kind: string): Shape {
  const at = order.indexOf(kind);
  return shapes[at < 0 ? shapes.length - 1 : at] ?? "triangle";
}

function drawMarks(
  { columns, each, abreast, step }: SightingColumns,
  kinds: readonly string[],
  x: (year: number) => number,
  base: number,
): string {
  const paths = new Map(kinds.map((kind) => [kind, ""]));
  for (const { year, counts } of columns) {
    const middle = (x(year) + x(year + step)) / 2;
    const left = middle - ((abreast - 1) * pitch) / 2;
    let place = 0;
    for (const kind of kinds) {
      const marks = Math.ceil((counts.get(kind) ?? 0) / each);
      for (let mark = 0; mark < marks; mark++, place++) {
        const at = {
          x: left + (place % abreast) * pitch,
          y: base - (Math.floor(place / abreast) + 0.5) * pitch,
        };
        paths.set(kind, (paths.get(kind) ?? "") + markShape(shapeOf(kind), at.x, at.y, 3.2));
      }
    }
  }
  return [...paths].map(([kind, path]) => stroke(`mark-${shapeOf(kind)}`, path)).join("");
}

function drawLegend(
  kinds: readonly string[],
  each: number,
  undated: number,
  { words }: SightingsOptions,
  across: number,
): { readonly markup: string; readonly height: number } {
  const { sightings } = words.plots;
  const { count } = words.numbers;
  const notes = [
    ...(each > 1 ? [sightings.each(count(each))] : []),
    ...(undated > 0 ? [sightings.undated(count(undated), undated)] : []),
  ];
  const entries = [
    ...kinds.map((kind) => ({ text: sightings.kind(kind), shape: shapeOf(kind) })),
    ...notes.map((text) => ({ text, shape: null })),
  ].map((entry) => {
    const indent = entry.shape ? 13 : 0;
    const text = shortened(entry.text, size, across - indent);
    return { ...entry, text, indent, width: indent + textWidth(text, size) };
  });
  let [left, row] = [0, 0];
  const markup = entries.map(({ text, shape, indent, width }) => {
    if (left > 0 && left + width > across) [left, row] = [0, row + 1];
    const at = { x: left, y: 11 + row * lineHeight };
    left += width + 16;
    const mark = shape ? stroke(`mark-${shape}`, markShape(shape, at.x + 4, at.y - 4, 3.2)) : "";
    return mark + writing(text, at.x + indent, at.y, { size, kind: shape ? undefined : "remark" });
  });
  return { markup: markup.join(""), height: (row + 1) * lineHeight };
}

function drawWatching(
  watched: ReturnType<YearsOf>,
  { first, end }: SightingColumns,
  x: (year: number) => number,
  y: number,
  { words, watching }: SightingsOptions,
  across: number,
): { readonly markup: string; readonly height: number } {
  if (!watched) return { markup: "", height: 0 };
  const from = Math.max(first, watched.first ?? first);
  const to = Math.min(end, (watched.last ?? end) + 1);
  if (!(to > from)) return { markup: "", height: 0 };
  const text = shortened(
    words.plots.sightings.watching(String(watched.first), String(watched.last)),
    size,
    across,
  );
  const width = textWidth(text, size);
  const [place] = labelsInRows([{ left: (x(from) + x(to) - width) / 2, width }], {
    from: 0,
    to: across,
    gap: 0,
  });
  const markup =
    stroke(
      "bracket",
      horizontal(x(from), x(to), y + 4) + vertical(x(from), y, y + 8) + vertical(x(to), y, y + 8),
    ) + writing(text, place?.left ?? 0, y + 21, { size, kind: "remark" });
  return { markup, height: 26 };
}

function describe(
  dated: readonly { readonly year: number; readonly kind: string }[],
  total: number,
  { words }: SightingsOptions,
): string {
  const { sightings } = words.plots;
  const { count } = words.numbers;
  if (total === 0) return sightings.none;
  const kinds = kindsOf(dated).map((kind) => {
    const number = dated.filter((sighting) => sighting.kind === kind).length;
    return sightings.kindCount(kind, count(number), number);
  });
  const years = dated.map(({ year }) => year);
  const span =
    years.length === 0 ? null : sightings.span(String(Math.min(...years)), String(Math.max(...years)));
  return sightings.description(count(total), total, kinds, span);
}
