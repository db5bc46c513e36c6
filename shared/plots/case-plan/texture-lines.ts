import type { Box } from "../drawing/box.ts";
import { coordinate } from "../drawing/svg-markup.ts";

/** Hatching from the upper right to the lower left. */
export function hatchLines({ x, y, width, height }: Box, step: number): string {
  let path = "";
  for (let along = step; along < width + height; along += step) {
    const from = { x: x + Math.min(along, width), y: y + Math.max(0, along - width) };
    const to = { x: x + Math.max(0, along - height), y: y + Math.min(along, height) };
    path += `M${coordinate(from.x)} ${coordinate(from.y)}L${coordinate(to.x)} ${coordinate(to.y)}`;
  }
  return path;
}

/** Hatching, and hatching against it. */
export function crossedLines(box: Box, step: number): string {
  let path = hatchLines(box, step);
  const { x, y, width, height } = box;
  for (let along = step; along < width + height; along += step) {
    const from = { x: x + Math.max(0, width - along), y: y + Math.max(0, along - width) };
    const to = { x: x + Math.min(width, width + height - along), y: y + Math.min(along, height) };
    path += `M${coordinate(from.x)} ${coordinate(from.y)}L${coordinate(to.x)} ${coordinate(to.y)}`;
  }
  return path;
}

/** Dots, each a line without length that its round ends make visible. */
export function dottedLines({ x, y, width, height }: Box, step: number): string {
  const columns = Math.max(1, Math.floor(width / step));
  const rows = Math.max(1, Math.floor(height / step));
  let path = "";
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const at = { x: x + ((column + 0.5) * width) / columns, y: y + ((row + 0.5) * height) / rows };
      path += `M${coordinate(at.x)} ${coordinate(at.y)}h0`;
    }
  }
  return path;
}

/** Dots in rows, each row one line, which the style sheet takes apart into dots at twice that distance. */
export function dotRows({ x, y, width, height }: Box, step: number): string {
  let path = "";
  for (let down = step / 2, row = 0; down < height; down += step, row++) {
    const indent = row % 2 === 0 ? step / 2 : 1.5 * step;
    if (indent + 1 < width)
      path += `M${coordinate(x + indent)} ${coordinate(y + down)}h${coordinate(width - indent - 1)}`;
  }
  return path;
}
