import { grouping } from "../lists/grouping.ts";
import type { Collection } from "../records/collection.ts";
import { type Item, isAtHand } from "../records/item.ts";
import { serialKey } from "../records/serial.ts";
import type { Sighting } from "../records/sighting.ts";
import type { Variant } from "../records/variant.ts";
import { assessCompleteness, type Completeness, isAnyExamined } from "./completeness.ts";
import { type Reallocation, reallocate, type Spare, sparesOf, type Want, wantsOf } from "./completing.ts";
import { assessDating, type Dating } from "./dating.ts";
import { assessFamilyKey, type FamilyKey } from "./family-key.ts";
import type { Figure } from "./figure.ts";
import { assessHazards, type HazardFinding, mayBeIn } from "./hazards.ts";
import { assessIdentification, type Identification } from "./identification.ts";
import {
  compareCollection,
  comparedVariants,
  type ItemComparison,
  type LikenessTable,
} from "./item-comparison.ts";
import { attributesOf, type Likeness, type LikenessRow, likenessRow, nearestIn } from "./likeness.ts";
import { assessMarks, type MarkFinding } from "./matching-numbers.ts";
import { assessProvenance, type Provenance } from "./provenance.ts";
import {
  assessAppearance,
  assessWait,
  isCountedOffer,
  offersIn,
  type YearsWatched,
  yearsWatched,
} from "./rarity/appearance.ts";
import { assessItemRarity, type ItemRarity } from "./rarity/as-complete.ts";
import { type Example, examplesOf, keysOf } from "./rarity/examples.ts";
import { assessLevelRarity, type LevelRarity } from "./rarity/level-rarity.ts";
import { assessMade, type SeenSerials } from "./rarity/made.ts";
import { assessPartRate } from "./rarity/part-rate.ts";
import { rankExamples } from "./rarity/ranked-examples.ts";
import { assessClass, type RarityClass } from "./rarity/scale-class.ts";
import {
  assessCoverage,
  assessSurvivalRate,
  assessSurvivors,
  assessSurvivorsFromTwoLists,
  type Frequencies,
  frequenciesOf,
  namingConflict,
  namingDoubt,
} from "./rarity/survivors.ts";
import { compareVariants, type VariantComparison } from "./variant-comparison.ts";

export interface VariantRarity extends Frequencies {
  readonly made: Figure;
  readonly coverage: Figure;
  readonly survivors: Figure;
  readonly survivorsTwoList: Figure;
  readonly survivalRate: Figure;
  readonly parts: ReadonlyMap<string, Figure>;
  readonly appearance: Figure;
  readonly wait: Figure;
  readonly class: RarityClass | null;
  /** By level of completeness: how rare is an example that reaches it? */
  readonly levels: ReadonlyMap<string, LevelRarity>;
}

export interface VariantAssessment {
  readonly variant: string;
  readonly rarity: VariantRarity;
  readonly examples: readonly Example[];
  readonly hazards: readonly HazardFinding[];
  /** What its examples here could do for each other; null where nothing spare is wanted. */
  readonly reallocation: Reallocation | null;
}

export interface ItemAssessment {
  readonly item: string;
  readonly identification: Identification;
  readonly completeness: Completeness;
  readonly dating: Dating;
  readonly marks: ReadonlyMap<string, MarkFinding>;
  readonly wants: readonly Want[];
  readonly spares: readonly Spare[];
  readonly nearest: readonly Likeness[];
  readonly rarity: ItemRarity;
  readonly provenance: Provenance;
  readonly hazards: readonly HazardFinding[];
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
  readonly comparisons: readonly ItemComparison[];
  readonly watched: YearsWatched | null;
}

/** Serials of a variant: the log's are published already, and those of items where these show theirs. */
function seenSerials(sightings: readonly Sighting[], items: readonly Item[]): SeenSerials {
  const counted = items.filter(({ census }) => census);
  const serialsOf = (records: readonly { readonly serial: string | undefined }[]) =>
    records.flatMap(({ serial }) => serial ?? []);
  const shown = serialsOf([...sightings, ...counted.filter(({ publish }) => publish.serial === "shown")]);
  const known = new Set(shown.map(serialKey));
  const all = new Map(serialsOf(counted).map((serial) => [serialKey(serial), serial]));
  return { shown, withheld: [...all].flatMap(([key, serial]) => (known.has(key) ? [] : serial)) };
}

/** What the assessment of one family takes from all the others. */
export interface Whole {
  readonly watched: YearsWatched | null;
  /** The variants of which every pair of items is compared. */
  readonly compared: ReadonlySet<string>;
}

