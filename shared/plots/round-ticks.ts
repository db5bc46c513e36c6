/**
 * Round numbers within a span, 1, 2 or 5 times a power of ten apart, at most as many as asked for. Whole numbers
 * stay whole: years and serials have nothing between them.
 * Checks   roundTicks(1931, 1938, 4) => [1932, 1934, 1936, 1938]
 */
export function roundTicks(low: number, high: number, most: number): readonly number[] {
  if (!(high >= low) || most < 1) return [];
  for (let power = 1; power <= 1e15; power *= 10) {
    for (const factor of [1, 2, 5]) {
      const step = factor * power;
      const first = Math.ceil(low / step);
      const last = Math.floor(high / step);
      if (last - first + 1 > most) continue;
      return Array.from({ length: Math.max(0, last - first + 1) }, (_, at) => (first + at) * step);
    }
  }
  return [];
}

/** The least of 1, 2, 5, 10, 20, 50 … that is enough. */
export function roundStep(least: number): number {
  for (let power = 1; power <= 1e15; power *= 10) {
    for (const factor of [1, 2, 5]) if (factor * power >= least) return factor * power;
  }
  return least;
}
