import { serialFinder } from "../../publication/masking.ts";
import { frontMatterOf } from "../../source/front-matter.ts";
import { recordsIn } from "../../source/read-records.ts";
import { type RecordText, recordText } from "../../source/read-texts.ts";
import { topWord } from "../../source/top-word.ts";
import type { FamilyGroup } from "../groups/family-groups.ts";
import { mentioned, serialOf, variantOf } from "../groups/written-record.ts";

type Row = { readonly variant?: unknown } | null;

/** What is told of a text again and again, kept for as long as the text is. */
function kept<Told>(tell: (text: RecordText) => Told): (text: RecordText) => Told {
  const known = new WeakMap<RecordText, { readonly told: Told }>();
  return (text) => {
    const found = known.get(text) ?? { told: tell(text) };
    known.set(text, found);
    return found.told;
  };
}

const isSelfContained = kept((text) => mentioned(text)?.length === 0);
const variantNamed = kept(variantOf);
const serialNamed = kept(serialOf);
const setNamed = kept(({ text }) => topWord(frontMatterOf(text), "set"));

/** A log with the sightings of one variant only. */
const logsByVariant = kept((text) => {
  const { tables, records } = recordsIn({ texts: [text], files: [], beside: new Set(), diagnostics: [] });
  const known = new Map<string, RecordText>();
  const cut = (variant: string): string => {
    const [table] = tables;
    if (table) {
      const rows = table.table.rows.filter((row) => row.cell("variant") === variant);
      return [table.table.header, ...rows.map(({ line }) => line)].join("\n");
    }
    const rows = Object.entries((records[0]?.document.data ?? {}) as Record<string, Row>);
    return JSON.stringify(Object.fromEntries(rows.filter(([, row]) => row?.variant === variant)));
  };
  return (variant: string): RecordText => {
    const found = known.get(variant) ?? recordText(text, cut(variant));
    known.set(variant, found);
    return found;
  };
});

/**
 * A group cut down to what the page of one of its items is made from: its variant with all examples, the references
 * of the other variants, the outfits whose set the marks of its parts may name, and those whose serial its text or
 * theirs may name. Null where the page may depend on more: some text takes something from the data of others.
 */
export function itemSlice(group: FamilyGroup, item: RecordText): FamilyGroup | null {
  const variant = variantNamed(item);
  // A mark may be written as an escape, and then is not to be found.
  if (variant === undefined || item.text.includes("\\")) return null;
  const mayBeMarked = (text: RecordText): boolean => {
    const set = setNamed(text);
    // One that is not plain to see may be any.
    return set !== undefined && (set === null || item.text.includes(set));
  };
  const serials = group.texts.flatMap((text) => {
    const serial = text.kind === "item" && variantNamed(text) !== variant ? serialNamed(text) : undefined;
    return serial === undefined ? [] : { serial, text };
  });
  const findIn = serialFinder(serials);
  // The names and notes of the references are printed on its page as well.
  const printed = [item, ...group.texts.filter(({ kind }) => kind === "family" || kind === "variant")];
  const told = new Set(printed.flatMap(({ text }) => findIn(text).map(({ known }) => known.text)));
  const texts = group.texts.flatMap((text) => {
    if (text.kind === "sightings") return logsByVariant(text)(variant);
    return text.kind !== "item" || variantNamed(text) === variant || mayBeMarked(text) || told.has(text)
      ? text
      : [];
  });
  return texts.every(isSelfContained) ? { ...group, texts } : null;
}
