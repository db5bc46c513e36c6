import type { PublishedSighting } from "../../publication/published.ts";
import type { YearsOf } from "../../words/plot-words.ts";
import type { MarkSurface, Shape } from "../drawing/mark-shape.ts";

export interface DatedSighting extends Pick<PublishedSighting, "seen" | "kind"> {
  /** Whether its example reaches a level, null where that is not known; left out where the reference has none. */
  readonly reaches?: PublishedSighting["reaches"];
  /** Whether it is an earlier offer once more, which the figures do not count again. */
  readonly relisted?: boolean;
}

/** Sightings that are marked alike. */
export interface SightingSeries {
  readonly id: string;
  readonly kind: PublishedSighting["kind"];
  readonly shape: Shape;
  readonly surface: MarkSurface;
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
const orderOfSurfaces: readonly MarkSurface[] = ["own", "filled", "half", "hollow"];

/** The fuller, the more is known to be there. */
const surfaceOf = (reaches: boolean | null): MarkSurface =>
  reaches === null ? "hollow" : reaches ? "filled" : "half";

/** Sightings that have a year, in series of one kind and, where the reference has levels, of what is known of one. */
export function sightingSeries(sightings: readonly DatedSighting[], yearsOf: YearsOf): SightingSeriesSet {
  const series = new Map<string, SightingSeries>();
  const placed = sightings.flatMap(({ seen, kind, reaches }): PlacedSighting[] => {
    const years = yearsOf(seen);
    if (!years || !isYear(years.first) || !isYear(years.last)) return [];
    const surface = reaches === undefined ? "own" : surfaceOf(reaches);
    const id = `${surface} ${kind}`;
    series.set(id, { id, kind, shape: shapes[kind], surface });
    // One of several years stands in the middle of them.
    return [{ year: Math.floor((years.first + years.last) / 2), series: id }];
  });
  const place = ({ kind, surface }: SightingSeries) =>
    order.indexOf(kind) * orderOfSurfaces.length + orderOfSurfaces.indexOf(surface);
  const ordered = [...series.values()].sort((a, b) => place(a) - place(b));
  return { series: ordered, placed };
}

export const isYear = (year: number | null | undefined): year is number =>
  typeof year === "number" && Number.isFinite(year);
