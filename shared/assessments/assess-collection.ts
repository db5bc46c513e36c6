import { grouping } from "../lists/grouping.ts";
import type { Collection } from "../records/collection.ts";
import type { Sighting } from "../records/sighting.ts";
import { isAtHand } from "../terms/states.ts";
import { assessCompleteness } from "./completeness.ts";
import { assessFamilyKey, type FamilyKey } from "./family-key.ts";
import { assessHazards, type HazardFinding } from "./hazards.ts";
import { assessIdentification } from "./identification.ts";
import { assessItem, type ItemAssessment } from "./item-assessment.ts";
import { compareCollection, comparedVariants, type ItemPair, type LikenessTable } from "./item-pair.ts";
import { type YearsWatched, yearsWatched } from "./rarity/appearance.ts";
import { type Example, examplesOf } from "./rarity/examples.ts";
import { levelInLog } from "./rarity/level-in-log.ts";
import { rankExamples } from "./rarity/ranked-examples.ts";
import { assessVariantRarity, type VariantRarity } from "./rarity/variant-rarity.ts";
import { type Reallocation, reallocate } from "./reallocation.ts";
import { compareVariants, type VariantComparison } from "./variant-comparison.ts";
import { variantLikeness } from "./variant-likeness.ts";

export interface VariantAssessment {
  readonly variant: string;
  readonly rarity: VariantRarity;
  readonly examples: readonly Example[];
  /** Of each sighting whether its example reaches a level; null where the log does not decide. */
  readonly reached: ReadonlyMap<Sighting, boolean | null>;
  readonly hazards: readonly HazardFinding[];
  /** What its examples here could do for each other; null where nothing spare is wanted. */
  readonly reallocation: Reallocation | null;
}

export interface FamilyAssessment {
  readonly comparison: VariantComparison;
  readonly key: FamilyKey;
}

/** Everything that is computed, computed once, before any page is made. */
export interface Assessments {
  readonly variants: ReadonlyMap<string, VariantAssessment>;
  readonly items: ReadonlyMap<string, ItemAssessment>;
  readonly families: ReadonlyMap<string, FamilyAssessment>;
  /** The pairs of items that have a page of their own. */
  readonly comparisons: readonly ItemPair[];
  readonly watched: YearsWatched | null;
}

/** What the assessment of one family takes from all the others. */
export interface Whole {
  readonly watched: YearsWatched | null;
  /** The variants of which every pair of items is compared. */
  readonly compared: ReadonlySet<string>;
}

/** What a collection that is assessed at once has to say of itself as a whole. */
export function factsOfWhole({ settings, sightings, items }: Collection): Whole {
  const count = new Map<string, number>();
  for (const { variant } of items.values()) count.set(variant, (count.get(variant) ?? 0) + 1);
  return { watched: yearsWatched(settings.watching, sightings), compared: comparedVariants(count) };
}

/** Assesses a whole collection, or some families of one: then `whole` says what must be known of the rest. */
export function assessCollection(
  collection: Collection,
  whole: Whole = factsOfWhole(collection),
): Assessments {
  const { hazards } = collection;
  const { confidence } = collection.settings;
  const scale = collection.scales.get(collection.settings.scale);
  const { watched, compared } = whole;
  const sightingsOf = grouping(collection.sightings, ({ variant }) => variant);
  const itemsOf = grouping(collection.items.values(), ({ variant }) => variant);
  const siblingsOf = grouping(collection.variants.values(), ({ family }) => family);

  const variants = new Map<string, VariantAssessment>();
  const items = new Map<string, ItemAssessment>();
  const likenessTables = new Map<string, LikenessTable>();
  for (const variant of collection.variants.values()) {
    const features = collection.families.get(variant.family)?.features ?? new Map();
    const siblings = siblingsOf.get(variant.family) ?? [];
    const examined = (itemsOf.get(variant.id) ?? []).map((item) => ({
      item,
      completeness: assessCompleteness(variant, item),
      identification: assessIdentification(item, siblings, features),
    }));
    const sightings = sightingsOf.get(variant.id) ?? [];
    const examples = examplesOf(variant, sightings, examined);
    const evidence = { sightings, items: examined, examples };
    const rarity = assessVariantRarity(variant, evidence, scale, watched, confidence);
    variants.set(variant.id, {
      variant: variant.id,
      rarity,
      examples,
      reached: levelInLog(variant, examples),
      hazards: assessHazards(variant.parts.values(), () => true, [], hazards),
      reallocation: reallocate(
        variant,
        // What a case needs, and what it could do without, is in doubt where it may be of another variant.
        examined.filter(
          ({ item, identification }) => isAtHand(item) && identification.verdict !== "contradicted",
        ),
      ),
    });
    const { table, likenessesOf } = variantLikeness(variant, features.keys(), examples, examined);
    likenessTables.set(variant.id, table);
    const { survivors } = rarity;
    const around = {
      variant,
      ranked: rankExamples(examples, watched),
      survivors,
      likenessesOf,
      hazards,
      confidence,
    };
    for (const each of examined) items.set(each.item.id, assessItem(each, around));
  }

  const families = new Map(
    [...collection.families.values()].map((family) => {
      const siblings = siblingsOf.get(family.id) ?? [];
      return [
        family.id,
        { comparison: compareVariants(family, siblings), key: assessFamilyKey(family.features, siblings) },
      ];
    }),
  );
  const comparisons = compareCollection(
    collection,
    compared,
    (id) => items.get(id),
    (id) => likenessTables.get(id),
  );
  return { variants, items, families, comparisons, watched };
}
