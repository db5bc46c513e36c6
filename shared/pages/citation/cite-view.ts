import type { PublishedRevision } from "../../publication/published.ts";
import { ended } from "../../words/ended.ts";
import type { CollectionIndex } from "../collection-index.ts";
import type { Link } from "../page.ts";
import { type Author, authorInCsl, authorInWords } from "./author-names.ts";
import { absoluteAddress } from "./linked-data.ts";
import { plainDate } from "./plain-date.ts";

/** How a page is cited, in words and for the programs that keep bibliographies; and what of it was changed. */
export interface CiteView {
  readonly text: string;
  readonly bibtex: string;
  /** CSL-JSON 1.0. */
  readonly csl: string;
  /** The beginning of the SHA-256 of the page's own data file. */
  readonly version: string | null;
  /** The files that have every figure of the page, its own first. */
  readonly data: readonly Link[];
  /** The newest first. */
  readonly revisions: readonly PublishedRevision[];
}

export interface Cited {
  readonly id: string;
  readonly title: string;
  readonly authors: readonly Author[];
  /** When it was last revised, where that is known; the day of a build is never a date of the record. */
  readonly updated: string | null;
  readonly revisions: readonly PublishedRevision[];
  readonly address: string;
  /** The files that have every figure of the page, its own first. */
  readonly data: readonly [own: Link, ...Link[]];
}

/**
 * A date as bibliographies have it: one day, month or year, or two with all between them, or a season of a year; nearly,
 * or for certain.
 */
interface CitedDate {
  readonly parts: readonly (readonly number[])[];
  /** From 1 for spring. */
  readonly season: number | null;
  readonly isCirca: boolean;
}

/** Null where an EDTF date says something that bibliographies cannot. */
function citedDate(edtf: string): CitedDate | null {
  const isCirca = /[?~%]/.test(edtf);
  const certain = edtf.replaceAll(/[?~%]/g, "");
  const [, year, season] = /^(\d{4})-2([1-4])$/.exec(certain) ?? [];
  if (year !== undefined) return { parts: [[Number(year)]], season: Number(season), isCirca };
  const parts = certain.split("/").map(
    (date) =>
      plainDate
        .exec(date)
        ?.slice(1)
        .flatMap((part) => (part ? Number(part) : [])) ?? [],
  );
  if (parts.some((part) => part.length === 0)) return null;
  return { parts, season: null, isCirca };
}

const months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

export function citeView(cited: Cited, { collection, words, versions }: CollectionIndex): CiteView {
  const { settings } = collection;
  const say = words.pages.cite;
  const url = absoluteAddress(settings.url, cited.address);
  const version = versions.get(cited.data[0].address) ?? null;
  const date = cited.updated === null ? null : citedDate(cited.updated);
  const facts = { ...cited, url, version, date };
  return {
    text: [
      cited.authors.length === 0 ? null : words.pages.list(cited.authors.map(authorInWords)),
      cited.title,
      settings.title,
      settings.publisher === settings.title ? null : settings.publisher,
      cited.updated === null ? null : words.date(cited.updated),
      version === null ? null : say.version(version),
    ]
      .flatMap((text) => (text === null ? [] : ended(text)))
      .concat(url)
      .join(" "),
    bibtex: bibtex(facts, settings, say.version),
    csl: JSON.stringify([csl(facts, settings, words)], null, 2),
    version,
    data: cited.data,
    revisions: cited.revisions.map(({ date: on, note }) => ({
      date: words.pages.capital(words.date(on)),
      note,
    })),
  };
}

/** The data file of a record, named as it is called in its folder. */
export const dataLink = (address: string): Link => ({
  address,
  name: address.slice(address.lastIndexOf("/") + 1),
});

interface Facts extends Cited {
  readonly url: string;
  readonly version: string | null;
  readonly date: CitedDate | null;
}

type Settings = CollectionIndex["collection"]["settings"];

const command: Readonly<Record<string, string>> = {
  "\\": "\\textbackslash{}",
  "~": "\\textasciitilde{}",
  "^": "\\textasciicircum{}",
};
/** The ten letters that TeX takes for commands. */
const tex = (text: string): string =>
  text.replace(/[\\~^&%$#_{}]/g, (letter) => command[letter] ?? `\\${letter}`);

/** What BibTeX must not take apart stands within braces. */
const whole = (text: string): string => `{${tex(text)}}`;

/** A bare "and" would be the end of one name and the beginning of the next; a comma, of one part of a name and the next. */
const texPart = (part: string): string => (/\sand\s|,/i.test(part) ? whole(part) : tex(part));

/**
 * A name in parts as BibTeX takes it, "von Last, First"; one that has no parts whole. A name in words BibTeX takes apart
 * as it sees fit, but for a bare "and".
 */
function texName(author: Author): string {
  if (typeof author === "string") return /\sand\s/i.test(author) ? whole(author) : tex(author);
  const { family, given, literal } = author;
  if (literal !== undefined || family === undefined || given === undefined)
    return whole(authorInWords(author));
  return `${texPart(family)}, ${texPart(given)}`;
}

/** An entry of the type that every BibTeX style knows; the double braces keep the title as it is written. */
function bibtex(
  { id, title, authors, url, version, date }: Facts,
  { title: collection, publisher }: Settings,
  versionText: (version: string) => string,
): string {
  const [year, month] = date?.parts.at(-1) ?? [];
  const fields: readonly (readonly [string, string | undefined | null])[] = [
    ["author", authors.length === 0 ? null : `{${authors.map(texName).join(" and ")}}`],
    ["title", `{{${tex(title)}}}`],
    [
      "howpublished",
      `{${[collection, publisher]
        .filter((each) => each !== null)
        .map((each) => tex(each))
        .join(", ")}}`,
    ],
    ["year", year === undefined ? null : `{${year}}`],
    ["month", month === undefined ? null : months[month - 1]],
    ["note", version && `{${tex(versionText(version))}}`],
    ["url", `{${url}}`],
  ];
  const lines = fields.flatMap(([name, value]) => (value ? [`  ${name} = ${value}`] : []));
  return `@misc{${id},\n${lines.join(",\n")}\n}`;
}

function csl(
  { id, title, authors, url, version, updated, date }: Facts,
  { title: collection, publisher, language }: Settings,
  words: CollectionIndex["words"],
): Readonly<Record<string, unknown>> {
  const issued = date
    ? {
        "date-parts": date.parts,
        ...(date.season === null ? {} : { season: date.season }),
        ...(date.isCirca ? { circa: true } : {}),
      }
    : updated === null
      ? null
      : { literal: words.date(updated) };
  const fields = {
    id,
    type: "webpage",
    title,
    author: authors.length === 0 ? null : authors.map(authorInCsl),
    "container-title": collection,
    publisher,
    issued,
    version,
    URL: url,
    language,
  };
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== null));
}
