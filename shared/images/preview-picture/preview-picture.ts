/** The picture that stands for an entry where somebody links to it. */
export interface PreviewPicture {
  readonly address: string;
  readonly width: number;
  readonly height: number;
}

/** By the id of the item. */
export type PreviewPictures = ReadonlyMap<string, PreviewPicture>;
