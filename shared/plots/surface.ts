import type { PartSummary } from "../publication/published.ts";
import type { Box } from "./box.ts";
import { coordinate, element } from "./svg-markup.ts";

/** How a part's state looks, in the case plan and wherever else the state is marked. */
export type Surface = PartSummary | "issued";

const textures = {
  unverified: { id: "hatch", step: 5, lines: ["M0 0V5"], turn: 45 },
  substitute: { id: "cross", step: 5, lines: ["M0 0V5", "M0 0H5"], turn: 45 },
  unexamined: { id: "dots", step: 5, lines: ["M1.2 1.2h0", "M3.7 3.7h0"], turn: 0 },
} as const;

type Texture = (typeof textures)[keyof typeof textures];

const textureOf = (surface: Surface): Texture | undefined => {
  // What nobody has looked for looks the same, whether something else is there or not.
  const name = surface === "partly-examined" ? "unexamined" : surface;
  return Object.hasOwn(textures, name) ? textures[name as keyof typeof textures] : undefined;
};

/** The patterns that the surfaces are drawn with, under ids of their own. */
export function surfaceDefinitions(surfaces: Iterable<Surface>, idPrefix: string): string {
  const used = new Set([...surfaces].flatMap((surface) => textureOf(surface) ?? []));
  if (used.size === 0) return "";
  const patterns = [...used].map(({ id, step, lines, turn }) =>
    element(
      "pattern",
      {
        id: `${idPrefix}-${id}`,
        width: step,
        height: step,
        patternUnits: "userSpaceOnUse",
        patternTransform: turn === 0 ? undefined : `rotate(${turn})`,
      },
      element("path", { class: `surface-${id}`, d: lines.join("") }),
    ),
  );
  return element("defs", {}, ...patterns);
}

/**
 * A compartment in its state, to stand in an element of the class `surface-` and the state, which looks and has
 * rounded corners as the style sheet says. `filled` says how much of it is there where some is: null where none is, or all.
 */
export function surfaceMarkup(
  surface: Surface,
  box: Box,
  idPrefix: string,
  { filled, rounding = 3 }: { readonly filled: number | null; readonly rounding?: number },
): string {
  const { x, y, width, height } = box;
  const texture = textureOf(surface);
  const fill = texture && `url(#${idPrefix}-${texture.id})`;
  const pit = element("rect", { x, y, width, height, fill });
  const rx = Math.min(rounding, width / 3, height / 3);
  if (filled !== null) return pit + element("path", { d: lowerPart(box, rx, filled) });
  if (surface === "not-issued") {
    const strike = `M${coordinate(x + rx)} ${coordinate(y + height - rx)}L${coordinate(x + width - rx)} ${coordinate(y + rx)}`;
    return pit + element("path", { d: strike });
  }
  return pit;
}

/** As much of a rounded compartment as is filled, from the bottom. */
function lowerPart({ x, y, width, height }: Box, rx: number, filled: number): string {
  const depth = Math.min(Math.max(filled * height, 2 * rx), height - 2 * rx);
  const arc = `a${coordinate(rx)} ${coordinate(rx)} 0 0 0`;
  return [
    `M${coordinate(x)} ${coordinate(y + height - depth)}`,
    `v${coordinate(depth - rx)}`,
    `${arc} ${coordinate(rx)} ${coordinate(rx)}`,
    `h${coordinate(width - 2 * rx)}`,
    `${arc} ${coordinate(rx)} ${coordinate(-rx)}`,
    `v${coordinate(rx - depth)}z`,
  ].join("");
}
