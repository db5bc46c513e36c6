export type TableKind = "sightings" | "items";

/** How the cells of a field are read. */
export type Reader =
  | "text"
  | "date"
  | "amount"
  | "flag"
  | "id"
  | "variant"
  | "source"
  | "parts"
  | "names"
  | "lines"
  | "record-kind"
  | "status"
  | "structure";

export interface Field {
  readonly name: string;
  readonly reader: Reader;
  readonly required: boolean;
  /** Other headings under which people keep it, in English and German, in plain words (plain-words.ts). */
  readonly headings: readonly string[];
  /** Headings so short or general that they may be said of anything: believed where nothing fits better. */
  readonly brief: readonly string[];
}

const listed = (headings: string): string[] => (headings === "" ? [] : headings.split(", "));

const field = (name: string, reader: Reader, headings: string, required = false, brief = ""): Field => ({
  name,
  reader,
  required,
  headings: listed(headings),
  brief: listed(brief),
});

const variantHeadings =
  "model, type, pattern, mark, version, issue, variety, variante, modell, typ, muster, ausfuhrung";
const serialHeadings =
  "serial no, serial number, serial nr, seriennummer, serien nr, fabriknummer, fabrik nr";
const briefSerial = "s n, sn, number, no, nr, nummer";
const currencyHeadings = "money, wahrung";
const briefCurrency = "cur, curr, ccy";
const germanNotes = "bemerkung, bemerkungen, anmerkung, anmerkungen, notiz, notizen, beschreibung";

/** The columns of the log, in the order of the contract, which is that of the export. */
const sightings: readonly Field[] = [
  field(
    "seen",
    "date",
    "date, date seen, seen on, when, when seen, year, date of sale, sale date, sold, sold on, datum, gesehen, gesehen am, jahr, verkauft am, wann",
    true,
  ),
  field("variant", "variant", variantHeadings, true, "mk"),
  field("serial", "text", serialHeadings, false, briefSerial),
  field("example", "text", "known as, name, nickname, example name, bekannt als, bezeichnung"),
  field(
    "source",
    "source",
    "found in, seen in, where, where seen, catalogue, publication, reference, seller, venue, quelle, wo, wo gesehen, fundstelle, katalog, anbieter, verkaufer",
    false,
    "ref",
  ),
  field(
    "kind",
    "record-kind",
    "kind of record, sort, occasion, how seen, art, art des nachweises, wie gesehen",
    true,
  ),
  field("list", "text", "census, independent list, survey, liste, verzeichnis, zahlung"),
  field(
    "present",
    "parts",
    "parts present, there, has, with, contents, contains, includes, included, vorhanden, teile vorhanden, vorhandene teile, inhalt, mit",
  ),
  field(
    "absent",
    "parts",
    "parts absent, missing, lacking, lacks, without, not there, parts missing, not present, gone, fehlt, fehlend, fehlende teile, fehlteile, ohne",
  ),
  field("condition", "text", "state, grade, shape, zustand, erhaltung"),
  field(
    "price",
    "amount",
    "sum, amount, hammer, hammer price, price realised, asking price, cost, value, preis, betrag, zuschlag, erlos",
  ),
  field("currency", "text", currencyHeadings, false, briefCurrency),
  field(
    "relisted",
    "flag",
    "offered again, again, repeat, relist, same as before, wieder angeboten, erneut, nochmals",
  ),
  field(
    "note",
    "text",
    `notes, remark, remarks, comment, comments, description, details, observations, ${germanNotes}`,
  ),
];

const items: readonly Field[] = [
  field(
    "id",
    "id",
    "reference, inventory no, inventory number, item no, key, kennung, inventarnummer, inventar nr",
    false,
    "ref",
  ),
  field("title", "text", "name, item, heading, description short, titel, name des stucks, bezeichnung", true),
  field("variant", "variant", variantHeadings, true, "mk"),
  field("serial", "text", serialHeadings, false, briefSerial),
  field("set", "text", "set no, set number, set nr, outfit no, outfit number, satznummer, satz nr, satz"),
  field(
    "examined",
    "date",
    "date examined, examined on, date, inspected, checked, looked over, untersucht, untersucht am, gepruft, datum",
  ),
  field("updated", "date", "last changed, changed, modified, last updated, geandert, geandert am"),
  field("revisions", "structure", ""),
  field("status", "status", "whereabouts, stand, verbleib"),
  field("example", "text", "known as, nickname, bekannt als"),
  field("census", "flag", "counted, count it, gezahlt"),
  field("materials", "text", "material, made of, werkstoff, werkstoffe, materialien"),
  field("measurements", "lines", "dimensions, size, abmessungen, masse, grosse"),
  field(
    "distinguishing",
    "lines",
    "distinguishing features, distinguishing marks, damage, besondere merkmale, besondere kennzeichen, schaden",
  ),
  field(
    "storage",
    "text",
    "where kept, kept in, location, shelf, stored, place, lagerort, ort, standort, aufbewahrt",
  ),
  field(
    "paid",
    "amount",
    "price paid, cost, paid for it, bought for, bezahlt, einkaufspreis, kaufpreis, gekauft fur",
  ),
  field("price", "amount", "asking price, asking, for sale at, preis, verkaufspreis"),
  field("currency", "text", currencyHeadings, false, briefCurrency),
  field("extras", "structure", "extra, also in the case, other contents, unlisted, zusatzlich, beigaben"),
  field("labels", "structure", ""),
  field("provenance", "structure", ""),
  field("photos", "structure", ""),
  field("video", "structure", ""),
  field("assembled", "names", ""),
  field("private", "structure", ""),
  field("publish", "structure", ""),
  field("formerly", "names", ""),
  field(
    "description",
    "text",
    `notes, note, remark, remarks, comment, comments, details, text, observations, ${germanNotes}`,
  ),
];

export const fieldsOf = (kind: TableKind): readonly Field[] => (kind === "sightings" ? sightings : items);
