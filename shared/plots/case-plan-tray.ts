import type { Box } from "./box.ts";
import { compartmentLabel } from "./compartment-label.ts";
import { type TrayLayout, type TrayPart, trayLayout } from "./tray-layout.ts";
import { type Breadth, unitsAcross } from "./two-widths.ts";

/** A part as far as the shape of the tray depends on it: never on the state of one example. */
export interface NamedTrayPart extends TrayPart {
  readonly wording: string;
}

/** From the edge of the tray to its compartments. */
export const rim: Readonly<Record<Breadth, number>> = { wide: 9, narrow: 6 };

const limits = {
  wide: {
    ratios: [5, 4, 3.2, 2.6, 2.2, 1.9, 1.6, 1.4, 1.2],
    stretches: [1, 1.15],
    partition: 5,
    smallest: 26,
  },
  narrow: {
    ratios: [2, 1.5, 1.2, 1, 0.85, 0.72, 0.62, 0.54, 0.46, 0.4],
    stretches: [1, 1.3, 1.6, 2, 2.4],
    partition: 4,
    smallest: 26,
  },
} as const;

const known = new Map<string, TrayLayout>();

/**
 * The tray for a set of parts. All examples of a variant share it, so that two plans can be held against each
 * other, and so that it is worked out once: the last few hundred are kept.
 */
export function casePlanTray(
  parts: readonly NamedTrayPart[],
  longestState: string | null,
  breadth: Breadth,
): TrayLayout {
  const key = JSON.stringify([
    breadth,
    longestState,
    parts.map(({ wording, weight, plan }) => [wording, weight, plan]),
  ]);
  const before = known.get(key);
  if (before) return before;
  const width = unitsAcross[breadth] - 2 * rim[breadth];
  const cost = ({ boxes, height }: TrayLayout): number => {
    const labels = boxes.map((box, at) => {
      const { level } = compartmentLabel(box, parts[at]?.wording ?? "", longestState);
      return labelCosts[level] ?? 0;
    });
    return (
      sumOf(labels) + (heightCosts[breadth] * height) / width + sumOf(boxes.map(slimness)) / boxes.length
    );
  };
  const layout = trayLayout(parts, { ...limits[breadth], width }, cost);
  if (known.size >= 400) known.clear();
  known.set(key, layout);
  return layout;
}

/** By the level of a label: a name in full costs nothing, a number in its place most. */
const labelCosts = [0, 0.2, 1, 2.5, 4];
/** A tray twice as deep costs as much as this many names. */
const heightCosts: Readonly<Record<Breadth, number>> = { wide: 14, narrow: 6 };

const sumOf = (numbers: readonly number[]): number => numbers.reduce((sum, number) => sum + number, 0);

/** How much longer than three to one a compartment is. */
const slimness = ({ width, height }: Box): number =>
  Math.max(0, Math.max(width / height, height / width) - 3);
