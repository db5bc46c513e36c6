import { catalogue, type DiagnosticCode } from "../../diagnostics/catalogue.ts";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Place } from "../../diagnostics/place.ts";
import { packageVersion } from "../../source/package-folder.ts";
import { type Edit, mechanicalEdit } from "./mechanical-edit.ts";

const codes = Object.keys(catalogue) as DiagnosticCode[];

/** A path as a relative URI reference (RFC 3986): each of its segments escaped. */
const uriOf = (file: string) => file.split("/").map(encodeURIComponent).join("/");

const artifact = (file: string) => ({ uri: uriOf(file), uriBaseId: "COLLECTION" });

const region = ({ line, column, endLine, endColumn }: Place) => ({
  startLine: line,
  startColumn: column,
  endLine,
  endColumn,
});

const fixOf = ({ place, from, text }: Edit) => ({
  description: { text: `Replace "${from}" with "${text}".` },
  artifactChanges: [
    {
      artifactLocation: artifact(place.file),
      replacements: [{ deletedRegion: region(place), insertedContent: { text } }],
    },
  ],
});

/**
 * The problems in the Static Analysis Results Interchange Format, SARIF 2.1.0 (OASIS Standard, 27 March 2020), for
 * editors and build servers. Columns count UTF-16 code units, and paths stand relative to the collection's folder.
 */
export function reportAsSarif(diagnostics: readonly Diagnostic[]): string {
  const log = {
    $schema: "https://docs.oasis-open.org/sarif/sarif/v2.1.0/os/schemas/sarif-schema-2.1.0.json",
    version: "2.1.0",
    runs: [
      {
        tool: {
          driver: {
            name: "Fittedcase",
            semanticVersion: packageVersion,
            rules: codes.map((id) => ({
              id,
              shortDescription: { text: catalogue[id].meaning },
              defaultConfiguration: { level: catalogue[id].severity },
            })),
          },
        },
        columnKind: "utf16CodeUnits",
        originalUriBaseIds: { COLLECTION: { description: { text: "The collection's folder." } } },
        results: diagnostics.map((each) => {
          const edit = mechanicalEdit(each);
          return {
            ruleId: each.code,
            ruleIndex: codes.indexOf(each.code),
            level: each.severity,
            message: { text: each.message },
            locations: [
              { physicalLocation: { artifactLocation: artifact(each.file), region: region(each) } },
            ],
            ...(edit ? { fixes: [fixOf(edit)] } : {}),
          };
        }),
      },
    ],
  };
  return JSON.stringify(log, null, 2);
}
