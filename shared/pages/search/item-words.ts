import type { PublishedItem } from "../../publication/published.ts";
import { foldedWords } from "./folded-words.ts";
import { longestWord } from "./search-index.ts";

/** What Markdown has beside its words: where links lead to, and how rules and tables are drawn. */
const notProse = /\]\([^()]*\)|<[^<>]*>|https?:\S+/g;

/** Every text of an entry that is its own: what its variant has is found by the variant's name. */
function textOf(item: PublishedItem): string {
  let all = "";
  // Most of thirty parts have nothing to say: a list of what each might is longer in the making than the text.
  const add = (text: string | null) => {
    if (text !== null && text !== "") all += `${text}\n`;
  };
  add(item.title);
  add(item.description.replace(notProse, " "));
  for (const { value } of item.features) add(value);
  for (const event of item.provenance.events) {
    add(event.event);
    add(event.from);
    add(event.to);
    add(event.holder);
    add(event.place);
    add(event.evidence);
    add(event.note);
  }
  for (const { where, text, note } of item.labels) {
    add(where);
    text.forEach(add);
    add(note);
  }
  for (const { name, note } of item.completeness.extras) {
    add(name);
    add(note);
  }
  for (const { lines } of item.parts) {
    for (const line of lines) {
      add(line.serial);
      add(line.model);
      add(line.packed);
      add(line.evidence);
      add(line.note);
      line.marks.forEach(add);
      line.repairs.forEach(add);
    }
  }
  for (const { caption } of item.photos) add(caption);
  return all;
}

/** The words of an entry, folded, as often as they are in it; letters that stand alone are left out. */
export function itemWords(item: PublishedItem): string[] {
  const words: string[] = [];
  for (const word of foldedWords(textOf(item))) {
    if (word.length > 1) words.push(word.length > longestWord ? word.slice(0, longestWord) : word);
  }
  return words;
}
