import type { Bounds, CountedBounds, StandingCompleteness } from "../assessments/completeness.ts";
import type { DatingVerdict, SerialVerdict } from "../assessments/dating.ts";
import type { FamilyKey, KeyStep } from "../assessments/family-key.ts";
import type { Input, Method, Unit } from "../assessments/figure.ts";
import type { LikenessSpread } from "../assessments/likeness.ts";
import type { MarkVerdict } from "../assessments/matching-numbers.ts";
import type { Gap } from "../assessments/provenance.ts";
import type { Rank } from "../assessments/rarity/as-complete.ts";
import type { RarityClass } from "../assessments/rarity/scale-class.ts";
import type { StatementId } from "../assessments/statement.ts";
import type { Contrast } from "../assessments/unit-contrast.ts";
import type { ComparisonRow } from "../assessments/variant-comparison.ts";
import type { Theme } from "../records/collection.ts";
import type { Money, PartLine } from "../records/item.ts";
import type { Limits } from "../records/serial.ts";
import type { Sighting } from "../records/sighting.ts";
import type { PersonName } from "../terms/person-name.ts";
import type { Standing, State, Status } from "../terms/states.ts";
import type { Verdict } from "../terms/verdicts.ts";
import type { itemFigures, levelFigures, variantFigures } from "../words/figure-names.ts";

/** The forms that pass the door as they are: they hold nothing that is anybody's secret. */
export type { Bounds, ComparisonRow, Contrast, Input, KeyStep, Method, StandingCompleteness, Unit };

/** Who the site is for: everybody, or the owner alone. */
export type Audience = "public" | "private";

/** A statement in the words of the site, with what tells it from others whatever its words are. */
export interface Said {
  readonly says: StatementId;
  readonly text: string;
}

export interface PublishedFigure {
  readonly value: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly unit: Unit;
  readonly confidence: number;
  readonly method: Method;
  readonly inputs: Readonly<Record<string, Input>>;
  readonly sources: readonly string[];
  readonly caveats: readonly Said[];
  readonly insufficient: string | null;
}

/** A figure for each name of a list. */
type Figures<Names extends readonly string[]> = Readonly<Record<Names[number], PublishedFigure>>;

/** The one word for a part that its compartment in the case plan bears. */
export type PartSummary =
  | "present"
  | "incomplete"
  | "substitute"
  | "unverified"
  /** Some of its units are there, and nobody has looked for the others. */
  | "partly-examined"
  | "unexamined"
  | "absent"
  | "not-issued";

export interface PublishedPartLine {
  readonly state: State;
  readonly quantity: number | null;
  readonly rest: State | null;
  readonly serial: string | null;
  readonly marks: readonly string[];
  readonly condition: string | null;
  readonly packed: string | null;
  readonly repairs: readonly string[];
  readonly belongs: NonNullable<PartLine["belongs"]> | null;
  readonly model: string | null;
  readonly evidence: string | null;
  readonly note: string | null;
  /** What its serial says of when it was made; null where it has none, or none is known for the part. */
  readonly dating: { readonly made: string | null; readonly verdict: SerialVerdict } | null;
}

export interface PublishedPart {
  readonly id: string;
  readonly name: string;
  readonly group: string | null;
  readonly groupName: string | null;
  readonly standing: Standing;
  /** As issued to the variant. */
  readonly quantity: number;
  readonly weight: number;
  readonly marks: readonly string[];
  readonly hazards: readonly string[];
  readonly plan: readonly [number, number, number, number] | null;
  /** The ranges by which a serial of this part is dated. */
  readonly serials: readonly PublishedSerialRange[];
  readonly look: string | null;
  readonly note: string | null;
  readonly rate: PublishedFigure;
}

export interface PublishedItemPart extends PublishedPart {
  readonly summary: PartSummary;
  readonly units: {
    readonly expected: number;
    readonly present: number;
    readonly substitute: number;
    readonly unverified: number;
    readonly absent: number;
    readonly unexamined: number;
    readonly notIssued: number;
    readonly surplus: number;
  };
  readonly share: Bounds | null;
  readonly lines: readonly PublishedPartLine[];
  /** By the serial that raises the gravest doubt. */
  readonly dating: { readonly made: string | null; readonly verdict: DatingVerdict } | null;
  readonly matching: {
    readonly verdict: MarkVerdict;
    /** The set whose number it bears, where that is another, and the item of this collection that is that set. */
    readonly otherSet: string | null;
    readonly otherItem: Named | null;
  } | null;
  readonly assembled: boolean;
}

export interface PublishedLikeness {
  readonly name: string;
  /** Its page here, where it is an item of the collection. */
  readonly item: string | null;
  readonly likeness: number;
  readonly compared: number;
}

export interface PublishedWant {
  readonly part: string;
  readonly units: number;
  readonly gain: number;
  /** Ids of levels. */
  readonly neededFor: readonly string[];
}

export interface PublishedReallocation {
  readonly moves: readonly {
    readonly part: string;
    readonly units: number;
    readonly from: string;
    readonly to: string;
  }[];
  readonly gain: number;
  readonly items: readonly { readonly item: string; readonly before: number; readonly after: number }[];
}

