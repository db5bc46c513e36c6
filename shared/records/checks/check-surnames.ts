import { type Diagnostic, diagnose } from "../../diagnostics/diagnostic.ts";
import { addUnder } from "../../lists/grouping.ts";
import type { SourceDocument } from "../../source/document.ts";
import { printedMatches } from "../../source/without-markup.ts";
import type { Collection } from "../collection.ts";
import type { Item } from "../item.ts";
import { serialKey } from "../serial.ts";
import type { Sighting } from "../sighting.ts";
import { isName, placesOf, surnameOf, textsByPrivacy, whole } from "./private-words.ts";

/** Somebody whom an item keeps private, by the surname alone, with the field that names them in full. */
interface Surname {
  readonly surname: string;
  readonly field: string;
}

/** Words are compared in one form of Unicode, whatever their capitals. */
const wordsOf = (text: string): string[] =>
  text
    .normalize("NFC")
    .toLowerCase()
    .match(/[\p{L}\p{M}]+/gu) ?? [];

/** In any other record a surname may be anybody's; in these it is most likely theirs. */
export function checkSurnames({ items, variants, families, sightings }: Collection): Diagnostic[] {
  let rows: Map<string, Sighting[]> | undefined;
  return [...items.values()].flatMap((item) => {
    const kept = textsByPrivacy(item.document).kept.map(({ path, text }) => ({
      path,
      text: text.trim().normalize("NFC"),
    }));
    const names = kept.filter(isName);
    if (names.length === 0) return [];
    const variant = variants.get(item.variant);
    const family = families.get(variant?.family ?? "");
    const ordinary = new Set(wordsOf([family?.maker, family?.name, variant?.name].join(" ")));
    // What is kept as a whole is looked for as a whole.
    for (const { text } of kept) ordinary.add(text.toLowerCase());
    const surnames = new Map<string, Surname>();
    for (const { path, text } of names) {
      const surname = surnameOf(text);
      const key = surname?.toLowerCase() ?? "";
      if (surname === undefined || ordinary.has(key) || surnames.has(key)) continue;
      surnames.set(key, { surname, field: String(path[0]) });
    }
    if (surnames.size === 0) return [];
    rows ??= rowsByExample(sightings);
    const inFull = names.map(({ text }) => whole(text));
    const documents = [item, ...new Set(examplesOf(item).flatMap((key) => rows?.get(key) ?? []))];
    return documents.flatMap(({ document }) =>
      [...surnames.values()].flatMap((surname) => surnameTold(item, surname, document, inFull)),
    );
  });
}

/** What tells which example a record is of, within its variant. */
const examplesOf = ({ variant, serial, example }: Item | Sighting): string[] => [
  ...(serial === undefined ? [] : [`${variant} serial ${serialKey(serial)}`]),
  ...(example === undefined ? [] : [`${variant} example ${example.trim()}`]),
];

function rowsByExample(sightings: readonly Sighting[]): Map<string, Sighting[]> {
  const rows = new Map<string, Sighting[]>();
  for (const row of sightings) for (const key of examplesOf(row)) addUnder(rows, key, row);
  return rows;
}

/** Where the name stands in full, that is told by itself. */
function surnameTold(
  { id }: Item,
  { surname, field }: Surname,
  document: SourceDocument,
  inFull: readonly RegExp[],
): Diagnostic[] {
  const isAlone = ({ text }: { readonly text: string }) =>
    inFull.every((name) => printedMatches(text, name).length === 0);
  let { body } = document;
  for (const { start, end } of inFull.flatMap((name) => printedMatches(body, name)))
    body = body.slice(0, start) + " ".repeat(end - start) + body.slice(end);
  const told = textsByPrivacy(document).told.filter(isAlone);
  return placesOf(whole(surname), document, told, body).map(({ written, place }) =>
    diagnose("private-in-text", place, {
      found: `"${written}", the surname in a name that the item "${id}" keeps private under "${field}"`,
      expected: "no published text to contain it",
    }),
  );
}
