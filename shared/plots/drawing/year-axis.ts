import { horizontal, stroke, vertical, writing } from "./image-drawing.ts";
import { roundTicks } from "./round-ticks.ts";
import { textWidth } from "./text-width.ts";

interface YearAxis {
  readonly first: number;
  /** The year that begins where the axis ends. */
  readonly end: number;
  /** Years to a column: single years are marked in their middle, longer spans where they begin. */
  readonly step: number;
  readonly from: number;
  readonly to: number;
  readonly y: number;
  readonly across: number;
}

const size = 10.5;

/** A line of years with round ones marked: as many as stand clear of one another. */
export function yearAxis({ first, end, step, from, to, y, across }: YearAxis): {
  readonly markup: string;
  readonly height: number;
} {
  const middle = step === 1 ? 0.5 : 0;
  const x = (year: number) => from + ((year + middle - first) / (end - first)) * (to - from);
  const width = Math.max(textWidth(String(first), size), textWidth(String(end), size));
  const ticks = roundTicks(first, step === 1 ? end - 1 : end, ((width + 14) * (end - first)) / (to - from));
  const shown = ticks.filter((year) => x(year) - width / 2 >= 0 && x(year) + width / 2 <= across);
  const markup =
    stroke("axis", horizontal(from, to, y)) +
    stroke("hairline", shown.map((year) => vertical(x(year), y, y + 5)).join("")) +
    shown
      .map((year) => writing(String(year), x(year), y + 16, { size, anchor: "middle", kind: "soft" }))
      .join("");
  return { markup, height: 22 };
}
