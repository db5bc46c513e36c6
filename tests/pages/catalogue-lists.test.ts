import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { pagesToName } from "../../shared/pages/addresses/pager.ts";
import { type CataloguePage, cataloguePages } from "../../shared/pages/collection/catalogue-page.ts";
import type { PublishedCollection } from "../../shared/publication/published.ts";
import { generateCollection } from "../benchmarks/generate-collection.ts";
import { catalogueOf, publishedIn } from "../collections/collection.ts";

const count = 230;
let published: PublishedCollection;
let pages: CataloguePage[];
beforeAll(() => {
  const folder = mkdtempSync(path.join(tmpdir(), "fittedcase-lists-"));
  generateCollection({ folder, items: count, seed: 3, itemsInVariant: 120 });
  published = publishedIn(folder);
  pages = cataloguePages(catalogueOf(published)).map(({ make }) => make());
});

const entriesOf = (page: CataloguePage) => page.groups.flatMap(({ entries }) => entries.map(({ id }) => id));
/** Every entry of a list, page after page, as a reader goes through it. */
function follow(first: string): string[] {
  const byAddress = new Map(pages.map((page) => [page.address, page]));
  const found: string[] = [];
  for (let at: string | undefined = first; at !== undefined; ) {
    const page: CataloguePage | undefined = byAddress.get(at);
    if (!page) throw new Error(`Found no page at ${at}.`);
    found.push(...entriesOf(page));
    at = page.pager?.next?.address;
  }
  return found;
}
const idsWhere = (is: (item: PublishedCollection["items"][number]) => boolean) =>
  published.items
    .filter(is)
    .map(({ id }) => id)
    .sort();

describe("the lists of the catalogue, without a script", () => {
  it("have at most a hundred entries a page", () => {
    for (const page of pages) expect(entriesOf(page).length).toBeLessThanOrEqual(100);
    expect(pages.filter(({ address }) => /^\/items\/(?:page\/\d+\/)?$/.test(address))).toHaveLength(3);
  });

  it("go through every outfit once", () => {
    const all = follow("/items/");
    expect(all).toHaveLength(count);
    expect([...all].sort()).toEqual(idsWhere(() => true));
  });

  it("by family, variant and level have those of it", () => {
    for (const { id } of published.families)
      expect(follow(`/items/by/family/${id}/`).sort()).toEqual(idsWhere(({ family }) => family.id === id));
    for (const { id } of published.variants)
      expect(follow(`/items/by/variant/${id}/`).sort()).toEqual(idsWhere(({ variant }) => variant.id === id));
    const levels = new Set(published.items.flatMap(({ completeness }) => completeness.level.sure ?? []));
    expect(levels.size).toBeGreaterThan(0);
    for (const id of levels)
      expect(follow(`/items/by/level/${id}/`).sort()).toEqual(
        idsWhere(({ completeness }) => completeness.level.sure === id),
      );
  });

  it("are all led to from the first page, each with how many it has", () => {
    const [first] = pages;
    const led = (first?.lists ?? []).flatMap(({ lists }) => lists);
    const starts = pages.filter(({ address }) => /\/by\/[a-z]+\/[^/]+\/$/.test(address));
    expect(led.map(({ address }) => address).sort()).toEqual(starts.map(({ address }) => address).sort());
    for (const { address, count: said } of led) expect(said).toBe(String(follow(address).length));
  });

  it("have a form to ask in on the first page of the whole, and nowhere else", () =>
    expect(pages.filter(({ finder }) => finder !== null).map(({ address }) => address)).toEqual(["/items/"]));
});

describe("the pages that a list names", () => {
  it("are all of them where there are few", () => expect(pagesToName(2, 4)).toEqual([1, 2, 3, 4]));
  it("are the first, the last and those about this one where there are many", () =>
    expect(pagesToName(50, 100)).toEqual([1, null, 48, 49, 50, 51, 52, null, 100]));
  it("stay few however many there are", () => {
    for (let page = 1; page <= 1000; page++) expect(pagesToName(page, 1000).length).toBeLessThanOrEqual(9);
  });
});
