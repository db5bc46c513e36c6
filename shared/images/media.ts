import type { Cards } from "./card/card.ts";
import type { Images } from "./image-set.ts";
import type { Recordings } from "./recordings/recording-set.ts";

/** Everything to be seen or heard that a site has made of its collection's files. */
export interface Media {
  readonly images: Images;
  readonly cards: Cards;
  readonly recordings: Recordings;
}

/** Where nothing was made: for whoever needs the pages alone. */
export const noMedia: Media = { images: new Map(), cards: new Map(), recordings: new Map() };
