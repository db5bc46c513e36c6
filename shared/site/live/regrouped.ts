import type { RecordText } from "../../source/read-texts.ts";
import type { GroupedCollection } from "../groups/family-groups.ts";
import { publishingOf } from "../groups/mentioned-serials.ts";
import { baseOf, formerIds, mentioned, serialOf, variantOf } from "../groups/written-record.ts";
import type { ChangedText } from "./changed-texts.ts";

/**
 * What the cutting of a collection into groups depends on in a text; null for a log, every line of which counts. As
 * long as this stays the same, so do the groups.
 */
function bondsOf(text: RecordText, { serialsMentionedIn }: GroupedCollection): string | null {
  if (text.kind === "sightings") return null;
  const named = [mentioned(text), serialsMentionedIn(text), formerIds(text)];
  switch (text.kind) {
    case "item":
      return JSON.stringify([variantOf(text), serialOf(text), publishingOf(text), named]);
    case "variant":
      return JSON.stringify([baseOf(text), named]);
    default:
      return JSON.stringify(named);
  }
}

/** The groups with some texts changed, as `groupFamilies` would cut them; null where it has to. */
export function regrouped(
  grouped: GroupedCollection,
  changed: readonly ChangedText[],
): GroupedCollection | null {
  for (const { before, after } of changed) {
    const bonds = bondsOf(after, grouped);
    if (bonds === null || bonds !== bondsOf(before, grouped)) return null;
  }
  const now = new Map(changed.map(({ before, after }) => [before, after]));
  const replaced = (texts: readonly RecordText[]): readonly RecordText[] =>
    texts.some((text) => now.has(text)) ? texts.map((text) => now.get(text) ?? text) : texts;
  return {
    ...grouped,
    shared: replaced(grouped.shared),
    articles: replaced(grouped.articles),
    groups: grouped.groups.map((group) => {
      const texts = replaced(group.texts);
      return texts === group.texts ? group : { ...group, texts };
    }),
  };
}
