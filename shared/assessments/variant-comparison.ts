import type { Family } from "../records/family.ts";
import type { Part, Variant } from "../records/variant.ts";

export interface ComparisonRow {
  readonly kind: "feature" | "part";
  readonly id: string;
  readonly name: string;
  /** One cell a variant, in their order: its values, or the quantity issued; null where it has none. */
  readonly cells: readonly (ComparisonCell | null)[];
  /** True where some two variants are not alike in it. */
  readonly differs: boolean;
}

export type ComparisonCell =
  | { readonly values: readonly string[] }
  | { readonly quantity: number; readonly standing: Part["standing"] };

export interface VariantComparison {
  readonly variants: readonly string[];
  readonly rows: readonly ComparisonRow[];
}

/** Whether some two cells of a row are not alike. */
export const areUnlike = (cells: ComparisonRow["cells"]): boolean =>
  new Set(cells.map((cell) => JSON.stringify(cell))).size > 1;

/** The variants of a family side by side, feature by feature and part by part. */
export function compareVariants(
  { features: declared }: Pick<Family, "features">,
  variants: readonly Variant[],
): VariantComparison {
  // One part may have another name in another variant: a bottle became a tin.
  const partNames = new Map<string, Set<string>>();
  for (const { parts } of variants) {
    for (const { id, name } of parts.values()) partNames.set(id, (partNames.get(id) ?? new Set()).add(name));
  }
  const row = (kind: ComparisonRow["kind"], id: string, name: string, cells: (ComparisonCell | null)[]) => ({
    kind,
    id,
    name,
    cells,
    differs: areUnlike(cells),
  });
  const features = [...declared.values()].map(({ id, name }) =>
    row(
      "feature",
      id,
      name,
      variants.map((variant) => {
        const values = variant.features.get(id);
        return values ? { values } : null;
      }),
    ),
  );
  const parts = [...partNames].map(([id, names]) =>
    row(
      "part",
      id,
      [...names].join(" / "),
      variants.map((variant) => {
        const part = variant.parts.get(id);
        return part ? { quantity: part.quantity, standing: part.standing } : null;
      }),
    ),
  );
  return { variants: variants.map(({ id }) => id), rows: [...features, ...parts] };
}
