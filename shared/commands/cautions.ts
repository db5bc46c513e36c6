import { xmlText } from "../pages/data/xml.ts";
import { hazardIn } from "../publication/publish-hazard.ts";
import type { Collection } from "../records/collection.ts";
import { wordsFor } from "../words/languages.ts";

/** What can hurt, as whoever opens the case is told of it: in the collection's language, like its pages. */
export interface Caution {
  readonly id: string;
  readonly name: string;
  /** The name within a sentence; German keeps its capital. */
  readonly nameInText: string;
  readonly caution: string;
  readonly source: string;
  /** The language of name and caution, where the register has them in the collection's. */
  readonly language: string | null;
}

export function cautionsOf({ hazards, settings }: Collection): ReadonlyMap<string, Caution> {
  const { language } = settings;
  const { nameInText } = wordsFor(language).pages;
  return new Map(
    [...hazards].map(([id, hazard]) => {
      const { name, caution, isTranslated } = hazardIn(hazard, language);
      const { source } = hazard;
      const spoken = isTranslated ? language : null;
      return [id, { id, name, nameInText: nameInText(name), caution, source, language: spoken }];
    }),
  );
}

/** Words of a caution on a page of another language, which is to be read aloud as what it is. */
export const cautionHtml = (text: string, { language }: Caution): string =>
  language === null ? xmlText(text) : `<span lang="${xmlText(language)}">${xmlText(text)}</span>`;
