import type { Box } from "../drawing/box.ts";
import type { Breadth } from "../drawing/two-widths.ts";
import { type CompartmentLabel, compartmentLabel } from "./compartment-label.ts";
import { type TrayLayout, type TrayPart, trayLayout } from "./tray-layout.ts";

/** A part as far as the shape of the tray depends on it: never on the state of one example. */
export interface NamedTrayPart extends TrayPart {
  readonly wording: string;
}

/** What a plan is drawn for: a wide place, a narrow one, or the display card, which has height to spare. */
export type PlanPlace = Breadth | "card";

/** A wide place may be a sheet of A4 between its margins, on which the smallest label keeps 6.5 points. */
const unitsAcross: Readonly<Record<PlanPlace, number>> = { wide: 832, narrow: 288, card: 640 };

/** From the edge of the tray to its compartments. */
export const rim: Readonly<Record<PlanPlace, number>> = { wide: 9, narrow: 6, card: 9 };

const limits = {
  wide: {
    ratios: [5, 4, 3.2, 2.8, 2.5, 2.3],
    stretches: [0.3, 0.35, 0.4, 0.45, 0.5, 0.55, 0.6, 0.8, 1],
    partition: 5,
    smallest: 26,
  },
  narrow: {
    ratios: [2, 1.5, 1.2, 1, 0.85, 0.72, 0.62, 0.54, 0.46, 0.4],
    stretches: [1, 1.3, 1.6, 2, 2.4],
    partition: 4,
    smallest: 26,
  },
  card: {
    ratios: [5, 4, 3.2, 2.6, 2.2, 1.9, 1.6, 1.4, 1.2],
    stretches: [1, 1.15],
    partition: 5,
    smallest: 26,
  },
} as const;

/** A tray with its rim, and the labels that its compartments have room for. */
export interface CasePlanTray extends TrayLayout {
  readonly labelOf: (part: number, state: string | null) => CompartmentLabel;
  /** Whether all that is said of a state is written no worse than what is said shortly. */
  readonly hasRoomFor: (
    part: number,
    said: { readonly full: string; readonly short: string } | null,
  ) => boolean;
}

const known = new Map<string, CasePlanTray>();

/**
 * The tray for a set of parts. All examples of a variant share it, so that two plans can be held against each
 * other, and so that it is worked out once: those of the last few are kept.
 */
export function casePlanTray(
  parts: readonly NamedTrayPart[],
  longestState: string | null,
  place: PlanPlace,
): CasePlanTray {
  let key = `${place}\n${longestState}`;
  for (const { wording, weight, plan } of parts) key += `\n${wording}\n${weight} ${plan}`;
  const before = known.get(key);
  if (before) return before;
  const width = unitsAcross[place] - 2 * rim[place];
  const cost = ({ boxes, height }: TrayLayout, enough: number): number => {
    const shape = (heightCosts[place] * height) / width + sumOf(boxes.map(slimness)) / boxes.length;
    let labels = 0;
    for (const [at, box] of boxes.entries()) {
      if (labels + shape >= enough) break;
      labels += labelCosts[compartmentLabel(box, parts[at]?.wording ?? "", longestState).level] ?? 0;
    }
    return labels + shape;
  };
  const layout = trayLayout(parts, { ...limits[place], width }, cost);
  const tray = withRim(layout, parts, rim[place]);
  if (known.size >= 64) known.clear();
  known.set(key, tray);
  return tray;
}

function withRim(layout: TrayLayout, parts: readonly NamedTrayPart[], edge: number): CasePlanTray {
  const boxes = layout.boxes.map((box) => ({ ...box, x: box.x + edge, y: box.y + edge }));
  const labels = new Map<string, CompartmentLabel>();
  const labelOf = (at: number, state: string | null): CompartmentLabel => {
    const key = `${at} ${state}`;
    const before = labels.get(key);
    if (before) return before;
    const box = boxes[at] ?? { x: 0, y: 0, width: 0, height: 0 };
    const label = compartmentLabel(box, parts[at]?.wording ?? "", state);
    labels.set(key, label);
    return label;
  };
  const hasRoomFor: CasePlanTray["hasRoomFor"] = (at, said) => {
    if (said === null || said.full === said.short) return true;
    const { level } = labelOf(at, said.full);
    return level < 2 || level <= labelOf(at, said.short).level;
  };
  return { width: layout.width + 2 * edge, height: layout.height + 2 * edge, boxes, labelOf, hasRoomFor };
}

/** By the level of a label: a name in full costs nothing, a number in its place most. */
const labelCosts = [0, 0.2, 1, 2.5, 4];
/** A tray twice as deep costs as much as this many names. */
const heightCosts: Readonly<Record<PlanPlace, number>> = { wide: 24, narrow: 6, card: 14 };

const sumOf = (numbers: readonly number[]): number => numbers.reduce((sum, number) => sum + number, 0);

/** How much longer than three to one a compartment is. */
const slimness = ({ width, height }: Box): number =>
  Math.max(0, Math.max(width / height, height / width) - 3);
