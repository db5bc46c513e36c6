/** Photographs, recordings, and what is made of them for other programs. */
export const englishPhotographs = {
  one: (place: number) => `Photograph ${place}`,
  ofAll: (place: number, of: number) => `Photograph ${place} of ${of}`,
  /** In the list of parts: where a part is seen and heard. */
  seen: "Seen in",
  mark: (photograph: number, mark: number) => `photograph ${photograph}, no.\u00a0${mark}`,
  moment: (time: string) => `recording, ${time}`,
  closer: {
    open: "Look closely",
    title: "Photographs, close up",
    previous: "Previous",
    next: "Next",
    nearer: "Nearer",
    farther: "Farther",
    whole: "Whole",
    numbers: "Numbers",
    close: "Close",
    stage: "The photograph. Plus and minus bring it nearer and farther, the arrows move it.",
  },
  recording: {
    video: "Gone through, on film",
    sound: "Gone through, as a sound recording",
    moments: "When each part is shown",
    note: "A time leads to its moment in the recording.",
    said: "What is said",
    captions: "Captions",
    chapters: "Chapters",
    download: "The recording as a file",
  },
  manifest: {
    canvas: (place: number) => `Photograph ${place}`,
    parts: "Parts",
    terms: "Rights and notice",
    data: "The record as data",
    link: "The photographs and the parts in them, for other viewers (IIIF)",
  },
  /** The picture that stands for an entry where somebody links to it. */
  card: {
    alt: (title: string, complete: string | null) =>
      `${title}: a photograph and the case plan${complete === null ? "" : `; ${complete} complete by weight`}.`,
    complete: "complete by weight",
  },
};
