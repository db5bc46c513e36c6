import { statuses } from "../../terms/states.ts";
import { verdicts } from "../../terms/verdicts.ts";
import type { CatalogueIndex } from "../listed/catalogue-index.ts";
import type { ListedItem } from "../listed/listed-family.ts";
import type { SearchedItem } from "../listed/searched-item.ts";
import { levelOf } from "./level-of.ts";
import { namedApart } from "./named-apart.ts";
import { packNumbers, packRising } from "./packed-numbers.ts";
import type { Named, SearchDetails, SearchIndex } from "./search-index.ts";
import { shareSteps } from "./share-steps.ts";
import { type CutWordFile, cutWordFiles, type JoinWords, joinWords } from "./word-files.ts";

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

const manyBlanks = /\s\s|[^\S ]/;
const oneLine = (text: string | null): string =>
  text !== null && manyBlanks.test(text) ? text.replace(/\s+/g, " ") : (text ?? "");
const lines = (texts: readonly string[]): string => texts.join("\n");
const rising = (numbers: Iterable<number>): number[] => [...new Set(numbers)].sort((a, b) => a - b);

/** The search index of a collection: chosen fields of what is published, and nothing else. */
export function buildSearchIndex(
  { collection, listed }: Pick<CatalogueIndex, "collection" | "listed">,
  join: JoinWords = joinWords,
): BuiltSearch {
  const items = listed.flatMap(({ items: of }) => of);
  const variants = listed.flatMap((family, at) =>
    family.variants.map((variant) => ({ ...variant, family: at })),
  );
  const scale = collection.scale?.classes ?? [];
  const variantPlaces = new Map(variants.map(({ id }, at) => [id, at]));
  const levelAt = levelOf(listed);
  const partApart = namedApart(
    variants.flatMap(({ id, parts }) => parts.map((named) => ({ named, variant: id }))),
  );
  const levels = new Register<Named>();
  const hazards = new Register<Named>();
  const places = new Register<string>();
  const years = new Register<readonly [number | null, number | null]>();
  const column = (value: (item: ListedItem) => number): string => packNumbers(items.map(value));
  const searched = (value: (item: SearchedItem) => number): string => column(({ searched: of }) => value(of));
  const step = ({ low, high }: SearchedItem, end: "low" | "high"): number =>
    low === null || high === null ? 0 : 1 + shareSteps({ low, high })[end];

  return {
    index: {
      language: collection.settings.language,
      count: items.length,
      titles: lines(items.map(({ title }) => oneLine(title))),
      ids: lines(items.map(({ id }) => id)),
      serials: lines(items.map((item) => oneLine(item.searched.serial))),
      sets: lines(items.map(({ searched: { set } }) => oneLine(set))),
      families: listed.map(({ id, name, maker }) => ({ id, name, maker })),
      variants: variants.map(({ family, survive, searched: of }) => ({ ...of, survive, family })),
      variant: column(({ variant }) => variantPlaces.get(variant.id) ?? 0),
      verdict: column(({ verdict }) => verdicts.indexOf(verdict)),
      status: column(({ status }) => statuses.indexOf(status)),
      assembled: searched(({ isAssembled }) => Number(isAssembled)),
      level: column((item) => {
        const level = levelAt(item);
        return level ? 1 + levels.placeOf(level.id, () => level) : 0;
      }),
      low: searched((of) => step(of, "low")),
      high: searched((of) => step(of, "high")),
      place: searched(({ place }) => place),
      of: searched(({ of }) => of),
      year: searched(({ issued }) => years.placeOf(issued.join("/"), () => issued)),
      hazard: lines(
        items.map((item) =>
          packRising(rising(item.hazards.map((hazard) => hazards.placeOf(hazard.id, () => hazard)))),
        ),
      ),
      levels: levels.values,
      classes: scale.map(({ id, words }) => ({ id, name: words ?? id })),
      hazards: hazards.values,
      years: years.values,
    },
    details: {
      parts: variants.map(({ parts }) => parts.map(partApart)),
      missing: lines(items.map(({ searched: { missing } }) => missing)),
      placesOf: lines(
        items.map(({ searched: of }) =>
          packRising(rising(of.places.map((place) => places.placeOf(place, () => oneLine(place))))),
        ),
      ),
      places: places.values,
    },
    files: cutWordFiles(join(listed.map(({ words, items: of }) => ({ words, count: of.length })))),
  };
}
