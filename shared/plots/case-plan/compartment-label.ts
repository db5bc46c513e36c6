import type { Box } from "../drawing/box.ts";
import { textLines } from "../drawing/text-lines.ts";
import { textWidth } from "../drawing/text-width.ts";

interface LabelLine {
  readonly text: string;
  readonly kind: "name" | "state" | "key";
  readonly size: number;
  /** The middle of the line, and its baseline. */
  readonly x: number;
  readonly y: number;
}

export interface CompartmentLabel {
  /** 0 named at full size; 1 smaller; 2 turned on its side; 3 keyed by a number, with the state; 4 by a number alone. */
  readonly level: number;
  readonly lines: readonly LabelLine[];
  /** Written upwards: its lines are placed as if turned a quarter about the middle of the compartment. */
  readonly turned: boolean;
  /** What the lines cover, as they stand. */
  readonly covers: Box;
}

/** Of the writing in a compartment that has room; what is set smaller says so. */
export const usualSize = 12.5;
/** Of a state, as a share of the writing above it: styles/60-plots.css sets it so. */
export const stateShare = 0.94;

const leading = 1.22;
const margin = 3;

interface Wording {
  readonly text: string;
  readonly kind: LabelLine["kind"];
  readonly size: number;
}

/** The best label that a compartment has room for: nothing ever passes its edge. */
export function compartmentLabel(box: Box, name: string, state: string | null): CompartmentLabel {
  const turned = aboutMiddle(box);
  return (
    placed(named(name, state, usualSize, box.width), box, false, 0) ??
    placed(named(name, state, 11, box.width), box, false, 1) ??
    placed(named(name, state, usualSize, turned.width), box, true, 2) ??
    placed(named(name, state, 11, turned.width), box, true, 2) ??
    keyLabel(box, state, "00")
  );
}

/** A number in place of the name, with the state where there is room for it, and with its sign where there is not. */
export function keyLabel(box: Box, state: string | null, key: string, sign = ""): CompartmentLabel {
  const number: Wording = { text: key, kind: "key", size: 11.5 };
  const size = number.size * stateShare;
  const states = state === null ? [] : [{ text: state, kind: "state", size } as const];
  const label = placed([number, ...states], box, false, 3);
  if (label) return label;
  const signed = laid([{ ...number, text: `${key} ${sign}`, size: 10.5 }], box, false, 4);
  return sign !== "" && signed.covers.width <= box.width - 2 ? signed : laid([number], box, false, 4);
}

function named(name: string, state: string | null, size: number, width: number): readonly Wording[] | null {
  const stateSize = size * stateShare;
  const names = textLines(name, size, width - 2 * margin);
  const states = state === null ? [] : textLines(state, stateSize, width - 2 * margin);
  if (!names || !states) return null;
  return [
    ...names.map((text): Wording => ({ text, kind: "name", size })),
    ...states.map((text): Wording => ({ text, kind: "state", size: stateSize })),
  ];
}

function placed(
  wordings: readonly Wording[] | null,
  box: Box,
  turned: boolean,
  level: number,
): CompartmentLabel | null {
  if (!wordings) return null;
  const label = laid(wordings, box, turned, level);
  const fits =
    label.covers.width <= box.width - (turned ? 1 : 2) * margin &&
    label.covers.height <= box.height - (turned ? 2 : 1) * margin;
  return fits ? label : null;
}

function laid(wordings: readonly Wording[], box: Box, turned: boolean, level: number): CompartmentLabel {
  const width = Math.max(...wordings.map(({ text, size }) => textWidth(text, size)));
  const height = wordings.reduce((sum, { size }) => sum + size * leading, 0);
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  let bottom = middle.y - height / 2;
  const lines = wordings.map((wording): LabelLine => {
    bottom += wording.size * leading;
    return { ...wording, x: middle.x, y: bottom - wording.size * 0.32 };
  });
  const flat = { x: middle.x - width / 2, y: middle.y - height / 2, width, height };
  return { level, lines, turned, covers: turned ? aboutMiddle(flat) : flat };
}

/** A box turned a quarter about its own middle. */
const aboutMiddle = ({ x, y, width, height }: Box): Box => ({
  x: x + (width - height) / 2,
  y: y + (height - width) / 2,
  width: height,
  height: width,
});
