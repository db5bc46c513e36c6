import { type Diagnostic, diagnose } from "../diagnostics/diagnostic.ts";
import type { Collection } from "../records/collection.ts";
import { isLeftOut, type SourceDocument } from "../source/document.ts";
import { isSpoken, spokenLanguages } from "../words/languages.ts";
import { leastContrast, weakPairs } from "./theme/palette.ts";

/** What of a collection's own choices the site cannot follow. */
export const checkSettings = (collection: Collection, document: SourceDocument): Diagnostic[] => [
  ...checkLanguage(collection, document),
  ...checkColours(collection, document),
];

/** Colours that stand too close together to be read, in either scheme. */
const checkColours = ({ settings }: Collection, document: SourceDocument): Diagnostic[] =>
  (isLeftOut(settings.document, "theme") ? [] : weakPairs(settings.theme)).map(
    ({ scheme, property, text, ground, textName, groundName, ratio }) =>
      diagnose("weak-contrast", document.locate(["theme", property]), {
        // Rounded down: what is shown as 4.5 is 4.5.
        found: `${textName} ${text} on ${groundName} ${ground}, ${Math.floor(ratio * 100) / 100} to 1 in the ${scheme} scheme`,
        expected: `a contrast of at least ${leastContrast} to 1 (WCAG 2.2, 1.4.3)`,
      }),
  );

function checkLanguage({ settings }: Collection, document: SourceDocument): Diagnostic[] {
  if (isSpoken(settings.language)) return [];
  return [
    diagnose("unknown-language", document.locate(["language"]), {
      found: `"${settings.language}"`,
      expected: `a language that the site's own words are written in: ${spokenLanguages.join(", ")}`,
      remedy: "The site's own words are in English instead.",
    }),
  ];
}
