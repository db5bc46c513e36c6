import { type Box, inset } from "./box.ts";
import { type CasePlanPart, filledShare } from "./case-plan-part.ts";
import { coordinate, element } from "./svg-markup.ts";
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
    const { x, y, width, height } = box;
    if (part.summary === "present") {
      filled?.push(outlineOf(box));
      return;
    }
    (part.summary === "not-issued" ? struck : outlined)?.push(outlineOf(box));
    const share = filledShare(part);
    const bare = { ...box, height: height * (1 - (share ?? 0)) };
    if (share !== null) {
      const depth = height * share;
      filled?.push(outlineOf({ x, y: y + height - depth, width, height: depth }));
    }
    // A texture would be lost on what is filled.
    if (part.summary === "unverified") lines?.push(hatchLines(bare, 3));
    if (part.summary === "substitute") lines?.push(crossedLines(bare, 3));
    if (part.summary === "unexamined" || part.summary === "partly-examined") dots?.push(dottedLines(bare, 3));
    if (part.summary === "not-issued") {
      struck?.push(`M${coordinate(x)} ${coordinate(y + height)}L${coordinate(x + width)} ${coordinate(y)}`);
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
