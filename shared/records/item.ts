import type { EdtfDate } from "../dates/edtf-interval.ts";
import { isLeftOut, type SourceDocument } from "../source/document.ts";
import type { State, Status } from "../terms/states.ts";
import { type RawRevisions, type Revision, revisionsFrom } from "./revision.ts";
import { asDate, asList, asText, type Typed, unknownDate } from "./text.ts";

export type SerialPublishing = "shown" | "masked" | "hidden";
export type PricePublishing = "shown" | "hidden";

export interface Money {
  readonly amount: number;
  readonly currency: string;
}

/** An entry with fields that its author wants kept: publication, and nothing else, reads `private`. */
interface Guarded {
  readonly private: readonly string[];
}

export interface PartLine extends Guarded {
  readonly state: State;
  /** Undefined: the part's full quantity, or one unit where there are several lines. */
  readonly quantity: number | undefined;
  readonly rest: State | undefined;
  readonly serial: string | undefined;
  readonly marks: readonly string[];
  readonly condition: string | undefined;
  readonly packed: string | undefined;
  readonly repairs: readonly string[];
  readonly belongs: "set" | "spare" | undefined;
  readonly model: string | undefined;
  readonly evidence: string | undefined;
  readonly note: string | undefined;
}

export interface Extra extends Guarded {
  readonly name: string;
  readonly quantity: number;
  readonly note: string | undefined;
  readonly hazards: readonly string[];
}

export interface Label extends Guarded {
  readonly kind: string;
  readonly where: string | undefined;
  readonly text: readonly string[];
  readonly part: string | undefined;
  readonly note: string | undefined;
}

export interface CustodyEvent extends Guarded {
  readonly date: EdtfDate;
  readonly event: string;
  readonly from: string | undefined;
  readonly to: string | undefined;
  readonly holder: string | undefined;
  readonly place: string | undefined;
  readonly evidence: string | undefined;
  readonly source: string | undefined;
  readonly price: Money | undefined;
  readonly note: string | undefined;
}

export interface Photo extends Guarded {
  readonly file: string;
  readonly alt: string;
  readonly caption: string | undefined;
  readonly callouts: readonly { readonly part: string; readonly at: readonly [number, number] }[];
}

export interface Video {
  readonly src: string;
  readonly caption: string | undefined;
  readonly captions: string | undefined;
  readonly moments: readonly { readonly part: string; readonly seconds: number }[];
}

export interface Item {
  readonly id: string;
  readonly title: string;
  readonly variant: string;
  readonly serial: string | undefined;
  readonly set: string | undefined;
  readonly examined: EdtfDate | undefined;
  readonly features: ReadonlyMap<string, string>;
  readonly parts: ReadonlyMap<string, readonly PartLine[]>;
  readonly extras: readonly Extra[];
  readonly labels: readonly Label[];
  readonly provenance: readonly CustodyEvent[];
  readonly photos: readonly Photo[];
  readonly video: Video | undefined;
  readonly status: Status;
  readonly example: string | undefined;
  readonly census: boolean;
  readonly assembled: readonly string[];
  readonly updated: EdtfDate | undefined;
  /** The newest first. */
  readonly revisions: readonly Revision[];
  readonly materials: string | undefined;
  readonly measurements: readonly string[];
  /** What tells this one from all others; never published. */
  readonly distinguishing: readonly string[];
  readonly storage: string | undefined;
  readonly paid: Money | undefined;
  readonly private: Readonly<Record<string, unknown>> | undefined;
  readonly price: Money | undefined;
  readonly publish: { readonly serial: SerialPublishing; readonly price: PricePublishing };
  readonly formerly: readonly string[];
  /** Markdown. */
  readonly description: string;
  readonly document: SourceDocument;
}

type RawDate = string | number;
type RawMarks = Typed | Typed[];

interface RawPartLine {
  state: State;
  quantity?: number;
  rest?: State;
  serial?: Typed;
  marks?: RawMarks;
  condition?: string;
  packed?: string;
  repairs?: string[];
  belongs?: "set" | "spare";
  model?: string;
  evidence?: string;
  note?: string;
  private?: string[];
}

type RawPartState = State | RawPartLine;

interface RawItem {
  title: string;
  variant: string;
  serial?: Typed;
  set?: Typed;
  examined?: RawDate;
  features?: Record<string, Typed>;
  parts?: Record<string, RawPartState | RawPartState[]>;
  extras?: { name: string; quantity?: number; note?: string; hazards?: string[]; private?: string[] }[];
  labels?: {
    kind: string;
    where?: string;
    text?: string | string[];
    part?: string;
    note?: string;
    private?: string[];
  }[];
  provenance?: {
    date: RawDate;
    event: string;
    from?: string;
    to?: string;
    holder?: string;
    place?: string;
    evidence?: string;
    source?: string;
    price?: Money;
    note?: string;
    private?: string[];
  }[];
  photos?: {
    file: string;
    alt: string;
    caption?: string;
    callouts?: { part: string; at: [number, number] }[];
    private?: string[];
  }[];
  video?: {
    src: string;
    caption?: string;
    captions?: string;
    moments?: { part: string; at: string | number }[];
  };
  status?: Status;
  example?: string;
  census?: boolean;
  assembled?: string[];
  updated?: RawDate;
  revisions?: RawRevisions;
  materials?: string;
  measurements?: string | string[];
  distinguishing?: string | string[];
  storage?: string;
  paid?: Money;
  private?: Record<string, unknown>;
  price?: Money;
  publish?: { serial?: SerialPublishing; price?: PricePublishing };
  formerly?: string[];
}

const plainLines = new Map<State, PartLine>();

/** Most lines are one word: all of a state are one and the same, which what is found of them can be told by. */
function plainLine(state: State): PartLine {
  const known = plainLines.get(state) ?? Object.freeze(fullLine({ state }));
  plainLines.set(state, known);
  return known;
}

/** One line of a part, a single word or a mapping. */
export const partLine = (raw: RawPartState): PartLine =>
  typeof raw === "string" ? plainLine(raw) : fullLine(raw);

const fullLine = (line: RawPartLine): PartLine => {
  return {
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
  };
};

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
  const raw = document.data as RawItem;
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
