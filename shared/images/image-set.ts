/** One photograph as it stands on the site: the same picture in several widths and formats. */
export interface ImageSet {
  /** Of the picture as shown, upright. */
  readonly width: number;
  readonly height: number;
  /** A colour to stand in its place until it is there, as #rrggbb. */
  readonly colour: string;
  /** Best format first; addresses begin with a slash and are relative to the site's root. */
  readonly sources: readonly ImageSource[];
  /** What a browser that reads none of the formats above takes: a JPEG. */
  readonly fallback: ImageFile;
}

export interface ImageSource {
  readonly type: "image/avif" | "image/webp" | "image/jpeg";
  readonly files: readonly ImageFile[];
}

export interface ImageFile {
  readonly address: string;
  readonly width: number;
  readonly height: number;
}

/** The address of the largest file that everything can show. */
export const largestJpeg = ({ sources, fallback }: ImageSet): string =>
  sources.find(({ type }) => type === "image/jpeg")?.files.at(-1)?.address ?? fallback.address;

/** By the photograph's path relative to the root. */
export type Images = ReadonlyMap<string, ImageSet>;
