import { assessCollection } from "../../shared/assessments/assess-collection.ts";
import { noMedia } from "../../shared/images/media.ts";
import { indexCollection } from "../../shared/pages/collection-index.ts";
import { listFamilies } from "../../shared/pages/listed/list-families.ts";
import type { ListedFamily } from "../../shared/pages/listed/listed-family.ts";
import { itemWords } from "../../shared/pages/search/item-words.ts";
import { gatherWords } from "../../shared/pages/search/word-files.ts";
import { publishCollection } from "../../shared/publication/publish-collection.ts";
import { collectionFrom } from "../../shared/records/intake/collection-from.ts";
import { searchFiles } from "../../shared/site/files/search-files.ts";
import { groupFamilies } from "../../shared/site/groups/family-groups.ts";
import { recordsIn } from "../../shared/source/read-records.ts";
import { readTexts } from "../../shared/source/read-texts.ts";
import { recordValidator } from "../../shared/validation/record-validator.ts";
import { english } from "../../shared/words/en/english.ts";

/** Seconds of processor time within a build. */
export interface Within {
  readonly assessing: number;
  /** Words of every item, and the index of all. */
  readonly searching: number;
}

/**
 * What a build spends on assessments and on search, taken out of it: group after group of families, as a build makes
 * them, with nothing kept of one but what is listed of it.
 */
export function timesWithin(root: string): Within {
  let assessing = 0;
  let searching = 0;
  const processor = <Made>(work: () => Made): { readonly made: Made; readonly seconds: number } => {
    const before = process.cpuUsage();
    const made = work();
    const { user, system } = process.cpuUsage(before);
    return { made, seconds: (user + system) / 1e6 };
  };

  const texts = readTexts(root);
  const grouped = groupFamilies(texts);
  if (!grouped) throw new Error("The generated collection cannot be cut into groups.");
  const listed: ListedFamily[] = [];
  let settings: ReturnType<typeof publishCollection> | undefined;
  for (const group of grouped.groups) {
    const own = [...grouped.shared, ...group.texts];
    const read = recordsIn({ ...texts, texts: own, files: own, diagnostics: [] });
    const { collection } = collectionFrom(read, recordValidator(), grouped.itemCount);
    if (!collection) throw new Error("The generated collection has errors.");
    const whole = { watched: grouped.watched(collection.settings.watching), compared: group.compared };
    const assessed = processor(() => assessCollection(collection, whole));
    assessing += assessed.seconds;
    const published = publishCollection(collection, assessed.made, "public", english);
    searching += processor(() => gatherWords(published.items.map(itemWords))).seconds;
    listed.push(...listFamilies(indexCollection(published, english, noMedia, new Map(), grouped.itemCount)));
    settings = published;
  }
  // As they come back from the threads that made them.
  const kept = JSON.parse(JSON.stringify(listed)) as ListedFamily[];
  listed.length = 0;
  if (settings) {
    const catalogue = { collection: settings, listed: kept };
    searching += processor(() => searchFiles(catalogue).files.map(({ bytes }) => bytes)).seconds;
  }
  return { assessing, searching };
}
