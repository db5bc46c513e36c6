import { grouping } from "../../lists/grouping.ts";
import type { PublishedItemPart, PublishedPartLine } from "../../publication/published.ts";
import { unitsOfLine } from "../../terms/units-of-line.ts";
import type { Words } from "../../words/words.ts";

/** Units of a part whose serials say the same. */
export interface DatedUnits extends NonNullable<PublishedPartLine["dating"]> {
  /** As far as they may be told. */
  readonly serials: readonly string[];
  /** "1 of 4"; null where it is said of all that are there. */
  readonly some: string | null;
}

/** What the serials of a part say of its units, in the order in which they were written. */
export function datedUnits(
  { lines, units, quantity }: Pick<PublishedItemPart, "lines" | "units" | "quantity">,
  { numbers, pages }: Words,
): DatedUnits[] {
  const there = units.present + units.substitute + units.unverified;
  const dated = lines.flatMap((line) => (line.dating ? [{ ...line.dating, line }] : []));
  return [...grouping(dated, ({ made, verdict }) => `${verdict} ${made}`).values()].flatMap((alike) => {
    const [first] = alike;
    if (!first) return [];
    const count = alike.reduce((sum, { line }) => sum + unitsOfLine(line, lines, { quantity }), 0);
    return {
      made: first.made,
      verdict: first.verdict,
      serials: alike.flatMap(({ line }) => line.serial ?? []),
      some: count < there ? pages.item.unitsOf(numbers.count(count), numbers.count(there)) : null,
    };
  });
}

/** A serial that speaks against its part. */
export const isDoubtful = ({ verdict }: NonNullable<PublishedPartLine["dating"]>): boolean =>
  verdict === "later" || verdict === "outside";

/** "no. L5, 1 of 4, made 1930": of what something is said; null where it is all of the part, with nothing to tell it by. */
export function datedInWords({ made, serials, some }: DatedUnits, words: Words): string | null {
  const say = words.pages.item;
  const told = [
    ...(some === null ? [] : [...new Set(serials)].map((serial) => say.serialIs(serial))),
    ...(some === null ? [] : [some]),
    ...(made === null ? [] : [say.made(words.date(made))]),
  ];
  return told.length === 0 ? null : told.join(", ");
}
