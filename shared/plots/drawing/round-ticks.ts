/**
 * Round numbers within a span, 1, 2 or 5 times a power of ten apart, and no closer than asked. Whole numbers stay
 * whole: years and serials have nothing between them.
 * Checks   roundTicks(1931, 1938, 1.5) => [1932, 1934, 1936, 1938]
 */
export function roundTicks(low: number, high: number, closest: number): readonly number[] {
  const step = roundStep(closest);
  const first = Math.ceil(low / step);
  const count = Math.floor(high / step) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, at) => (first + at) * step);
}

/** The least of 1, 2, 5, 10, 20, 50 … that is enough. */
export function roundStep(least: number): number {
  for (let power = 1; power <= 1e15; power *= 10) {
    for (const factor of [1, 2, 5]) if (factor * power >= least) return factor * power;
  }
  return least;
}
