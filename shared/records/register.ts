import type { SourceDocument } from "../source/document.ts";
import { asList } from "./text.ts";

/** One entry of the hazard register: what can hurt, the usual caution and where it is published. */
export interface Hazard {
  readonly id: string;
  readonly name: string;
  readonly caution: string;
  /** The same in other languages, by their tags. */
  readonly translated: Readonly<Record<string, { readonly name?: string; readonly caution?: string }>>;
  readonly source: string;
  readonly url: string | undefined;
  readonly note: string | undefined;
}

export interface ScaleClass {
  readonly id: string;
  readonly words: string | undefined;
  /** The same in other languages, by their tags. */
  readonly translated: Readonly<Record<string, string>>;
  readonly low: number | undefined;
  readonly high: number | undefined;
  readonly means: string | undefined;
}

export interface Scale {
  readonly id: string;
  readonly kind: "rarity" | "condition";
  readonly name: string;
  readonly citation: string | undefined;
  readonly note: string | undefined;
  readonly classes: readonly ScaleClass[];
}

interface RawHazard {
  name: string;
  caution: string;
  in?: Hazard["translated"];
  source: string;
  url?: string;
  note?: string;
}

interface RawScale {
  kind: Scale["kind"];
  name: string;
  citation?: string;
  note?: string;
  classes: {
    id: string | number;
    words?: string;
    in?: Record<string, string>;
    low?: number;
    high?: number;
    means?: string;
  }[];
}

export function hazardFrom(id: string, document: SourceDocument): Hazard {
  const { in: translated = {}, ...raw } = document.data as RawHazard;
  return {
    id,
    name: raw.name,
    caution: raw.caution,
    translated,
    source: raw.source,
    url: raw.url,
    note: raw.note,
  };
}

export function scaleFrom(id: string, document: SourceDocument): Scale {
  const raw = document.data as RawScale;
  return {
    id,
    kind: raw.kind,
    name: raw.name,
    citation: raw.citation,
    note: raw.note,
    classes: asList(raw.classes).map((each) => ({
      id: String(each.id),
      words: each.words,
      translated: each.in ?? {},
      low: each.low,
      high: each.high,
      means: each.means,
    })),
  };
}
