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

export const tallSizes = "(min-width: 34rem) 30rem, 91vw";

export function picture({ image, alt, sizes, first }: Picture, { link }: PageSite): Html {
  const { fallback, sources, width, height } = image;
  return html`<picture>${sources.map(
    ({ type, files }) =>
      html`<source type="${type}" srcset="${files.map((file) => `${link(file.address)} ${file.width}w`).join(", ")}" sizes="${sizes}">`,
  )}<img src="${link(fallback.address)}" width="${width}" height="${height}" alt="${alt}"${
    first ? html` fetchpriority="high"` : html` loading="lazy"`
  } decoding="async"></picture>`;
}
