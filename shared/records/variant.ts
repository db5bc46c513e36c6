import type { EdtfDate } from "../dates/edtf-interval.ts";
import type { SourceDocument } from "../source/document.ts";
import type { LeftOut } from "../source/left-out.ts";
import type { Standing } from "../terms/states.ts";
import type { Revision } from "./revision.ts";
import type { SerialRange } from "./serial.ts";

export interface Part {
  readonly id: string;
  readonly name: string;
  readonly group: string | undefined;
  readonly standing: Standing;
  readonly quantity: number;
  readonly weight: number;
  readonly serials: readonly SerialRange[];
  readonly marks: readonly string[];
  readonly hazards: readonly string[];
  /** Substitute models that count for something, with what one counts for. */
  readonly accepts: ReadonlyMap<string, number>;
  readonly plan: readonly [number, number, number, number] | undefined;
  readonly look: string | undefined;
  readonly note: string | undefined;
}

/** What the best substitute for a unit counts for; nothing where the reference accepts none. */
export const bestCredit = ({ accepts }: Part): number => Math.max(0, ...accepts.values());

export interface Level {
  readonly id: string;
  readonly name: string;
  readonly needs: {
    readonly standing: readonly Standing[];
    readonly parts: readonly string[];
    readonly groups: readonly string[];
  };
}

export interface Made {
  readonly low: number;
  readonly high: number;
  readonly source: string | undefined;
  readonly page: string | undefined;
  readonly note: string | undefined;
}

export interface Variant {
  readonly id: string;
  readonly family: string;
  readonly name: string;
  readonly extends: string | undefined;
  readonly issued: EdtfDate | undefined;
  readonly made: Made | undefined;
  readonly serials: readonly SerialRange[];
  readonly features: ReadonlyMap<string, readonly string[]>;
  readonly parts: ReadonlyMap<string, Part>;
  /** Best first. */
  readonly levels: readonly Level[];
  readonly description: string | undefined;
  readonly note: string | undefined;
  readonly sources: readonly string[];
  /** Its own, and not those of one that it extends. */
  readonly formerly: readonly string[];
  /** The newest first; none of the variant that this one extends. */
  readonly revisions: readonly Revision[];
  readonly document: SourceDocument;
  /** What is not known of it, since it does not fit here or where it is taken from. */
  readonly leftOut?: LeftOut | undefined;
}
