import { idSuggestion, wellFormedId } from "../../diagnostics/plain-words.ts";
import type { ReadRecord } from "../../source/read-records.ts";
import { inWords } from "../../validation/in-words.ts";
import type { Report } from "../report.ts";

/** As the schemas have it: file systems take no longer names than 255, and the files of the site say more than the id. */
const longestId = 80;

export interface NamedRecord extends ReadRecord {
  /** Its id, where it can go by it: where others have it, or it is none, its file. */
  readonly key: string;
  readonly isNamed: boolean;
}

/** The records with the name that each goes by: an id that can stand in an address, is its own, and is the only one. */
export function namedRecords(
  records: readonly ReadRecord[],
  expected: string,
  report: Report,
): readonly NamedRecord[] {
  const seen = new Map<string, string>();
  return records.map((record) => {
    const { id, document, file } = record;
    const own = (document.data as { id?: unknown } | null)?.id;
    if (!wellFormedId.test(id) || id.length > longestId) {
      const isLong = id.length > longestId;
      report("wrong-id", document, [], {
        found: isLong ? `a name of ${id.length} letters` : `the name "${id}"`,
        expected: isLong ? `at most ${longestId}` : "small letters, digits and single hyphens",
        remedy: isLong ? undefined : idSuggestion(id),
      });
      return { ...record, key: file, isNamed: false };
    }
    const other = seen.get(id);
    if (own !== undefined && own !== id) {
      report("id-mismatch", document, ["id"], {
        found: inWords(own),
        expected: `"${id}", the name of the file`,
      });
    } else if (other !== undefined)
      report("duplicate-id", document, [], {
        found: `"${id}", which is already the id of ${other}`,
        expected,
      });
    if (other === undefined) seen.set(id, file);
    return {
      ...record,
      key: other === undefined ? id : file,
      isNamed: other === undefined && (own === undefined || own === id),
    };
  });
}
