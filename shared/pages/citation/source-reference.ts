import { grouping } from "../../lists/grouping.ts";
import type { PublishedSource } from "../../publication/published.ts";
import { ended, endOf } from "../../words/ended.ts";
import { addresses } from "../addresses/addresses.ts";
import type { CollectionIndex } from "../collection-index.ts";
import type { Link } from "../page.ts";

const field = (source: PublishedSource, name: string): string | null => {
  const value = source.fields[name];
  return typeof value === "string" || typeof value === "number" ? String(value) : null;
};

interface Person {
  readonly family?: string;
}

/** Who a source is named after: its authors, else its editors; nobody where an office or a firm wrote it. */
function familyNames({ fields }: PublishedSource): string[] {
  const list = [fields.author, fields.editor].find((each) => Array.isArray(each) && each.length > 0);
  return ((list ?? []) as readonly Person[]).flatMap(({ family }) => family ?? []);
}

/** By who wrote it, then by title, as the language sorts. */
export function inBibliographicOrder(
  sources: readonly PublishedSource[],
  { language }: CollectionIndex["words"],
): PublishedSource[] {
  const order = new Intl.Collator(language);
  const name = (source: PublishedSource) =>
    `${familyNames(source)[0] ?? source.authors[0] ?? source.editors[0] ?? source.title} ${source.title}`;
  return [...sources].sort((a, b) => order.compare(name(a), name(b)));
}

/** The years alone: 2011 for a day of that year, 1893–1914 for a span. */
function yearsText(edtf: string, words: CollectionIndex["words"]): string {
  const years = edtf
    .split("/")
    .map((each) => /^(\d{4})(?:-\d{2}){0,2}$/.exec(each)?.[1] ?? each.replace("..", ""));
  return years.every((year) => /^(?:\d{4})?$/.test(year)) ? years.join("–") : words.date(edtf);
}

/** A source as a note cites it: who and when, and what where nobody is named. */
function shortReference(source: PublishedSource, words: CollectionIndex["words"]): string {
  const say = words.pages.sources;
  const names = familyNames(source);
  const [first, second, ...others] = names;
  if (first === undefined) return field(source, "title-short") ?? source.title;
  const who =
    second === undefined
      ? first
      : others.length > 0
        ? say.andOthers(first)
        : words.pages.list([first, second]);
  return source.issued === null ? who : `${who} ${yearsText(source.issued, words)}`;
}

export interface ShortReference {
  readonly text: string;
  /** Letters where several sources would be cited alike: 2019a, 2019b; after 2019z comes 2019aa. */
  readonly letter: string;
  /** True where it is cited by its title, since no person is named. */
  readonly isTitle: boolean;
}

/** a to z, then aa to az, ba and so on, as the columns of a spreadsheet are named. */
function lettersAt(place: number): string {
  const last = String.fromCharCode(97 + (place % 26));
  return place < 26 ? last : lettersAt(Math.floor(place / 26) - 1) + last;
}

/** How each source is cited, no two alike. */
export function shortReferences(
  sources: readonly PublishedSource[],
  words: CollectionIndex["words"],
): ReadonlyMap<string, ShortReference> {
  const alike = grouping(sources, (source) => shortReference(source, words));
  return new Map(
    [...alike].flatMap(([text, same]) =>
      inBibliographicOrder(same, words).map((source, at) => {
        const letter = same.length > 1 ? lettersAt(at) : "";
        const apart = letter === "" || /\d$/.test(text) ? letter : ` (${letter})`;
        const isTitle = familyNames(source).length === 0;
        return [source.id, { text: `${text}${apart}`, letter, isTitle }] as const;
      }),
    ),
  );
}

/** A link to a source; one that the bibliography does not have keeps the name that was typed. */
export function sourceLink(id: string, { shortReferences: known }: CollectionIndex): Link {
  const reference = known.get(id);
  return { name: reference?.text ?? id, address: reference ? addresses.source(id) : "" };
}

/** A bibliography entry in its parts; a template sets the title in italics. */
export interface SourceEntry {
  readonly id: string;
  /** With the point that ends them; empty where nobody is named. */
  readonly authors: string;
  readonly title: string;
  /** Article and chapter titles stand within something that is itself set in italics. */
  readonly within: string | null;
  readonly details: string;
  /** The point that ends what comes before an address. */
  readonly end: string;
  readonly url: string | null;
  /** When it was consulted. */
  readonly accessed: string | null;
  readonly note: string | null;
}

export function sourceEntry(
  source: PublishedSource,
  { words, shortReferences: known }: CollectionIndex,
): SourceEntry {
  const say = words.pages.sources;
  const { authors, editors } = source;
  const editedBy = words.pages.list(editors);
  const volume = field(source, "volume");
  const issue = field(source, "issue");
  const page = field(source, "page");
  const place = field(source, "publisher-place");
  const publisher = field(source, "publisher");
  const archive = field(source, "archive");
  const within = field(source, "container-title");
  const by =
    authors.length === 0 && editors.length > 0
      ? say.asEditors(editedBy, editors.length)
      : words.pages.list(authors);
  const details = [
    authors.length > 0 && editors.length > 0 ? say.editedBy(editedBy) : null,
    volume === null ? null : issue === null ? volume : `${volume} (${issue})`,
    [place, publisher].filter((text) => text !== null).join(": ") || null,
    source.issued === null ? null : `${words.date(source.issued)}${known.get(source.id)?.letter ?? ""}`,
    page === null ? null : say.pages(page.replaceAll("-", "–")),
    archive === null ? null : [archive, field(source, "archive_location")].filter(Boolean).join(", "),
    source.type === null ? null : (say.types[source.type] ?? null),
    field(source, "DOI") === null ? null : `doi:${field(source, "DOI")}`,
    field(source, "ISBN") === null ? null : `ISBN ${field(source, "ISBN")}`,
  ].filter((text) => text !== null);
  const url = field(source, "URL");
  return {
    id: source.id,
    authors: by === "" ? "" : ended(by),
    title: source.title,
    within,
    details: details.join(", "),
    end: endOf(details.at(-1) ?? within ?? source.title),
    url: url !== null && /^https?:\/\//i.test(url) ? url : null,
    accessed: source.accessed === null ? null : say.accessed(words.date(source.accessed)),
    note: field(source, "note"),
  };
}
