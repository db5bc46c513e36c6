import { type Diagnostic, diagnose } from "../../diagnostics/diagnostic.ts";
import type { SourceDocument } from "../../source/document.ts";
import { withoutMarkup } from "../../source/without-markup.ts";
import type { Item } from "../item.ts";
import { amountPattern, hasDigitsOf, privateAmounts } from "./private-amounts.ts";
import {
  firstOf,
  type PrivateWords,
  placesOf,
  privateWords,
  type TextsByPrivacy,
  textsByPrivacy,
  whole,
} from "./private-words.ts";

/** Wherever a record tells what an item keeps private. Only a warning, since the words may say something else there. */
export const tellsPrivate = (
  { words, item, field }: PrivateWords,
  document: SourceDocument,
  told: TextsByPrivacy["told"],
): Diagnostic[] =>
  placesOf(whole(words), document, told).map(({ written, place }) =>
    diagnose("private-in-text", place, {
      found: `"${written}", which the item "${item}" keeps private under "${field}"`,
      expected: "no published text to contain it",
    }),
  );

/**
 * What an item keeps private must not be read in its other texts: a name in its custody, and in its description; or
 * what was paid.
 */
export function checkPrivate(item: Pick<Item, "id" | "document" | "publish">): Diagnostic[] {
  const { id, document } = item;
  const { kept, told } = textsByPrivacy(document);
  const secrets = privateWords(id, kept);
  const amounts = privateAmounts(item);
  if (secrets.length === 0 && amounts.length === 0) return [];
  // The search for all at once is for nothing but speed: hardly any is found.
  const all = withoutMarkup([...told.map(({ text }) => text), document.body].join("\n"))
    .text.normalize("NFC")
    .toLowerCase();
  const names = secrets.filter(({ words }) => all.includes(firstOf(words).toLowerCase()));
  const sums = amounts.filter((amount) => hasDigitsOf(amount, all));
  return [
    ...names.flatMap((secret) => tellsPrivate(secret, document, told)),
    ...sums.flatMap((sum) =>
      placesOf(amountPattern(sum), document, told).map(({ written, place }) =>
        diagnose("private-in-text", place, {
          found: `"${written}", an amount that the item "${id}" keeps private under "${sum.field}"`,
          expected: "no published text to contain it",
        }),
      ),
    ),
  ];
}