export interface Named {
  readonly id: string;
  readonly name: string;
}

export interface PublishedHazard {
  readonly id: string;
  readonly name: string;
  readonly parts: readonly string[];
  readonly extras: readonly string[];
  readonly caution: string;
  readonly source: string;
  readonly url: string | null;
}

export interface PublishedEvent {
  readonly date: string;
  readonly event: string;
  readonly from: string | null;
  readonly to: string | null;
  readonly holder: string | null;
  readonly place: string | null;
  readonly evidence: string | null;
  readonly source: string | null;
  readonly price: Money | null;
  readonly note: string | null;
}

export interface PublishedCompleteness {
  readonly weighted: Bounds | null;
  readonly counted: CountedBounds | null;
  readonly consumable: StandingCompleteness | null;
  readonly optional: StandingCompleteness | null;
  readonly level: { readonly sure: string | null; readonly possible: string | null };
  readonly missing: readonly string[];
  readonly partial: readonly string[];
  readonly substitutes: readonly string[];
  readonly unverified: readonly string[];
  readonly unexamined: readonly string[];
  readonly surplus: readonly string[];
  readonly extras: readonly {
    readonly name: string;
    readonly quantity: number;
    readonly note: string | null;
  }[];
}

/** What only the owner's own build carries. */
export interface Confidential {
  readonly distinguishing: readonly string[];
  readonly maker: string | null;
  readonly storage: string | null;
  readonly paid: Money | null;
  readonly fields: Readonly<Record<string, unknown>>;
}

export interface PublishedItem {
  readonly id: string;
  readonly title: string;
  readonly variant: Named;
  readonly family: Named;
  readonly serial: string | null;
  readonly set: string | null;
  readonly examined: string | null;
  readonly updated: string | null;
  readonly revisions: readonly PublishedRevision[];
  readonly status: Status;
  readonly materials: string | null;
  readonly measurements: readonly string[];
  readonly features: readonly { readonly id: string; readonly name: string; readonly value: string | null }[];
  readonly identification: {
    readonly verdict: Verdict;
    readonly candidates: readonly {
      readonly variant: string;
      readonly name: string;
      readonly contradictions: readonly string[];
      readonly unobserved: readonly string[];
    }[];
    readonly lookNext: readonly string[];
    readonly caveats: readonly string[];
  };
  readonly completeness: PublishedCompleteness;
  readonly levels: readonly Named[];
  readonly parts: readonly PublishedItemPart[];
  readonly dating: {
    readonly issued: string | null;
    readonly serial: { readonly made: string | null };
    readonly parts: Readonly<
      Record<string, { readonly made: string | null; readonly verdict: DatingVerdict }>
    >;
    readonly caveats: readonly string[];
  };
  readonly rarity: Figures<typeof itemFigures> & { readonly rank: Rank | null };
  readonly provenance: {
    readonly events: readonly PublishedEvent[];
    readonly documentedYears: number;
    readonly lifetimeYears: number | null;
    readonly gaps: readonly Gap[];
    readonly caveats: readonly string[];
  };
  /** What it lacks, in the order of what each part would add to its certain completeness; what adds nothing comes last. */
  readonly wants: readonly PublishedWant[];
  readonly spares: readonly { readonly part: string; readonly units: number }[];
  readonly nearest: readonly PublishedLikeness[];
  readonly hazards: readonly PublishedHazard[];
  readonly labels: readonly {
    readonly kind: string;
    readonly where: string | null;
    readonly text: readonly string[];
    readonly part: string | null;
    readonly note: string | null;
  }[];
  readonly photos: readonly {
    /** Relative to the root: read by the image room, never shown. */
    readonly original: string;
    readonly alt: string;
    readonly caption: string | null;
    readonly callouts: readonly { readonly part: string; readonly at: readonly [number, number] }[];
  }[];
  readonly video: {
    /** Relative to the root, as is that of the captions: read by the image room, never shown. */
    readonly original: string;
    readonly captions: string | null;
    readonly caption: string | null;
    /** The earliest first. */
    readonly moments: readonly { readonly part: string; readonly seconds: number }[];
  } | null;
  readonly assembled: readonly string[];
  readonly price: Money | null;
  readonly formerly: readonly string[];
  /** Markdown. */
  readonly description: string;
  readonly confidential: Confidential | null;
}

/** What was changed in a record, and when; the newest of several comes first. */
export interface PublishedRevision {
  readonly date: string;
  readonly note: string;
}

export interface PublishedSighting {
  readonly seen: string;
  readonly serial: string | null;
  readonly example: string | null;
  readonly source: string | null;
  readonly kind: Sighting["kind"];
  readonly list: string | null;
  readonly present: readonly string[];
  readonly absent: readonly string[];
  readonly condition: string | null;
  /** A price of which nobody noted the currency is told as it was noted. */
  readonly price: { readonly amount: number; readonly currency: string | null } | null;
  readonly relisted: boolean;
  /** Whether its example reaches a level of the reference, by all that the log says of it; null where that does not decide. */
  readonly reaches: boolean | null;
  readonly note: string | null;
}

