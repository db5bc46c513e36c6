import { xmlText } from "../../pages/data/xml.ts";
import { hazardIn } from "../../publication/publish-hazard.ts";
import type { Collection } from "../../records/collection.ts";
import type { Part } from "../../records/variant.ts";
import type { BenchWords } from "../../words/en/bench.ts";
import { wordsFor } from "../../words/languages.ts";

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

/** Those of a variant's parts. */
export const cautionsAmong = (
  cautions: ReadonlyMap<string, Caution>,
  parts: Iterable<Pick<Part, "hazards">>,
): Caution[] => {
  const among = new Set([...parts].flatMap(({ hazards }) => hazards));
  return [...cautions.values()].filter(({ id }) => among.has(id));
};

/** Words of a caution on a page of another language, which is to be read aloud as what it is. */
export const cautionHtml = (text: string, { language }: Caution): string =>
  language === null ? xmlText(text) : `<span lang="${xmlText(language)}">${xmlText(text)}</span>`;

/** What stands before everything else for whoever is about to open a case; nothing where nothing in it can hurt. */
export function beforeYouBegin(
  cautions: ReadonlyMap<string, Caution>,
  parts: readonly Part[],
  { before }: BenchWords,
  /** What local rules come before. */
  what: "page" | "sheet",
): string {
  const found = cautionsAmong(cautions, parts);
  if (found.length === 0) return "";
  const entries = found.map((each) => {
    const { id, name, caution, source } = each;
    // Parts of several variants may have one name.
    const bearers = new Set(parts.flatMap((part) => (part.hazards.includes(id) ? part.name : [])));
    return `<dt>${cautionHtml(name, each)}: ${xmlText([...bearers].join(", "))}</dt><dd>${cautionHtml(caution, each)} <cite>${xmlText(source)}</cite></dd>`;
  });
  return `<section class="cautions"><h2>${xmlText(before.title)}</h2><p>${xmlText(before[what])}</p><dl>${entries.join("")}</dl></section>`;
}
