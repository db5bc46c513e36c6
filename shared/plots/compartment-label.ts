import type { Box } from "./box.ts";
import { textLines } from "./text-lines.ts";
import { textWidth } from "./text-width.ts";

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
  /** What the lines cover, turned where they are. */
  readonly plate: Box;
}

const leading = 1.22;
const margin = 3;

interface Wording {
  readonly text: string;
  readonly kind: LabelLine["kind"];
  readonly size: number;
}

/** The best label that a compartment has room for: nothing ever passes its edge. */
export function compartmentLabel(
  box: Box,
  name: string,
  state: string | null,
  key: string,
): CompartmentLabel {
  const turnedBox = aboutMiddle(box);
  const tries: readonly [level: number, turned: boolean, wordings: () => readonly Wording[] | null][] = [
    [0, false, () => named(name, state, 12.5, 11.5, box.width)],
    [1, false, () => named(name, state, 11, 10.5, box.width)],
    [2, true, () => named(name, state, 12.5, 11.5, turnedBox.width)],
    [2, true, () => named(name, state, 11, 10.5, turnedBox.width)],
    [3, false, () => keyed(key, state)],
  ];
  for (const [level, turned, wordings] of tries) {
    const label = placed(wordings(), box, turned, level);
    if (label) return label;
  }
  return placed(keyed(key, null), box, false, 4, true) as CompartmentLabel;
}

function named(
  name: string,
  state: string | null,
  size: number,
  stateSize: number,
  width: number,
): readonly Wording[] | null {
  const names = textLines(name, size, width - 2 * margin);
  const states = state === null ? [] : textLines(state, stateSize, width - 2 * margin);
  if (!names || !states) return null;
  return [
    ...names.map((text): Wording => ({ text, kind: "name", size })),
    ...states.map((text): Wording => ({ text, kind: "state", size: stateSize })),
  ];
}

const keyed = (key: string, state: string | null): readonly Wording[] => [
  { text: key, kind: "key", size: 11.5 },
  ...(state === null ? [] : [{ text: state, kind: "state", size: 10.5 } as const]),
];

function placed(
  wordings: readonly Wording[] | null,
  box: Box,
  turned: boolean,
  level: number,
  anyway = false,
): CompartmentLabel | null {
  if (!wordings) return null;
  const room = turned ? aboutMiddle(box) : box;
  const width = Math.max(...wordings.map(({ text, size }) => textWidth(text, size)));
  const height = wordings.reduce((sum, { size }) => sum + size * leading, 0);
  if (!anyway && (width > room.width - 2 * margin || height > room.height - margin)) return null;
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  let bottom = middle.y - height / 2;
  const lines = wordings.map((wording): LabelLine => {
    bottom += wording.size * leading;
    return { ...wording, x: middle.x, y: bottom - wording.size * 0.32 };
  });
  const flat = { x: middle.x - width / 2, y: middle.y - height / 2, width, height };
  return { level, lines, turned, plate: turned ? aboutMiddle(flat) : flat };
}

/** A box turned a quarter about its own middle. */
const aboutMiddle = ({ x, y, width, height }: Box): Box => ({
  x: x + (width - height) / 2,
  y: y + (height - width) / 2,
  width: height,
  height: width,
});
