import type { KeyStep, PublishedFamily, PublishedVariant } from "../../publication/published.ts";
import { addresses } from "../addresses/addresses.ts";
import type { CollectionIndex } from "../collection-index.ts";
import type { Link } from "../page.ts";
import { plain } from "../views/item-parts.ts";

/** One question of the printed key: every answer leads to another question or to what is left. */
export interface KeyQuestion {
  readonly number: number;
  readonly feature: Link;
  readonly answers: readonly {
    readonly values: string;
    readonly next: number | null;
    readonly variants: readonly Link[];
  }[];
}

export interface FamilyKeyView {
  /** Where a serial decides without any question. */
  readonly bySerial: string | null;
  readonly questions: readonly KeyQuestion[];
  /** The smallest sets of features that tell the variants apart, each in words; the first is the key's own. */
  readonly sets: readonly string[];
  /** Whether they are the smallest, and whether all of them are here. */
  readonly proof: readonly string[];
  /** Pairs that no feature is sure to separate, with those that may. */
  readonly unseparated: readonly string[];
}

export function familyKeyView(
  family: PublishedFamily,
  { words, variants }: CollectionIndex,
): FamilyKeyView | null {
  const { key } = family;
  if (family.variants.length < 2) return null;
  const { list, item, family: say } = words.pages;
  const featureName = (id: string) => family.features.find((feature) => feature.id === id)?.name ?? id;
  const variantName = (id: string) => family.variants.find((variant) => variant.id === id)?.name ?? id;
  const questions: KeyQuestion[] = [];

  /** Numbers a question before those that it leads to, so that a reader always goes forward. */
  const number = (step: KeyStep): number | null => {
    if (step.kind === "end") return null;
    const at = questions.length;
    const feature = { address: `#feature-${step.feature}`, name: featureName(step.feature) };
    questions.push({ number: at + 1, feature, answers: [] });
    const answers = step.answers.map(({ values, next }) => ({
      values: values.map(plain).join(item.or),
      next: number(next),
      variants:
        next.kind === "end"
          ? next.variants.map((id) => ({ address: addresses.variant(id), name: variantName(id) }))
          : [],
    }));
    questions[at] = { number: at + 1, feature, answers };
    return at + 1;
  };
  number(key.key);

  return {
    bySerial: key.bySerial ? say.bySerial : null,
    questions,
    sets: key.sets.filter((set) => set.length > 0).map((set) => list(set.map(featureName))),
    proof: [
      key.proven ? say.proven : say.notProven,
      ...(key.proven && !key.complete ? [say.notAllListed(key.sets.length)] : []),
    ],
    unseparated: key.unseparated.map((pair) => {
      const names = list(pair.map(variantName));
      const may = family.features.filter(({ id }) =>
        mayDiffer(
          id,
          pair.map((of) => variants.get(of)),
        ),
      );
      return may.length > 0 ? say.mayBeSeparated(names, list(may.map(({ name }) => name))) : names;
    }),
  };
}

/** Whether some value of a feature is found on the one and not on the other. */
function mayDiffer(feature: string, pair: readonly (PublishedVariant | undefined)[]): boolean {
  const [a = [], b = []] = pair.map((variant) => variant?.features.find(({ id }) => id === feature)?.values);
  const isKnown = a.length > 0 && b.length > 0;
  return isKnown && (a.some((value) => !b.includes(value)) || b.some((value) => !a.includes(value)));
}
