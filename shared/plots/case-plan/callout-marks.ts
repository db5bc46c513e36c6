import { marksApart, type Point } from "../drawing/marks-apart.ts";
import { element } from "../drawing/svg-markup.ts";

export interface Callout {
  readonly number: number;
  /** The id of the part that it names. */
  readonly part: string;
  /** From the left and from the top, each from 0 to 1. */
  readonly at: readonly [number, number];
}

/** Between the middles of two, in CSS pixels: a target of 24 pixels each (WCAG 2.2, 2.5.8), and a hair between them. */
const distance = 27;
/** From its spot a mark is a number that stands beside a dot; further than this, a number at the end of a line. */
const beside = 12;
/** What a number of two digits takes at the side of its dot. */
const side = 24;

/**
 * The least width in CSS pixels at which each set of places is shown. Places are shares of the picture, and marks
 * are not: what is clear of its neighbours at one width is clear of them at every greater one. The narrowest is a
 * telephone of 320 pixels, or a photograph on paper; the style sheet shows one set at a time.
 */
const breadths = { narrow: 250, wide: 544, full: 960 } as const;
type Breadth = keyof typeof breadths;

/**
 * Numbers over a picture of the given proportions, each beside a dot on its spot or led to it by a line. As on an
 * engraved plate there is no ground behind them but the edge of each figure, so that they hide little.
 */
export function calloutMarks(
  callouts: readonly Callout[],
  picture: { readonly width: number; readonly height: number },
): string {
  if (callouts.length === 0) return "";
  const drawn: { breadths: Breadth[]; marks: string }[] = [];
  for (const [breadth, width] of Object.entries(breadths) as [Breadth, number][]) {
    const marks = marksAt(callouts, { width, height: (width * picture.height) / picture.width });
    const last = drawn.at(-1);
    if (last?.marks === marks) last.breadths.push(breadth);
    else drawn.push({ breadths: [breadth], marks });
  }
  return drawn
    .map(({ breadths: shown, marks }) =>
      // The list below the picture says the same to those who do not see it, and is what a keyboard reaches.
      element("svg", { class: ["callouts", ...shown].join(" "), "aria-hidden": "true" }, marks),
    )
    .join("");
}

function marksAt(
  callouts: readonly Callout[],
  { width, height }: { readonly width: number; readonly height: number },
): string {
  const points = callouts.map(({ at: [x, y] }) => ({ x: x * width, y: y * height }));
  const places = marksApart(points, { width, height, distance });
  const share = ({ x, y }: Point) => ({ x: percent(x / width), y: percent(y / height) });
  const lines: string[] = [];
  const marks = callouts.map(({ number, part }, at) => {
    const point = points[at] ?? { x: 0, y: 0 };
    const place = places[at] ?? point;
    const [from, to] = [share(point), share(place)];
    const moved = Math.hypot(place.x - point.x, place.y - point.y) > beside;
    if (moved) {
      const ends = { x1: from.x, y1: from.y, x2: to.x, y2: to.y };
      lines.push(
        element(
          "g",
          { class: "callout-lead", "data-part": part },
          element("line", { class: "callout-casing", ...ends }),
          element("line", ends),
          element("circle", { cx: from.x, cy: from.y, r: 2.5 }),
        ),
      );
    }
    const asEnd = width - place.x < side;
    return element(
      "a",
      { class: "callout", href: `#part-${part}`, tabindex: -1 },
      element("circle", { class: "callout-target", cx: to.x, cy: to.y, r: distance / 2 }),
      moved ? "" : element("circle", { class: "callout-dot", cx: to.x, cy: to.y, r: 3 }),
      element(
        "text",
        moved
          ? { ...to, dy: ".36em", "text-anchor": "middle" }
          : { ...to, dx: asEnd ? -5 : 5, dy: -5, ...(asEnd && { "text-anchor": "end" }) },
        String(number),
      ),
    );
  });
  // Marks last: they lie over every line.
  return [...lines, ...marks].join("");
}

const percent = (share: number): string => `${Math.round(share * 10_000) / 100}%`;
