import type { PublishedItem } from "../../publication/published.ts";
import { foldedWords } from "./fold.ts";

/** What Markdown has beside its words: where links lead to, and how rules and tables are drawn. */
const notProse = /\]\([^)]*\)|<[^>]*>|https?:\S+/g;

const longestWord = 24;

/** Every text of an entry that is its own: what its variant has is found by the variant's name. */
function textsOf(item: PublishedItem): (string | null)[] {
  return [
    item.title,
    item.description.replace(notProse, " "),
    ...item.features.map(({ value }) => value),
    ...item.provenance.events.flatMap(({ event, from, to, holder, place, evidence, note }) => [
      event,
      from,
      to,
      holder,
      place,
      evidence,
      note,
    ]),
    ...item.labels.flatMap(({ where, text, note }) => [where, ...text, note]),
    ...item.completeness.extras.flatMap(({ name, note }) => [name, note]),
    ...item.parts.flatMap(({ lines }) =>
      lines.flatMap(({ serial, marks, model, packed, evidence, note, repairs }) => [
        serial,
        ...marks,
        model,
        packed,
        evidence,
        note,
        ...repairs,
      ]),
    ),
    ...item.photos.map(({ caption }) => caption),
  ];
}

/** The words of an entry, folded, each once; letters that stand alone are left out. */
export function itemWords(item: PublishedItem): ReadonlySet<string> {
  let all = "";
  for (const text of textsOf(item)) if (text !== null) all += `${text}\n`;
  const words = new Set<string>();
  for (const word of foldedWords(all)) {
    if (word.length > 1) words.add(word.length > longestWord ? word.slice(0, longestWord) : word);
  }
  return words;
}

export { longestWord };
