import type { EdtfDate } from "../../dates/edtf-interval.ts";
import { addUnder } from "../../lists/grouping.ts";
import { joinedSets } from "../../lists/joined-sets.ts";
import type { Item } from "../../records/item.ts";
import { serialKey } from "../../records/serial.ts";
import type { Sighting } from "../../records/sighting.ts";
import type { Part, Variant } from "../../records/variant.ts";
import { isMain } from "../../terms/states.ts";
import type { Bounds, Completeness } from "../completeness.ts";

/** "not-issued" where this example never had the part; else its certain and possible share. */
export type RecordedShare = Bounds | "not-issued";

/** One physical example, with everything that anybody saw of it. */
export interface Example {
  /** Occasions on which it was seen; the same offer listed again is not a new one. */
  readonly sightings: number;
  /** The names and serials by which it is known. */
  readonly keys: ReadonlySet<string>;
  readonly items: readonly string[];
  /** Made up with parts of another case. */
  readonly isAssembled: boolean;
  /** Known to be no longer there. */
  readonly isDestroyed: boolean;
  /** The last seen last. */
  readonly rows: readonly Sighting[];
  readonly lists: ReadonlySet<string>;
  readonly shares: ReadonlyMap<string, RecordedShare>;
  /** Parts that are whole only by what stands in for them, however well. */
  readonly substituted: ReadonlySet<string>;
  /** Parts of which some say that they are there, and others that they are not. */
  readonly disputed: ReadonlySet<string>;
  /** Of each feature what was seen last. The log tells of none. */
  readonly features: ReadonlyMap<string, string>;
  /** The certain share of core and issued parts, by weight; null unless each of them is recorded. */
  readonly recordedCompleteness: number | null;
}

export interface CensusItem {
  readonly item: Item;
  readonly completeness: Completeness;
}

interface Occasion {
  readonly keys: readonly string[];
  readonly seen: EdtfDate | undefined;
  readonly states: (part: Part) => RecordedShare | undefined;
  /** Whether a part is whole only by what stands in for it. The log tells of no substitutes. */
  readonly isSubstituted?: (part: string) => boolean;
  readonly row?: Sighting;
  readonly item?: Item;
}

const there: Bounds = { low: 1, high: 1 };
const gone: Bounds = { low: 0, high: 0 };

export const isRecorded = (share: Bounds): boolean => share.low === 1 || share.high < 1;

/** The share of a part that is recorded of an example; undefined where it is not, or where it never had the part. */
export function recordedShare({ shares }: Pick<Example, "shares">, part: string): Bounds | undefined {
  const share = shares.get(part);
  return share === undefined || share === "not-issued" || !isRecorded(share) ? undefined : share;
}

/** Most of a log says nothing of parts. */
const saysNothing = () => undefined;

function statesIn({ present, absent }: Sighting): Occasion["states"] {
  if (present.length === 0 && absent.length === 0) return saysNothing;
  const states = new Map<string, Bounds>();
  for (const id of absent) states.set(id, gone);
  for (const id of present) states.set(id, there);
  return (part) => states.get(part.id) ?? states.get("rest");
}

const occasionOfRow = (row: Sighting): Occasion => ({
  keys: keysOf(row.example, row.serial),
  seen: row.seen,
  row,
  states: statesIn(row),
});

function occasionOfItem({ item, completeness }: CensusItem): Occasion {
  return {
    keys: keysOf(item.example, item.serial),
    seen: item.examined,
    item,
    states: (part) => {
      if (!item.parts.has(part.id)) return undefined;
      const share = completeness.parts.get(part.id)?.share;
      return share === null ? "not-issued" : share;
    },
    isSubstituted(id) {
      const finding = completeness.parts.get(id);
      return finding?.share?.low === 1 && finding.present < finding.expected;
    },
  };
}

/** What ties an occasion to others of the same example. */
export const keysOf = (example: string | undefined, serial: string | undefined): string[] => [
  ...(example === undefined ? [] : [`example ${example.trim()}`]),
  ...(serial === undefined ? [] : [`serial ${serialKey(serial)}`]),
];

/** Sightings that share a name or a serial, directly or by way of others, are of one example. */
function grouped(occasions: readonly Occasion[]): Occasion[][] {
  const setOf = joinedSets(occasions.map(({ keys }) => keys));
  const groups = new Map<string, Occasion[]>();
  for (const [index, occasion] of occasions.entries()) {
    const [key] = occasion.keys;
    addUnder(groups, key === undefined ? `alone ${index}` : setOf(key), occasion);
  }
  return [...groups.values()];
}

/**
 * An item without a date of examination counts as it stands today; of a sighting whose end is not known, only the
 * beginning counts.
 */
const latestOf = ({ seen }: Occasion) =>
  seen ? (seen.latest ?? seen.earliest ?? Number.NEGATIVE_INFINITY) : Number.POSITIVE_INFINITY;
