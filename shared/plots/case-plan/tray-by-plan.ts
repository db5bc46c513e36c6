import { type Box, overlap } from "../drawing/box.ts";

interface TrayByPlan {
  readonly height: number;
  readonly boxes: readonly Box[];
  /** Whether the reference has drawn the partitions already. */
  readonly apart: boolean;
}

/**
 * The rectangles of a reference, brought to a width. What lies left of, above or in line with what stays so; a
 * compartment that would be too small for a finger is widened, and the rest gives way. Null where the
 * rectangles overlap, or where the width cannot hold them.
 */
export function trayByPlan(
  plans: readonly Box[],
  width: number,
  smallest: number,
  stretch: number,
): TrayByPlan | null {
  if (plans.some((plan) => !(plan.width > 0 && plan.height > 0))) return null;
  const left = Math.min(...plans.map((plan) => plan.x));
  const top = Math.min(...plans.map((plan) => plan.y));
  const planWidth = Math.max(...plans.map((plan) => plan.x + plan.width)) - left;
  const planHeight = Math.max(...plans.map((plan) => plan.y + plan.height)) - top;
  // Edges that differ by less than the drawing can show are one.
  const least = Math.min(...plans.flatMap((plan) => [plan.width, plan.height]));
  const grain = Math.min(planWidth / 500, planHeight / 500, least / 4);
  const meet = (tolerance: number) =>
    plans.some((a, at) => plans.slice(at + 1).some((b) => overlap(a, b, tolerance)));
  if (meet(grain)) return null;

  const columns = positions(
    plans.map(({ x, width }) => [x, x + width]),
    width,
    smallest,
    grain,
  );
  if (!columns) return null;
  const rowSpans = plans.map(({ y, height }): Span => [y, y + height]);
  let height = (width * planHeight * stretch) / planWidth;
  let rows = positions(rowSpans, height, smallest, grain);
  // A tray may become as deep as it needs.
  for (let tries = 0; !rows && tries < 60; tries++) {
    height = Math.max(height * 1.1, smallest);
    rows = positions(rowSpans, height, smallest, grain);
  }
  if (!rows) return null;
  const boxes = plans.map((plan): Box => {
    const [x, right] = [columns(plan.x), columns(plan.x + plan.width)];
    const [y, bottom] = [rows(plan.y), rows(plan.y + plan.height)];
    return { x, y, width: right - x, height: bottom - y };
  });
  return { height, boxes, apart: !meet(-2 * grain) };
}

type Span = readonly [from: number, to: number];

/** Where each edge comes to lie in a length of which every span takes at least the smallest. */
function positions(
  spans: readonly Span[],
  length: number,
  smallest: number,
  grain: number,
): ((edge: number) => number) | null {
  const edges: number[] = [];
  for (const edge of spans.flat().sort((a, b) => a - b)) {
    const last = edges.at(-1);
    if (last === undefined || edge - last > grain) edges.push(edge);
  }
  const indexOf = (edge: number): number => {
    let nearest = 0;
    for (let at = 1; at < edges.length; at++) {
      if (Math.abs((edges[at] ?? 0) - edge) < Math.abs((edges[nearest] ?? 0) - edge)) nearest = at;
    }
    return nearest;
  };
  const indexed = spans.map(([from, to]): Span => [indexOf(from), indexOf(to)]);
  const steps = widened(
    edges.slice(1).map((edge, at) => edge - (edges[at] ?? 0)),
    indexed,
    length,
    smallest,
  );
  if (!steps) return null;
  const places = [0];
  for (const step of steps) places.push((places.at(-1) ?? 0) + step);
  return (edge) => places[indexOf(edge)] ?? 0;
}

const sumOf = (numbers: readonly number[]): number => numbers.reduce((sum, number) => sum + number, 0);

/** The steps between edges, in proportion but for spans that would be too short; null where there is no room. */
function widened(
  given: readonly number[],
  spans: readonly Span[],
  length: number,
  smallest: number,
): readonly number[] | null {
  const scale = length / sumOf(given);
  let steps = given.map((step) => step * scale);
  for (let round = 0; round < 200; round++) {
    const held = new Set<number>();
    let short = false;
    for (const [from, to] of spans) {
      const own = sumOf(steps.slice(from, to));
      if (own >= smallest + 0.01) continue;
      if (own < smallest - 0.01) short = true;
      for (let at = from; at < to; at++) {
        held.add(at);
        steps[at] = ((steps[at] ?? 0) * smallest) / own;
      }
    }
    const heldLength = sumOf(steps.filter((_, at) => held.has(at)));
    const freeLength = sumOf(steps) - heldLength;
    if (!short && Math.abs(heldLength + freeLength - length) < 0.1) return steps;
    if (heldLength > length || freeLength <= 0) return null;
    const shrink = (length - heldLength) / freeLength;
    steps = steps.map((step, at) => (held.has(at) ? step : step * shrink));
  }
  return null;
}
