import type { Item } from "../records/item.ts";
import type { Hazard } from "../records/register.ts";
import type { Variant } from "../records/variant.ts";
import { isMain } from "../terms/states.ts";
import { type Completeness, isAnyExamined } from "./completeness.ts";
import { type Spare, sparesOf, type Want, wantsOf } from "./completing.ts";
import { assessDating, type Dating } from "./dating.ts";
import type { Figure } from "./figure.ts";
import { assessHazards, type HazardFinding, mayBeIn } from "./hazards.ts";
import type { Identification } from "./identification.ts";
import { type Likeness, type LikenessSpread, likenessSpread, nearestOf } from "./likeness.ts";
import { assessMarks, type MarkFinding } from "./matching-numbers.ts";
import { assessProvenance, type Provenance } from "./provenance.ts";
import { assessItemRarity, type ItemRarity, type NothingCertain } from "./rarity/as-complete.ts";
import { keysOf } from "./rarity/examples.ts";
import type { RankedExamples } from "./rarity/ranked-examples.ts";

export interface ItemAssessment {
  readonly item: string;
  readonly identification: Identification;
  readonly completeness: Completeness;
  readonly dating: Dating;
  readonly marks: ReadonlyMap<string, MarkFinding>;
  readonly wants: readonly Want[];
  readonly spares: readonly Spare[];
  readonly nearest: readonly Likeness[];
  readonly likenesses: LikenessSpread;
  readonly rarity: ItemRarity;
  readonly provenance: Provenance;
  readonly hazards: readonly HazardFinding[];
}

/** An item as it was found, before it is held against the other examples of its variant. */
export interface ExaminedItem {
  readonly item: Item;
  readonly completeness: Completeness;
  readonly identification: Identification;
}

/** What of its variant and of the collection an item is assessed by. */
interface VariantContext {
  readonly variant: Variant;
  readonly ranked: RankedExamples;
  readonly survivors: Figure;
  readonly likenessesOf: (item: string) => readonly Likeness[];
  readonly hazards: ReadonlyMap<string, Hazard>;
  readonly confidence: number;
}

/** The certain share of its core and issued parts, or why there is none. */
function certainOf(completeness: Completeness, { parts }: Variant): number | NothingCertain {
  if (![...parts.values()].some(({ standing }) => isMain(standing))) return "no-part-in-reference";
  if (completeness.main === null) return "no-part-issued";
  return isAnyExamined(completeness, parts) ? completeness.main.weighted.low : "no-part-examined";
}

export function assessItem(
  { item, completeness, identification }: ExaminedItem,
  { variant, ranked, survivors, likenessesOf, hazards, confidence }: VariantContext,
): ItemAssessment {
  const likenesses = likenessesOf(item.id);
  return {
    item: item.id,
    identification,
    completeness,
    dating: assessDating(variant, item),
    marks: assessMarks(variant.parts.values(), item),
    wants: wantsOf(variant, { item, completeness }),
    spares: sparesOf(variant, { item, completeness }),
    nearest: nearestOf(likenesses),
    likenesses: likenessSpread(likenesses),
    rarity: assessItemRarity(
      {
        id: item.id,
        keys: keysOf(item.example, item.serial),
        certain: certainOf(completeness, variant),
        isAssembled: item.assembled.length > 0,
        isDestroyed: item.status === "destroyed",
      },
      ranked,
      survivors,
      confidence,
    ),
    provenance: assessProvenance(variant.issued, item.provenance, item.examined),
    hazards: assessHazards(variant.parts.values(), mayBeIn(completeness), item.extras, hazards),
  };
}
