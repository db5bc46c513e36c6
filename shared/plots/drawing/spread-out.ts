interface Extent {
  /** Where its middle would best stand. */
  readonly at: number;
  readonly size: number;
}

/**
 * Middles along a line, in the order given, moved no further than it takes for none to overlap another: each run
 * of neighbours that press on one another stands about the mean of where they would be.
 * Source  pooling of adjacent violators: Barlow, Bartholomew, Bremner, Brunk (1972), Statistical Inference under
 *         Order Restrictions, chapter 1
 */
export function spreadOut(extents: readonly Extent[], from: number): readonly number[] {
  // Without their sizes they only need to stand in order.
  let before = 0;
  const offsets = extents.map(({ size }) => {
    const middle = before + size / 2;
    before += size;
    return middle;
  });
  const runs: { sum: number; count: number }[] = [];
  extents.forEach(({ at }, index) => {
    runs.push({ sum: at - (offsets[index] ?? 0), count: 1 });
    while (runs.length > 1) {
      const [last, previous] = [runs.at(-1), runs.at(-2)];
      if (!last || !previous || previous.sum / previous.count <= last.sum / last.count) break;
      runs.splice(-2, 2, { sum: previous.sum + last.sum, count: previous.count + last.count });
    }
  });
  const starts = runs.flatMap(({ sum, count }) =>
    Array.from({ length: count }, () => Math.max(from, sum / count)),
  );
  return starts.map((start, index) => start + (offsets[index] ?? 0));
}
