import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import type { ReadCollection } from "../../source/read-records.ts";
import type { Validator } from "../../validation/validator.ts";
import { articleFrom } from "../article.ts";
import { checkReferences } from "../checks/check-references.ts";
import { type Collection, publishedUnlessSaid, settingsFrom } from "../collection.ts";
import { intakeOf } from "./intake.ts";
import { itemsOf } from "./items-of.ts";
import { namedRecords } from "./named-records.ts";
import { referencesOf } from "./references-of.ts";
import { bibliographyFrom, hazardsOf, scalesOf } from "./registers-of.ts";
import { sightingsOf } from "./sightings-of.ts";

export interface BuiltCollection {
  /** Null only where there are not even settings to go by. */
  readonly collection: Collection | null;
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * From what was read to what is known: validated, resolved, checked against each other. Reports every problem.
 * `itemFiles` is how many items the whole collection has, where only a part of it was read.
 */
export function collectionFrom(
  read: ReadCollection,
  validator: Validator,
  itemFiles = read.files.filter((file) => file.kind === "item").length,
): BuiltCollection {
  const diagnostics: Diagnostic[] = [];
  const intake = intakeOf(read, validator, diagnostics);
  const { recordsOf, filesOf, report, tell, isSound } = intake;

  const settingsRecord = recordsOf("collection")[0]?.document;
  const settings =
    settingsRecord && isSound(settingsRecord, validator.of("collection"))
      ? settingsFrom(settingsRecord)
      : undefined;
  const hazards = hazardsOf(intake);
  const scales = scalesOf(intake);
  const sources = bibliographyFrom(intake);
  const references = referencesOf(intake);
  const items = itemsOf(intake, references, settings?.publish ?? publishedUnlessSaid);
  const sightings = sightingsOf(intake, references);
  const articles = new Map(
    namedRecords(recordsOf("article"), "a different id for each article", report)
      .filter(({ document }) => isSound(document, validator.of("article")))
      .map(({ id, document }) => [id, articleFrom(id, document)]),
  );

  if (!settings) return { collection: null, diagnostics };
  const { families, variants } = references;
  const collection: Collection = {
    settings,
    families,
    variants,
    items,
    sightings,
    articles,
    sources,
    isMissingSources: filesOf("sources").length > recordsOf("sources").length,
    hazards,
    scales,
  };
  tell(checkReferences(collection, { beside: read.beside, settings: settingsRecord, itemFiles }));
  return { collection, diagnostics };
}
