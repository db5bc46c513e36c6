import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import type { PublishedCollection, PublishedItem } from "../../shared/publication/published.ts";
import { generateCollection } from "../benchmarks/generate-collection.ts";
import { publishedIn } from "../collections/collection.ts";
import { type OpenSearch, openSearch } from "./open-search.ts";

let published: PublishedCollection;
let search: OpenSearch;
beforeAll(() => {
  const folder = mkdtempSync(path.join(tmpdir(), "fittedcase-filters-"));
  generateCollection({ folder, items: 90, seed: 7, itemsInVariant: 9 });
  published = publishedIn(folder);
  search = openSearch(published);
});

const ask = (asked: Readonly<Record<string, string>>): string[] =>
  search.ask(`?${new URLSearchParams(asked)}`).sort();

/** Whole percent as the page prints them: 79.6 certain and 84.2 possible are 79 and 85; where nothing is in doubt 79.6 is 80. */
function percents({ completeness: { weighted } }: PublishedItem): { low: number; high: number } {
  const { low, high } = weighted ?? { low: -1, high: 2 };
  if (low === high) return { low: Math.round(100 * low), high: Math.round(100 * high) };
  return { low: Math.floor(100 * low + 1e-9), high: Math.ceil(100 * high - 1e-9) };
}

/** What a filter means, said once more in the plainest way, over what is published. */
const means: Readonly<Record<string, (item: PublishedItem, asked: string) => boolean>> = {
  family: (item, asked) => item.family.id === asked,
  variant: (item, asked) => item.variant.id === asked,
  level: (item, asked) => item.completeness.level.sure === asked,
  evidence: (item, asked) => item.identification.verdict === asked,
  status: (item, asked) => item.status === asked,
  hazard: (item, asked) => item.hazards.some(({ id }) => id === asked),
  missing: ({ completeness: { missing, partial } }, asked) => [...missing, ...partial].includes(asked),
  place: (item, asked) => item.provenance.events.some(({ place }) => place?.includes(asked)),
  least: (item, asked) => percents(item).low >= Number(asked),
  most: (item, asked) => percents(item).high <= Number(asked),
};

const matching = (asked: Readonly<Record<string, string>>): string[] =>
  published.items
    .filter((item) => Object.entries(asked).every(([field, value]) => means[field]?.(item, value)))
    .map(({ id }) => id)
    .sort();

/** Something that an item of the collection has. */
const sample = (item: PublishedItem): Record<string, string | undefined> => ({
  family: item.family.id,
  variant: item.variant.id,
  level: item.completeness.level.sure ?? undefined,
  evidence: item.identification.verdict,
  status: item.status,
  hazard: item.hazards[0]?.id,
  missing: item.completeness.missing[0],
  place: item.provenance.events[0]?.place ?? undefined,
  least: String(Math.floor(100 * (item.completeness.weighted?.low ?? 0))),
  most: String(Math.ceil(100 * (item.completeness.weighted?.high ?? 1))),
});

