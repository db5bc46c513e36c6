import { othersCompared } from "../publication/others-compared.ts";
import type { PublishedSpread } from "../publication/published.ts";
import type { PlotOptions } from "../words/plot-words.ts";
import { horizontal, imageDrawing, stroke, vertical, writing } from "./drawing/image-drawing.ts";
import { brokenLines } from "./drawing/text-lines.ts";
import { textWidth } from "./drawing/text-width.ts";
import { type Breadth, twoWidths, unitsAcross } from "./drawing/two-widths.ts";

/** An outfit with how like it the others are. */
export interface LikenedOutfit extends Pick<PublishedSpread, "counts" | "thin" | "nearest"> {
  readonly name: string;
}

interface LikenessOptions extends PlotOptions {
  /** Outfits that are not drawn. */
  readonly left: number;
}

const size = 12;
const small = 11;
const lineHeight = 14.5;
/** Of a stroke for one example, and of the longest. */
const [shortest, longest] = [7, 16];

/**
 * How like the others each outfit is: a line from nothing in common to all, with a stroke for every other recorded example,
 * longer where it stands for several, and the nearest named.
 */
export function likenessStrips(outfits: readonly LikenedOutfit[], options: LikenessOptions): string {
  return twoWidths("likeness-strips", options.idPrefix, (breadth, idPrefix) =>
    drawStrips(outfits, options, breadth, idPrefix),
  );
}

interface Place {
  readonly across: number;
  readonly nameWidth: number;
  readonly x: (percent: number) => number;
  /** Whether the line stands below the name, not beside it. */
  readonly below: boolean;
  /** Most examples that one stroke stands for. */
  readonly most: number;
}

function drawStrips(
  outfits: readonly LikenedOutfit[],
  options: LikenessOptions,
  breadth: Breadth,
  idPrefix: string,
): string {
  const { words, label, left } = options;
  const say = words.plots.likeness;
  const across = unitsAcross[breadth];
  const below = breadth === "narrow";
  const [from, to] = below ? [4, across - 4] : [250, across - 8];
  const most = Math.max(1, ...outfits.flatMap(({ counts }) => counts.map(([, examples]) => examples)));
  const x = (percent: number) => from + (percent / 100) * (to - from);
  const place: Place = { across, nameWidth: below ? across : from - 22, x, below, most };
  const axis = brokenLines(most > 1 ? `${say.axis}, ${say.longer}` : say.axis, small, across);
  const top = axis.length * 14 + 18;
  let y = top;
  const rows = outfits.map((outfit) => {
    const row = drawOutfit(outfit, y, place, options);
    y += row.height;
    return row.markup;
  });
  const ends = [0, 50, 100].map((percent) => {
    const text = words.numbers.share(percent / 100);
    const half = textWidth(text, 10.5) / 2;
    const middle = Math.max(half, Math.min(x(percent), across - half));
    return writing(text, middle, top - 6, { size: 10.5, anchor: "middle", kind: "soft" });
  });
  const more = left === 0 ? [] : brokenLines(say.more(words.numbers.count(left), left), small, across);
  return imageDrawing(
    { idPrefix, label, description: describe(outfits, options), breadth, height: y + 2 + more.length * 14 },
    ...axis.map((text, at) => writing(text, 0, 11 + at * 14, { size: small, kind: "soft" })),
    ...ends,
    below ? "" : stroke("grid", [0, 25, 50, 75, 100].map((each) => vertical(x(each), top - 2, y)).join("")),
    ...rows,
    ...more.map((text, at) => writing(text, 0, y + 11 + at * 14, { size: small, kind: "remark" })),
  );
}

function drawOutfit(
  outfit: LikenedOutfit,
  top: number,
  { nameWidth, x, below, most }: Place,
  options: LikenessOptions,
): { readonly markup: string; readonly height: number } {
  const names = brokenLines(outfit.name, size, nameWidth);
  const remarks = remarksOf(outfit, options).flatMap((text) => brokenLines(text, small, nameWidth));
  const written = names.length + remarks.length;
  const line = below
    ? top + written * lineHeight + longest + 2
    : top + Math.max(written * lineHeight, longest) - 1;
  const height = line - top + (below ? 12 : 10);
  const strokeOf = (percent: number, examples: number) => {
    const long = most === 1 ? shortest : shortest + ((longest - shortest) * (examples - 1)) / (most - 1);
    return vertical(x(percent), line - long, line);
  };
  return {
    markup: [
      ...names.map((text, at) => writing(text, 0, top + 11.5 + at * lineHeight, { size })),
      ...remarks.map((text, at) =>
        writing(text, 0, top + 11 + (names.length + at) * lineHeight, { size: small, kind: "remark" }),
      ),
      stroke("axis", horizontal(x(0), x(100), line)),
      below
        ? stroke("grid", [0, 25, 50, 75, 100].map((each) => vertical(x(each), line, line + 4)).join(""))
        : "",
      stroke(
        "seen",
        outfit.counts
          .slice(0, -1)
          .map((each) => strokeOf(...each))
          .join(""),
      ),
      stroke(
        "own",
        outfit.counts
          .slice(-1)
          .map((each) => strokeOf(...each))
          .join(""),
      ),
    ].join(""),
    height,
  };
}

const remarksOf = (
  { nearest, thin }: LikenedOutfit,
  { words: { plots, numbers } }: LikenessOptions,
): string[] => [
  ...(nearest === null ? [] : [plots.likeness.nearest(nearest.name, numbers.share(nearest.likeness))]),
  ...(thin === 0 ? [] : [plots.likeness.thin(numbers.count(thin), thin)]),
];

function describe(outfits: readonly LikenedOutfit[], options: LikenessOptions): string {
  const { words, left } = options;
  const { outfit: write, description, more } = words.plots.likeness;
  const { share, count } = words.numbers;
  return description([
    ...outfits.map((outfit) => {
      const others = othersCompared(outfit);
      const ends = [outfit.counts[0]?.[0] ?? 0, outfit.counts.at(-1)?.[0] ?? 0].map((percent) =>
        share(percent / 100),
      );
      const range = words.interval(ends[0] ?? "", ends[1] ?? "");
      return write(outfit.name, count(others), others, range, remarksOf(outfit, options));
    }),
    ...(left === 0 ? [] : [more(count(left), left)]),
  ]);
}
