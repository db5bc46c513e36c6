import type { DiagnosticCode } from "../diagnostics/catalogue.ts";
import { type Diagnostic, diagnose, type Finding } from "../diagnostics/diagnostic.ts";
import { suggestion } from "../diagnostics/nearest-name.ts";
import { idSuggestion, wellFormedId } from "../diagnostics/plain-words.ts";
import type { FileKind } from "../source/collection-files.ts";
import type { Path, SourceDocument } from "../source/document.ts";
import { type ReadCollection, type ReadRecord, within } from "../source/read-records.ts";
import type { JsonSchema } from "../source/record-schemas.ts";
import { inWords } from "../validation/in-words.ts";
import { itemSchemaFor, namesOnlyKnown } from "../validation/item-schema.ts";
import type { Validate, Validator } from "../validation/validator.ts";
import { articleFrom } from "./article.ts";
import { checkReferences } from "./check-references.ts";
import { type Collection, settingsFrom } from "./collection.ts";
import { type Family, familyFrom } from "./family.ts";
import { type Item, itemFrom } from "./item.ts";
import { inOrderOfIssue } from "./order-of-issue.ts";
import { type Hazard, hazardFrom, type Scale, scaleFrom } from "./register.ts";
import type { Report } from "./report.ts";
import { type Sighting, sightingFrom, typedCells } from "./sighting.ts";
import { type Source, sourceFrom, unsoundSource } from "./source.ts";
import { type Variant, variantsFrom } from "./variant.ts";

export interface BuiltCollection {
  /** Null only where there are not even settings to go by. */
  readonly collection: Collection | null;
  readonly diagnostics: readonly Diagnostic[];
}

/** As the schemas have it: file systems take no longer names than 255, and the files of the site say more than the id. */
const longestId = 80;

/**
 * From what was read to what is known: validated, resolved, checked against each other. Reports every problem.
 * `itemFiles` is how many items the whole collection has, where only a part of it was read.
 */
