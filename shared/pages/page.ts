import type { PreviewPicture } from "../images/preview-picture/preview-picture.ts";

/** What every page of the site has, whatever it shows. */
export interface PageHead {
  /** From the root of the site, beginning and (but for files such as /404.html) ending with a slash. */
  readonly address: string;
  readonly title: string;
  /** One or two plain sentences, for search engines and link previews. */
  readonly description: string;
  /** From the first page down to this one's parent. */
  readonly trail: readonly Link[];
  /** schema.org, as JSON-LD. */
  readonly linkedData: Readonly<Record<string, unknown>> | null;
  /** The picture that stands for the page where somebody links to it. */
  readonly preview?: (PreviewPicture & { readonly alt: string }) | null;
}

export interface Link {
  readonly address: string;
  readonly name: string;
}
