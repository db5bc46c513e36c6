import { nearestName } from "../diagnostics/nearest-name.ts";
import { addresses } from "./addresses.ts";

/** What a site will have, as far as the names of its records tell. */
export interface SiteNames {
  readonly items: readonly string[];
  readonly families: readonly string[];
  readonly variants: readonly string[];
  readonly articles: readonly string[];
  /** Items that have photographs. */
  readonly pictured: readonly string[];
  /** Families and variants of which there are items. */
  readonly held: { readonly families: readonly string[]; readonly variants: readonly string[] };
  readonly hasFields: boolean;
}

export interface KnownAddresses {
  has(path: string): boolean;
  /** The page that was meant by a path which leads to none. */
  near(path: string): string | undefined;
}

type Kind = "items" | "families" | "variants" | "articles";

const kinds = {
  items: (id: string) => [addresses.item(id), addresses.displayCard(id), addresses.itemData(id)],
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

/** Lists that are cut into pages where they are long. */
const listsOf = ({ variants, held }: SiteNames): string[] => [
  addresses.items,
  ...held.families.map(addresses.itemsOfFamily),
  ...held.variants.map(addresses.itemsOfVariant),
  ...variants.map(addresses.sightingsOf),
];

/** What is named after the content of its files, or made only where there is something to show: not looked into. */
const unforeseen = /^\/(?:assets|compare|images|items\/by\/level|recordings)\/./;

/** Where a picture may lie: in no other folder of a site there are any. */
export const mayBePicture = (path: string): boolean => /^\/(?:assets|images)\/./.test(path);

export function knownAddresses(names: SiteNames): KnownAddresses {
  const all = Object.keys(kinds) as Kind[];
  const lists = new Set(listsOf(names));
  const known = new Set([
    ...whole,
    ...lists,
    ...all.flatMap((kind) => names[kind].flatMap(kinds[kind])),
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
      const list = bare.replace(/page\/\d+\/?$/, "");
      return known.has(bare) || known.has(`${bare}/`) || lists.has(list) || unforeseen.test(bare);
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