/** What a collection that is assessed at once has to say of itself as a whole. */
export function wholeOf({ settings, sightings, items }: Collection): Whole {
  const count = new Map<string, number>();
  for (const { variant } of items.values()) count.set(variant, (count.get(variant) ?? 0) + 1);
  return { watched: yearsWatched(settings.watching, sightings), compared: comparedVariants(count) };
}

/** Assesses a whole collection, or some families of one: then `whole` says what must be known of the rest. */
export function assessCollection(collection: Collection, whole: Whole = wholeOf(collection)): Assessments {
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
    const contradicted = new Set(
      examined
        .filter(({ identification }) => identification.verdict === "contradicted")
        .map(({ item }) => item.id),
    );
    const rarity = assessVariantRarity(
      variant,
      sightings,
      examples,
      // One that the log has, too, is held to be of this variant by somebody else.
      examples.filter(({ rows, items: of }) => rows.length === 0 && of.every((id) => contradicted.has(id)))
        .length,
      seenSerials(sightings, itemsOf.get(variant.id) ?? []),
    );
    variants.set(variant.id, {
      variant: variant.id,
      rarity,
      examples,
      hazards: assessHazards(variant.parts.values(), () => true, [], collection.hazards),
      reallocation: reallocate(
        variant,
        examined.filter(({ item }) => isAtHand(item)),
      ),
    });
    const likened = { features: [...features.keys()], parts: [...variant.parts.keys()] };
    const rows = examples.map((example) =>
      likenessRow(example, likened, collection.items.get(example.items[0] ?? "")?.features),
    );
    const rowOf = new Map(rows.flatMap((row) => row.example.items.map((id) => [id, row] as const)));
    const rowOfItem = new Map<string, LikenessRow>(rowOf);
    for (const each of examined.filter(({ item }) => !rowOf.has(item.id))) {
      // An item left out of the census is compared all the same; it only is nobody else's neighbour.
      const counted = { ...each, item: { ...each.item, census: true } };
      for (const alone of examplesOf(variant, [], [counted]))
        rowOfItem.set(each.item.id, likenessRow(alone, likened, each.item.features));
    }
    likenessTables.set(variant.id, { ...likened, rowOf: (id) => rowOfItem.get(id) });
    const ranked = rankExamples(examples, watched);
    const nearestTo = nearestIn(rows, attributesOf(likened));
    const nearestOf = (id: string) => {
      const row = rowOfItem.get(id);
      return row ? nearestTo(row) : [];
    };
    for (const { item, completeness, identification } of examined) {
      const isExamined = completeness.main === null || isAnyExamined(completeness);
      items.set(item.id, {
        item: item.id,
        identification,
        completeness,
        dating: assessDating(variant, item),
        marks: assessMarks(variant.parts.values(), item),
        wants: wantsOf(variant, { item, completeness }),
        spares: sparesOf({ item, completeness }),
        nearest: nearestOf(item.id),
        rarity: assessItemRarity(
          {
            id: item.id,
            keys: keysOf(item.example, item.serial),
            certain: isExamined ? (completeness.main?.weighted.low ?? null) : null,
            isExamined,
            isAssembled: item.assembled.length > 0,
          },
          ranked,
          rarity.survivors,
          confidence,
        ),
        provenance: assessProvenance(variant.issued, item.provenance, item.examined),
        hazards: assessHazards(
          variant.parts.values(),
          mayBeIn(completeness),
          item.extras,
          collection.hazards,
        ),
      });
    }
  }

  function assessVariantRarity(
    variant: Variant,
    sightings: readonly Sighting[],
    examples: readonly Example[],
    contradicted: number,
    serials: SeenSerials,
  ): VariantRarity {
    const made = assessMade(variant, serials, confidence);
    const survivors = namingDoubt(
      namingConflict(assessSurvivors(examples, confidence), examples.length, made),
      contradicted,
    );
    const offers = offersIn(sightings.filter((row) => isCountedOffer(row, watched)));
    return {
      made,
      ...frequenciesOf(examples),
      coverage: assessCoverage(examples, confidence),
      survivors,
      survivorsTwoList: namingConflict(
        assessSurvivorsFromTwoLists(examples, confidence),
        examples.length,
        made,
      ),
      survivalRate: assessSurvivalRate(survivors, made, confidence),
      parts: new Map(
        [...variant.parts.values()].map((part) => [part.id, assessPartRate(part, examples, confidence)]),
      ),
      appearance: assessAppearance(offers, watched, confidence),
      wait: assessWait(offers, watched, confidence),
      class: assessClass(scale, survivors),
      levels: new Map(
        variant.levels.map((level) => [
          level.id,
          assessLevelRarity(level, variant, examples, survivors, watched, confidence),
        ]),
      ),
    };
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
