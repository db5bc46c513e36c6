import type { ImageSet } from "../../shared/images/image-set.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export interface Picture {
  readonly image: ImageSet;
  readonly alt: string;
  readonly sizes: string;
  /** The first large picture of a page is fetched at once, the others when they are near. */
  readonly first: boolean;
}

/** One that is taller than it is wide would fill several screens at the whole width. */
export const isTall = ({ width, height }: ImageSet): boolean => height > width;

/** One that at the whole width would be much higher than most windows; of four by three the foot may lie below. */
export const isSquare = ({ width, height }: ImageSet): boolean => height <= width && width < 1.2 * height;

/** One that all but fills the widest column: it is stretched by a seventh at most. */
export const isBroad = ({ width, height }: ImageSet): boolean => width >= 1500 && height <= width;

/** In CSS pixels: what a window on a desk shows at once. */
const mostHigh = 800;

/** As large as it is shown where there is room: its own pixels and no more, and no higher than a window if it is tall. */
function largest({ width, height }: ImageSet): { readonly width: number; readonly height: number } {
  if (height <= Math.max(width, mostHigh)) return { width, height };
  const narrower = Math.max(1, Math.round((mostHigh * width) / height));
  return { width: narrower, height: Math.round((narrower * height) / width) };
}

export const tallSizes = "(min-width: 34rem) 30rem, 91vw";

export function picture({ image, alt, sizes, first }: Picture, { link }: PageSite): Html {
  const { fallback, sources } = image;
  const { width, height } = largest(image);
  return html`<picture>${sources.map(
    ({ type, files }) =>
      html`<source type="${type}" srcset="${files.map((file) => `${link(file.address)} ${file.width}w`).join(", ")}" sizes="${sizes}">`,
  )}<img src="${link(fallback.address)}" width="${width}" height="${height}" alt="${alt}"${
    first ? html` fetchpriority="high"` : html` loading="lazy"`
  } decoding="async"></picture>`;
}
