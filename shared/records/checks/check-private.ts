import { type Diagnostic, diagnose } from "../../diagnostics/diagnostic.ts";
import type { SourceDocument } from "../../source/document.ts";
import type { Item } from "../item.ts";
import {
  firstOf,
  type PrivateWords,
  placesOf,
  privateWords,
  type TextsByPrivacy,
  textsByPrivacy,
} from "./private-words.ts";

/** Wherever a record tells what an item keeps private. Only a warning, since the words may say something else there. */
export const tellsPrivate = (
  { words, item, field }: PrivateWords,
  document: SourceDocument,
  told: TextsByPrivacy["told"],
): Diagnostic[] =>
  placesOf(words, document, told).map(({ written, place }) =>
    diagnose("private-in-text", place, {
      found: `"${written}", which the item "${item}" keeps private under "${field}"`,
      expected: "no published text to contain it",
    }),
  );

/** What an item keeps private must not be read in its other texts: a name in its custody, and in its description. */
export function checkPrivate({ id, document }: Pick<Item, "id" | "document">): Diagnostic[] {
  const { kept, told } = textsByPrivacy(document);
  const secrets = privateWords(id, kept);
  if (secrets.length === 0) return [];
  // The search for all at once is for nothing but speed: hardly any is found.
  const all = [...told.map(({ text }) => text), document.body].join("\n").normalize("NFC").toLowerCase();
  return secrets
    .filter(({ words }) => all.includes(firstOf(words).toLowerCase()))
    .flatMap((secret) => tellsPrivate(secret, document, told));
}
