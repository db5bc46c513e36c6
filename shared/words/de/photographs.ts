import type { englishPhotographs } from "../en/photographs.ts";

/** Photographs, recordings, and what is made of them for other programs. */
export const germanPhotographs: typeof englishPhotographs = {
  one: (place) => `Aufnahme ${place}`,
  ofAll: (place, of) => `Aufnahme ${place} von ${of}`,
  seen: "Zu sehen in",
  mark: (photograph, mark) => `Aufnahme ${photograph}, Nr.\u00a0${mark}`,
  moment: (time) => `Film oder Ton, ${time}`,
  closer: {
    open: "Genau ansehen",
    title: "Aufnahmen, von nahem",
    previous: "Vorige",
    next: "Nächste",
    nearer: "Näher",
    farther: "Weiter weg",
    whole: "Ganz",
    numbers: "Nummern",
    close: "Schließen",
    stage: "Die Aufnahme. Plus und Minus holen sie näher und weiter weg, die Pfeile verschieben sie.",
  },
  recording: {
    video: "Die Durchsicht im Film",
    sound: "Die Durchsicht als Tonaufnahme",
    moments: "Wann jedes Teil gezeigt wird",
    note: "Eine Zeitangabe führt zu ihrer Stelle.",
    said: "Was gesagt wird",
    captions: "Untertitel",
    chapters: "Kapitel",
    download: "Als Datei",
  },
  manifest: {
    canvas: (place) => `Aufnahme ${place}`,
    parts: "Teile",
    terms: "Rechte und Vermerk",
    data: "Der Eintrag als Daten",
    link: "Die Aufnahmen und die Teile darin, für andere Betrachter (IIIF)",
  },
  card: {
    alt: (title, complete) =>
      `${title}: eine Aufnahme und der Kastenplan${complete === null ? "" : `; nach Gewicht zu ${complete} vollständig`}.`,
    complete: "vollständig nach Gewicht",
  },
};
