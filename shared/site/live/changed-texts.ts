import { type CollectionTexts, type RecordText, reread } from "../../source/read-texts.ts";

export interface ChangedText {
  readonly before: RecordText;
  readonly after: RecordText;
}

export interface ChangedTexts {
  readonly texts: CollectionTexts;
  /** Of those that were asked about, the ones that say something else now. */
  readonly changed: readonly ChangedText[];
}

/**
 * The texts of a collection after some of its files were written again, without a look at any other. Null where that is
 * not enough: a file is new, or gone, or cannot be read.
 */
export function changedTexts(
  root: string,
  texts: CollectionTexts,
  files: ReadonlySet<string>,
): ChangedTexts | null {
  const own = new Set(texts.files.map(({ file }) => file));
  const changed: ChangedText[] = [];
  let found = 0;
  for (const before of texts.texts) {
    if (!files.has(before.file) || !own.has(before.file)) continue;
    const after = reread(root, before);
    if (!after) return null;
    found++;
    if (after.hash !== before.hash) changed.push({ before, after });
  }
  if (found !== files.size) return null;
  const now = new Map(changed.map(({ before, after }) => [before, after]));
  return { texts: { ...texts, texts: texts.texts.map((text) => now.get(text) ?? text) }, changed };
}