export function buildCollection(
  read: ReadCollection,
  validator: Validator,
  itemFiles = read.files.filter((file) => file.kind === "item").length,
): BuiltCollection {
  const diagnostics: Diagnostic[] = [];
  const { schemas } = validator;
  const report = (
    code: DiagnosticCode,
    document: SourceDocument,
    path: Path,
    finding: Finding,
    at?: "key" | "value",
  ) => void diagnostics.push(diagnose(code, document.locate(path, at), finding));

  const sound = (record: { document: SourceDocument }, validate: Validate): boolean => {
    const problems = validate(record.document);
    for (const problem of problems) diagnostics.push(problem);
    return problems.length === 0;
  };
  const ofKind = (kind: FileKind) => read.records.filter((record) => record.kind === kind);

  /** The id that a record's place gives it must be able to stand in an address, be its own, and be the only one. */
  const named = (records: readonly ReadRecord[], expected: string) => {
    const seen = new Map<string, string>();
    return records.filter((record) => {
      const { id, document, file } = record;
      const own = (document.data as { id?: unknown } | null)?.id;
      if (!wellFormedId.test(id) || id.length > longestId) {
        const isLong = id.length > longestId;
        report("wrong-id", document, [], {
          found: isLong ? `a name of ${id.length} letters` : `the name "${id}"`,
          expected: isLong ? `at most ${longestId}` : "small letters, digits and single hyphens",
          remedy: isLong ? undefined : idSuggestion(id),
        });
        return false;
      }
      if (own !== undefined && own !== id) {
        report("id-mismatch", document, ["id"], {
          found: inWords(own),
          expected: `"${id}", as the file is named`,
        });
        return false;
      }
      const other = seen.get(id);
      if (other !== undefined) {
        report("duplicate-id", document, [], { found: `"${id}", which ${other} also is`, expected });
        return false;
      }
      seen.set(id, file);
      return true;
    });
  };

  const settingsRecord = ofKind("collection")[0];
  const settings =
    settingsRecord && sound(settingsRecord, validator.of("collection"))
      ? settingsFrom(settingsRecord.document)
      : undefined;

  const entries = (record: ReadRecord): [string | number, unknown][] => {
    const { data } = record.document;
    if (Array.isArray(data)) return [...data.entries()];
    if (typeof data === "object" && data !== null) return Object.entries(data);
    if (data === null || data === undefined) return [];
    report("wrong-type", record.document, [], {
      found: "neither a list nor a mapping",
      expected: "a list of records",
    });
    return [];
  };

  const hazards = new Map<string, Hazard>();
  for (const record of ofKind("hazards")) {
    for (const [id, data] of entries(record)) {
      const document = within(record.document, id, data);
      if (sound({ document }, validator.of("hazard")))
        hazards.set(String(id), hazardFrom(String(id), document));
    }
  }

  const scales = new Map<string, Scale>();
  for (const record of ofKind("scale")) {
    if (sound(record, validator.of("scale"))) scales.set(record.id, scaleFrom(record.id, record.document));
  }

  const sources = new Map<string, Source>();
  for (const record of ofKind("sources")) {
    for (const [key, data] of entries(record)) {
      const withId =
        typeof key === "string" && typeof data === "object" && data !== null ? { id: key, ...data } : data;
      const document = within(record.document, key, withId);
      if (!sound({ document }, validator.of("source"))) {
        const { id } = Object(withId) as { id?: unknown };
        if (typeof id === "string" && !sources.has(id)) sources.set(id, unsoundSource(id));
        continue;
      }
      const source = sourceFrom(document);
      if (sources.has(source.id)) {
        report("duplicate-id", document, ["id"], {
          found: `"${source.id}" a second time`,
          expected: "each source once",
        });
      } else sources.set(source.id, source);
    }
  }

  const families = new Map<string, Family>();
  for (const record of named(ofKind("family"), "one family of each id")) {
    if (sound(record, validator.of("family")))
      families.set(record.id, familyFrom(record.id, record.document));
  }

  const filesOf = (kind: FileKind) => read.files.filter((file) => file.kind === kind);
  const isBroken = (family: string) =>
    !families.has(family) && filesOf("family").some(({ id }) => id === family);
  const variantFiles = named(ofKind("variant"), "one variant of each id in the whole collection")
    .filter((record) => sound(record, validator.of("variant")))
    .map((record) => ({ id: record.id, family: record.file.split("/")[2] ?? "", document: record.document }))
    .filter(({ family }) => !isBroken(family));
  const idsOfFiles = new Set(filesOf("variant").map(({ id }) => id));
  const resolved = variantsFrom(variantFiles, (id) => idsOfFiles.has(id));
  diagnostics.push(...resolved.diagnostics);
  const variants = new Map<string, Variant>(
    inOrderOfIssue(resolved.variants).map((variant) => [variant.id, variant]),
  );

  // Whoever refers to a record that is there but broken is told of the record only.
  const knownVariant = (document: SourceDocument, id: string): boolean => {
    if (idsOfFiles.has(id)) return true;
    report("unknown-variant", document, ["variant"], {
      found: `"${id}"`,
      expected: "the id of a variant reference",
      remedy: suggestion(id, variants.keys()),
    });
    return false;
  };

  const items = new Map<string, Item>();
  const publish = settings?.publish ?? { serial: "masked", price: "hidden" };
  const itemSchema = schemas.get("item");
  const narrowed = new Map<string, Validate>();
  const validateItem = validator.of("item");
  const validatorOf = (variant: Variant, features: Family["features"]): Validate => {
    const known = narrowed.get(variant.id);
    if (known || !itemSchema) return known ?? validateItem;
    const validate = validator.by(itemSchemaFor(itemSchema, variant, features));
    narrowed.set(variant.id, validate);
    return validate;
  };
  /** By the schema that all items share; by that of its variant only where something is wrong. */
  const validatorFor =
    (id: unknown): Validate =>
    (document) => {
      const variant = typeof id === "string" ? variants.get(id) : undefined;
      if (!variant) return validateItem(document);
      const features = families.get(variant.family)?.features ?? new Map();
      const isSound = validateItem(document).length === 0 && namesOnlyKnown(document.data, variant, features);
      return isSound ? [] : validatorOf(variant, features)(document);
    };
  for (const record of named(ofKind("item"), "one item of each id")) {
    const id = (record.document.data as { variant?: unknown } | null)?.variant;
    const known = typeof id !== "string" || knownVariant(record.document, id);
    if (sound(record, validatorFor(id)) && known && variants.has(String(id))) {
      items.set(record.id, itemFrom(record.id, record.document, publish));
    }
  }

  const sightings: Sighting[] = [];
  const validateSighting = validator.of("sighting");
  const addSighting = (document: SourceDocument) => {
    const id = (document.data as { variant?: unknown } | null)?.variant;
    const known = typeof id !== "string" || knownVariant(document, id);
    if (!sound({ document }, validateSighting) || !known) return;
    const sighting = sightingFrom(document);
    if (variants.has(sighting.variant)) sightings.push(sighting);
  };
  for (const document of sightingRows(read, schemas.get("sighting"), diagnostics, report, entries))
    addSighting(document);

  const articles = new Map(
    named(ofKind("article"), "one article of each id")
      .filter((record) => sound(record, validator.of("article")))
      .map((record) => [record.id, articleFrom(record.id, record.document)]),
  );

  if (!settings) return { collection: null, diagnostics };
  const collection: Collection = {
    settings,
    families,
    variants,
    items,
    sightings,
    articles,
    sources,
    isMissingSources: filesOf("sources").length > ofKind("sources").length,
    hazards,
    scales,
  };
  diagnostics.push(
    ...checkReferences(collection, {
      beside: read.beside,
      settings: settingsRecord?.document,
      itemFiles,
    }),
  );
  return { collection, diagnostics };
}

