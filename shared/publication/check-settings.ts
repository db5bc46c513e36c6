import { type Diagnostic, diagnose } from "../diagnostics/diagnostic.ts";
import type { Collection } from "../records/collection.ts";
import type { SourceDocument } from "../source/document.ts";
import { isSpoken, spokenLanguages } from "../words/languages.ts";

/** What of a collection's own choices the site cannot follow. */
export function checkSettings({ settings }: Collection, document: SourceDocument): Diagnostic[] {
  if (isSpoken(settings.language)) return [];
  return [
    diagnose("unknown-language", document.locate(["language"]), {
      found: `"${settings.language}"`,
      expected: `a language that the site's own words are written in: ${spokenLanguages.join(", ")}`,
      remedy: "Until then they are in English.",
    }),
  ];
}
