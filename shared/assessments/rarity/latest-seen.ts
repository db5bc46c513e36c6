import type { EdtfDate } from "../../dates/edtf-interval.ts";
import type { Item } from "../../records/item.ts";
import type { Sighting } from "../../records/sighting.ts";

/** Of a date whose end is open or not known the beginning tells. */
const lastDay = ({ latest, earliest }: EdtfDate): number =>
  [latest, earliest].find((day) => day !== null && Number.isFinite(day)) ?? Number.NEGATIVE_INFINITY;

/** When any of what is counted was seen last, in the log or on examination; null where nothing says. */
export function latestSeen(sightings: readonly Sighting[], items: readonly Item[]): EdtfDate | null {
  const dates = [...sightings.map(({ seen }) => seen), ...items.flatMap(({ examined }) => examined ?? [])];
  return dates.reduce<EdtfDate | null>(
    (last, date) => (last === null || lastDay(date) > lastDay(last) ? date : last),
    null,
  );
}
