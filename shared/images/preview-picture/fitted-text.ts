import type { Typeface } from "./typeface.ts";

interface Line {
  readonly text: string;
  readonly size: number;
}

const ellipsis = "\u2026";

/** A line at the largest of the sizes at which it fits a width; cut short at the smallest where it fits at none. */
export function fittedText(
  text: string,
  { width: widthOf }: Pick<Typeface, "width">,
  width: number,
  sizes: readonly [number, ...number[]],
): Line {
  const line = text.trim().replace(/\s+/g, " ");
  const size = sizes.find((each) => widthOf(line, each) <= width);
  if (size !== undefined) return { text: line, size };
  const smallest = Math.min(...sizes);
  const letters = [...line];
  const cut = () => `${letters.join("").replace(/[\s,;:.]+$/, "")}${ellipsis}`;
  while (letters.length > 0 && widthOf(cut(), smallest) > width) letters.pop();
  return { text: letters.length === 0 ? "" : cut(), size: smallest };
}
