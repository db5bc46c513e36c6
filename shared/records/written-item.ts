import { isLeftOut, type SourceDocument } from "../source/document.ts";
import type { State } from "../terms/states.ts";
import type { CustodyEvent, Extra, Item, Label, PartLine, Photo, Video } from "./item.ts";
import { type RawRevisions, revisionsFrom } from "./revision.ts";
import { asDate, asList, asText, type Typed, unknownDate } from "./text.ts";

/** An entry as it is written: with the fields that it needs, and any of the others. */
type Written<Entry, Needed extends keyof Entry> = Pick<Entry, Needed> & Partial<Entry>;
type WrittenDate = string | number;
type OneOrMore<Value> = Value | readonly Value[];

type WrittenLine = Written<Omit<PartLine, "serial" | "marks">, "state"> & {
  readonly serial?: Typed;
  readonly marks?: OneOrMore<Typed>;
};

type WrittenPart = State | WrittenLine;

type PlainField =
  | "materials"
  | "storage"
  | "paid"
  | "private"
  | "price"
  | "assembled"
  | "formerly"
  | "census"
  | "status";

type WrittenItem = Written<Pick<Item, "title" | "variant" | PlainField>, "title" | "variant"> & {
  readonly serial?: Typed;
  readonly set?: Typed;
  readonly example?: string;
  readonly examined?: WrittenDate;
  readonly updated?: WrittenDate;
  readonly features?: Readonly<Record<string, Typed>>;
  readonly parts?: Readonly<Record<string, OneOrMore<WrittenPart>>>;
  readonly extras?: readonly Written<Extra, "name">[];
  readonly labels?: readonly (Written<Omit<Label, "text">, "kind"> & { readonly text?: OneOrMore<string> })[];
  readonly provenance?: readonly (Written<Omit<CustodyEvent, "date">, "event"> & {
    readonly date: WrittenDate;
  })[];
  readonly photos?: readonly Written<Photo, "file" | "alt">[];
  readonly video?: Written<Omit<Video, "moments">, "src"> & {
    readonly moments?: readonly { readonly part: string; readonly at: string | number }[];
  };
  readonly revisions?: RawRevisions;
  readonly measurements?: OneOrMore<string>;
  readonly distinguishing?: OneOrMore<string>;
  readonly publish?: Partial<Item["publish"]>;
};

const plainLines = new Map<State, PartLine>();

/** Most lines are one word: all of a state are one and the same, which what is found of them can be told by. */
function plainLine(state: State): PartLine {
  const known = plainLines.get(state) ?? Object.freeze(fullLine({ state }));
  plainLines.set(state, known);
  return known;
}

/** One line of a part, a single word or a mapping. */
export const partLine = (raw: WrittenPart): PartLine =>
  typeof raw === "string" ? plainLine(raw) : fullLine(raw);

const fullLine = (line: WrittenLine): PartLine => ({
  state: line.state,
  quantity: line.quantity,
  rest: line.rest,
  serial: asText(line.serial),
  marks: asList(line.marks).map(String),
  condition: line.condition,
  packed: line.packed,
  repairs: asList(line.repairs),
  belongs: line.belongs,
  model: line.model,
  evidence: line.evidence,
  note: line.note,
  private: asList(line.private),
});

/** "1:17" is seventy-seven seconds. */
const secondsOf = (at: string | number): number =>
  String(at)
    .split(":")
    .reduce((total, figure) => total * 60 + Number(figure), 0);

/**
 * What a record chooses to publish, over what is chosen otherwise. Where its choice is not valid, nobody knows what
 * is to be kept private, and nothing is reported for giving it away.
 */
export const publishing = (
  document: SourceDocument,
  own: Partial<Item["publish"]> | undefined,
  otherwise: Item["publish"],
): Item["publish"] =>
  isLeftOut(document, "publish") ? { serial: "shown", price: "shown" } : { ...otherwise, ...own };

/** The item as its author wrote it; the collection's publishing choices stand where the item has none. */
export function itemFrom(id: string, document: SourceDocument, publish: Item["publish"]): Item {
  const raw = document.data as WrittenItem;
  return {
    id,
    title: raw.title,
    variant: raw.variant,
    serial: asText(raw.serial),
    set: asText(raw.set),
    examined: asDate(raw.examined),
    features: new Map(Object.entries(raw.features ?? {}).map(([feature, value]) => [feature, String(value)])),
    parts: new Map(
      Object.entries(raw.parts ?? {}).map(([part, state]) => [part, asList(state).map(partLine)]),
    ),
    extras: asList(raw.extras).map((extra) => ({
      name: extra.name,
      quantity: extra.quantity ?? 1,
      note: extra.note,
      hazards: asList(extra.hazards),
      private: asList(extra.private),
    })),
    labels: asList(raw.labels).map((label) => ({
      kind: label.kind,
      where: label.where,
      text: asList(label.text),
      part: label.part,
      note: label.note,
      private: asList(label.private),
    })),
    provenance: asList(raw.provenance).map((event) => ({
      date: asDate(event.date) ?? unknownDate,
      event: event.event,
      from: event.from,
      to: event.to,
      holder: event.holder,
      place: event.place,
      evidence: event.evidence,
      source: event.source,
      price: event.price,
      note: event.note,
      private: asList(event.private),
    })),
    photos: asList(raw.photos).map((photo) => ({
      file: photo.file,
      alt: photo.alt,
      caption: photo.caption,
      callouts: asList(photo.callouts),
      private: asList(photo.private),
    })),
    video: raw.video && {
      src: raw.video.src,
      caption: raw.video.caption,
      captions: raw.video.captions,
      moments: asList(raw.video.moments).map(({ part, at }) => ({ part, seconds: secondsOf(at) })),
    },
    status: raw.status ?? "collection",
    example: asText(raw.example),
    census: raw.census ?? true,
    assembled: asList(raw.assembled),
    updated: asDate(raw.updated),
    revisions: revisionsFrom(raw.revisions),
    materials: raw.materials,
    measurements: asList(raw.measurements),
    distinguishing: asList(raw.distinguishing),
    storage: raw.storage,
    paid: raw.paid,
    private: raw.private,
    price: raw.price,
    publish: publishing(document, raw.publish, publish),
    formerly: asList(raw.formerly),
    description: document.body,
    document,
  };
}
