import { coordinate } from "./svg-markup.ts";

/** Shapes that stay apart in grey, in print and when small. */
export type Shape = "disc" | "square" | "triangle";

/** `own`: as the shape is drawn where it has nothing to say by being filled. */
export type MarkSurface = "own" | "filled" | "half" | "hollow";

/** A shape about a point, as a path, so that a thousand of them are one element. */
export function markShape(shape: Shape, x: number, y: number, radius: number): string {
  const r = coordinate(radius);
  if (shape === "disc") {
    const across = coordinate(2 * radius);
    return `M${coordinate(x - radius)} ${coordinate(y)}a${r} ${r} 0 1 0 ${across} 0a${r} ${r} 0 1 0 -${across} 0z`;
  }
  if (shape === "square") {
    const half = radius * 0.88;
    const side = coordinate(2 * half);
    return `M${coordinate(x - half)} ${coordinate(y - half)}h${side}v${side}h-${side}z`;
  }
  return `M${coordinate(x)} ${coordinate(y - radius)}l${r} ${coordinate(radius * 1.8)}h-${coordinate(radius * 2)}z`;
}

/** The lower half of it. */
export function lowerHalf(shape: Shape, x: number, y: number, radius: number): string {
  const r = coordinate(radius);
  if (shape === "disc")
    return `M${coordinate(x - radius)} ${coordinate(y)}a${r} ${r} 0 0 0 ${coordinate(2 * radius)} 0z`;
  if (shape === "square") {
    const half = radius * 0.88;
    const side = coordinate(2 * half);
    return `M${coordinate(x - half)} ${coordinate(y)}v${coordinate(half)}h${side}v-${coordinate(half)}z`;
  }
  const up = radius * 0.9;
  const out = coordinate(radius / 2);
  return `M${coordinate(x - radius / 2)} ${coordinate(y + radius * 0.8 - up)}l-${out} ${coordinate(up)}h${coordinate(2 * radius)}l-${out} -${coordinate(up)}z`;
}
