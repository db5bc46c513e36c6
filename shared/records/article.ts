import type { EdtfDate } from "../dates/edtf-interval.ts";
import type { SourceDocument } from "../source/document.ts";
import { asDate, asList } from "./text.ts";

export interface Article {
  readonly id: string;
  readonly title: string;
  readonly authors: readonly string[];
  readonly updated: EdtfDate | undefined;
  readonly abstract: string | undefined;
  readonly formerly: readonly string[];
  /** Markdown. */
  readonly text: string;
  readonly document: SourceDocument;
}

interface RawArticle {
  title: string;
  authors?: string[];
  updated?: string | number;
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
    abstract: raw.abstract,
    formerly: asList(raw.formerly),
    text: document.body,
    document,
  };
}
