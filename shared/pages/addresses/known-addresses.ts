import { nearestName } from "../../diagnostics/nearest-name.ts";
import { addresses } from "./addresses.ts";
import { entriesOnPage } from "./pager.ts";

/** What a site will have, as far as the names of its records tell. */
export interface SiteNames {
  readonly items: readonly string[];
  readonly families: readonly string[];
  readonly variants: readonly string[];
  readonly articles: readonly string[];
  /** Items that have a display card, and those that have photographs. */
  readonly carded: readonly string[];
  readonly pictured: readonly string[];
  /** Families and variants of which there are items, with how many. */
  readonly held: {
    readonly families: ReadonlyMap<string, number>;
    readonly variants: ReadonlyMap<string, number>;
  };
  readonly hasFields: boolean;
}

export interface KnownAddresses {
  has(path: string): boolean;
  /** The page that was meant by a path which leads to none. */
  near(path: string): string | undefined;
}

type Kind = "items" | "families" | "variants" | "articles";

const kinds = {
  items: (id: string) => [addresses.item(id), addresses.itemData(id)],
  families: (id: string) => [addresses.family(id), addresses.familyData(id)],
  variants: (id: string) => [addresses.variant(id), addresses.variantData(id)],
  articles: (id: string) => [addresses.article(id), addresses.articleData(id)],
} as const satisfies Record<Kind, (id: string) => string[]>;

const whole: readonly string[] = [
  addresses.home,
  addresses.items,
  addresses.comparisons,
  addresses.families,
  addresses.articles,
  addresses.sources,
  addresses.sightings,
  addresses.wants,
  addresses.methods,
  addresses.missing,
  addresses.collectionData,
  addresses.itemsCsv,
  addresses.feed,
  addresses.sitemap,
];

/** Lists that are cut into pages where they are long, with how many pages; of a log nobody has counted the rows. */
const listsOf = ({ items, variants, held }: SiteNames): Map<string, number> => {
  const pagesFor = (count: number) => Math.max(1, Math.ceil(count / entriesOnPage));
  return new Map([
    [addresses.items, pagesFor(items.length)],
    ...[...held.families].map(([id, count]) => [addresses.itemsOfFamily(id), pagesFor(count)] as const),
    ...[...held.variants].map(([id, count]) => [addresses.itemsOfVariant(id), pagesFor(count)] as const),
    ...variants.map((id) => [addresses.sightingsOf(id), Number.POSITIVE_INFINITY] as const),
  ]);
};

/** The further pages of a list: the first is the list itself. */
const furtherPage = /^(.*\/)page\/([1-9]\d*)\/?$/;

/** What is named after the content of its files, or made only where there is something to show: not looked into. */
const unforeseen = /^\/(?:assets|compare|images|items\/by\/level|recordings)\/./;

export function knownAddresses(names: SiteNames): KnownAddresses {
  const all = Object.keys(kinds) as Kind[];
  const lists = listsOf(names);
  const known = new Set([
    ...whole,
    ...lists.keys(),
    ...all.flatMap((kind) => names[kind].flatMap(kinds[kind])),
    ...names.carded.map(addresses.displayCard),
    ...names.pictured.map(addresses.manifest),
    ...(names.hasFields ? [addresses.fields] : []),
  ]);
  const pageOf = (kind: Kind, id: string | undefined) => (id === undefined ? undefined : kinds[kind](id)[0]);
  const topmost = new Map(
    whole.flatMap((address) => {
      const name = /^\/([^/]+)\/$/.exec(address)?.[1];
      return name === undefined ? [] : [[name, address]];
    }),
  );

  return {
    has(path) {
      const bare = path.replace(/(?:^|\/)index\.html$/, "/");
      if (known.has(bare) || known.has(`${bare}/`) || unforeseen.test(bare)) return true;
      const [, list = "", page = "1"] = furtherPage.exec(bare) ?? [];
      return Number(page) > 1 && Number(page) <= (lists.get(list) ?? 0);
    },
    near(path) {
      const segments = path.split("/").filter((segment) => segment !== "" && !/^index\.\w+$/.test(segment));
      const name = (segments.at(-1) ?? "").replace(/\.\w+$/, "");
      const below = segments.length > 1 ? nearestName(segments.at(-2) ?? "", all) : undefined;
      // What it is said to be below comes first.
      const inOrder = all.toSorted((a, b) => Number(b === below) - Number(a === below));
      for (const kind of inOrder) if (names[kind].includes(name)) return pageOf(kind, name);
      for (const kind of inOrder) {
        const page = pageOf(kind, nearestName(name, names[kind]));
        if (page !== undefined) return page;
      }
      return topmost.get(nearestName(name, topmost.keys()) ?? "");
    },
  };
}
