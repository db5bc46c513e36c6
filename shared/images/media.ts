import type { Images } from "./image-set.ts";
import type { PreviewPictures } from "./preview-picture/preview-picture.ts";
import type { Recordings } from "./recordings/recording-set.ts";

/** Everything to be seen or heard that a site has made of its collection's files. */
export interface Media {
  readonly images: Images;
  readonly previewPictures: PreviewPictures;
  readonly recordings: Recordings;
}

/** Where nothing was made: for whoever needs the pages alone. */
export const noMedia: Media = { images: new Map(), previewPictures: new Map(), recordings: new Map() };
