import { type Box, inset } from "../drawing/box.ts";
import { coordinate, element } from "../drawing/svg-markup.ts";
import { bandsOf, type CasePlanPart } from "./case-plan-part.ts";
import { layers } from "./surface.ts";
import { crossedLines, dottedLines, hatchLines } from "./texture-lines.ts";
import { type TrayLayout, trayLayout } from "./tray-layout.ts";

const limits = { width: 96, ratios: [1.5], stretches: [1], partition: 1.5, smallest: 3 } as const;
const known = new Map<string, TrayLayout>();

function tray(parts: readonly CasePlanPart[]): TrayLayout {
  const key = JSON.stringify(parts.map(({ weight, plan }) => [weight, plan]));
  const layout = known.get(key) ?? trayLayout(parts, limits, () => 0);
  if (known.size >= 400) known.clear();
  known.set(key, layout);
  return layout;
}

/** The case plan as a mark for lists: no writing, and silent beside the text that says the same. */
export function casePlanThumbnail(parts: readonly CasePlanPart[]): string {
  const { width, height, boxes } = tray(parts);
  const [filled, outlined, struck, lines, dots]: string[][] = [[], [], [], [], []];
  parts.forEach((part, at) => {
    const box = boxes[at];
    if (!box) return;
    if (part.summary === "not-issued") {
      const { x, y, width, height } = box;
      struck?.push(
        outlineOf(box),
        `M${coordinate(x)} ${coordinate(y + height)}L${coordinate(x + width)} ${coordinate(y)}`,
      );
      return;
    }
    const bands = layers(box, bandsOf(part));
    const surfaces = bands.length > 0 ? bands : [{ state: part.summary, layer: box }];
    if (surfaces.some(({ state }) => state !== "present")) outlined?.push(outlineOf(box));
    for (const { state, layer } of surfaces) {
      if (state === "present") filled?.push(outlineOf(layer));
      if (state === "unverified") lines?.push(hatchLines(layer, 3));
      if (state === "substitute") lines?.push(crossedLines(layer, 3));
      if (state === "unexamined") dots?.push(dottedLines(layer, 3));
    }
  });
  const path = (name: string, pieces: readonly string[] = []) =>
    pieces.length === 0 ? "" : element("path", { class: `thumbnail-${name}`, d: pieces.join("") });
  const edge = 2;
  const size = { width: width + 2 * edge, height: height + 2 * edge };
  return element(
    "svg",
    {
      class: "case-plan-thumbnail",
      "aria-hidden": "true",
      viewBox: [-edge, -edge, size.width, size.height].map(coordinate).join(" "),
      ...size,
    },
    element("rect", {
      class: "thumbnail-edge",
      ...inset({ x: -edge, y: -edge, ...size }, 0.25),
      rx: 2,
    }),
    path("filled", filled),
    path("lines", lines),
    path("dots", dots),
    path("struck", struck),
    path("outlined", outlined),
  );
}

const outlineOf = ({ x, y, width, height }: Box): string =>
  `M${coordinate(x)} ${coordinate(y)}h${coordinate(width)}v${coordinate(height)}h${coordinate(-width)}z`;
