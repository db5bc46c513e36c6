/** What is said at a second of a recording, in words alone. */
export interface Saying {
  readonly seconds: number;
  readonly words: string;
}

/** A recording as it stands on the site. */
export interface Recording {
  readonly kind: "video" | "sound";
  readonly type: string;
  /** From the root of the site, beginning with a slash; named by its content and by nothing that says whose it is. */
  readonly address: string;
  /** What is said in it, as WebVTT. */
  readonly captions: string | null;
  /** The same to be read; empty where there are no captions. */
  readonly said: readonly Saying[];
  /** Which part it comes to when, as WebVTT. */
  readonly chapters: string | null;
}

/** By the id of the item. */
export type Recordings = ReadonlyMap<string, Recording>;
