import { plainWords } from "../../diagnostics/plain-words.ts";
import type { Reader } from "./fields.ts";

/** Words that are one of a few, under each of which stands what spreadsheets call it, in English and German. */
interface KnownWords {
  readonly all: readonly string[];
  readonly of: (written: string) => string | undefined;
}

function knownWords(spellings: Readonly<Record<string, string>>): KnownWords {
  const byWords = new Map(
    Object.entries(spellings).flatMap(([word, others]) =>
      [word, ...others.split(", ")].map((each) => [each, word] as const),
    ),
  );
  return { all: Object.keys(spellings), of: (written) => byWords.get(plainWords(written)) };
}

/** How an example was seen. */
export const recordKinds = knownWords({
  offer:
    "offered, sale, sold, auction, lot, advert, advertisement, listing, dealer, saleroom, bought, angebot, angeboten, verkauf, verkauft, auktion, los, anzeige, inserat, handel, gekauft",
  record:
    "recorded, described, museum, collection, census, catalogue, examined, inventory, seen, photographed, beschrieben, beschreibung, sammlung, verzeichnet, katalog, untersucht, inventar, gesehen, fotografiert",
  mention: "mentioned, named, noted, hearsay, cited, reported, erwahnt, erwahnung, genannt, zitiert",
});

/** What an item is here as. */
const statuses = knownWords({
  collection:
    "in the collection, in collection, kept, keep, keeping, held, owned, mine, not for sale, sammlung, in der sammlung, in sammlung, behalten, bestand, eigentum, unverkauflich, nicht zu verkaufen",
  offered:
    "offer, for sale, on sale, on offer, available, angeboten, angebot, im angebot, zum verkauf, zu verkaufen, verkauflich",
  sold: "sold on, verkauft",
  reference:
    "for reference, for comparison, comparison, referenz, vergleich, zum vergleich, vergleichsstuck, vergleichsexemplar",
  lost: "untraced, whereabouts unknown, verloren, verschollen, verbleib unbekannt",
  stolen: "reported stolen, theft, gestohlen, als gestohlen gemeldet, entwendet, diebstahl",
  destroyed:
    "broken up, dispersed, scrapped, burnt, zerstort, aufgelost, zerlegt, vernichtet, verbrannt, verschrottet",
});

export const knownWordsOf: Readonly<Partial<Record<Reader, KnownWords>>> = {
  "record-kind": recordKinds,
  status: statuses,
};
