import type { PublishedSource } from "../publication/published.ts";
import { addresses } from "./addresses.ts";
import type { CollectionIndex } from "./collection-index.ts";
import type { Link } from "./page.ts";

const field = (source: PublishedSource, name: string): string | null => {
  const value = source.fields[name];
  return typeof value === "string" || typeof value === "number" ? String(value) : null;
};

/** A source as a note cites it: who and when, and what where nobody is named. */
export function shortReference(source: PublishedSource, words: CollectionIndex["words"]): string {
  const [first, ...others] = source.authors;
  const year = source.issued === null ? null : words.date(source.issued);
  const family = first?.split(" ").at(-1);
  const isPerson = Array.isArray(source.fields.author)
    ? source.fields.author.some(
        (author: unknown) => typeof author === "object" && author !== null && "family" in author,
      )
    : false;
  const who =
    !isPerson || family === undefined ? source.title : others.length > 0 ? `${family} et al.` : family;
  return year === null || !isPerson ? who : `${who} ${year}`;
}

/** A link to a source; one that the bibliography does not have keeps the name that was typed. */
export function sourceLink(id: string, { sources, words }: CollectionIndex): Link {
  const source = sources.get(id);
  return {
    name: source ? shortReference(source, words) : id,
    address: source ? addresses.source(id) : "",
  };
}

/** A bibliography entry in its parts; a template sets the title in italics. */
export interface SourceEntry {
  readonly authors: string;
  readonly title: string;
  /** Article and chapter titles stand within something that is itself set in italics. */
  readonly within: string | null;
  readonly details: string;
  readonly url: string | null;
  readonly note: string | null;
}

export function sourceEntry(source: PublishedSource, { words }: CollectionIndex): SourceEntry {
  const say = words.pages.sources;
  const volume = field(source, "volume");
  const issue = field(source, "issue");
  const page = field(source, "page");
  const place = field(source, "publisher-place");
  const publisher = field(source, "publisher");
  const archive = field(source, "archive");
  const details = [
    volume === null ? null : issue === null ? volume : `${volume} (${issue})`,
    [place, publisher].filter((text) => text !== null).join(": ") || null,
    source.issued === null ? null : words.date(source.issued),
    page === null ? null : say.pages(page.replaceAll("-", "–")),
    archive === null ? null : [archive, field(source, "archive_location")].filter(Boolean).join(", "),
    source.type === null ? null : (say.types[source.type] ?? null),
    field(source, "DOI") === null ? null : `doi:${field(source, "DOI")}`,
    field(source, "ISBN") === null ? null : `ISBN ${field(source, "ISBN")}`,
  ];
  const url = field(source, "URL");
  return {
    authors: words.pages.list(source.authors),
    title: source.title,
    within: field(source, "container-title"),
    details: details.filter((text) => text !== null).join(", "),
    url: url !== null && /^https?:\/\//i.test(url) ? url : null,
    note: field(source, "note"),
  };
}
