import type { CatalogueIndex } from "../listed/catalogue-index.ts";
import { levelOf } from "../search/level-of.ts";
import type { Named } from "../search/search-index.ts";
import { orders } from "../search/view-state.ts";

/** A family with its variants. */
export interface ChoiceGroup extends Named {
  readonly choices: readonly Named[];
}

/** What may be asked of the catalogue. Parts and places are many: the script fills them in from the index. */
export interface FinderView {
  readonly families: readonly Named[];
  readonly variants: readonly ChoiceGroup[];
  readonly levels: readonly Named[];
  readonly evidence: readonly Named[];
  readonly statuses: readonly Named[];
  readonly classes: readonly Named[];
  readonly hazards: readonly Named[];
  readonly orders: readonly Named[];
}

const each = (found: Iterable<Named>): Named[] => [
  ...new Map([...found].map(({ id, name }) => [id, { id, name }])).values(),
];

/** Only what some entry answers to is offered; a scale is offered whole. */
export function finderView({ collection, words, listed }: CatalogueIndex): FinderView {
  const { pages } = words;
  const held = listed.filter(({ items }) => items.length > 0);
  const items = held.flatMap((family) => family.items);
  const levelAt = levelOf(listed);
  const statuses = new Set(items.map(({ status }) => status));
  const verdicts = new Set(items.map(({ verdict }) => verdict));
  return {
    families: held.map(({ id, name }) => ({ id, name })),
    variants: held.map(({ id, name, variants }) => ({
      id,
      name,
      choices: each(variants.filter((variant) => variant.items > 0)),
    })),
    levels: each(items.flatMap((item) => levelAt(item) ?? [])),
    evidence: [...verdicts].map((id) => ({ id, name: pages.verdicts[id].short })),
    statuses: [...statuses].map((id) => ({ id, name: pages.statuses[id] })),
    classes: (collection.scale?.classes ?? []).map(({ id, words: said }) => ({ id, name: said ?? id })),
    hazards: each(items.flatMap(({ hazards }) => hazards)),
    orders: (["", ...orders] as const).map((id) => ({ id, name: pages.finder.orders[id] })),
  };
}
