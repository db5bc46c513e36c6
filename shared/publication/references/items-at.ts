import type { Finding } from "../../diagnostics/diagnostic.ts";
import type { Renamed } from "../../diagnostics/nearest-name.ts";
import type { DataReference } from "../../prose/reference.ts";
import { statuses } from "../../terms/states.ts";
import { verdicts } from "../../terms/verdicts.ts";
import type { Lookup } from "../lookup.ts";
import type { PublishedItem } from "../published.ts";
import { type Resolved, unknownAmong, unknownName } from "./resolved.ts";
import type { TableAt } from "./table-at.ts";

/** What a table of items can show of each, beside its name. */
export const itemFields = [
  "variant",
  "serial",
  "set",
  "status",
  "examined",
  "verdict",
  "completeness",
  "counted",
  "level",
  "missing",
  "rank",
  "asComplete",
  "asCompleteSurvivors",
  "asCompleteWait",
] as const;

export type ItemColumn =
  | { readonly kind: "field"; readonly field: (typeof itemFields)[number] }
  | { readonly kind: "part" | "feature"; readonly id: string; readonly name: string };

interface Condition {
  /** What the condition may name. */
  readonly known: readonly (string | Renamed)[];
  readonly expected: string;
  readonly holds: (item: PublishedItem, value: string) => boolean;
}

const conditionNames = [
  "variant",
  "family",
  "level",
  "status",
  "verdict",
  "item",
  "missing",
  "present",
] as const;
type ConditionName = (typeof conditionNames)[number];

const isCondition = (name: string): name is ConditionName =>
  (conditionNames as readonly string[]).includes(name);

/** What is wrong with the name of a condition. */
export const unknownCondition = (name: string): Finding | null =>
  name === "show" || isCondition(name)
    ? null
    : unknownName(name, "a condition, or show", ["show", ...conditionNames]);

const unique = (values: Iterable<string>): string[] => [...new Set(values)];
const isField = (name: string): name is (typeof itemFields)[number] =>
  (itemFields as readonly string[]).includes(name);

function conditionsOf({
  collection: { variants, families, items },
}: Lookup): Readonly<Record<ConditionName, Condition>> {
  const parts = unique(variants.flatMap((variant) => variant.parts.map(({ id }) => id)));
  const hasPart = (item: PublishedItem, part: string) => {
    const found = item.parts.find(({ id }) => id === part);
    return found !== undefined && found.units.expected > 0 && found.units.present >= found.units.expected;
  };
  return {
    variant: {
      known: variants,
      expected: "the id of a variant",
      holds: (item, id) => item.variant.id === id,
    },
    family: {
      known: families,
      expected: "the id of a family",
      holds: (item, id) => item.family.id === id,
    },
    level: {
      known: unique(variants.flatMap(({ levels }) => levels.map(({ id }) => id))),
      expected: "a level of completeness",
      holds: (item, level) => item.completeness.level.sure === level,
    },
    status: {
      known: statuses,
      expected: "a status",
      holds: (item, status) => item.status === status,
    },
    verdict: {
      known: verdicts,
      expected: "a verdict",
      holds: (item, verdict) => item.identification.verdict === verdict,
    },
    item: {
      known: items,
      expected: "the id of an item",
      holds: (item, id) => item.id === id,
    },
    missing: {
      known: parts,
      expected: "a part of a variant",
      holds: ({ completeness: { missing, partial } }, part) => [...missing, ...partial].includes(part),
    },
    present: { known: parts, expected: "a part of a variant", holds: hasPart },
  };
}

/** Alternatives stand in one condition, parted by commas; several conditions must all hold. */
export function itemsAt(query: DataReference["query"], lookup: Lookup): Resolved<TableAt> {
  const conditions = conditionsOf(lookup);
  let items = lookup.collection.items;
  let shown: readonly string[] | null = null;
  for (const [name, values] of query) {
    if (name === "show") {
      if (values.length === 0) return { problem: { found: "no column", expected: "at least one" } };
      shown = values;
      continue;
    }
    const condition = isCondition(name) ? conditions[name] : undefined;
    const problem = condition
      ? unknownAmong(values, condition.known, condition.expected)
      : unknownCondition(name);
    if (problem || !condition) return { problem: problem ?? unknownName(name, "a condition", []) };
    items = items.filter((item) => values.some((value) => condition.holds(item, value)));
  }
  const columns: ItemColumn[] = [];
  for (const name of shown ?? defaultColumns(items)) {
    const column = columnAt(name, lookup);
    if ("problem" in column) return column;
    columns.push(column.value);
  }
  const certain = ({ completeness }: PublishedItem) => completeness.weighted?.low ?? 0;
  return { value: { kind: "items", items: [...items].sort((a, b) => certain(b) - certain(a)), columns } };
}

const defaultColumns = (items: readonly PublishedItem[]): string[] => [
  ...(new Set(items.map(({ variant }) => variant.id)).size > 1 ? ["variant"] : []),
  "completeness",
  "level",
  "rank",
];

function columnAt(name: string, { collection }: Lookup): Resolved<ItemColumn> {
  if (isField(name)) return { value: { kind: "field", field: name } };
  const slash = name.indexOf("/");
  const id = name.slice(slash + 1);
  const [kind, named] =
    name.slice(0, Math.max(0, slash)) === "features"
      ? (["feature", collection.families.flatMap(({ features }) => features)] as const)
      : name.startsWith("parts/")
        ? (["part", collection.variants.flatMap(({ parts }) => parts)] as const)
        : ([null, []] as const);
  if (kind === null) {
    const known = [...itemFields, "parts/", "features/"];
    return { problem: unknownName(name, `a column: ${itemFields.join(", ")}, parts/… or features/…`, known) };
  }
  const found = named.find((each) => each.id === id);
  return found
    ? { value: { kind, id, name: found.name } }
    : { problem: unknownName(id, `a ${kind}`, unique(named.map((each) => each.id))) };
}