/** The rows of every log, each as a record: CSV tables, and YAML lists. */
function* sightingRows(
  read: ReadCollection,
  schema: JsonSchema | undefined,
  diagnostics: Diagnostic[],
  report: Report,
  entries: (record: ReadRecord) => [string | number, unknown][],
): Generator<SourceDocument> {
  const known = Object.keys((schema?.properties as object | undefined) ?? {});
  for (const { file, table } of read.tables) {
    const header: SourceDocument = {
      file,
      data: table.columns,
      body: "",
      locate: ([column]) => table.locateColumn(String(column)),
    };
    const strange = table.columns.filter((column) => !known.includes(column));
    for (const column of strange) {
      const finding = {
        found: `a column "${column}"`,
        expected: "a known column",
        remedy: suggestion(column, known),
      };
      report("unknown-field", header, [column], finding);
    }
    for (const column of new Set(table.columns.filter((each, at) => table.columns.indexOf(each) !== at))) {
      report("unknown-field", header, [column], {
        found: `two columns "${column}"`,
        expected: "each column once",
      });
    }
    const isTable = table.columns.length > 0 || table.diagnostics.length === 0;
    const missing = ((schema?.required as string[] | undefined) ?? []).filter(
      (each) => !table.columns.includes(each),
    );
    if (isTable && missing.length > 0) {
      for (const column of missing)
        report("missing-field", header, [], { found: `no column "${column}"`, expected: "it to be there" });
      continue;
    }
    // One by one: a damaged log may have more to be told of than a call takes arguments.
    for (const problem of table.diagnostics) diagnostics.push(problem);
    for (const row of table.rows) {
      const cells =
        strange.length === 0 ? row.cells : new Map([...row.cells].filter(([each]) => known.includes(each)));
      yield { file, data: typedCells(cells), body: "", locate: ([column]) => row.locate(column?.toString()) };
    }
  }
  for (const record of read.records) {
    if (record.kind !== "sightings") continue;
    for (const [key, data] of entries(record)) yield within(record.document, key, data);
  }
}
