import type { PartSummary } from "../../publication/published.ts";
import type { Box } from "../drawing/box.ts";
import { coordinate, element } from "../drawing/svg-markup.ts";
import type { Band } from "./case-plan-part.ts";
import { crossedLines, dotRows, hatchLines } from "./texture-lines.ts";

/** How a part's state looks in the case plan: one of several states has a band for each. */
export type Surface = PartSummary | "issued" | "several";

const textures = {
  unverified: { id: "hatch", linesIn: (box: Box) => hatchLines(box, 7) },
  substitute: { id: "cross", linesIn: (box: Box) => crossedLines(box, 7) },
  unexamined: { id: "dots", linesIn: (box: Box) => dotRows(box, 3.5) },
} as const;

/**
 * The texture of a state within a box; null of one that has none. It is made of lines, since a browser that prints turns
 * whatever is filled with a pattern into pixels.
 */
export function textureIn(surface: Surface, box: Box): string | null {
  if (!Object.hasOwn(textures, surface)) return null;
  const { id, linesIn } = textures[surface as keyof typeof textures];
  return element("path", { class: `surface-${id}`, d: linesIn(box) });
}

const rounding = 3;
/** A band that is no deeper than this would not be seen. */
const leastDepth = 4;

/**
 * A compartment in its state, to stand in an element of the class `surface-` and the state, which looks and has
 * rounded corners as the style sheet says. Of several states each has its band, and what is missing stays empty.
 */
export function surfaceMarkup(surface: Surface, box: Box, bands: readonly Band[] = []): string {
  const { x, y, width, height } = box;
  const pit = element("rect", { x, y, width, height });
  const rx = Math.min(rounding, width / 3, height / 3);
  if (surface === "not-issued") {
    const strike = `M${coordinate(x + rx)} ${coordinate(y + height - rx)}L${coordinate(x + width - rx)} ${coordinate(y + rx)}`;
    return pit + element("path", { d: strike });
  }
  const filled = layers(box, bands)
    .filter(({ state }) => state !== "absent")
    .map(
      ({ state, layer }) => textureIn(state, layer) ?? element("path", { d: layerOutline(layer, box, rx) }),
    );
  return pit + (textureIn(surface, box) ?? "") + filled.join("");
}

/** The bands of a compartment as boxes, from its bottom; none is too shallow to be seen. */
export function layers(
  { x, y, width, height }: Box,
  bands: readonly Band[],
): readonly { readonly state: PartSummary; readonly layer: Box }[] {
  const least = Math.min(leastDepth, height / (2 * bands.length)) / height;
  const depths = bands.map(({ share }) => Math.max(share, least));
  const scale = height / depths.reduce((sum, depth) => sum + depth, 0);
  let top = y + height;
  return bands.map(({ state }, at) => {
    const depth = (depths[at] ?? 0) * scale;
    top -= depth;
    return { state, layer: { x, y: top, width, height: depth } };
  });
}

/** A band, with the rounded corners of its compartment where it reaches them. */
function layerOutline({ x, y, width, height }: Box, pit: Box, rx: number): string {
  const near = (one: number, other: number) => Math.abs(one - other) < 0.05;
  const above = near(y, pit.y) ? Math.min(rx, height / 2) : 0;
  const below = near(y + height, pit.y + pit.height) ? Math.min(rx, height / 2) : 0;
  const arc = (radius: number, ...ways: readonly number[]) =>
    radius === 0 ? "" : `q${ways.map((way) => coordinate(way * radius)).join(" ")}`;
  return [
    `M${coordinate(x)} ${coordinate(y + above)}`,
    `v${coordinate(height - above - below)}`,
    arc(below, 0, 1, 1, 1),
    `h${coordinate(width - 2 * below)}`,
    arc(below, 1, 0, 1, -1),
    `v${coordinate(above + below - height)}`,
    arc(above, 0, -1, -1, -1),
    above === 0 ? "" : `h${coordinate(2 * above - width)}`,
    arc(above, -1, 0, -1, 1),
    "z",
  ].join("");
}
