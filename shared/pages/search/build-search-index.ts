import type { PublishedItem, PublishedVariant } from "../../publication/published.ts";
import { catalogueOrder } from "../catalogue-order.ts";
import type { CollectionIndex } from "../collection-index.ts";
import { yearsOf } from "../years-of.ts";
import { fold, foldedWords } from "./fold.ts";
import { itemWords } from "./item-words.ts";
import { packNumbers, packRising } from "./packed-numbers.ts";
import { type SearchDetails, type SearchIndex, statuses, verdicts } from "./search-index.ts";
import { shareStep } from "./share-steps.ts";
import { type CutWordFile, cutWordFiles, gatherWords } from "./word-files.ts";

export interface BuiltSearch {
  /** What is known of every entry; the addresses of the other files are not known yet. */
  readonly index: Omit<SearchIndex, "details" | "shards">;
  readonly details: SearchDetails;
  readonly files: readonly CutWordFile[];
}

/** Values in the order in which they are first met. */
class Register<Value> {
  readonly values: Value[] = [];
  readonly #places = new Map<string, number>();
  placeOf(key: string, value: () => Value): number {
    const known = this.#places.get(key);
    if (known !== undefined) return known;
    const place = this.values.length;
    this.values.push(value());
    this.#places.set(key, place);
    return place;
  }
}

const oneLine = (text: string | null): string => (text ?? "").replace(/\s+/g, " ");
const lines = (texts: Iterable<string>): string => [...texts].join("\n");
const rising = (numbers: Iterable<number>): number[] => [...new Set(numbers)].sort((a, b) => a - b);

/** A set number is most often in the title, where it is found as well. */
const saysSet = (title: string, set: string): boolean => foldedWords(title).includes(fold(set));

function issueOf(item: PublishedItem): readonly [number | null, number | null] {
  const when = item.dating.serial.made ?? item.dating.issued;
  const years = when === null ? null : yearsOf(when);
  const known = (year: number | null | undefined) =>
    year === null || year === undefined || !Number.isFinite(year) ? null : year;
  return [known(years?.first), known(years?.last)];
}

/** The classes that the interval spans, on a scale whose classes stand in order. */
function classesOf(variant: PublishedVariant, scale: readonly { readonly id: string }[]): number[] {
  const { low = null, high = null } = variant.rarity.class ?? {};
  const ends = [low, high].map((id) => scale.findIndex((each) => each.id === id)).filter((at) => at >= 0);
  if (ends.length === 0) return [];
  const [first, last] = [Math.min(...ends), Math.max(...ends)];
  return Array.from({ length: last - first + 1 }, (_, at) => first + at);
}

/** The search index of a collection: chosen fields of what is published, and nothing else. */
export function buildSearchIndex({ collection }: Pick<CollectionIndex, "collection">): BuiltSearch {
  const items = catalogueOrder({ collection }).flatMap(({ items: of }) => of);
  const scale = collection.scale?.classes ?? [];
  const families = new Map(collection.families.map(({ id }, at) => [id, at]));
  const variants = new Map(collection.variants.map(({ id }, at) => [id, at]));
  const partPlaces = new Map(
    collection.variants.map(({ id, parts }) => [id, new Map(parts.map((part, at) => [part.id, at]))]),
  );
  const levels = new Register<{ id: string; name: string }>();
  const hazards = new Register<{ id: string; name: string }>();
  const places = new Register<string>();
  const years = new Register<readonly [number | null, number | null]>();
  const column = (value: (item: PublishedItem) => number): string => packNumbers(items.map(value));

  return {
    index: {
      count: items.length,
      titles: lines(items.map(({ title }) => oneLine(title))),
      ids: lines(items.map(({ id }) => id)),
      serials: lines(items.map(({ serial }) => oneLine(serial))),
      sets: lines(items.map(({ set, title }) => (set === null || saysSet(title, set) ? "" : oneLine(set)))),
      families: collection.families.map(({ id, name, maker }) => ({ id, name, maker })),
      variants: collection.variants.map((variant) => ({
        id: variant.id,
        name: variant.name,
        family: families.get(variant.family.id) ?? 0,
        classes: classesOf(variant, scale),
        survivors: variant.rarity.survivors.value,
      })),
      variant: column(({ variant }) => variants.get(variant.id) ?? 0),
      verdict: column(({ identification }) => verdicts.indexOf(identification.verdict)),
      status: column(({ status }) => Math.max(0, statuses.indexOf(status as (typeof statuses)[number]))),
      assembled: column(({ assembled }) => Math.min(1, assembled.length)),
      level: column(({ completeness, levels: ofItem }) => {
        const sure = ofItem.find(({ id }) => id === completeness.level.sure);
        return sure ? 1 + levels.placeOf(sure.id, () => sure) : 0;
      }),
      low: column(({ completeness }) =>
        completeness.weighted ? 1 + shareStep(completeness.weighted.low) : 0,
      ),
      high: column(({ completeness }) =>
        completeness.weighted ? 1 + shareStep(completeness.weighted.high) : 0,
      ),
      place: column(({ rarity }) => rarity.rank?.place ?? 0),
      of: column(({ rarity }) => rarity.rank?.of ?? 0),
      year: column((item) => {
        const issued = issueOf(item);
        return years.placeOf(issued.join("/"), () => issued);
      }),
      hazard: lines(
        items.map((item) =>
          packRising(rising(item.hazards.map(({ id, name }) => hazards.placeOf(id, () => ({ id, name }))))),
        ),
      ),
      levels: levels.values,
      classes: scale.map(({ id, words }) => ({ id, name: words ?? id })),
      hazards: hazards.values,
      years: years.values,
    },
    details: {
      parts: collection.variants.map(({ parts }) => parts.map(({ id, name }) => ({ id, name }))),
      missing: lines(
        items.map(({ completeness, variant }) =>
          packRising(
            rising(completeness.missing.flatMap((part) => partPlaces.get(variant.id)?.get(part) ?? [])),
          ),
        ),
      ),
      placesOf: lines(
        items.map(({ provenance }) =>
          packRising(
            rising(
              provenance.events.flatMap(({ place }) =>
                place === null || place === "" ? [] : places.placeOf(place, () => oneLine(place)),
              ),
            ),
          ),
        ),
      ),
      places: places.values,
    },
    files: cutWordFiles(gatherWords(items.map(itemWords))),
  };
}
