import { areUnlike } from "../../assessments/variant-comparison.ts";
import type { Finding } from "../../diagnostics/diagnostic.ts";
import type { Renamed } from "../../diagnostics/nearest-name.ts";
import type { DataReference } from "../../prose/reference.ts";
import type { Lookup } from "../lookup.ts";
import type { ComparisonRow, Named, PublishedFamily, PublishedItem } from "../published.ts";
import { type ItemColumn, itemsAt } from "./items-at.ts";
import { type Resolved, unknownAmong, unknownName } from "./resolved.ts";

export type TableAt =
  | {
      readonly kind: "variants";
      readonly family: PublishedFamily;
      readonly variants: readonly Named[];
      /** Only what differs between them, or what was asked for. */
      readonly rows: readonly ComparisonRow[];
    }
  | {
      readonly kind: "items";
      readonly items: readonly PublishedItem[];
      readonly columns: readonly ItemColumn[];
    };

/** `variants/FAMILY` or `items`, with conditions after a question mark. */
export function tableAt(
  { path: [root = "", id, ...more], query }: DataReference,
  lookup: Lookup,
): Resolved<TableAt> {
  if (root === "items" && id === undefined) return itemsAt(query, lookup);
  const problem = unknownFamily([root, id ?? "", ...more], lookup.families);
  const family = lookup.families.get(id ?? "");
  if (problem || !family) return { problem: problem ?? unknownName(id ?? "", "the id of a family", []) };
  return comparison(family, query, lookup);
}

/** What is wrong with a path that should lead to the comparison of a family. */
export function unknownFamily(
  [root, id = "", ...more]: readonly string[],
  families: ReadonlyMap<string, Renamed>,
): Finding | null {
  if (root !== "variants" || more.length > 0)
    return unknownName(
      [root, id, ...more].filter((each) => each !== "").join("/"),
      '"variants/" and the id of a family, or "items" with conditions',
      ["items", ...[...families.keys()].map((family) => `variants/${family}`)],
    );
  return families.has(id) ? null : unknownName(id, "the id of a family", families.values());
}

/** What a comparison can be narrowed by. */
export const unknownChoice = (name: string): Finding | null =>
  name === "variant" || name === "show"
    ? null
    : unknownName(name, '"variant" or "show"', ["variant", "show"]);

function comparison(
  family: PublishedFamily,
  query: DataReference["query"],
  { variants }: Lookup,
): Resolved<TableAt> {
  let chosen = family.variants;
  let rows: readonly ComparisonRow[] | null = null;
  for (const [name, values] of query) {
    const problem =
      unknownChoice(name) ??
      (name === "variant"
        ? unknownAmong(
            values,
            family.variants.flatMap(({ id }) => variants.get(id) ?? []),
            `a variant of "${family.id}"`,
          )
        : unknownAmong(values, family.comparison.flatMap(namesOf), `a feature or part of "${family.id}"`));
    if (problem) return { problem };
    if (name === "variant") chosen = values.flatMap((id) => family.variants.filter((each) => each.id === id));
    else rows = values.flatMap((row) => family.comparison.filter((each) => namesOf(each).includes(row)));
  }
  const places = chosen.map(({ id }) => family.variants.findIndex((each) => each.id === id));
  const among = (row: ComparisonRow): ComparisonRow => {
    const cells = places.map((place) => row.cells[place] ?? null);
    return { ...row, cells, differs: areUnlike(cells) };
  };
  const compared = (rows ?? family.comparison).map(among);
  return {
    value: {
      kind: "variants",
      family,
      variants: chosen,
      rows: rows ? compared : compared.filter(({ differs }) => differs),
    },
  };
}

/** A feature and a part may bear the same id; then the longer name tells them apart. */
const namesOf = ({ kind, id }: ComparisonRow): string[] => [id, `${kind}s/${id}`];
