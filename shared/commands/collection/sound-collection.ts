import { isError } from "../../diagnostics/diagnostic.ts";
import { reportAsText } from "../../diagnostics/report.ts";
import { checkCollection, type LoadedCollection } from "../../site/checks/check-collection.ts";

/** The collection, assessed; or null, after its errors have been told. */
export function soundCollection(root: string, err: (text: string) => void): LoadedCollection["sound"] {
  const { sound, diagnostics, filesRead } = checkCollection(root);
  if (sound) return sound;
  err(reportAsText(diagnostics.filter(isError), filesRead));
  err("Nothing can be said of a collection that has errors. Correct them first.");
  return null;
}
