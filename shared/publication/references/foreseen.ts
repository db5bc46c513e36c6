import type { Renamed } from "../../diagnostics/nearest-name.ts";
import type { Collection } from "../../records/collection.ts";
import type { Variant } from "../../records/variant.ts";
import type { CollectionFile, FileKind } from "../../source/collection-files.ts";
import type { PublishedFigure } from "../published.ts";
import { itemReading, type Reading, variantReading } from "./reading.ts";
import type { Subjects } from "./reading-at.ts";

/** What a text may name where the records have errors: nothing is assessed then, so that there are names, and no figures. */
export interface Foreseen extends Subjects {
  readonly families: ReadonlyMap<string, Renamed>;
  /** What will be read of a variant or an item; null where not all of it is known. */
  readonly readingOf: (isVariant: boolean, id: string) => Reading | null;
}

/** Of records that cannot be read the ids are known. */
export function foreseenIn(collection: Collection, unread: readonly CollectionFile[]): Foreseen {
  const { variants, items, families } = collection;
  const named = (kind: FileKind, records: ReadonlyMap<string, Renamed>) =>
    new Map<string, Renamed>([
      ...records,
      ...unread.flatMap((file): [string, Renamed][] =>
        file.kind === kind ? [[file.id, { id: file.id, formerly: [] }]] : [],
      ),
    ]);
  return {
    variants: named("variant", variants),
    items: named("item", items),
    families: named("family", families),
    readingOf(isVariant, id) {
      const record = (isVariant ? variants : items).get(id);
      if (!record || record.document.leftOut) return null;
      if (!isVariant) return readingOfItem(id);
      const variant = variants.get(id);
      return variant && !variant.leftOut ? readingOfVariant(variant) : null;
    },
  };
}

const nothingYet: PublishedFigure = {
  value: null,
  low: null,
  high: null,
  unit: "examples",
  confidence: 0,
  method: "documented",
  inputs: {},
  sources: [],
  caveats: [],
  insufficient: null,
};

const readingOfVariant = ({ id, parts, levels }: Variant): Reading =>
  variantReading({
    id,
    rarity: {
      made: nothingYet,
      sightings: 0,
      distinct: 0,
      once: 0,
      twice: 0,
      nameless: 0,
      latest: null,
      coverage: nothingYet,
      survivors: nothingYet,
      survivorsTwoList: nothingYet,
      survivalRate: nothingYet,
      parts: Object.fromEntries([...parts.keys()].map((part) => [part, nothingYet])),
      appearance: nothingYet,
      wait: nothingYet,
      class: null,
      levels: Object.fromEntries(
        levels.map((level) => [
          level.id,
          { share: nothingYet, survivors: nothingYet, appearance: nothingYet, wait: nothingYet },
        ]),
      ),
    },
  });

const readingOfItem = (id: string): Reading =>
  itemReading({
    id,
    rarity: {
      asComplete: nothingYet,
      asCompleteSurvivors: nothingYet,
      asCompleteWait: nothingYet,
      rank: null,
    },
    completeness: {
      weighted: null,
      counted: null,
      consumable: null,
      optional: null,
      level: { sure: null, possible: null },
      missing: [],
      partial: [],
      substitutes: [],
      unverified: [],
      unexamined: [],
      surplus: [],
      extras: [],
    },
    identification: { verdict: "consistent" },
    provenance: { documentedYears: 0 },
  });
