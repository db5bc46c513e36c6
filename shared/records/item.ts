import type { EdtfDate } from "../dates/edtf-interval.ts";
import type { SourceDocument } from "../source/document.ts";
import type { State, Status } from "../terms/states.ts";
import type { Revision } from "./revision.ts";

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
