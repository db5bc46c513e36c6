import type { Lookup } from "../lookup.ts";
import type { PublishedItem, PublishedVariant } from "../published.ts";
import { type Resolved, unknownName } from "./resolved.ts";

/** The drawings that a variant or an item has; false where its record holds nothing to draw. */
export const variantPlots = {
  sightings: ({ sightings }: PublishedVariant) => sightings.length > 0,
  serials: ({ serials }: PublishedVariant) => serials.length > 0,
  parts: ({ parts }: PublishedVariant) => parts.some(({ rate }) => rate.value !== null),
  "case-plan": ({ parts }: PublishedVariant) => parts.length > 0,
};
export const itemPlots = {
  "case-plan": ({ parts }: PublishedItem) => parts.length > 0,
  completeness: ({ completeness }: PublishedItem) => completeness.weighted !== null,
  custody: ({ provenance }: PublishedItem) => provenance.events.length > 0,
};

export type PlotAt =
  | { readonly kind: "variant"; readonly variant: PublishedVariant; readonly plot: keyof typeof variantPlots }
  | { readonly kind: "item"; readonly item: PublishedItem; readonly plot: keyof typeof itemPlots };

const isKey = <Plots extends object>(plots: Plots, name: string): name is keyof Plots & string =>
  Object.hasOwn(plots, name);

/** The drawing at a path such as `variants/survey-pattern-2/sightings`. */
export function plotAt(
  [root = "", id = "", name = "", ...more]: readonly string[],
  lookup: Lookup,
): Resolved<PlotAt> {
  if (root !== "variants" && root !== "items") {
    return { problem: unknownName(root, '"variants" or "items"', ["variants", "items"]) };
  }
  const nothing = { found: "nothing to draw", expected: "records from which this drawing can be made" };
  const plots = root === "variants" ? variantPlots : itemPlots;
  const wrongName = unknownName([name, ...more].join("/"), `a drawing of ${root}`, Object.keys(plots));
  if (root === "variants") {
    const variant = lookup.variants.get(id);
    if (!variant) return { problem: unknownName(id, "the id of a variant", lookup.variants.values()) };
    if (!isKey(variantPlots, name) || more.length > 0) return { problem: wrongName };
    return variantPlots[name](variant)
      ? { value: { kind: "variant", variant, plot: name } }
      : { problem: nothing };
  }
  const item = lookup.items.get(id);
  if (!item) return { problem: unknownName(id, "the id of an item", lookup.items.values()) };
  if (!isKey(itemPlots, name) || more.length > 0) return { problem: wrongName };
  return itemPlots[name](item) ? { value: { kind: "item", item, plot: name } } : { problem: nothing };
}
