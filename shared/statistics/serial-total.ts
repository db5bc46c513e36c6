import { alphaFraction } from "./alpha.ts";
import { fallingFactorial } from "./falling-factorial.ts";
import type { Estimate } from "./interval.ts";
import { largestHolding } from "./largest-holding.ts";
import { requireCount } from "./require-number.ts";

/**
 * How many were numbered, from the serials seen, where the first number of the range is known.
 * Formula  N̂ = m + m/k - 1 for k distinct serials, the largest of them the m-th of its range;
 *          low = m, high = the largest N with C(m,k) / C(N,k) >= alpha: a one-sided upper end, ties kept,
 *          in whole-number arithmetic
 * Units    numbers issued
 * Assumes  numbers issued one after another without gaps, and the serials seen a random sample of them
 *          without replacement. Blocks left unused break it.
 * Edges    k < 2: no estimate. k = m: every number up to m was seen, and the value is m.
 *          A tie: 15/300 = 1/20 in the second check. The value is never below low. Where nearly every number
 *          was seen it may pass high, a whole number, by less than 1 (k = 19, m = 20: 20.05 and 20); at a
 *          confidence below about 0.64, by more.
 * Source   Goodman (1952), Journal of the American Statistical Association 47: 622-634;
 *          Ruggles & Brodie (1947), same journal 42: 72-91
 * Checks   serialTotal({ distinct: 4, largest: 14 }, 0.95) => { value: 16.5, low: 14, high: 27 }
 *          serialTotal({ distinct: 2, largest: 6 }, 0.95) => { value: 8, low: 6, high: 25 }
 * Throws   RangeError unless distinct is a whole number from 2 to largest, largest a whole number,
 *          and 0 < confidence < 1
 */
export function serialTotal(
  { distinct, largest }: { readonly distinct: number; readonly largest: number },
  confidence: number,
): Estimate {
  requireCount("largest", largest, 2);
  requireCount("distinct", distinct, 2, largest);
  const { numerator, denominator } = alphaFraction(confidence);
  const seen = fallingFactorial(BigInt(largest), distinct) * denominator;
  const high = largestHolding(
    BigInt(largest),
    (total) => seen >= numerator * fallingFactorial(total, distinct),
  );
  return { value: largest + largest / distinct - 1, low: largest, high: Number(high) };
}

/**
 * How many were numbered, from the serials seen, where the first number of the range is not known.
 * Formula  N̂ = (w - 1)(k + 1)/(k - 1) - 1 for k distinct serials that span w = max - min + 1 numbers;
 *          low = w, high = the largest N with [(N - w + 1) C(w,k) - (N - w) C(w - 1,k)] / C(N,k) >= alpha:
 *          one-sided, ties kept, in whole-number arithmetic. As C(w - 1,k) = C(w,k)(w - k)/w, the
 *          left side is (w + k(N - w))/w · C(w,k)/C(N,k).
 * Units    numbers issued
 * Assumes  numbers issued one after another without gaps, and the serials seen a random sample of them
 *          without replacement. Blocks left unused break it.
 * Edges    k < 3: no estimate. k = w: every number between was seen, and the value is w. As with a known
 *          start, the value may pass high by less than 1 where nearly every number was seen.
 * Source   Goodman (1954), Journal of the American Statistical Association 49: 97-112
 * Checks   serialTotalUnknownStart({ distinct: 31, span: 2705 }, 0.95) => { value: 2883.266667, low: 2705, high: 3157 }
 *          serialTotalUnknownStart({ distinct: 3, span: 3 }, 0.95) => { value: 3, low: 3, high: 11 }
 * Throws   RangeError unless distinct is a whole number from 3 to span, span a whole number,
 *          and 0 < confidence < 1
 */
export function serialTotalUnknownStart(
  { distinct, span }: { readonly distinct: number; readonly span: number },
  confidence: number,
): Estimate {
  requireCount("span", span, 3);
  requireCount("distinct", distinct, 3, span);
  const { numerator, denominator } = alphaFraction(confidence);
  const k = BigInt(distinct);
  const w = BigInt(span);
  const seen = fallingFactorial(w, distinct) * denominator;
  const high = largestHolding(
    w,
    (total) => (w + k * (total - w)) * seen >= numerator * w * fallingFactorial(total, distinct),
  );
  return { value: ((span - 1) * (distinct + 1)) / (distinct - 1) - 1, low: span, high: Number(high) };
}
