import type { Finding } from "../../diagnostics/diagnostic.ts";
import type { Lookup } from "../lookup.ts";
import { isAmongThree } from "../others-compared.ts";
import type { PublishedItem, PublishedVariant } from "../published.ts";
import { unknownSubject } from "./reading-at.ts";
import { type Resolved, unknownName } from "./resolved.ts";

/** The drawings that a variant or an item has; false where its record holds nothing to draw. */
export const variantPlots = {
  sightings: ({ sightings }: PublishedVariant) => sightings.length > 0,
  serials: ({ serials }: PublishedVariant) => serials.length > 0,
  parts: ({ parts }: PublishedVariant) => parts.some(({ rate }) => rate.value !== null),
  likeness: ({ likenesses }: PublishedVariant) => likenesses.some(isAmongThree),
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

/** What is wrong with the names of a path to a drawing, after those of its subject. */
export function unknownPlot([root = "", , name = "", ...more]: readonly string[]): Finding | null {
  const plots = root === "variants" ? variantPlots : itemPlots;
  if (Object.hasOwn(plots, name) && more.length === 0) return null;
  return unknownName([name, ...more].join("/"), `a drawing of ${root}`, Object.keys(plots));
}

const isKey = <Plots extends object>(plots: Plots, name: string): name is keyof Plots & string =>
  Object.hasOwn(plots, name);

/** The drawing at a path such as `variants/survey-pattern-2/sightings`. */
export function plotAt(path: readonly string[], lookup: Lookup): Resolved<PlotAt> {
  const problem = unknownSubject(path, lookup) ?? unknownPlot(path);
  if (problem) return { problem };
  const [root, id = "", name = ""] = path;
  const variant = root === "variants" ? lookup.variants.get(id) : undefined;
  const item = root === "items" ? lookup.items.get(id) : undefined;
  if (variant && isKey(variantPlots, name) && variantPlots[name](variant))
    return { value: { kind: "variant", variant, plot: name } };
  if (item && isKey(itemPlots, name) && itemPlots[name](item))
    return { value: { kind: "item", item, plot: name } };
  return {
    problem: { found: "nothing to draw", expected: "records from which this drawing can be made" },
  };
}
