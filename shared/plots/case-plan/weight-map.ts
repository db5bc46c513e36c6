import type { Box } from "../drawing/box.ts";

/**
 * A rectangle divided among weights: each has its share of the area, in the order given, in rows that are kept as
 * near as possible to compartments of the shape asked for (width over height).
 * Source  squarified treemaps: Bruls, Huizing, van Wijk (2000), Data Visualization 2000: 33-42
 */
export function weightMap(weights: readonly number[], into: Box, shape = 1): readonly Box[] {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  if (weights.length === 0 || total <= 0) return [];
  // Squares in a rectangle narrowed by the shape are compartments of that shape once it is widened again.
  const narrowed = { ...into, x: 0, width: into.width / shape };
  const scale = (narrowed.width * narrowed.height) / total;
  const boxes = squares(
    weights.map((weight) => weight * scale),
    narrowed,
  );
  return boxes.map((box) => ({ ...box, x: into.x + box.x * shape, width: box.width * shape }));
}

function squares(areas: readonly number[], into: Box): Box[] {
  const boxes: Box[] = [];
  let left = into;
  let from = 0;
  while (from < areas.length) {
    const side = Math.min(left.width, left.height);
    let to = from + 1;
    while (
      to < areas.length &&
      worst(areas.slice(from, to + 1), side) <= worst(areas.slice(from, to), side)
    ) {
      to++;
    }
    const row = areas.slice(from, to);
    const last = to === areas.length;
    boxes.push(...layRow(row, left, last));
    left = without(left, row);
    from = to;
  }
  return boxes;
}

/** How far the least square of a row is from a square: 1 is a square. */
function worst(row: readonly number[], side: number): number {
  const sum = row.reduce((total, area) => total + area, 0);
  const depth = sum / side;
  return Math.max(...row.map((area) => Math.max((depth * depth) / area, area / (depth * depth))));
}

const across = (box: Box): boolean => box.width >= box.height;

function depthOf(row: readonly number[], into: Box): number {
  const sum = row.reduce((total, area) => total + area, 0);
  return sum / (across(into) ? into.height : into.width);
}

function layRow(row: readonly number[], into: Box, last: boolean): Box[] {
  const upright = across(into);
  // The last row takes what is left, so that no sliver comes of rounding.
  const depth = last ? (upright ? into.width : into.height) : depthOf(row, into);
  let at = upright ? into.y : into.x;
  return row.map((area) => {
    const length = area / depth;
    const box = upright
      ? { x: into.x, y: at, width: depth, height: length }
      : { x: at, y: into.y, width: length, height: depth };
    at += length;
    return box;
  });
}

function without(into: Box, row: readonly number[]): Box {
  const depth = depthOf(row, into);
  return across(into)
    ? { ...into, x: into.x + depth, width: Math.max(0, into.width - depth) }
    : { ...into, y: into.y + depth, height: Math.max(0, into.height - depth) };
}
