import { lineStarts } from "../../diagnostics/place.ts";
import { frontMatterIn } from "../../source/front-matter.ts";
import type { Edit } from "./mechanical-edit.ts";

export interface Edited {
  readonly text: string;
  readonly done: readonly Edit[];
}

/** A reference in a text, or a line of what it takes for granted. */
const reference = /^(?:<.*>|(?:items|variants)\/.*)$/s;

/** The stretch with the name replaced: bare, in quotation marks, one of several between semicolons, or in a reference. */
function replaced(stretch: string, { from, text }: Edit): string | undefined {
  const bare = stretch.trim();
  const inside = (whole: string) => stretch.replace(bare, () => whole);
  if (bare === from) return inside(text);
  for (const mark of ['"', "'"]) if (bare === `${mark}${from}${mark}`) return inside(`${mark}${text}${mark}`);
  // What parts them is kept among them.
  const names = bare.split(reference.test(bare) ? /([<>/?=&,:\s])/ : /(;)/);
  if (names.filter((name) => name.trim() === from).length !== 1) return undefined;
  return inside(names.map((name) => (name.trim() === from ? name.replace(from, () => text) : name)).join(""));
}

/** A text with some edits made, all else as it is, byte for byte. What does not stand where it should is left. */
export function editedText(text: string, edits: readonly Edit[]): Edited {
  const starts = lineStarts(text);
  const placed = edits
    .map((edit) => {
      const start = (starts[edit.place.line - 1] ?? text.length) + edit.place.column - 1;
      return { edit, start, end: start + edit.place.endColumn - edit.place.column };
    })
    .sort((a, b) => b.start - a.start);
  const done: Edit[] = [];
  let result = text;
  let upTo = text.length + 1;
  for (const { edit, start, end } of placed) {
    const stretch = end <= upTo ? replaced(result.slice(start, end), edit) : undefined;
    if (stretch === undefined) continue;
    result = result.slice(0, start) + stretch + result.slice(end);
    upTo = start;
    done.unshift(edit);
  }
  return { text: result, done };
}

/** Tabs at the beginning of lines as two spaces each, in the YAML of a file; YAML takes none for indentation. */
export function withoutTabs(text: string, isMarkdown: boolean): string {
  const end = (isMarkdown ? frontMatterIn(text)?.end : undefined) ?? text.length;
  const spaced = text.slice(0, end).replace(/^[ \t]*\t[ \t]*/gm, (lead) => lead.replaceAll("\t", "  "));
  return spaced + text.slice(end);
}
