/** How many units of a part a line speaks for: where it does not say, for all if it is the only one, and else for one. */
export const unitsOfLine = (
  line: { readonly quantity: number | null | undefined },
  lines: readonly unknown[],
  part: { readonly quantity: number },
): number => line.quantity ?? (lines.length === 1 ? part.quantity : 1);
