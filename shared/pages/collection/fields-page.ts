import { catalogue } from "../../diagnostics/catalogue.ts";
import type { RecordReference } from "../../publication/field-reference.ts";
import { addresses } from "../addresses/addresses.ts";
import { linkedData } from "../citation/linked-data.ts";
import type { CatalogueIndex } from "../listed/catalogue-index.ts";
import type { PageHead } from "../page.ts";

export interface FieldsPage extends PageHead {
  readonly kind: "fields";
  readonly records: readonly RecordReference[];
  readonly problems: readonly {
    readonly code: string;
    readonly severity: "error" | "warning";
    readonly meaning: string;
  }[];
}

/** Every field of every record, and every problem that is reported: for those who write for a catalogue. */
export function fieldsPage(index: CatalogueIndex, records: readonly RecordReference[]): FieldsPage {
  const { collection, words } = index;
  const say = words.pages.fields;
  return {
    kind: "fields",
    address: addresses.fields,
    title: say.title,
    description: say.description,
    trail: [{ address: addresses.home, name: collection.settings.title }],
    linkedData: linkedData(collection, "TechArticle", addresses.fields, {
      headline: say.title,
      description: say.description,
    }),
    records: records.map((record) => ({ ...record, name: say.records[record.id] ?? record.name })),
    problems: Object.entries(catalogue).map(([code, { severity, meaning }]) => ({ code, severity, meaning })),
  };
}
