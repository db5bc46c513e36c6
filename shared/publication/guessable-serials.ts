import { type Diagnostic, diagnose } from "../diagnostics/diagnostic.ts";
import { grouping } from "../lists/grouping.ts";
import type { Collection } from "../records/collection.ts";
import type { SerialPublishing } from "../records/item.ts";
import { isLegible, rangeOf, type SerialRange, tight } from "../records/serial.ts";
import { type Path, placeIn } from "../source/document.ts";
import { masked } from "./masking.ts";

/**
 * Fewer serials than these may be tried one by one: the minimum frequency of a cell, as it is usually set when tables
 * about persons are published. Common practice, no source.
 */
const fewest = 5;

interface Run {
  readonly prefix: string;
  readonly low: number;
  readonly high: number;
}

/** The serials that what is shown of one leaves, by itself; of a hidden one, those of its range. */
function runOf(serial: string, how: SerialPublishing, ranges: readonly SerialRange[]): Run | null {
  const range = rangeOf(ranges, serial);
  if (how === "hidden") {
    const { prefix, from, to } = range ?? {};
    return prefix === undefined || from === undefined || to === undefined
      ? null
      : { prefix, low: from, high: to };
  }
  const digits = /\p{Nd}+$/u.exec(tight(serial))?.[0];
  if (digits === undefined || !isLegible(serial)) return null;
  const prefix = tight(serial).slice(0, -digits.length);
  const number = Number(digits);
  const base = 10 ** Math.min(masked, digits.length);
  const floor = number - (number % base);
  // Two digits stand for a number of two, unless the first is a zero.
  const low = digits.length === masked && !digits.startsWith("0") ? base / 10 : floor;
  return { prefix, low, high: floor + base - 1 };
}

/** What is told of a serial: its date, and in which variants' ranges it lies. */
const toldOf = (
  serial: string,
  own: readonly SerialRange[],
  others: readonly (readonly SerialRange[])[],
): string => {
  const range = rangeOf(own, serial);
  return JSON.stringify([
    range ? (range.made?.text ?? "") : null,
    ...others.map((ranges) => rangeOf(ranges, serial) !== undefined),
  ]);
};

/** Of all serials of a run, how many there are of which the same is told. */
function countsIn(
  { prefix, low, high }: Run,
  own: readonly SerialRange[],
  others: readonly (readonly SerialRange[])[],
): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (let number = low; number <= high; number++) {
    const told = toldOf(`${prefix}${number}`, own, others);
    counts.set(told, (counts.get(told) ?? 0) + 1);
  }
  return counts;
}

/** Whether some range begins or ends within a run. Most do not, and then nothing narrows it down. */
const isDivided = ({ prefix, low, high }: Run, ranges: readonly SerialRange[]): boolean =>
  ranges.some(
    (range) =>
      tight(range.prefix) === tight(prefix) &&
      [range.from, range.to, range.limits?.after, range.limits?.before].some(
        (end) => end !== undefined && low <= end && end <= high,
      ),
  );

/**
 * Serials that a reader could work out although they are masked or hidden: the ranges are published, and so is in
 * which of them a serial lies, by its date and by which variants it speaks against.
 */
export function guessableSerials({ items, variants }: Collection): Diagnostic[] {
  const siblings = grouping(variants.values(), ({ family }) => family);
  const known = new Map<string, ReadonlyMap<string, number>>();

  /** How many serials one may be; undefined where no range narrows it down. */
  const leftOf = (
    of: string,
    serial: string,
    how: SerialPublishing,
    own: readonly SerialRange[],
    others: readonly (readonly SerialRange[])[],
  ): number | undefined => {
    const run = own.length === 0 ? null : runOf(serial, how, own);
    if (!run || !isDivided(run, [...own, ...others.flat()])) return undefined;
    // Nobody tries the serials of a whole range, where there are more than a few.
    if (how === "hidden" && run.high - run.low + 1 >= fewest) return undefined;
    const key = `${of} ${JSON.stringify(run)}`;
    const counts = known.get(key) ?? countsIn(run, own, others);
    known.set(key, counts);
    return counts.get(toldOf(serial, own, others));
  };

  return [...items.values()].flatMap((item) => {
    const variant = variants.get(item.variant);
    const { serial: how } = item.publish;
    if (how === "shown" || !variant) return [];
    const found: Diagnostic[] = [];
    const warn = (path: Path, shown: SerialPublishing, left: number | undefined) => {
      if (left === undefined || left >= fewest) return;
      found.push(
        diagnose("guessable-serial", placeIn(item.document, path), {
          found: `a serial that is ${shown}, of which the published ranges leave ${left < 2 ? "no other" : `only ${left}`}`,
          expected: `ranges that leave ${fewest} or more`,
          remedy: `Show it ("publish: { serial: shown }"), or give that range no "made" of its own.`,
        }),
      );
    };
    if (item.serial !== undefined) {
      const others = (siblings.get(variant.family) ?? [])
        .filter((each) => each !== variant && each.serials.length > 0)
        .map(({ serials }) => serials);
      warn(["serial"], how, leftOf(variant.id, item.serial, how, variant.serials, others));
    }
    for (const [id, lines] of item.parts) {
      const ranges = variant.parts.get(id)?.serials ?? [];
      for (const [at, { serial, private: kept }] of lines.entries()) {
        if (serial === undefined) continue;
        const shown = kept.includes("serial") ? "hidden" : how;
        const path = ["parts", id, ...(lines.length > 1 ? [at] : []), "serial"];
        warn(path, shown, leftOf(`${variant.id} ${id}`, serial, shown, ranges, []));
      }
    }
    return found;
  });
}
