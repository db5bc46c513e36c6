export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export const inset = (box: Box, by: number): Box => ({
  x: box.x + by,
  y: box.y + by,
  width: box.width - 2 * by,
  height: box.height - 2 * by,
});

/** Whether two boxes share more than their edges. */
export const overlap = (a: Box, b: Box, tolerance = 0): boolean =>
  a.x + a.width > b.x + tolerance &&
  b.x + b.width > a.x + tolerance &&
  a.y + a.height > b.y + tolerance &&
  b.y + b.height > a.y + tolerance;
