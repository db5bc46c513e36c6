interface Label {
  /** Where its left edge would best stand. */
  readonly left: number;
  readonly width: number;
}

interface PlacedLabel {
  readonly left: number;
  readonly row: number;
}

/** Labels beside one another in as few rows as it takes for none to touch another or to leave the span. */
export function labelsInRows(
  labels: readonly Label[],
  { from, to, gap }: { readonly from: number; readonly to: number; readonly gap: number },
): readonly PlacedLabel[] {
  const wished = labels.map(({ left, width }, at) => ({
    at,
    width,
    left: Math.max(from, Math.min(left, to - width)),
  }));
  const ends: number[] = [];
  const placed: PlacedLabel[] = [];
  for (const { at, left, width } of [...wished].sort((a, b) => a.left - b.left || a.at - b.at)) {
    let row = ends.findIndex((end) => left >= end + gap);
    if (row < 0) row = ends.length;
    ends[row] = left + width;
    placed[at] = { left, row };
  }
  return placed;
}
