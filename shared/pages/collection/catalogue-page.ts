import { grouping } from "../../lists/grouping.ts";
import { addresses } from "../addresses/addresses.ts";
import { entriesOnPage, type PagerView, pagerView } from "../addresses/pager.ts";
import { linkedData } from "../citation/linked-data.ts";
import type { CatalogueIndex } from "../listed/catalogue-index.ts";
import type { ListedItem } from "../listed/listed-family.ts";
import type { Link, PageHead } from "../page.ts";
import type { PageMaker } from "../page-maker.ts";
import { levelOf } from "../search/level-of.ts";
import type { EntryView } from "../views/entry-view.ts";
import { type FinderView, finderView } from "./finder-view.ts";

/** The outfits of a variant, with how many of it survive. */
export interface EntryGroup {
  readonly variant: Link;
  readonly survive: string;
  readonly entries: readonly EntryView[];
}

/** A list of outfits: the whole catalogue, or a family's, a variant's, a level's; a page of it. */
export interface CataloguePage extends PageHead {
  readonly kind: "catalogue";
  readonly lead: string;
  readonly groups: readonly EntryGroup[];
  readonly pager: PagerView | null;
  /** What may be asked, on the first page of the whole. */
  readonly finder: FinderView | null;
  /** The lists into which the catalogue is cut, each with how many it has. */
  readonly lists: readonly {
    readonly name: string;
    readonly lists: readonly (Link & { readonly count: string })[];
  }[];
  readonly files: readonly Link[];
}

interface List {
  readonly address: string;
  readonly title: string;
  readonly lead: string;
  readonly items: readonly ListedItem[];
  readonly isWhole: boolean;
}

/** Every list of outfits, page by page: by these everything is found without a script. */
export function cataloguePages(index: CatalogueIndex): readonly PageMaker<CataloguePage>[] {
  const { words } = index;
  const { catalogue: say, finder: ofFinder } = words.pages;
  const count = (items: readonly unknown[]) => words.numbers.count(items.length);
  const all = index.listed.flatMap(({ items }) => items);

  const part = (address: string, title: string, items: readonly ListedItem[]): List => ({
    address,
    title,
    lead: ofFinder.leadOf(items.length),
    items,
    isWhole: false,
  });
  const families = index.listed
    .filter(({ items }) => items.length > 0)
    .map(({ id, name, items }) => ({
      name,
      list: part(addresses.itemsOfFamily(id), ofFinder.ofFamily(name), items),
    }));
  const ofVariant = new Map<string, { name: string; items: ListedItem[] }>();
  const ofLevel = new Map<string, { name: string; items: ListedItem[] }>();
  const add = (lists: typeof ofLevel, { id, name }: { id: string; name: string }, item: ListedItem) => {
    const known = lists.get(id);
    if (known) known.items.push(item);
    else lists.set(id, { name, items: [item] });
  };
  const levelAt = levelOf(index.listed);
  for (const item of all) {
    add(ofVariant, item.variant, item);
    const level = levelAt(item);
    if (level) add(ofLevel, level, item);
  }
  const variants = [...ofVariant].map(([id, { name, items }]) => ({
    name,
    list: part(addresses.itemsOfVariant(id), ofFinder.ofVariant(name), items),
  }));
  const levels = [...ofLevel].map(([id, { name, items }]) => ({
    name,
    list: part(addresses.itemsOfLevel(id), ofFinder.ofLevel(name), items),
  }));
  // Where the list of an id stood before it had several meanings, it has them all.
  const mixedLevels = [...grouping(all, ({ level }) => level?.id ?? "")].flatMap(([id, items]) => {
    if (id === "" || ofLevel.has(id)) return [];
    const names = [...new Set(items.map(({ level }) => level?.name))].join("; ");
    return part(addresses.itemsOfLevel(id), ofFinder.ofLevel(names), items);
  });
  const listed = (name: string, lists: readonly { readonly name: string; readonly list: List }[]) => ({
    name,
    lists: lists.map(({ name: of, list }) => ({
      address: list.address,
      name: of,
      count: count(list.items),
    })),
  });

  const whole: List = {
    address: addresses.items,
    title: say.title,
    lead: all.length === 0 ? say.empty : say.lead(all.length),
    items: all,
    isWhole: true,
  };
  const lists = [
    listed(ofFinder.byFamily, families),
    listed(ofFinder.byVariant, variants),
    listed(ofFinder.byLevel, levels),
  ].filter((each) => each.lists.length > 0);
  const finder = all.length > 1 ? finderView(index) : null;
  const survive = new Map(
    index.listed.flatMap((family) =>
      family.variants.map((variant) => [variant.id, variant.survive] as const),
    ),
  );
  const parts = [...families, ...variants, ...levels].map(({ list }) => list);
  return [whole, ...parts, ...mixedLevels].flatMap((list) =>
    pagesOf(list, index, survive).map(({ address, make }) => ({
      address,
      make: () => ({
        ...make(),
        finder: list.isWhole && address === list.address ? finder : null,
        lists: list.isWhole && address === list.address ? lists : [],
      }),
    })),
  );
}

interface ListPage {
  readonly address: string;
  readonly make: () => Omit<CataloguePage, "finder" | "lists">;
}

function pagesOf(
  { address, title, lead, items, isWhole }: List,
  { collection, words, itemCount }: CatalogueIndex,
  survive: ReadonlyMap<string, string>,
): ListPage[] {
  const { catalogue: say, finder: ofFinder, site } = words.pages;
  const of = Math.max(1, Math.ceil(items.length / entriesOnPage));
  return Array.from({ length: of }, (_, at) => {
    const page = at + 1;
    const here = addresses.page(address, page);
    const make = () => {
      const name = page === 1 ? title : ofFinder.titleOfPage(title, page, of);
      const description = isWhole ? say.description(itemCount) : lead;
      const groups = new Map<string, EntryGroup & { entries: EntryView[] }>();
      for (const { variant, entry } of items.slice(at * entriesOnPage, page * entriesOnPage)) {
        const group = groups.get(variant.id);
        if (group) group.entries.push(entry);
        else
          groups.set(variant.id, {
            variant: entry.variant,
            survive: survive.get(variant.id) ?? "",
            entries: [entry],
          });
      }
      return {
        kind: "catalogue" as const,
        address: here,
        title: name,
        description,
        trail: [
          { address: addresses.home, name: collection.settings.title },
          ...(isWhole && page === 1 ? [] : [{ address: addresses.items, name: say.title }]),
          ...(isWhole || page === 1 ? [] : [{ address, name: title }]),
        ],
        linkedData: linkedData(collection, "CollectionPage", here, { name, description }),
        lead: page === 1 ? lead : ofFinder.page(page, of),
        groups: [...groups.values()],
        pager: pagerView(page, of, (number) => addresses.page(address, number), ofFinder),
        files: isWhole
          ? [
              { address: addresses.itemsCsv, name: site.table },
              { address: addresses.collectionData, name: site.allData },
            ]
          : [],
      };
    };
    return { address: here, make };
  });
}
