import type { EdtfDate } from "../dates/edtf-interval.ts";
import type { SourceDocument } from "../source/document.ts";
import type { PersonName } from "../terms/person-name.ts";
import { type RawRevisions, type Revision, revisionsFrom } from "./revision.ts";
import { asDate, asList } from "./text.ts";

export interface Article {
  readonly id: string;
  readonly title: string;
  /** Each as it was written, in words or in parts. */
  readonly authors: readonly (string | PersonName)[];
  readonly updated: EdtfDate | undefined;
  /** The newest first. */
  readonly revisions: readonly Revision[];
  readonly abstract: string | undefined;
  readonly formerly: readonly string[];
  /** Markdown. */
  readonly text: string;
  readonly document: SourceDocument;
}

interface RawArticle {
  title: string;
  authors?: (string | PersonName)[];
  updated?: string | number;
  revisions?: RawRevisions;
  abstract?: string;
  formerly?: string[];
}

export function articleFrom(id: string, document: SourceDocument): Article {
  const raw = document.data as RawArticle;
  return {
    id,
    title: raw.title,
    authors: asList(raw.authors),
    updated: asDate(raw.updated),
    revisions: revisionsFrom(raw.revisions),
    abstract: raw.abstract,
    formerly: asList(raw.formerly),
    text: document.body,
    document,
  };
}
