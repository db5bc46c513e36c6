import type { LazyLocus } from "../../diagnostics/diagnostic.ts";
import type { Path, SourceDocument } from "../../source/document.ts";
import { locateInBody, locateInValue } from "../../source/locate-in-text.ts";
import { printedMatches } from "../../source/without-markup.ts";
import type { Item } from "../item.ts";

/** A value of a record that is text, with where it stands. */
export interface Words {
  readonly path: Path;
  readonly text: string;
}

/** What stands in a record as text: what it keeps private, and what it tells. */
export interface TextsByPrivacy {
  readonly kept: readonly Words[];
  readonly told: readonly Words[];
}

/** Fields of an item that no public page has, whatever stands in them. */
const keptFields: ReadonlySet<string> = new Set(["storage", "distinguishing", "private"]);

function addWords(data: unknown, path: Path, isKept: boolean, kept: Words[], told: Words[]): void {
  if (typeof data === "string") (isKept ? kept : told).push({ path, text: data });
  if (Array.isArray(data)) {
    for (const [at, each] of data.entries()) addWords(each, [...path, at], isKept, kept, told);
    return;
  }
  if (typeof data !== "object" || data === null) return;
  const fields = data as Readonly<Record<string, unknown>>;
  const own = Array.isArray(fields.private) ? fields.private : [];
  for (const [field, value] of Object.entries(fields)) {
    if (field === "private" && own.length > 0) continue;
    const isOne = path.length === 0 ? keptFields.has(field) : own.includes(field);
    addWords(value, [...path, field], isKept || isOne, kept, told);
  }
}

export function textsByPrivacy({ data }: Pick<SourceDocument, "data">): TextsByPrivacy {
  const kept: Words[] = [];
  const told: Words[] = [];
  addWords(data, [], false, kept, told);
  return { kept, told };
}

/** A short word, or one in small letters by itself, is in many a sentence that gives nothing away. */
const shortest = 5;
const isOrdinary = (text: string): boolean =>
  text.length < shortest || /^\p{Ll}+$/u.test(text) || !/\p{L}/u.test(text);

/** Words that an item keeps private, with the field that has them. Plain data. */
export interface PrivateWords {
  readonly words: string;
  readonly item: string;
  readonly field: string;
}

/** Those that must not be read elsewhere, each once, in one form of Unicode. */
export function privateWords(id: string, kept: TextsByPrivacy["kept"]): PrivateWords[] {
  const words = new Map<string, PrivateWords>();
  for (const { path, text } of kept) {
    const secret = text.trim().normalize("NFC");
    const key = secret.toLowerCase();
    if (isOrdinary(secret) || words.has(key)) continue;
    words.set(key, { words: secret, item: id, field: String(path[0]) });
  }
  return [...words.values()];
}

const parties: readonly unknown[] = ["from", "to", "holder"];

/**
 * A name of several words that an entry of custody names, or that is private to the item as a whole. One word alone
 * may be a place or another family as well.
 */
export const isName = ({ path, text }: Words): boolean =>
  /[\p{Lu}\p{Lo}]/u.test(text) &&
  /[\p{L}\p{M}.,]\s+\p{L}/u.test(text) &&
  (path[0] === "private" || (path[0] === "provenance" && parties.includes(path.at(-1))));

/**
 * The names that items keep private. The rest of what they keep, a place or a remark, is in many a text about something
 * else.
 */
export const privateNames = (items: Iterable<Pick<Item, "id" | "document">>): PrivateWords[] =>
  [...items].flatMap(({ id, document }) => privateWords(id, textsByPrivacy(document).kept.filter(isName)));

/** A letter with its accents is one character or several, by Unicode the same (UAX #15). */
const eitherForm = (letter: string): string => {
  const parted = letter.normalize("NFD");
  return parted === letter ? letter.replace(/[.*+?^${}()|[\]\\]/, "\\$&") : `(?:${letter}|${parted})`;
};

const escaped = (text: string): string =>
  text
    .trim()
    .split(/\s+/)
    .map((word) => [...word].map(eitherForm).join(""))
    .join("\\s+");

/** In the order in which they are kept; and of a family's name, a comma and a given name the other way about. */
export function whole(words: string): RegExp {
  const [, family, given] = /^([^,]+),\s*([^,]+)$/.exec(words) ?? [];
  const orders = family && given ? [words, `${given} ${family}`] : [words];
  return new RegExp(
    `(?<![\\p{L}\\p{N}\\p{M}])(?:${orders.map(escaped).join("|")})(?![\\p{L}\\p{N}\\p{M}])`,
    "giu",
  );
}

/** A name of more words than these is a remark. */
const mostWords = 5;
const shortestSurname = 4;
/** What begins with an indefinite article is a description of somebody. */
const article = /^(?:an?|ein(?:e[mnr]?)?)$/i;

/**
 * What a name is known by alone: its last word, or the last before a comma, where that begins with a capital, or in a script
 * without any. Common practice, no source.
 */
export function surnameOf(name: string): string | undefined {
  const words = name.split(/\s+/);
  if (words.length < 2 || words.length > mostWords || article.test(words[0] ?? "")) return undefined;
  const last = /^[^,]+/.exec(name)?.[0].match(/\S+(?=\s*$)/)?.[0] ?? "";
  const letters = last.match(/\p{L}/gu) ?? [];
  return letters.length >= shortestSurname && /^[\p{Lu}\p{Lo}]/u.test(last) ? last : undefined;
}

/** The first of some words, in whatever order they are told. */
export const firstOf = (words: string): string => words.split(/[\s,]/)[0] ?? "";

/** Where some words are told, as they are read there: of each value once, and of the Markdown at every place. */
export function placesOf(
  pattern: RegExp,
  document: SourceDocument,
  told: TextsByPrivacy["told"],
  body = document.body,
): { readonly written: string; readonly place: LazyLocus }[] {
  const { file } = document;
  const written = (read: string): string => read.replace(/\s+/g, " ");
  return [
    ...told.flatMap(({ path, text }) => {
      const [match] = printedMatches(text, pattern);
      if (!match) return [];
      const found = text.slice(match.start, match.end);
      return {
        written: written(match.read),
        place: { file, locate: () => locateInValue(document, path, found) },
      };
    }),
    ...printedMatches(body, pattern).map(({ read, start, end }) => ({
      written: written(read),
      place: { file, locate: () => locateInBody(document, start, end) },
    })),
  ];
}
