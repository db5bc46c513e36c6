import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { startOf } from "../../diagnostics/place.ts";
import { type SourceDocument, withoutAll } from "../../source/document.ts";
import type { ReadCollection } from "../../source/read-records.ts";
import type { Validator } from "../../validation/validator.ts";
import { type Article, articleFrom } from "../article.ts";
import { checkReferences } from "../checks/check-references.ts";
import { type Collection, settingsFrom } from "../collection.ts";
import { intakeOf } from "./intake.ts";
import { itemsOf } from "./items-of.ts";
import { namedRecords } from "./named-records.ts";
import { referencesOf } from "./references-of.ts";
import { bibliographyFrom, hazardsOf, scalesOf } from "./registers-of.ts";
import { sightingsOf } from "./sightings-of.ts";
import { soundPart } from "./sound-part.ts";

export interface BuiltCollection {
  /** The records that are sound; null where there are not even settings to go by. */
  readonly collection: Collection | null;
  /** Every record that could be read, with whatever of it fits: to be checked, and for nothing else. */
  readonly asRead: Collection;
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * From what was read to what is known: validated, resolved, checked against each other. Reports every problem. What
 * does not fit is left out of a record, and the rest of the record is checked against the others. `itemFiles` is how
 * many items the whole collection has, where only a part of it was read.
 */
export function collectionFrom(
  read: ReadCollection,
  validator: Validator,
  itemFiles = read.files.filter((file) => file.kind === "item").length,
): BuiltCollection {
  const diagnostics: Diagnostic[] = [];
  const intake = intakeOf(read, validator, diagnostics);
  const { recordsOf, unreadOf, report, tell, fitting, unsound } = intake;

  const [written] = recordsOf("collection");
  const settingsRecord = written && fitting(written.document, validator.of("collection"));
  const settings = settingsFrom(settingsRecord ?? noSettings);
  const { hazards, isMissingHazards } = hazardsOf(intake);
  const scales = scalesOf(intake);
  const { sources, isMissingSources } = bibliographyFrom(intake);
  const references = referencesOf(intake);
  const items = itemsOf(intake, references, settings.publish);
  const sightings = sightingsOf(intake, references);
  const articles = new Map<string, Article>();
  for (const record of namedRecords(recordsOf("article"), "a different id for each article", report)) {
    const document = fitting(record.document, validator.of("article"));
    const article = articleFrom(record.id, document);
    articles.set(record.key, article);
    if (document.leftOut || !record.isNamed) unsound.add(article);
  }

  const { families, variants } = references;
  const asRead: Collection = {
    settings,
    families,
    variants,
    items,
    sightings,
    articles,
    sources,
    isMissingSources,
    hazards,
    isMissingHazards,
    scales,
  };
  tell(
    checkReferences(asRead, {
      beside: read.beside,
      settings: settingsRecord,
      itemFiles,
      isUnread: (kind, id) => unreadOf(kind).some((file) => file.id === id),
    }),
  );
  const isSettled = settingsRecord !== undefined && !settingsRecord.leftOut;
  return { collection: isSettled ? soundPart(asRead, unsound) : null, asRead, diagnostics };
}

/** Where the settings cannot be read. */
const noSettings: SourceDocument = withoutAll(
  {
    file: "content/collection.yaml",
    data: null,
    body: "",
    locate: () => startOf("content/collection.yaml", ""),
  },
  [[]],
);
