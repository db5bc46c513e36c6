/**
 * The two conditions that nearly every estimator sets on its arguments, with one wording for a breach:
 * what was found, what was expected.
 *
 * Throws  RangeError where the condition is not met
 */
export function requireCount(name: string, value: number, least: number, most = Infinity): void {
  if (Number.isSafeInteger(value) && value >= least && value <= most) return;
  const span = most === Infinity ? `of at least ${least}` : `from ${least} to ${most}`;
  throw new RangeError(`Found ${name} = ${value}; expected a whole number ${span}.`);
}

export function requirePositive(name: string, value: number): void {
  if (Number.isFinite(value) && value > 0) return;
  throw new RangeError(`Found ${name} = ${value}; expected a finite number above 0.`);
}
