import type { PublishedItem, PublishedItemPart } from "../../publication/published.ts";
import { isMain } from "../../terms/states.ts";
import type { Words } from "../../words/words.ts";
import { isDoubtful } from "./dated-units.ts";

export interface MissingPart {
  readonly part: string;
  /** With how many of it are gone, where some are there. */
  readonly name: string;
}

/** Parts of which units are known to be gone: first those that are missed most. */
export function missingParts({ completeness, parts }: PublishedItem, words: Words): MissingPart[] {
  const ids = new Set([...completeness.missing, ...completeness.partial]);
  return missedMostFirst(parts.filter(({ id }) => ids.has(id))).map((part) => ({
    part: part.id,
    name: withUnits(part, "missing", words),
  }));
}

/** By the weight that is gone; what was meant to be used up, or was never in every case, comes after all else. */
export const missedMostFirst = (parts: readonly PublishedItemPart[]): PublishedItemPart[] =>
  [...parts].sort(
    (one, other) =>
      Number(isMain(other.standing)) - Number(isMain(one.standing)) || weightGone(other) - weightGone(one),
  );

const weightGone = ({ weight, units }: PublishedItemPart): number => (weight * units.absent) / units.expected;

/** A part by name, with how many of its units something is said of, where that is not all. */
function withUnits(part: PublishedItemPart, told: ToldOfUnits, words: Words): string {
  const some = someUnits(part, told, words);
  return some === null ? part.name : `${part.name} (${some})`;
}

type ToldOfUnits = keyof Words["pages"]["item"]["someUnits"];

const countOf: Readonly<Record<ToldOfUnits, (part: PublishedItemPart) => number>> = {
  missing: ({ units }) => units.absent,
  substitutes: ({ units }) => Math.min(units.substitute, units.expected - units.present),
  unverified: ({ units }) => units.unverified,
  unexamined: ({ units }) => units.unexamined,
};

/** "1 of 3 gone", where it is not all. */
export function someUnits(
  part: PublishedItemPart,
  told: ToldOfUnits,
  { pages, numbers }: Words,
): string | null {
  const units = countOf[told](part);
  if (units >= part.units.expected) return null;
  const some = pages.item.unitsOf(numbers.count(units), numbers.count(part.units.expected));
  return pages.item.someUnits[told](some, units);
}

/**
 * What else is not as it should be, for whoever reads no further: which parts only stand in, how many bear another set's
 * number, and how many are uncertain in whatever way. Null where there is nothing of any kind.
 */
export function elseAmiss({ completeness, parts }: PublishedItem, words: Words): string | null {
  const { item: say, list } = words.pages;
  const standIns = parts
    .filter(({ id }) => completeness.substitutes.includes(id))
    .map((part) => withUnits(part, "substitutes", words));
  const doubtful = new Set([
    ...completeness.unverified,
    ...completeness.unexamined,
    ...parts.flatMap(({ id, lines }) => (lines.some(({ dating }) => dating && isDoubtful(dating)) ? id : [])),
  ]).size;
  // What bears another's number is there all the same, and counted as certain.
  const ofOtherSet = parts.filter(({ matching }) => matching?.verdict === "other-set").length;
  const told = [
    ...(standIns.length > 0 ? [`${say.lists.substitutes}: ${list(standIns)}`] : []),
    ...(ofOtherSet > 0 ? [say.ofOtherSet(ofOtherSet)] : []),
    ...(doubtful > 0 ? [say.inDoubt(doubtful)] : []),
  ];
  return told.length > 0 ? told.join("; ") : null;
}
