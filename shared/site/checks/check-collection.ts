import { type Assessments, assessCollection } from "../../assessments/assess-collection.ts";
import { concernsOf } from "../../assessments/concerns.ts";
import type { DayNumber } from "../../dates/day-number.ts";
import { type Diagnostic, inReadingOrder } from "../../diagnostics/diagnostic.ts";
import { tally } from "../../diagnostics/report.ts";
import { checkSettings } from "../../publication/check-settings.ts";
import { guessableSerials } from "../../publication/guessable-serials.ts";
import { publishCollection } from "../../publication/publish-collection.ts";
import { checkTexts } from "../../publication/references/check-texts.ts";
import { datesAhead } from "../../records/checks/dates-ahead.ts";
import { privateNames } from "../../records/checks/private-words.ts";
import type { Collection } from "../../records/collection.ts";
import { collectionFrom } from "../../records/intake/collection-from.ts";
import { recordsIn } from "../../source/read-records.ts";
import { readTexts } from "../../source/read-texts.ts";
import { recordValidator } from "../../validation/record-validator.ts";
import { wordsFor } from "../../words/languages.ts";
import { misplacedTemplates } from "../overrides/misplaced-templates.ts";
import { deadLinks } from "./dead-links.ts";
import { findPrivateNames } from "./private-names.ts";

export interface LoadedCollection {
  /** Null where the content has errors: nothing is shown of a collection that is not sound. */
  readonly sound: { readonly collection: Collection; readonly assessments: Assessments } | null;
  /** Every record that could be read, as far as it fits: to be checked, and for nothing else. */
  readonly asRead: Collection;
  readonly diagnostics: readonly Diagnostic[];
  readonly filesRead: number;
}

/**
 * Content → records → assessments: the first half of the way, which `check` and `build` share. Where the current day
 * is given, dates in the future are reported too.
 */
export function checkCollection(root: string, today?: DayNumber): LoadedCollection {
  const texts = readTexts(root);
  const read = recordsIn(texts);
  const isRead = new Set([...read.records, ...read.tables].map(({ file }) => file));
  const textOf = new Map(texts.texts.map(({ file, text }) => [file, text]));
  const unread = texts.files
    .filter(({ file }) => !isRead.has(file))
    .map((file) => ({ ...file, text: textOf.get(file.file) ?? "" }));
  const { collection, asRead, diagnostics } = collectionFrom(read, recordValidator());
  const ahead = today === undefined ? [] : datesAhead(asRead, today);
  const found = [
    ...read.diagnostics,
    ...diagnostics,
    ...ahead,
    ...deadLinks(texts.texts, unread),
    ...findPrivateNames(privateNames(asRead.items.values()), texts.texts),
    ...misplacedTemplates(root),
  ];
  const filesRead = read.files.length;
  const settings = read.records.find(({ kind }) => kind === "collection")?.document;
  if (!collection || tally(found).errors > 0) {
    const more = [
      ...(settings ? checkSettings(asRead, settings) : []),
      ...checkTexts(asRead, settings, unread),
    ];
    return { sound: null, asRead, diagnostics: inReadingOrder([...found, ...more]), filesRead };
  }
  const assessments = assessCollection(collection);
  const words = wordsFor(collection.settings.language);
  const all = [
    ...found,
    ...(settings ? checkSettings(collection, settings) : []),
    ...concernsOf(collection, assessments),
    ...guessableSerials(collection),
    ...checkTexts(collection, settings, () => publishCollection(collection, assessments, "public", words)),
  ];
  return {
    sound: tally(all).errors > 0 ? null : { collection, assessments },
    asRead,
    diagnostics: inReadingOrder(all),
    filesRead,
  };
}
