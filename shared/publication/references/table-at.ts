import { areUnlike } from "../../assessments/variant-comparison.ts";
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
  if (root !== "variants" || more.length > 0) {
    return {
      problem: unknownName(
        [root, id, ...more].filter((each) => each !== undefined).join("/"),
        '"variants/" and the id of a family, or "items" with conditions',
        ["items", ...[...lookup.families.keys()].map((family) => `variants/${family}`)],
      ),
    };
  }
  const family = lookup.families.get(id ?? "");
  if (!family) return { problem: unknownName(id ?? "", "the id of a family", lookup.families.values()) };
  return comparison(family, query, lookup);
}

function comparison(
  family: PublishedFamily,
  query: DataReference["query"],
  { variants }: Lookup,
): Resolved<TableAt> {
  let chosen = family.variants;
  let rows: readonly ComparisonRow[] | null = null;
  for (const [name, values] of query) {
    if (name !== "variant" && name !== "show") {
      return { problem: unknownName(name, '"variant" or "show"', ["variant", "show"]) };
    }
    const problem =
      name === "variant"
        ? unknownAmong(
            values,
            family.variants.flatMap(({ id }) => variants.get(id) ?? []),
            `a variant of "${family.id}"`,
          )
        : unknownAmong(values, family.comparison.flatMap(namesOf), `a feature or part of "${family.id}"`);
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
