import type { Contrast, PublishedItem, PublishedItemPart } from "../../publication/published.ts";
import { remarksInARow } from "../../words/ended.ts";
import type { Words } from "../../words/words.ts";
import { addresses } from "../addresses/addresses.ts";
import type { Link } from "../page.ts";
import { levelSentence, shareInterval, unitsInWords } from "../views/completeness-words.ts";
import { type PartState, partInWords, plain, remarksInWords } from "../views/item-parts.ts";

/** An outfit as it is set beside others, by the build or by a browser that has read its data file. */
export interface ComparedOutfit
  extends Pick<
    PublishedItem,
    "id" | "title" | "variant" | "serial" | "set" | "features" | "levels" | "assembled"
  > {
  readonly completeness: Pick<PublishedItem["completeness"], "weighted" | "counted" | "level">;
  readonly verdict: PublishedItem["identification"]["verdict"];
  readonly issued: string | null;
  readonly parts: readonly (PartState & Pick<PublishedItemPart, "id" | "name">)[];
}

export interface ComparedCell {
  readonly text: string;
  /** In how many units, where it was issued several. */
  readonly units: string | null;
  /** Its marks and remarks; empty where there are none. */
  readonly notes: string;
  /** For the eye; the text says the same. */
  readonly state: PublishedItemPart["summary"] | null;
}

export interface ComparedRow {
  readonly name: string;
  readonly cells: readonly ComparedCell[];
}

export interface ComparedRows {
  readonly features: readonly ComparedRow[];
  readonly parts: readonly ComparedRow[];
  readonly count: number;
}

export interface CompareTable {
  readonly outfits: readonly Link[];
  readonly brief: readonly { readonly name: string; readonly cells: readonly string[] }[];
  readonly differs: ComparedRows;
  readonly unknown: ComparedRows;
  readonly alike: ComparedRows;
}

export type ContrastOf = (kind: "feature" | "part", id: string) => Contrast;

const cell = (text: string, more: Partial<ComparedCell> = {}): ComparedCell => ({
  text,
  units: null,
  notes: "",
  state: null,
  ...more,
});

/** Ids of all the lists, in the order of the first that has them, with the name there. */
function named(
  lists: readonly (readonly { readonly id: string; readonly name: string }[])[],
): Map<string, string> {
  const names = new Map<string, string>();
  for (const { id, name } of lists.flat()) if (!names.has(id)) names.set(id, name);
  return names;
}

function partCell(part: ComparedOutfit["parts"][number] | undefined, words: Words): ComparedCell {
  if (!part) return cell(words.pages.compare.notOfVariant);
  const { state, units, marks } = partInWords(part, words);
  const isSeveral = part.units.expected > 1 || part.units.surplus > 0;
  const notes = remarksInARow([...marks, ...remarksInWords(part, words)]);
  return cell(state, { units: isSeveral ? units : null, notes, state: part.summary });
}

/** What each is, before its parts. */
function briefRows(outfits: readonly ComparedOutfit[], words: Words): CompareTable["brief"] {
  const { compare: say, item, list, verdicts } = words.pages;
  const rows: readonly (readonly [string, (outfit: ComparedOutfit) => string | null])[] = [
    [say.variant, ({ variant }) => variant.name],
    [say.verdict, ({ verdict }) => verdicts[verdict].short],
    [
      say.complete,
      ({ completeness }) => completeness.weighted && shareInterval(completeness.weighted, words),
    ],
    [say.counted, ({ completeness }) => completeness.counted && unitsInWords(completeness.counted, words)],
    [say.level, (outfit) => levelSentence(outfit, words)],
    [
      item.lists.assembled,
      ({ assembled, parts }) =>
        assembled.length === 0
          ? null
          : list(assembled.flatMap((id) => parts.find((part) => part.id === id)?.name ?? [])),
    ],
    [say.set, ({ set }) => set],
    [say.serial, ({ serial }) => serial],
    [say.issued, ({ issued }) => issued && words.date(issued)],
  ];
  return rows
    .map(([name, read]) => ({ name, found: outfits.map(read) }))
    .filter(({ found }) => found.some((text) => text !== null))
    .map(({ name, found }) => ({ name, cells: found.map((text) => text ?? "—") }));
}

/** Outfits side by side: what each is, then what differs, what is not known of all, what is alike. */
export function compareTable(
  outfits: readonly ComparedOutfit[],
  contrastOf: ContrastOf,
  words: Words,
): CompareTable {
  const say = words.pages.compare;
  const features = [...named(outfits.map((outfit) => outfit.features))].map(([id, name]) => ({
    contrast: contrastOf("feature", id),
    row: {
      name,
      cells: outfits.map((outfit) => {
        const feature = outfit.features.find((each) => each.id === id);
        if (!feature) return cell("—");
        return cell(feature.value === null ? say.notObserved : plain(feature.value));
      }),
    },
  }));
  const parts = [...named(outfits.map((outfit) => outfit.parts))].map(([id, name]) => ({
    contrast: contrastOf("part", id),
    row: {
      name,
      cells: outfits.map((outfit) =>
        partCell(
          outfit.parts.find((part) => part.id === id),
          words,
        ),
      ),
    },
  }));
  const rowsOf = (wanted: Contrast): ComparedRows => {
    const [ofFeatures, ofParts] = [features, parts].map((rows) =>
      rows.filter(({ contrast }) => contrast === wanted).map(({ row }) => row),
    );
    return {
      features: ofFeatures ?? [],
      parts: ofParts ?? [],
      count: (ofFeatures?.length ?? 0) + (ofParts?.length ?? 0),
    };
  };
  return {
    outfits: outfits.map(({ id, title }) => ({ address: addresses.item(id), name: title })),
    brief: briefRows(outfits, words),
    differs: rowsOf("differs"),
    unknown: rowsOf("unknown"),
    alike: rowsOf("alike"),
  };
}
