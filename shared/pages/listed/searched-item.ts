import { fold } from "../../diagnostics/fold.ts";
import type { PublishedItem, PublishedVariant } from "../../publication/published.ts";
import { foldedWords } from "../search/folded-words.ts";
import { packRising } from "../search/packed-numbers.ts";
import { yearsOf } from "../views/years-of.ts";

/** What the search knows of an item. */
export interface SearchedItem {
  readonly serial: string | null;
  /** The number of its set, where the title does not say it: there it is found as well. */
  readonly set: string | null;
  readonly isAssembled: boolean;
  readonly low: number | null;
  readonly high: number | null;
  readonly place: number;
  readonly of: number;
  /** First and last year of issue; null where it is open or not known. */
  readonly issued: readonly [number | null, number | null];
  /** Places among the parts of its variant, packed. */
  readonly missing: string;
  readonly places: readonly string[];
}

function issueOf(item: PublishedItem): readonly [number | null, number | null] {
  const when = item.dating.serial.made ?? item.dating.issued;
  const years = when === null ? null : yearsOf(when);
  const known = (year: number | null | undefined) =>
    year === null || year === undefined || !Number.isFinite(year) ? null : year;
  return [known(years?.first), known(years?.last)];
}

const saysSet = (title: string, set: string): boolean => foldedWords(title).includes(fold(set));

export function searchedItem(item: PublishedItem, parts: PublishedVariant["parts"]): SearchedItem {
  const { weighted, missing, partial } = item.completeness;
  const lacking = new Set([...missing, ...partial]);
  const places = item.provenance.events.flatMap(({ place }) =>
    place === null || place === "" ? [] : [place],
  );
  return {
    serial: item.serial,
    set: item.set === null || saysSet(item.title, item.set) ? null : item.set,
    isAssembled: item.assembled.length > 0,
    low: weighted?.low ?? null,
    high: weighted?.high ?? null,
    place: item.rarity.rank?.place ?? 0,
    of: item.rarity.rank?.of ?? 0,
    issued: issueOf(item),
    missing: packRising(parts.flatMap(({ id }, at) => (lacking.has(id) ? [at] : []))),
    places: [...new Set(places)],
  };
}
