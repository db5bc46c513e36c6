import type { SourceDocument } from "../source/document.ts";
import type { PersonName } from "../terms/person-name.ts";
import { bareDoi } from "./doi.ts";

/** A bibliography record in CSL-JSON fields; what the formatter does not know is kept for the data files. */
export interface Source {
  readonly id: string;
  readonly type: string | undefined;
  readonly title: string;
  readonly author: readonly PersonName[];
  readonly editor: readonly PersonName[];
  readonly issued: string | undefined;
  /** When it was consulted. */
  readonly accessed: string | undefined;
  readonly fields: Readonly<Record<string, unknown>>;
}

type CslDate = string | number | { "date-parts"?: (number | string)[][]; literal?: string; raw?: string };

interface RawSource {
  id: string;
  type?: string;
  title: string;
  author?: PersonName[];
  editor?: PersonName[];
  issued?: CslDate;
  accessed?: CslDate;
  DOI?: unknown;
}

/** CSL date-parts as EDTF: [[1931, 3], [1938]] is 1931-03/1938. */
function dateText(date: CslDate | undefined): string | undefined {
  if (date === undefined) return undefined;
  if (typeof date !== "object") return String(date);
  const parts = date["date-parts"];
  if (!parts) return date.literal ?? date.raw;
  return parts
    .map((part) => part.map((figure, place) => String(figure).padStart(place === 0 ? 4 : 2, "0")).join("-"))
    .join("/");
}

export function sourceFrom(document: SourceDocument): Source {
  const raw = document.data as RawSource;
  return {
    id: raw.id,
    type: raw.type,
    title: raw.title,
    author: raw.author ?? [],
    editor: raw.editor ?? [],
    issued: dateText(raw.issued),
    accessed: dateText(raw.accessed),
    fields: { ...raw, ...(typeof raw.DOI === "string" ? { DOI: bareDoi(raw.DOI.trim()) } : {}) },
  };
}

/** One with errors of its own, so that whoever cites it is not told that it is unknown. */
export const unsoundSource = (id: string): Source => ({
  id,
  type: undefined,
  title: id,
  author: [],
  editor: [],
  issued: undefined,
  accessed: undefined,
  fields: { id },
});
