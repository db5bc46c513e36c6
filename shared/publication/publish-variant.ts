import type { VariantAssessment } from "../assessments/assess-collection.ts";
import type { HazardFinding } from "../assessments/hazards.ts";
import type { Family } from "../records/family.ts";
import { neededBy } from "../records/needed-parts.ts";
import type { SerialRange } from "../records/serial.ts";
import type { Sighting } from "../records/sighting.ts";
import type { Part, Variant } from "../records/variant.ts";
import type { Words } from "../words/words.ts";
import { publishFigure } from "./publish-figure.ts";
import { publishRevisions } from "./publish-revisions.ts";
import type {
  Named,
  PublishedHazard,
  PublishedPart,
  PublishedSerialRange,
  PublishedSighting,
  PublishedSpread,
  PublishedVariant,
} from "./published.ts";

/** Null for nothing; otherwise without the serials that no item shows. */
export type Shown = (text: string | undefined) => string | null;

const publishRange = (range: SerialRange, shown: Shown): PublishedSerialRange => ({
  prefix: range.prefix,
  from: range.from ?? null,
  to: range.to ?? null,
  made: range.made?.text ?? null,
  skipped: range.skipped,
  source: range.source ?? null,
  page: range.page ?? null,
  note: shown(range.note),
  limits: range.limits,
});

export function publishPart(
  part: Part,
  family: Family | undefined,
  assessment: VariantAssessment,
  words: Words,
  shown: Shown,
): PublishedPart {
  const rate = assessment.rarity.parts.get(part.id);
  if (!rate) throw new Error(`Part "${part.id}" was not assessed.`);
  return {
    id: part.id,
    name: part.name,
    group: part.group ?? null,
    groupName:
      part.group === undefined ? null : (family?.groups.get(part.group) ?? part.group.replaceAll("-", " ")),
    standing: part.standing,
    quantity: part.quantity,
    weight: part.weight,
    marks: part.marks,
    hazards: part.hazards,
    plan: part.plan ?? null,
    serials: part.serials.map((range) => publishRange(range, shown)),
    look: shown(part.look),
    note: shown(part.note),
    rate: publishFigure(rate, words),
  };
}

/** The log is published as it stands: whoever writes a serial into it takes it from what is public already. */
const publishSighting = (row: Sighting, reaches: boolean | null, shown: Shown): PublishedSighting => ({
  seen: row.seen.text,
  serial: row.serial ?? null,
  example: row.example ?? null,
  source: row.source ?? null,
  kind: row.kind,
  list: row.list ?? null,
  present: [...new Set(row.present)],
  absent: [...new Set(row.absent)],
  condition: shown(row.condition),
  price: row.price === undefined ? null : { amount: row.price, currency: row.currency ?? null },
  relisted: row.relisted,
  reaches,
  note: shown(row.note),
});

interface VariantContext {
  readonly family: Family | undefined;
  readonly nameOf: (variant: string) => string;
  readonly sightings: readonly Sighting[];
  readonly items: readonly Named[];
  readonly likenesses: readonly PublishedSpread[];
  readonly words: Words;
  readonly hazard: (finding: HazardFinding) => PublishedHazard;
  readonly shown: Shown;
}

export function publishVariant(
  variant: Variant,
  assessment: VariantAssessment,
  { family, nameOf, sightings, items, likenesses, words, hazard, shown }: VariantContext,
): PublishedVariant {
  const { rarity } = assessment;
  const figure = (each: typeof rarity.made) => publishFigure(each, words);
  return {
    id: variant.id,
    name: variant.name,
    family: { id: variant.family, name: family?.name ?? variant.family },
    extends: variant.extends === undefined ? null : { id: variant.extends, name: nameOf(variant.extends) },
    issued: variant.issued?.text ?? null,
    description: shown(variant.description),
    note: shown(variant.note),
    features: [...variant.features].map(([id, values]) => ({
      id,
      name: family?.features.get(id)?.name ?? id,
      values,
    })),
    serials: variant.serials.map((range) => publishRange(range, shown)),
    parts: [...variant.parts.values()].map((part) => publishPart(part, family, assessment, words, shown)),
    levels: variant.levels.map((level) => ({
      id: level.id,
      name: level.name,
      parts: neededBy(level, variant.parts).map(({ id }) => id),
    })),
    rarity: {
      made: figure(rarity.made),
      sightings: rarity.sightings,
      distinct: rarity.distinct,
      once: rarity.once,
      twice: rarity.twice,
      nameless: rarity.nameless,
      latest: rarity.latest?.text ?? null,
      coverage: figure(rarity.coverage),
      survivors: figure(rarity.survivors),
      survivorsTwoList: figure(rarity.survivorsTwoList),
      survivalRate: figure(rarity.survivalRate),
      parts: Object.fromEntries([...rarity.parts].map(([id, each]) => [id, figure(each)])),
      appearance: figure(rarity.appearance),
      wait: figure(rarity.wait),
      class: rarity.class,
      levels: Object.fromEntries(
        [...rarity.levels].map(([id, { share, survivors, appearance, wait }]) => [
          id,
          {
            share: figure(share),
            survivors: figure(survivors),
            appearance: figure(appearance),
            wait: figure(wait),
          },
        ]),
      ),
    },
    reallocation: assessment.reallocation,
    hazards: assessment.hazards.map(hazard),
    sources: variant.sources,
    formerly: variant.formerly,
    revisions: publishRevisions(variant.revisions, (note) => shown(note) ?? ""),
    sightings: sightings.map((row) => publishSighting(row, assessment.reached.get(row) ?? null, shown)),
    items,
    likenesses,
  };
}
