import { plainWords } from "../../diagnostics/plain-words.ts";

const kinds: ReadonlyMap<string, string> = new Map(
  Object.entries({
    offer:
      "offer offered sale sold auction lot advert advertisement listing dealer saleroom bought angebot angeboten verkauf verkauft auktion los anzeige inserat handel gekauft",
    record:
      "record recorded described museum collection census catalogue examined inventory seen photographed beschrieben beschreibung sammlung verzeichnet katalog untersucht inventar gesehen fotografiert",
    mention: "mention mentioned named noted hearsay cited reported erwahnt erwahnung genannt zitiert",
  }).flatMap(([kind, words]) => words.split(" ").map((word) => [word, kind])),
);

/** How an example was seen, by the word for it in a spreadsheet. */
export const recordKindOf = (written: string): string | undefined => kinds.get(plainWords(written));