const earliestOf = ({ seen }: Occasion) =>
  seen ? (seen.earliest ?? Number.NEGATIVE_INFINITY) : Number.POSITIVE_INFINITY;
const difference = (a: number, b: number) => (a === b ? 0 : a < b ? -1 : 1);

export function recordedCompleteness(
  parts: Iterable<Part>,
  shareOf: (part: Part) => RecordedShare | undefined,
): number | null {
  let weights = 0;
  let certain = 0;
  for (const part of parts) {
    if (!isMain(part.standing)) continue;
    const share = shareOf(part);
    if (share === "not-issued") continue;
    if (share === undefined || !isRecorded(share)) return null;
    weights += part.weight;
    certain += part.weight * share.low;
  }
  return weights === 0 ? null : certain / weights;
}

const noShares: Example["shares"] = new Map();
const none: ReadonlySet<string> = new Set();
const noFeatures: Example["features"] = new Map();

/** Whether a part is there whole, as far as that is recorded. A substitute is not the part. */
const isThere = (share: RecordedShare, isSubstituted: boolean): boolean | undefined =>
  share === "not-issued" || !isRecorded(share) ? undefined : share.low === 1 && !isSubstituted;

/** Of each part what was said last, from occasions of which the last comes first; and of which parts it was said otherwise as well. */
function latestShares(
  occasions: readonly Occasion[],
  { parts }: Variant,
): Pick<Example, "shares" | "substituted" | "disputed"> {
  const shares = new Map<string, RecordedShare>();
  const substituted = new Set<string>();
  const disputed = new Set<string>();
  for (const part of parts.values()) {
    let last: boolean | undefined;
    for (const { states, isSubstituted } of occasions) {
      const share = states(part);
      if (share === undefined) continue;
      const isStandIn = isSubstituted?.(part.id) ?? false;
      const isHere = isThere(share, isStandIn);
      if (!shares.has(part.id)) {
        shares.set(part.id, share);
        if (isStandIn) substituted.add(part.id);
        last = isHere;
      } else if (last !== undefined && isHere !== undefined && isHere !== last) disputed.add(part.id);
    }
  }
  return { shares, substituted, disputed };
}

function exampleOf(occasions: readonly Occasion[], variant: Variant): Example {
  // Of the same date they stay in the order of the log, with the items after it.
  const inOrder = [...occasions].sort(
    (a, b) => difference(latestOf(a), latestOf(b)) || difference(earliestOf(a), earliestOf(b)),
  );
  const telling = inOrder.filter(({ states }) => states !== saysNothing).reverse();
  const { shares, substituted, disputed } =
    telling.length === 0
      ? { shares: noShares, substituted: none, disputed: none }
      : latestShares(telling, variant);
  const features = inOrder.flatMap(({ item }) => (item ? [...item.features] : []));
  const rows = inOrder.flatMap(({ row }) => (row ? [row] : []));
  const occasionsSeen = occasions.filter(({ row }) => !row?.relisted).length;
  return {
    sightings: Math.max(1, occasionsSeen),
    keys: new Set(occasions.flatMap(({ keys }) => keys)),
    items: occasions.flatMap(({ item }) => item?.id ?? []),
    isAssembled: occasions.some(({ item }) => item !== undefined && item.assembled.length > 0),
    isDestroyed: occasions.some(({ item }) => item?.status === "destroyed"),
    rows,
    lists: new Set(rows.flatMap(({ list }) => (list === undefined ? [] : [list]))),
    shares,
    substituted,
    disputed,
    features: features.length === 0 ? noFeatures : new Map(features),
    recordedCompleteness: recordedCompleteness(variant.parts.values(), (part) => shares.get(part.id)),
  };
}

/**
 * Whether a row is of an offer that was seen before, and does not say of which example: one of those already counted,
 * unless no other offer is in the log.
 */
const isRepeatOnly = (row: Sighting): boolean =>
  row.relisted && row.example === undefined && row.serial === undefined;

const withoutRepeats = (rows: readonly Sighting[]): readonly Sighting[] =>
  rows.some(isRepeatOnly) && rows.some((row) => row.kind === "offer" && !isRepeatOnly(row))
    ? rows.filter((row) => !isRepeatOnly(row))
    : rows;

/** Every recorded example of a variant: from the log, and from those items that let themselves be counted. */
export function examplesOf(
  variant: Variant,
  sightings: readonly Sighting[],
  items: readonly CensusItem[],
): readonly Example[] {
  const counted = items.filter(({ item }) => item.census);
  const occasions = [...withoutRepeats(sightings).map(occasionOfRow), ...counted.map(occasionOfItem)];
  return grouped(occasions).map((group) => exampleOf(group, variant));
}
