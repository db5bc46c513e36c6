import { roundStep } from "../drawing/round-ticks.ts";
import type { PlacedSighting } from "./sighting-series.ts";

/** Sightings of one span of years, by series. */
interface SightingColumn {
  /** First year of the span. */
  readonly year: number;
  readonly counts: ReadonlyMap<string, number>;
}

export interface SightingColumns {
  /** Years to a column. */
  readonly step: number;
  readonly first: number;
  /** The year after the last column. */
  readonly end: number;
  readonly columns: readonly SightingColumn[];
  /** Sightings to a mark, at most. */
  readonly each: number;
  /** Marks beside one another in a column. */
  readonly abreast: number;
  /** Marks above one another in the highest column. */
  readonly rows: number;
}

interface Room {
  readonly width: number;
  /** From one mark to the next. */
  readonly pitch: number;
  readonly mostRows: number;
}

/**
 * Years gathered into columns no narrower than a mark, and sightings into marks where the columns would grow
 * beyond the drawing: so that two and two thousand have room alike.
 */
export function sightingColumns(
  sightings: readonly PlacedSighting[],
  span: { readonly first: number; readonly last: number },
  { width, pitch, mostRows }: Room,
): SightingColumns {
  const most = Math.max(2, Math.floor(width / pitch));
  let step = 1;
  const columnsAt = (years: number) => Math.floor(span.last / years) - Math.floor(span.first / years) + 1;
  while (columnsAt(step) > most) step = roundStep(step + 1);
  const first = Math.floor(span.first / step) * step;
  const end = (Math.floor(span.last / step) + 1) * step;
  const byYear = new Map<number, Map<string, number>>();
  for (const { year, series } of sightings) {
    const start = Math.floor(year / step) * step;
    const counts = byYear.get(start) ?? new Map<string, number>();
    counts.set(series, (counts.get(series) ?? 0) + 1);
    byYear.set(start, counts);
  }
  const columns = [...byYear].map(([year, counts]) => ({ year, counts })).sort((a, b) => a.year - b.year);
  const abreast = Math.max(1, Math.min(4, Math.floor((width * step) / (end - first) / pitch)));
  const rowsFor = (each: number) =>
    Math.max(0, ...columns.map((column) => Math.ceil(marksIn(column, each) / abreast)));
  let each = 1;
  while (rowsFor(each) > mostRows && each < sightings.length) each = roundStep(each + 1);
  return { step, first, end, columns, each, abreast, rows: rowsFor(each) };
}

const marksIn = ({ counts }: SightingColumn, each: number): number =>
  [...counts.values()].reduce((sum, count) => sum + Math.ceil(count / each), 0);
