import { inBibliographicOrder, type SourceEntry, sourceEntry } from "../citation/source-reference.ts";
import type { CollectionIndex } from "../collection-index.ts";
import type { Basis } from "./reading-in-words.ts";

/** A figure of the text with what it rests on, at the end of the text. */
export interface Note extends Basis {
  readonly number: number;
  /** Ids of the places in the text that it belongs to. */
  readonly places: readonly string[];
}

/** Gathers, while a text is rendered, what is to stand at its end. */
export interface Notes {
  /** The number of a figure's note, and the id of the place that leads to it. */
  readonly figure: (basis: Basis) => { readonly number: number; readonly place: string };
  readonly cite: (source: string) => void;
  readonly list: () => readonly Note[];
  readonly bibliography: (index: CollectionIndex) => readonly SourceEntry[];
}

export function gatherNotes(): Notes {
  const notes = new Map<
    string,
    { readonly basis: Basis; readonly number: number; readonly places: string[] }
  >();
  const cited = new Set<string>();
  return {
    figure(basis) {
      const note = notes.get(basis.key) ?? { basis, number: notes.size + 1, places: [] };
      notes.set(basis.key, note);
      const place =
        note.places.length === 0 ? `told-${note.number}` : `told-${note.number}-${note.places.length + 1}`;
      note.places.push(place);
      return { number: note.number, place };
    },
    cite: (source) => void cited.add(source),
    list: () => [...notes.values()].map(({ basis, number, places }) => ({ ...basis, number, places })),
    bibliography: (index) =>
      inBibliographicOrder(
        [...cited].flatMap((id) => index.sources.get(id) ?? []),
        index.words,
      ).map((source) => sourceEntry(source, index)),
  };
}

export const noteAddress = (number: number): string => `#basis-${number}`;
/** Of a source in the bibliography at the end of a text. */
export const sourceAddress = (id: string): string => `#source-${id}`;
