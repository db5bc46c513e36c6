import { type SerialRange, tight } from "../records/serial.ts";
import type { Variant } from "../records/variant.ts";

/** Whether a prefix is another with digits behind it: "1" before 23 reads as 123 does without a prefix. */
const goesOn = (prefix: string, other: string): boolean =>
  prefix.startsWith(other) && /^\d+$/.test(prefix.slice(other.length));

/** The first and the last serial that there may be in a range: an end that is not known may lie anywhere within its limits. */
function endsOf({
  from,
  to,
  limits: { after = Number.NEGATIVE_INFINITY, before = Number.POSITIVE_INFINITY } = {},
}: SerialRange) {
  return { first: from ?? after + 1, last: to ?? before - 1 };
}

/** Whether some serial may lie in both. */
function mayShare(one: SerialRange, other: SerialRange): boolean {
  const [prefix, beside] = [tight(one.prefix), tight(other.prefix)];
  if (prefix !== beside) return goesOn(prefix, beside) || goesOn(beside, prefix);
  const [own, others] = [endsOf(one), endsOf(other)];
  return own.first <= others.last && others.first <= own.last;
}

/** Whether a serial alone would tell two or more variants apart: each has ranges, and no two of them share any. */
export const areToldBySerial = (variants: readonly Pick<Variant, "serials">[]): boolean =>
  variants.length > 1 &&
  variants.every(
    ({ serials }, at) =>
      serials.length > 0 &&
      variants
        .slice(at + 1)
        .every((other) => !serials.some((range) => other.serials.some((beside) => mayShare(range, beside)))),
  );
