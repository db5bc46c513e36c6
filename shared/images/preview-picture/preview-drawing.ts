import { type CasePlanPart, casePlanThumbnail } from "../../plots/case-plan/case-plan.ts";
import { element } from "../../plots/drawing/svg-markup.ts";
import { fittedText } from "./fitted-text.ts";
import { type Typeface, typefaces } from "./typeface.ts";

export const previewSize = { width: 1200, height: 630 } as const;

/** Where the photograph stands on the preview picture. */
export const photographBox = { x: 0, y: 0, width: 744, height: 496 } as const;

/** What stands on the preview picture of an outfit. */
export interface PreviewText {
  readonly collection: string;
  readonly title: string;
  /** What it is held to be, and what the evidence says of that. */
  readonly held: string;
  /** "62% to 87%"; null where completeness has no meaning. */
  readonly complete: string | null;
  readonly completeWords: string;
}

/** All that decides what a preview picture's drawing looks like. */
export interface PreviewContent {
  readonly text: PreviewText;
  readonly parts: readonly CasePlanPart[];
  /** #rrggbb; that of the style sheets where the collection has none of its own. */
  readonly accent?: string | undefined;
}

const ink = "#1a2129";
const inkSoft = "#4f585f";
const paper = "#f6f5f0";
const hairline = "#b7b8af";
/** The collection's accent where it has none of its own, as in the style sheets. */
const ownAccent = "#17594a";

const column = { x: 788, width: 368 } as const;
const margin = 44;

/** The preview picture without its photograph: paper, case plan and writing, all of it as outlines. */
export function previewDrawing({ text, parts, accent = ownAccent }: PreviewContent): string {
  const { width, height } = previewSize;
  const plan = planMarkup(parts);
  const { serif, italic, sans } = typefaces;

  const head = written(text.collection, italic, { x: column.x, y: 62, width: column.width }, [26, 23, 20]);
  const complete =
    text.complete === null
      ? ""
      : written(text.complete, serif, { x: column.x, y: 430, width: column.width }, [58, 50, 42]) +
        written(text.completeWords, sans, { x: column.x, y: 466, width: column.width }, [22, 19], inkSoft);
  const wide = { x: margin, width: width - 2 * margin };
  const title = written(text.title, serif, { ...wide, y: 558 }, [50, 44, 38, 33]);
  const held = written(text.held, sans, { ...wide, y: 600 }, [23, 20], inkSoft);

  return element(
    "svg",
    { xmlns: "http://www.w3.org/2000/svg", width, height, viewBox: `0 0 ${width} ${height}` },
    element("style", {}, style(accent)),
    element("rect", { width, height, fill: paper }),
    head,
    element("path", {
      d: `M${column.x} 78H${column.x + column.width}M${column.x} 82H${column.x + column.width}`,
      stroke: ink,
      fill: "none",
    }),
    plan,
    complete,
    title,
    held,
  );
}

/** In a box below the head, as large as it fits. */
function planMarkup(parts: readonly CasePlanPart[]): string {
  if (parts.length === 0) return "";
  const drawing = casePlanThumbnail(parts);
  const [, w, h] = /viewBox="\S+ \S+ (\S+) (\S+)"/.exec(drawing) ?? [];
  const [planWidth, planHeight] = [Number(w), Number(h)];
  const room = { y: 108, width: column.width, height: 256 };
  const scale = Math.min(room.width / planWidth, room.height / planHeight);
  const x = column.x;
  const y = room.y + (room.height - planHeight * scale) / 2;
  return element("g", { transform: `translate(${x} ${y.toFixed(2)}) scale(${scale.toFixed(4)})` }, drawing);
}

function written(
  text: string,
  face: Typeface,
  { x, y, width }: { readonly x: number; readonly y: number; readonly width: number },
  sizes: readonly [number, ...number[]],
  fill: string = ink,
): string {
  // The serif has more scripts. Where that lacks a letter too, half a name is worse than none.
  const able = [face, typefaces.serif].find(({ covers }) => covers(text));
  if (!able) return "";
  const line = fittedText(text, able, width, sizes);
  return element("path", { d: able.outline(line.text, x, y, line.size), fill });
}

const style = (accent: string): string =>
  [
    `.case-plan-thumbnail{fill:none;stroke:${inkSoft};stroke-width:.5}`,
    `.thumbnail-edge{stroke:${hairline}}`,
    `.thumbnail-filled{fill:${mixed(accent, paper, 0.45)};stroke:none}`,
    ".thumbnail-dots{stroke-width:1;stroke-linecap:round}",
    ".thumbnail-struck{stroke-dasharray:1 1.2}",
  ].join("");

/** Two colours as #rrggbb, channel by channel. */
function mixed(one: string, other: string, share: number): string {
  const channels = (colour: string) => [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
  const others = channels(other);
  return `#${channels(one)
    .map((channel, at) =>
      Math.round(channel * share + (others[at] ?? 0) * (1 - share))
        .toString(16)
        .padStart(2, "0"),
    )
    .join("")}`;
}
