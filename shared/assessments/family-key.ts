import type { Feature } from "../records/family.ts";
import type { Variant } from "../records/variant.ts";
import { separatingSets } from "../statistics/separating-sets.ts";
import { tellingFeatures } from "./telling-features.ts";
import { areToldBySerial } from "./telling-serials.ts";

/** A question of the printed key, or the variants at which it ends. */
export type KeyStep =
  | { readonly kind: "end"; readonly variants: readonly string[] }
  | { readonly kind: "question"; readonly feature: string; readonly answers: readonly KeyAnswer[] };

export interface KeyAnswer {
  readonly values: readonly string[];
  readonly next: KeyStep;
}

export interface FamilyKey {
  /** Every smallest set of features that separates whatever pair can be separated. */
  readonly sets: readonly (readonly string[])[];
  readonly effort: number;
  readonly proven: boolean;
  /** Whether `sets` holds all of them. */
  readonly complete: boolean;
  readonly unseparated: readonly (readonly [string, string])[];
  /** Whether a serial tells them apart without any feature. */
  readonly bySerial: boolean;
  /** Asks for the features of the first set only. */
  readonly key: KeyStep;
}

/** What tells the variants of a family apart: the sets of features that separate each two, the least effort first. */
export function assessFamilyKey(
  features: ReadonlyMap<string, Feature>,
  variants: readonly Variant[],
): FamilyKey {
  const found = separatingSets(
    [...features.values()].map(({ id, effort }) => ({ id, effort })),
    variants.map(({ id, features: values }) => ({ id, values })),
  );
  const first = (found.sets[0] ?? []).flatMap((id) => features.get(id) ?? []);
  return { ...found, bySerial: areToldBySerial(variants), key: keyOf(variants, first) };
}

/**
 * Asks first what is easiest to see, and of that what leaves the least doubt; each answer goes on with the variants
 * that it leaves. Any order of the set ends at the same variants, so only the trouble on the way is to be chosen.
 */
function keyOf(variants: readonly Variant[], features: readonly Feature[]): KeyStep {
  const end: KeyStep = { kind: "end", variants: variants.map(({ id }) => id) };
  const [best] = tellingFeatures(variants, features, { easiestFirst: true });
  if (!best) return end;
  const rest = features.filter((feature) => feature !== best);

  // Values that leave the same variants are one answer.
  const answers = new Map<string, { values: string[]; left: Variant[] }>();
  for (const value of best.values) {
    const left = variants.filter((variant) => variant.features.get(best.id)?.includes(value) ?? true);
    if (left.length === 0) continue;
    const together = left.map(({ id }) => id).join(" ");
    const answer = answers.get(together);
    if (answer) answer.values.push(value);
    else answers.set(together, { values: [value], left });
  }
  return {
    kind: "question",
    feature: best.id,
    answers: [...answers.values()].map(({ values, left }) => ({ values, next: keyOf(left, rest) })),
  };
}