describe("a filter", () => {
  it.each(Object.keys(means))("%s lets through what it says, and nothing else", (field) => {
    const values = new Set(published.items.flatMap((item) => sample(item)[field] ?? []));
    expect(values.size).toBeGreaterThan(0);
    for (const value of values) expect(ask({ [field]: value })).toEqual(matching({ [field]: value }));
  });

  it("together with others lets through what all of them do", () =>
    fc.assert(
      fc.property(
        fc.nat(89),
        fc.subarray(Object.keys(means), { minLength: 2, maxLength: 4 }),
        (place, chosen) => {
          const item = published.items[place];
          const has = item ? sample(item) : {};
          const asked = Object.fromEntries(
            chosen.flatMap((field) => (has[field] === undefined ? [] : [[field, has[field] ?? ""]])),
          );
          expect(ask(asked)).toEqual(matching(asked));
        },
      ),
    ));

  it("for a class of rarity lets a variant through whose survivors' interval touches it", () => {
    const classes = published.scale?.classes.map(({ id }) => id) ?? [];
    for (const wanted of classes) {
      const at = classes.indexOf(wanted);
      const expected = published.items.filter(({ variant }) => {
        const { low = null, high = null } =
          published.variants.find(({ id }) => id === variant.id)?.rarity.class ?? {};
        const ends = [low, high].flatMap((id) => (id === null ? [] : [classes.indexOf(id)]));
        return ends.length > 0 && Math.min(...ends) <= at && at <= Math.max(...ends);
      });
      expect(ask({ class: wanted })).toEqual(expected.map(({ id }) => id).sort());
    }
  });

  it("for years lets through what may have been issued in them", () => {
    // The generator writes every date of issue as two years.
    const yearsOf = (item: PublishedItem) =>
      (item.dating.serial.made ?? item.dating.issued ?? "").split("/").map(Number);
    for (const [from, to] of [
      [1880, 1900],
      [1900, 1901],
      [1860, 1870],
    ] as const) {
      const expected = published.items
        .filter((item) => {
          const [first = 0, last = 0] = yearsOf(item);
          return last >= from && first <= to;
        })
        .map(({ id }) => id)
        .sort();
      expect(ask({ from: String(from), to: String(to) })).toEqual(expected);
      expect(ask({ from: String(from) }).length).toBeGreaterThanOrEqual(expected.length);
    }
  });

  it("for what the catalogue has not got lets nothing through", () => {
    for (const field of [
      "family",
      "variant",
      "level",
      "evidence",
      "status",
      "class",
      "hazard",
      "missing",
      "place",
    ])
      expect(ask({ [field]: "no-such-thing" })).toEqual([]);
  });

  it("that is no number asks nothing", () => expect(ask({ least: "many" })).toHaveLength(90));
});

describe("an order", () => {
  const inOrder = (sort: string) => {
    const byId = new Map(published.items.map((item) => [item.id, item]));
    return search.ask(`?sort=${sort}`).flatMap((id) => byId.get(id) ?? []);
  };
  const rises = (numbers: readonly number[]) => expect(numbers).toEqual([...numbers].sort((a, b) => a - b));

  it("keeps every entry", () => {
    for (const sort of ["title", "complete", "year", "rare", "place"]) expect(inOrder(sort)).toHaveLength(90);
  });

  it("of titles goes by their words and by the value of their numbers", () => {
    const titles = inOrder("title").map(({ title }) => title);
    const collator = new Intl.Collator("en", { numeric: true, ignorePunctuation: true });
    const wrong = titles.filter((title, at) => at > 0 && collator.compare(titles[at - 1] ?? "", title) > 0);
    expect(wrong).toEqual([]);
  });

  it("of completeness has the fullest first", () =>
    rises(inOrder("complete").map((item) => -percents(item).low)));

  it("of issue has the earliest first", () =>
    rises(
      inOrder("year").map((item) =>
        Number((item.dating.serial.made ?? item.dating.issued ?? "").slice(0, 4)),
      ),
    ));

  it("of rarity has the fewest surviving first, and the unknown last", () =>
    rises(
      inOrder("rare").map(
        ({ variant }) =>
          published.variants.find(({ id }) => id === variant.id)?.rarity.survivors.value ??
          Number.POSITIVE_INFINITY,
      ),
    ));

  it("of places among their kind has the first first", () =>
    rises(inOrder("place").map(({ rarity }) => rarity.rank?.place ?? Number.POSITIVE_INFINITY)));

  it("that nobody asked for is the catalogue's: by variant, then by id", () => {
    const variants = published.variants.map(({ id }) => id);
    const items = inOrder("");
    rises(items.map(({ variant }) => variants.indexOf(variant.id)));
    for (const { id } of published.variants) {
      const of = items.filter(({ variant }) => variant.id === id).map((item) => item.id);
      expect(of).toEqual([...of].sort());
    }
  });
});
