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
  | "record-kind"
  | "structure";

export interface Field {
  readonly name: string;
  readonly reader: Reader;
  readonly required: boolean;
  /** Other headings under which people keep it, in plain words. */
  readonly headings: readonly string[];
}

const field = (name: string, reader: Reader, headings: string, required = false): Field => ({
  name,
  reader,
  required,
  headings: headings === "" ? [] : headings.split(", "),
});

const variantHeadings = "model, type, pattern, mark, mk, version, issue, variety";
const serialHeadings = "serial no, serial number, serial nr, number, no, nr, s n, sn";

/** The columns of the log, in the order of the contract, which is that of the export. */
const sightings: readonly Field[] = [
  field(
    "seen",
    "date",
    "date, date seen, seen on, when, when seen, year, date of sale, sale date, sold, sold on",
    true,
  ),
  field("variant", "variant", variantHeadings, true),
  field("serial", "text", serialHeadings),
  field("example", "text", "known as, name, nickname, example name"),
  field(
    "source",
    "source",
    "found in, seen in, where, where seen, catalogue, publication, reference, ref, seller, venue",
  ),
  field("kind", "record-kind", "kind of record, sort, occasion, how seen", true),
  field("list", "text", "census, independent list, survey"),
  field("present", "parts", "parts present, there, has, with, contents, contains, includes, included"),
  field(
    "absent",
    "parts",
    "parts absent, missing, lacking, lacks, without, not there, parts missing, not present, gone",
  ),
  field("condition", "text", "state, grade, shape"),
  field("price", "amount", "sum, amount, hammer, hammer price, price realised, asking price, cost, value"),
  field("currency", "text", "cur, curr, ccy, money"),
  field("relisted", "flag", "offered again, again, repeat, relist, same as before"),
  field("note", "text", "notes, remark, remarks, comment, comments, description, details, observations"),
];

const items: readonly Field[] = [
  field("id", "id", "ref, reference, inventory no, inventory number, item no, key"),
  field("title", "text", "name, item, heading, description short", true),
  field("variant", "variant", variantHeadings, true),
  field("serial", "text", serialHeadings),
  field("set", "text", "set no, set number, set nr, outfit no, outfit number"),
  field("examined", "date", "date examined, examined on, date, inspected, checked, looked over"),
  field("updated", "date", "last changed, changed, modified, last updated"),
  field("status", "text", "whereabouts"),
  field("example", "text", "known as, nickname"),
  field("census", "flag", "counted, count it"),
  field("storage", "text", "where kept, kept in, location, shelf, stored, place"),
  field("paid", "amount", "price paid, cost, paid for it, bought for"),
  field("price", "amount", "asking price, asking, for sale at"),
  field("currency", "text", "cur, curr, ccy, money"),
  field("extras", "structure", "extra, also in the case, other contents, unlisted"),
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
    "notes, note, remark, remarks, comment, comments, details, text, observations",
  ),
];

export const fieldsOf = (kind: TableKind): readonly Field[] => (kind === "sightings" ? sightings : items);
