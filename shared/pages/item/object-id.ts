import type { PublishedItem } from "../../publication/published.ts";
import type { CollectionIndex } from "../collection-index.ts";
import { plainText } from "../prose/markdown.ts";

/**
 * What the police, insurers and customs ask for when an object is gone, in the standard's own order.
 *
 * Source  Thornes, Dorrell and Lie, Introduction to Object ID (Getty Information Institute, 1999); kept by ICOM.
 * Its 'subject', what an object depicts, is left out: an outfit depicts nothing.
 */
export const objectIdFields = [
  "photographs",
  "type",
  "materials",
  "measurements",
  "markings",
  "distinguishing",
  "title",
  "date",
  "maker",
  "description",
] as const;

export type ObjectIdField = (typeof objectIdFields)[number];

export interface ObjectIdRecord {
  /** Each answer line by line; none where the record still lacks it. */
  readonly answers: Readonly<Record<ObjectIdField, readonly string[]>>;
  readonly lacks: readonly ObjectIdField[];
}

type Recorded = Pick<
  PublishedItem,
  | "title"
  | "variant"
  | "family"
  | "serial"
  | "set"
  | "materials"
  | "measurements"
  | "parts"
  | "labels"
  | "photos"
  | "dating"
  | "description"
>;

/**
 * The answers come from the owner's full record, never from the public one: a masked serial finds nothing. It is read by
 * people who have the sheet and not the site, so dates and the description are words alone, with figures and sources told.
 */
export function objectIdRecord(
  item: Recorded,
  distinguishing: readonly string[],
  maker: string | null,
  index: CollectionIndex,
): ObjectIdRecord {
  const ofParts = (
    say: (line: PublishedItem["parts"][number]["lines"][number]) => readonly (string | null)[],
  ) =>
    item.parts.flatMap(({ name, lines }) =>
      lines.flatMap((line) =>
        say(line).flatMap((words) => (words === null || words === "" ? [] : [`${name}: ${words}`])),
      ),
    );
  const dated = item.dating.serial.made ?? item.dating.issued;
  const known = (value: string | null) => (value === null || value.trim() === "" ? [] : [value]);
  const answers: ObjectIdRecord["answers"] = {
    photographs: item.photos.map(({ alt, caption }) => caption ?? alt),
    type: [`${item.variant.name}, ${item.family.name}`],
    materials: known(item.materials),
    measurements: item.measurements,
    markings: [
      ...known(item.serial),
      ...known(item.set),
      ...item.labels.map(({ kind, where, text }) =>
        [where === null ? kind : `${kind}, ${where}`, text.join(" / ")]
          .filter((words) => words !== "")
          .join(": "),
      ),
      ...ofParts(({ serial, marks }) => [serial, marks.join(", ")]),
    ],
    distinguishing: [
      ...distinguishing,
      ...ofParts(({ repairs, condition }) => [repairs.join(", "), condition]),
    ],
    title: [item.title],
    date: dated === null ? [] : [index.words.date(dated)],
    maker: known(maker),
    description: known(plainText(item.description, { index })),
  };
  return { answers, lacks: objectIdFields.filter((field) => answers[field].length === 0) };
}
