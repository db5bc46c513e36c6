import type { Box } from "../drawing/box.ts";
import { inset } from "../drawing/box.ts";
import { trayByPlan } from "./tray-by-plan.ts";
import { weightMap } from "./weight-map.ts";

export interface TrayPart {
  readonly weight: number;
  /** Left, top, width, height, in any one unit. */
  readonly plan: readonly [number, number, number, number] | null;
}

export interface TrayLayout {
  readonly width: number;
  readonly height: number;
  /** The compartments, in the order of the parts, with partitions between them. */
  readonly boxes: readonly Box[];
}

export interface TrayLimits {
  readonly width: number;
  /** Widths over heights of the tray that may be tried, where the reference does not give its shape. */
  readonly ratios: readonly number[];
  /** How much deeper than drawn to scale a tray with rectangles may become. */
  readonly stretches: readonly number[];
  readonly partition: number;
  /** The least width and height of a compartment. */
  readonly smallest: number;
}

/** Of the ways to fit the parts into a tray, the one that costs least; `cost` need not count on once it is `enough`. */
export function trayLayout(
  parts: readonly TrayPart[],
  limits: TrayLimits,
  cost: (layout: TrayLayout, enough: number) => number,
): TrayLayout {
  const planned = parts.filter((part) => part.plan !== null).length;
  const drawn = planned * 2 > parts.length ? layoutsByPlan(parts, limits) : [];
  const candidates = drawn.length > 0 ? drawn : layoutsByWeight(parts, limits);
  let best: TrayLayout | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const candidate of candidates) {
    const costs = cost(candidate, least);
    if (best && costs >= least) continue;
    best = candidate;
    least = costs;
  }
  return best ?? inRows(parts.length, limits);
}

function layoutsByPlan(parts: readonly TrayPart[], limits: TrayLimits): TrayLayout[] {
  const { width, partition } = limits;
  const smallest = limits.smallest + partition;
  const loose = parts.filter((part) => part.plan === null);
  const fixed = parts.flatMap(({ plan }) =>
    plan === null ? [] : [{ x: plan[0], y: plan[1], width: plan[2], height: plan[3] }],
  );
  return limits.stretches.flatMap((stretch) => {
    const tray = trayByPlan(fixed, width, smallest, stretch);
    if (!tray) return [];
    // What the reference has not placed lies in a trough of its own along the front.
    const trough = trayOfLoose(loose, parts, tray.height, limits);
    if (!trough) return [];
    const [inTray, inTrough] = [[...tray.boxes], [...trough.boxes]];
    const cells = parts.flatMap((part) => (part.plan === null ? inTrough.shift() : inTray.shift()) ?? []);
    return [
      { width, height: tray.height + trough.height, boxes: cells.map((cell) => inset(cell, partition / 2)) },
    ];
  });
}

function trayOfLoose(
  loose: readonly TrayPart[],
  all: readonly TrayPart[],
  trayHeight: number,
  { width, partition, smallest }: TrayLimits,
): { readonly height: number; readonly boxes: readonly Box[] } | null {
  if (loose.length === 0) return { height: 0, boxes: [] };
  const weightOf = (parts: readonly TrayPart[]) => parts.reduce((sum, part) => sum + part.weight, 0);
  const placed = weightOf(all) - weightOf(loose);
  const columns = Math.max(1, Math.floor(width / (smallest + partition)));
  const least = Math.ceil(loose.length / columns) * (smallest + partition) * 1.2;
  const height = Math.max(least, placed > 0 ? (trayHeight * weightOf(loose)) / placed : 0);
  const into = { x: 0, y: trayHeight, width, height };
  for (const floor of [...floors, 1]) {
    const boxes = byWeight(loose, into, 1.8, floor);
    if (largeEnough(boxes, smallest + partition)) return { height, boxes };
  }
  const rows = inRows(loose.length, { width, ratios: [], stretches: [], partition, smallest });
  return {
    height: rows.height,
    boxes: rows.boxes.map((box) => ({
      ...inset(box, -partition / 2),
      y: box.y - partition / 2 + trayHeight,
    })),
  };
}

/** Shares of the mean weight below which a compartment is not let fall; the least that serves is taken. */
const floors = [0, 0.15, 0.3, 0.45, 0.6, 0.8];
/** Labels are wider than they are high, and so are the compartments that suit them. */
const shapes = [1, 1.5, 2];

function layoutsByWeight(parts: readonly TrayPart[], limits: TrayLimits): TrayLayout[] {
  const { width, partition } = limits;
  for (const floor of [...floors, 1]) {
    const layouts = limits.ratios.flatMap((ratio) =>
      shapes.flatMap((shape): TrayLayout[] => {
        const height = width / ratio;
        const cells = byWeight(parts, { x: 0, y: 0, width, height }, shape, floor);
        if (!largeEnough(cells, limits.smallest + partition)) return [];
        return [{ width, height, boxes: cells.map((cell) => inset(cell, partition / 2)) }];
      }),
    );
    if (layouts.length > 0) return layouts;
  }
  return [];
}

const largeEnough = (cells: readonly Box[], smallest: number): boolean =>
  cells.every((cell) => cell.width >= smallest && cell.height >= smallest);

/** Heaviest first, as the method of squares wants them; parts of one weight keep the order of the reference. */
function byWeight(parts: readonly TrayPart[], into: Box, shape: number, floor: number): Box[] {
  const mean = parts.reduce((sum, part) => sum + part.weight, 0) / parts.length;
  const weights = parts.map((part) => Math.max(part.weight, floor * mean, mean > 0 ? mean / 1000 : 1));
  const order = weights.map((_, at) => at).sort((a, b) => (weights[b] ?? 0) - (weights[a] ?? 0));
  const laid = weightMap(
    order.map((at) => weights[at] ?? 0),
    into,
    shape,
  );
  const boxes: Box[] = [];
  order.forEach((at, place) => {
    const box = laid[place];
    if (box) boxes[at] = box;
  });
  return boxes;
}

/** Where nothing else has room for all: equal compartments, row after row. */
function inRows(count: number, { width, partition, smallest }: TrayLimits): TrayLayout {
  const columns = Math.max(1, Math.floor(width / (smallest + partition)));
  const cell = { width: width / columns, height: smallest + partition };
  const boxes = Array.from({ length: count }, (_, at) =>
    inset(
      { x: (at % columns) * cell.width, y: Math.floor(at / columns) * cell.height, ...cell },
      partition / 2,
    ),
  );
  return { width, height: Math.ceil(count / columns) * cell.height, boxes };
}
