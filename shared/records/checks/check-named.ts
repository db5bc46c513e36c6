import { suggestion } from "../../diagnostics/nearest-name.ts";
import type { Path, SourceDocument } from "../../source/document.ts";
import type { Collection } from "../collection.ts";
import type { Report } from "../report.ts";

export const isKnownSource = (
  { sources, isMissingSources }: Pick<Collection, "sources" | "isMissingSources">,
  id: string,
): boolean => isMissingSources || sources.has(id);

/** A source that a record names is in the bibliography. */
export function checkSource(
  collection: Collection,
  report: Report,
  document: SourceDocument,
  path: Path,
  id: string | undefined,
) {
  if (id === undefined || isKnownSource(collection, id)) return;
  report("unknown-source", document, path, {
    found: `"${id}"`,
    expected: "the id of a source in content/sources.yaml",
    remedy: suggestion(id, collection.sources.keys()),
  });
}

/** A hazard that a record names is in the register. */
export function checkHazard(
  collection: Collection,
  report: Report,
  document: SourceDocument,
  path: Path,
  id: string,
) {
  if (collection.isMissingHazards || collection.hazards.has(id)) return;
  report("unknown-hazard", document, path, {
    found: `"${id}"`,
    expected: "a hazard of the register",
    remedy:
      suggestion(id, collection.hazards.keys()) ??
      `The register has: ${[...collection.hazards.keys()].join(", ")}.`,
  });
}
