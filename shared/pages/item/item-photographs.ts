import { type ImageSet, type Images, largestJpeg } from "../../images/image-set.ts";
import { addUnder } from "../../lists/grouping.ts";
import { calloutMarks } from "../../plots/case-plan/callout-marks.ts";
import type { PublishedItem } from "../../publication/published.ts";
import type { Words } from "../../words/words.ts";
import type { Link } from "../page.ts";

export interface PhotoView {
  /** From 1. */
  readonly place: number;
  readonly id: string;
  readonly image: ImageSet;
  /** The address of its largest file that everything can show. */
  readonly largest: string;
  readonly alt: string;
  readonly caption: string | null;
  /** SVG: what lies over the picture; empty where nothing is pointed out. */
  readonly marks: string;
  readonly legend: readonly {
    readonly id: string;
    readonly number: number;
    readonly part: Link;
    readonly partId: string;
  }[];
}

/** The photographs that there are pictures of, each with its numbers. */
export function photoViews(
  item: PublishedItem,
  images: Images,
  partLink: (part: string) => Link,
): readonly PhotoView[] {
  const shown = item.photos.flatMap((photo) => {
    const image = images.get(photo.original);
    return image ? [{ photo, image }] : [];
  });
  return shown.map(({ photo, image }, at) => {
    const place = at + 1;
    const id = `photograph-${place}`;
    const callouts = photo.callouts.map((callout, index) => ({ ...callout, number: index + 1 }));
    return {
      place,
      id,
      image,
      largest: largestJpeg(image),
      alt: photo.alt,
      caption: photo.caption,
      marks: calloutMarks(callouts, image),
      legend: callouts.map(({ number, part }) => ({
        id: `${id}-${number}`,
        number,
        part: partLink(part),
        partId: part,
      })),
    };
  });
}

/** Where each part is seen, by its id: the lines below the photographs that name it. */
export function placesSeen(photos: readonly PhotoView[], words: Words): ReadonlyMap<string, readonly Link[]> {
  const seen = new Map<string, Link[]>();
  for (const { place, legend } of photos) {
    for (const { id, number, partId } of legend) {
      const link = { address: `#${id}`, name: words.pages.photographs.mark(place, number) };
      addUnder(seen, partId, link);
    }
  }
  return seen;
}
