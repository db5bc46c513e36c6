export interface Size {
  readonly width: number;
  readonly height: number;
}

export interface Encoding {
  readonly format: "avif" | "webp" | "jpeg";
  readonly type: "image/avif" | "image/webp" | "image/jpeg";
  readonly extension: string;
  readonly options: Readonly<Record<string, string | number | boolean>>;
}

/** The main photograph is at most this wide in CSS pixels. */
const mainWidth = 1100;

/**
 * From the layout, each at one and at two device pixels to the CSS pixel: a list shows 320, a phone 360 to 430,
 * an item's main photograph up to 1100. 1600 stands between for the widths of tablets and small laptops.
 */
const layoutWidths = [320, 640, 860, mainWidth, 1600, 2 * mainWidth] as const;

/** A main photograph of 2:3 at its full width; a taller one is held to this and comes out narrower. */
const tallest = 3300;

/** A width this near to the largest one saves a reader nothing. */
const worthHaving = 0.9;

/**
 * Measured at 3.6 megapixels on one core: AVIF costs 0.4 s at effort 0, 1.2 at 1, 1.7 at 2 and 3.3 at 3, for
 * files of 437, 414, 412 and 397 kB. Effort 0 gains nothing on WebP; the small sizes, which most readers get,
 * are worth more.
 */
const efforts = { small: { avif: 2, webp: 4 }, large: { avif: 1, webp: 2 } } as const;

const qualities = {
  avif: { quality: 60, chromaSubsampling: "4:2:0" },
  webp: { quality: 76 },
  jpeg: { quality: 80, progressive: true },
} as const;

export const background = "#ffffff";

/** Best format first. */
export function encodingsAt(width: number): readonly Encoding[] {
  const effort = width > mainWidth ? efforts.large : efforts.small;
  return [
    {
      format: "avif",
      type: "image/avif",
      extension: "avif",
      options: { ...qualities.avif, effort: effort.avif },
    },
    {
      format: "webp",
      type: "image/webp",
      extension: "webp",
      options: { ...qualities.webp, effort: effort.webp },
    },
    { format: "jpeg", type: "image/jpeg", extension: "jpg", options: qualities.jpeg },
  ];
}

/** The sizes that a picture of the given upright size is published in, smallest first; never beyond its own. */
export function planSizes(upright: Size): readonly [Size, ...Size[]] {
  const heightFor = (width: number) =>
    Math.min(tallest, Math.max(1, Math.round((upright.height * width) / upright.width)));
  const widthOfTallest = Math.floor((upright.width * tallest) / upright.height);
  const widest = Math.max(1, Math.min(upright.width, 2 * mainWidth, widthOfTallest));
  const [first, ...rest] = layoutWidths.filter((width) => width < widest * worthHaving);
  const sized = (width: number): Size => ({ width, height: heightFor(width) });
  return first === undefined ? [sized(widest)] : [sized(first), ...rest.map(sized), sized(widest)];
}

/** The smallest that fills the main photograph's place at one device pixel to the CSS pixel, or the largest. */
export function fallbackWidth(sizes: readonly [Size, ...Size[]]): number {
  const widths = sizes.map((size) => size.width);
  return widths.find((width) => width >= mainWidth) ?? Math.max(...widths);
}

/** Whatever changes an output without changing its original. Raise `pipeline` where the code alone does so. */
export const settingsKey = JSON.stringify({
  pipeline: 1,
  layoutWidths,
  tallest,
  worthHaving,
  efforts,
  qualities,
  background,
});
