import type { PublishedSighting } from "../../publication/published.ts";
import type { YearsOf } from "../../words/plot-words.ts";
import type { Shape } from "../drawing/mark-shape.ts";

export interface DatedSighting extends Pick<PublishedSighting, "seen" | "kind"> {
  /** Whether the example was recorded complete as issued; left out where that is not to be shown. */
  readonly whole?: boolean;
  /** Whether it is an earlier offer once more, which the figures do not count again. */
  readonly relisted?: boolean;
}

/** Sightings that are marked alike. */
export interface SightingSeries {
  readonly id: string;
  readonly kind: PublishedSighting["kind"];
  readonly shape: Shape;
  /** `own`: as the shape is usually drawn, where completeness is not shown. */
  readonly surface: "own" | "filled" | "hollow";
}

export interface PlacedSighting {
  readonly year: number;
  readonly series: string;
}

export interface SightingSeriesSet {
  readonly series: readonly SightingSeries[];
  readonly placed: readonly PlacedSighting[];
}

/** A kind keeps its shape where others are missing, and kinds stand in this order. */
const shapes: Readonly<Record<PublishedSighting["kind"], Shape>> = {
  offer: "disc",
  record: "square",
  mention: "triangle",
};
const order = Object.keys(shapes);

/** Sightings that have a year, in series of one kind and, where it is known, of one completeness. */
export function sightingSeries(sightings: readonly DatedSighting[], yearsOf: YearsOf): SightingSeriesSet {
  const byWhole = sightings.some(({ whole }) => whole !== undefined);
  const series = new Map<string, SightingSeries>();
  const placed = sightings.flatMap(({ seen, kind, whole }): PlacedSighting[] => {
    const years = yearsOf(seen);
    if (!years || !isYear(years.first) || !isYear(years.last)) return [];
    const surface = byWhole ? (whole ? "filled" : "hollow") : "own";
    const id = `${surface} ${kind}`;
    series.set(id, { id, kind, shape: shapes[kind], surface });
    // One of several years stands in the middle of them.
    return [{ year: Math.floor((years.first + years.last) / 2), series: id }];
  });
  const place = ({ kind }: SightingSeries) => order.indexOf(kind);
  const ordered = [...series.values()].sort((a, b) => place(a) - place(b) || compare(a.surface, b.surface));
  return { series: ordered, placed };
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

export const isYear = (year: number | null | undefined): year is number =>
  typeof year === "number" && Number.isFinite(year);