export interface PublishedSerialRange {
  readonly prefix: string;
  readonly from: number | null;
  readonly to: number | null;
  readonly made: string | null;
  readonly skipped: boolean;
  readonly source: string | null;
  readonly page: string | null;
  readonly note: string | null;
  /** What the ranges of other variants of the family tell of the end that is not known. */
  readonly limits?: Limits;
}

/** How like the other recorded examples of its variant an outfit is. */
export interface PublishedSpread extends LikenessSpread {
  readonly item: string;
  readonly nearest: Pick<PublishedLikeness, "name" | "likeness"> | null;
}

export interface PublishedVariant {
  readonly id: string;
  readonly name: string;
  readonly family: Named;
  readonly extends: Named | null;
  readonly issued: string | null;
  readonly description: string | null;
  readonly note: string | null;
  readonly features: readonly {
    readonly id: string;
    readonly name: string;
    readonly values: readonly string[];
  }[];
  readonly serials: readonly PublishedSerialRange[];
  readonly parts: readonly PublishedPart[];
  readonly levels: readonly {
    readonly id: string;
    readonly name: string;
    readonly parts: readonly string[];
  }[];
  readonly rarity: Figures<typeof variantFigures> & {
    readonly sightings: number;
    readonly distinct: number;
    readonly once: number;
    readonly twice: number;
    /** How many of the examples are rows of the log that give neither serial nor name. */
    readonly nameless: number;
    /** When any of what is counted was seen last. */
    readonly latest: string | null;
    readonly parts: Readonly<Record<string, PublishedFigure>>;
    readonly class: RarityClass | null;
    readonly levels: Readonly<Record<string, Figures<typeof levelFigures>>>;
  };
  readonly reallocation: PublishedReallocation | null;
  readonly hazards: readonly PublishedHazard[];
  readonly sources: readonly string[];
  readonly formerly: readonly string[];
  readonly revisions: readonly PublishedRevision[];
  readonly sightings: readonly PublishedSighting[];
  readonly items: readonly Named[];
  /** Of the first of these, as many as are drawn. */
  readonly likenesses: readonly PublishedSpread[];
}

export interface PublishedFamily {
  readonly id: string;
  readonly name: string;
  readonly maker: string | null;
  readonly description: string | null;
  readonly features: readonly {
    readonly id: string;
    readonly name: string;
    readonly values: readonly string[];
    readonly look: string | null;
    readonly effort: number;
    readonly note: string | null;
  }[];
  readonly variants: readonly Named[];
  readonly comparison: readonly ComparisonRow[];
  readonly key: FamilyKey;
  readonly sources: readonly string[];
  readonly formerly: readonly string[];
  readonly revisions: readonly PublishedRevision[];
}

export interface PublishedSource {
  readonly id: string;
  readonly title: string;
  readonly type: string | null;
  readonly authors: readonly string[];
  readonly editors: readonly string[];
  readonly issued: string | null;
  readonly accessed: string | null;
  readonly fields: Readonly<Record<string, unknown>>;
}

export interface PublishedArticle {
  readonly id: string;
  readonly title: string;
  /** Each as it was written, in words or in parts. */
  readonly authors: readonly (string | PersonName)[];
  readonly updated: string | null;
  readonly revisions: readonly PublishedRevision[];
  readonly abstract: string | null;
  readonly formerly: readonly string[];
  /** Markdown. */
  readonly text: string;
}

/** Two items of one variant, the first before the second by id. */
export interface PublishedPair {
  readonly variant: Named;
  readonly items: readonly [string, string];
  readonly features: readonly { readonly id: string; readonly contrast: Contrast }[];
  readonly parts: readonly { readonly id: string; readonly contrast: Contrast }[];
  readonly likeness: number | null;
  readonly compared: { readonly features: readonly string[]; readonly parts: readonly string[] };
}

/** All that any page, data file, feed, manifest or picture is made from. */
export interface PublishedCollection {
  readonly audience: Audience;
  readonly settings: {
    readonly title: string;
    readonly url: string;
    readonly language: string;
    readonly confidence: number;
    readonly watching: string | null;
    readonly description: string | null;
    readonly notice: string | null;
    readonly publisher: string | null;
    readonly enquiries: string | null;
    readonly rights: string | null;
    /** Whether the site has a page on every field of its records. */
    readonly fieldReference: boolean;
    readonly theme: Theme;
  };
  readonly scale: {
    readonly id: string;
    readonly name: string;
    readonly citation: string | null;
    readonly note: string | null;
    readonly classes: readonly { readonly id: string; readonly words: string | null }[];
  } | null;
  readonly families: readonly PublishedFamily[];
  readonly variants: readonly PublishedVariant[];
  readonly items: readonly PublishedItem[];
  readonly comparisons: readonly PublishedPair[];
  readonly articles: readonly PublishedArticle[];
  readonly sources: readonly PublishedSource[];
}
