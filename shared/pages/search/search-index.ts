/** A name with the id that stands for it in an address. */
export interface Named {
  readonly id: string;
  readonly name: string;
}

export interface IndexedVariant extends Named {
  /** Place in `families`. */
  readonly family: number;
  /** Places in `classes` that the interval of its survivors spans. */
  readonly classes: readonly number[];
  /** Survivors, for the order of rarity; null where not known. */
  readonly survivors: number | null;
  /** The same in words, as the lists have it. */
  readonly survive: string;
}

/** The words of the entries, cut by how they begin. */
export interface WordShard {
  /** Every word that begins like this is in it, unless a longer beginning has its own. */
  readonly prefix: string;
  readonly address: string;
}

/**
 * What the catalogue's search reads first: one line or one character of each text for each entry, in the order of the
 * catalogue. `packed-numbers.ts` says how numbers are written.
 */
export interface SearchIndex {
  /** Of the collection: how people type its words. */
  readonly language: string;
  readonly count: number;
  /** Lines. */
  readonly titles: string;
  readonly ids: string;
  readonly serials: string;
  /** Empty where the title says it. */
  readonly sets: string;
  readonly families: readonly (Named & { readonly maker: string | null })[];
  readonly variants: readonly IndexedVariant[];
  readonly levels: readonly Named[];
  readonly classes: readonly Named[];
  readonly hazards: readonly Named[];
  /** First and last year of issue; null where it is open or not known. */
  readonly years: readonly (readonly [number | null, number | null])[];
  /** One number an entry. */
  readonly variant: string;
  readonly verdict: string;
  readonly status: string;
  /** 1 for one that was made whole out of another case, else 0. */
  readonly assembled: string;
  /** 0 for none, else 1 + the place in `levels`. */
  readonly level: string;
  /** 0 where completeness has no meaning, else 1 + the step in `share-steps.ts`. */
  readonly low: string;
  readonly high: string;
  /** 0 without one. */
  readonly place: string;
  readonly of: string;
  readonly year: string;
  /** Lines of numbers: places in `hazards`. */
  readonly hazard: string;
  /** Where the rest of it is. */
  readonly details: string;
  readonly shards: readonly WordShard[];
}

/** What is fetched when a reader asks for a place, for a part that is missing, or for a word that no entry says. */
export interface SearchDetails {
  readonly places: readonly string[];
  /** The parts of each variant, in the order of `variants`. */
  readonly parts: readonly (readonly Named[])[];
  /** Lines of numbers: places in the parts of the entry's variant, and in `places`. */
  readonly missing: string;
  readonly placesOf: string;
}

/** Of a longer word only the beginning is kept. */
export const longestWord = 24;

/** A file of words: lines of words in order, and beside each the entries that have it. */
export interface WordFile {
  readonly words: string;
  /** Lines of rising numbers, packed. */
  readonly entries: string;
}
