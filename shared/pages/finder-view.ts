import { catalogueOrder } from "./catalogue-order.ts";
import type { CollectionIndex } from "./collection-index.ts";
import type { Named } from "./search/search-index.ts";
import { orders } from "./search/view-state.ts";

export interface ChoiceGroup {
  /** Null where the choices stand by themselves. */
  readonly name: string | null;
  /** Its family, where it is one. */
  readonly id: string | null;
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
export function finderView(index: CollectionIndex): FinderView {
  const { collection, words } = index;
  const { pages } = words;
  const { items, families } = collection;
  const found = catalogueOrder(index).map(({ variant }) => variant);
  const held = new Set(found.map(({ family }) => family.id));
  const statuses = new Set(items.map(({ status }) => status));
  const verdicts = new Set(items.map(({ identification }) => identification.verdict));
  return {
    families: families.filter(({ id }) => held.has(id)).map(({ id, name }) => ({ id, name })),
    variants: families
      .map(({ id, name }) => ({ id, name, choices: each(found.filter(({ family }) => family.id === id)) }))
      .filter(({ choices }) => choices.length > 0),
    levels: each(
      items.flatMap(
        ({ levels, completeness }) => levels.find(({ id }) => id === completeness.level.sure) ?? [],
      ),
    ),
    evidence: [...verdicts].map((id) => ({ id, name: pages.verdicts[id].short })),
    statuses: [...statuses].map((id) => ({ id, name: pages.statuses[id] ?? id })),
    classes: (collection.scale?.classes ?? []).map(({ id, words: said }) => ({ id, name: said ?? id })),
    hazards: each(items.flatMap(({ hazards }) => hazards)),
    orders: (["", ...orders] as const).map((id) => ({ id, name: pages.finder.orders[id] })),
  };
}
