import type { EdtfDate } from "../../dates/edtf-interval.ts";
import type { Item } from "../../records/item.ts";
import type { Scale } from "../../records/register.ts";
import { serialKey } from "../../records/serial.ts";
import type { Sighting } from "../../records/sighting.ts";
import type { Variant } from "../../records/variant.ts";
import type { Figure } from "../figure.ts";
import type { Identification } from "../identification.ts";
import { assessAppearance, assessWait, isCountedOffer, offersIn, type YearsWatched } from "./appearance.ts";
import type { Example } from "./examples.ts";
import { latestSeen } from "./latest-seen.ts";
import { assessLevelRarity, type LevelRarity } from "./level-rarity.ts";
import { assessMade, type SeenSerial, type SeenSerials } from "./made.ts";
import { countKnown, countNameless } from "./nameless.ts";
import { assessPartRate } from "./part-rate.ts";
import { assessClass, type RarityClass } from "./scale-class.ts";
import {
  assessCoverage,
  assessSurvivalRate,
  assessSurvivors,
  assessSurvivorsFromTwoLists,
  type Frequencies,
  frequenciesOf,
  namingConflict,
  namingDoubt,
} from "./survivors.ts";

export interface VariantRarity extends Frequencies {
  /** How many of the examples are rows of the log that give neither serial nor name. */
  readonly nameless: number;
  /** When any of what is counted was seen last: the figures are as of then. */
  readonly latest: EdtfDate | null;
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

interface Identified {
  readonly item: Item;
  readonly identification: Identification;
}

/** All that is recorded of a variant. */
interface Evidence {
  readonly sightings: readonly Sighting[];
  readonly items: readonly Identified[];
  readonly examples: readonly Example[];
}

/**
 * Serials of a variant, one for each example: those in the log are published already, those of items only where the
 * items show theirs. Where the record has several for one example, all but one are misread: the item's own stands, or
 * else the last that was read.
 */
function seenSerials({ items, examples }: Evidence): SeenSerials {
  const itemsById = new Map(items.map(({ item }) => [item.id, item]));
  const serials = { shown: [] as SeenSerial[], withheld: [] as string[], misread: 0 };
  for (const example of examples) {
    const held = example.items.flatMap((id) => itemsById.get(id) ?? []).filter(({ serial }) => serial);
    const rows = example.rows.filter(({ serial }) => serial !== undefined);
    const serial = held[0]?.serial ?? rows.at(-1)?.serial;
    if (serial === undefined) continue;
    const isIt = (other: Pick<Item, "serial">) => serialKey(other.serial ?? "") === serialKey(serial);
    const isShown = rows.some(isIt) || held.some((item) => isIt(item) && item.publish.serial === "shown");
    if (isShown) serials.shown.push({ serial, sources: rows.filter(isIt).map(({ source }) => source) });
    else serials.withheld.push(serial);
    if (![...held, ...rows].every(isIt)) serials.misread++;
  }
  return serials;
}

/** How many are counted against the evidence. One that the log has, too, is held to be of this variant by somebody else. */
function countContradicted({ items, examples }: Evidence): number {
  const contradicted = new Set(
    items.flatMap(({ item, identification }) => (identification.verdict === "contradicted" ? [item.id] : [])),
  );
  return examples.filter(({ rows, items: of }) => rows.length === 0 && of.every((id) => contradicted.has(id)))
    .length;
}

/** How many of a variant were made, how many are left, and how often one turns up: whole, by part and by level. */
export function assessVariantRarity(
  variant: Variant,
  evidence: Evidence,
  scale: Scale | undefined,
  watched: YearsWatched | null,
  confidence: number,
): VariantRarity {
  const { sightings, examples } = evidence;
  const made = assessMade(variant, seenSerials(evidence), confidence);
  const known = countKnown(examples);
  const heldAgainstMade = (survivors: Figure) => namingConflict(survivors, known, made);
  const survivors = namingDoubt(
    heldAgainstMade(assessSurvivors(examples, confidence)),
    countContradicted(evidence),
  );
  const counted = new Set(examples.flatMap(({ items }) => items));
  const offers = offersIn(sightings.filter((row) => isCountedOffer(row, watched)));
  return {
    made,
    ...frequenciesOf(examples),
    nameless: countNameless(examples),
    latest: latestSeen(
      sightings,
      evidence.items.flatMap(({ item }) => (counted.has(item.id) ? item : [])),
    ),
    coverage: assessCoverage(examples, confidence),
    survivors,
    survivorsTwoList: heldAgainstMade(assessSurvivorsFromTwoLists(examples, confidence)),
    survivalRate: assessSurvivalRate(survivors, made),
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
