/** A fraction of whole numbers, where a comparison has to be exact. */
export interface Fraction {
  readonly numerator: bigint;
  readonly denominator: bigint;
}

/**
 * Alpha: the probability that a confidence leaves outside, as an exact fraction.
 * Formula  1 - confidence, taken from the decimal digits of the confidence and not from its binary value
 *          (in floating point 1 - 0.95 is 0.050000000000000044, which would break a tie at exactly 1/20)
 * Units    a probability
 * Assumes  that the shortest decimal text of the number is the confidence that was meant
 * Edges    not reduced to lowest terms
 * Checks   alphaFraction(0.95) => { numerator: 5n, denominator: 100n }
 *          alphaFraction(0.5) => { numerator: 5n, denominator: 10n }
 * Throws   RangeError unless 0 < confidence < 1
 */
export function alphaFraction(confidence: number): Fraction {
  if (!(confidence > 0 && confidence < 1)) {
    throw new RangeError(
      `Found confidence = ${confidence}; expected a number between 0 and 1, neither included.`,
    );
  }
  // JavaScript writes 0.95 as "0.95" and 0.0000005 as "5e-7"; both are digits times a power of ten.
  const [mantissa = "", exponent = "0"] = String(confidence).split("e");
  const [whole = "", decimals = ""] = mantissa.split(".");
  const denominator = 10n ** BigInt(decimals.length - Number(exponent));
  return { numerator: denominator - BigInt(whole + decimals), denominator };
}

/**
 * Alpha as a number: the floating-point number nearest to the exact fraction.
 * Formula  1 - confidence
 * Units    a probability
 * Checks   alpha(0.95) => 0.05    alpha(0.999) => 0.001
 * Throws   RangeError unless 0 < confidence < 1
 */
export function alpha(confidence: number): number {
  const { numerator, denominator } = alphaFraction(confidence);
  return Number(numerator) / Number(denominator);
}
