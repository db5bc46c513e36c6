import { comparedVariants } from "../../assessments/item-pair.ts";
import { type Dated, type YearsWatched, yearsWatched } from "../../assessments/rarity/appearance.ts";
import { type EdtfDate, parseEdtf } from "../../dates/edtf-interval.ts";
import { isError } from "../../diagnostics/diagnostic.ts";
import { addUnder, grouping } from "../../lists/grouping.ts";
import { joinedSets } from "../../lists/joined-sets.ts";
import { isAnotherThan, serialFinder } from "../../publication/masking.ts";
import type { CollectionTexts, RecordText } from "../../source/read-texts.ts";
import { type CutLog, cutLog, type LogCutter, shareOf } from "./cut-log.ts";
import { type MentionedSerial, publishingOf } from "./mentioned-serials.ts";
import {
  baseOf,
  familyIn,
  formerIds,
  mentioned,
  readableText,
  serialOf,
  variantOf,
} from "./written-record.ts";

/**
 * Families that are built together, from their own files and from what all share. Most families are a group by
 * themselves; those whose records refer to one another form one group. Plain data, so that a group can be given to
 * another thread.
 */
export interface FamilyGroup {
  readonly families: readonly string[];
  /** Of families, variants and items, and every log cut down to their sightings. */
  readonly texts: readonly RecordText[];
  /** Those of its variants of which every pair of items is compared. */
  readonly compared: ReadonlySet<string>;
}

/** What is of no family alone. Plain data, as a group is. */
export interface SharedContent {
  /** Settings, sources, scales, hazards: what every record may refer to. */
  readonly shared: readonly RecordText[];
  readonly articles: readonly RecordText[];
  /** The serials of items, of whatever family, that these tell. */
  readonly serialsInShared: readonly MentionedSerial[];
  readonly serialsInArticles: readonly MentionedSerial[];
  readonly itemCount: number;
}

export interface GroupedCollection extends SharedContent {
  readonly groups: readonly FamilyGroup[];
  /** The families that articles and settings take something from; null for all of them. */
  readonly quotedFamilies: ReadonlySet<string> | null;
  /** The serials of items that a text tells. */
  readonly serialsMentionedIn: (text: RecordText) => readonly string[];
  /** From the dates of all sightings, each once. */
  readonly watched: (watching: EdtfDate | undefined) => YearsWatched | null;
}

const sharedKinds = new Set(["collection", "sources", "scale", "hazards"]);

/**
 * Cuts a collection into groups of families. Null where it cannot be cut: a file cannot be read, an id is used twice,
 * or a record is of no known variant. Reading the collection as a whole then finds what is wrong.
 */
export function groupFamilies(texts: CollectionTexts, cut: LogCutter = cutLog): GroupedCollection | null {
  if (texts.diagnostics.some(isError)) return null;
  const ofKind = (...kinds: string[]) => texts.texts.filter(({ kind }) => kinds.includes(kind));

  const families = new Map(ofKind("family").map((text) => [text.id, text]));
  const variants = new Map(ofKind("variant").map((text) => [text.id, text]));
  const items = new Map(ofKind("item").map((text) => [text.id, text]));
  const isWhole =
    families.size === ofKind("family").length &&
    variants.size === ofKind("variant").length &&
    items.size === ofKind("item").length &&
    ofKind("collection").length === 1 &&
    [...variants.values()].every(({ file }) => families.has(familyIn(file)));
  if (!isWhole) return null;

  const familyOfVariant = new Map([...variants].map(([id, { file }]) => [id, familyIn(file)]));
  const familyOfItem = new Map<string, string>();
  const counts = new Map<string, number>();
  for (const item of items.values()) {
    const variant = variantOf(item);
    const family = variant === undefined ? undefined : familyOfVariant.get(variant);
    if (variant === undefined || family === undefined) return null;
    familyOfItem.set(item.id, family);
    counts.set(variant, (counts.get(variant) ?? 0) + 1);
  }
  const familyOf = (text: RecordText): string =>
    text.kind === "item" ? (familyOfItem.get(text.id) ?? "") : familyIn(text.file);
  const own = [...families.values(), ...variants.values(), ...items.values()];

  const named = (id: string): string | undefined =>
    familyOfVariant.get(id) ?? familyOfItem.get(id) ?? (families.has(id) ? id : undefined);
  const together: string[][] = [];
  for (const text of own) {
    const base = text.kind === "variant" ? baseOf(text) : undefined;
    const ids = mentioned(text);
    if (ids === null) together.push([...families.keys()]);
    else together.push([familyOf(text), ...[...ids, base ?? ""].flatMap((id) => named(id) ?? [])]);
  }

  // No two records have one address: those that claim the same are read together, where it is found out.
  for (const records of [items, variants, families]) {
    const holders = new Map([...records].map(([id, record]) => [id, familyOf(record)]));
    for (const record of records.values()) {
      for (const id of formerIds(record)) {
        const holder = holders.get(id);
        if (holder !== undefined) together.push([familyOf(record), holder]);
        else holders.set(id, familyOf(record));
      }
    }
  }

  const dated = new Map<string, Dated>();
  const see = (kind: string, text: string) => {
    const key = `${kind} ${text}`;
    const seen = dated.has(key) ? undefined : parseEdtf(text);
    if (seen) dated.set(key, { seen, kind });
  };
  const logs: (readonly [RecordText, CutLog])[] = [];
  for (const text of ofKind("sightings")) {
    const log = cut(text, familyOfVariant);
    if (!log) return null;
    for (const [kind, dates] of log.dates) for (const date of dates) see(kind, date);
    logs.push([text, log]);
  }

  // Whoever tells of an item of another family, by its serial, must know whether that is shown.
  const serials = [...items.values()].flatMap((item) => {
    const serial = serialOf(item);
    return serial === undefined ? [] : { serial, item, family: familyOf(item) };
  });
  const serialsIn = serialFinder(serials);
  for (const text of own) {
    const family = familyOf(text);
    const isOthers = isAnotherThan(text.kind === "item" ? serialOf(text) : undefined);
    for (const { known } of serialsIn(readableText(text), (each) => each.family !== family && isOthers(each)))
      together.push([family, known.family]);
  }
  for (const [family, text] of logs.flatMap(([, { words }]) => words)) {
    for (const { known } of serialsIn(text, (each) => each.family !== family))
      together.push([family, known.family]);
  }

  const toldBy = (some: readonly RecordText[]): MentionedSerial[] => {
    const told = new Set(some.flatMap((text) => serialsIn(readableText(text)).map(({ known }) => known)));
    return [...told].map(({ serial, item }) => ({ serial, publish: publishingOf(item) }));
  };

  const compared = comparedVariants(counts);
  const textsOf = new Map<string, RecordText[]>();
  for (const text of own) addUnder(textsOf, familyOf(text), text);
  const groups = [...grouping(families.keys(), joinedSets(together)).values()].map(
    (members): FamilyGroup => ({
      families: members,
      texts: [
        ...inOrder(
          members.flatMap((family) => textsOf.get(family) ?? []),
          texts,
        ),
        ...logs.map(([text, log]) => shareOf(text, log, members)),
      ],
      compared: new Set([...compared].filter((id) => members.includes(familyOfVariant.get(id) ?? ""))),
    }),
  );

  const articles = ofKind("article");
  const shared = texts.texts.filter(({ kind }) => sharedKinds.has(kind));
  const settings = ofKind("collection");
  const told = [...articles, ...settings].map(mentioned);
  return {
    groups,
    shared,
    articles,
    serialsInShared: toldBy(shared),
    serialsInArticles: toldBy(articles),
    quotedFamilies: told.includes(null)
      ? null
      : new Set(told.flatMap((ids) => (ids ?? []).flatMap((id) => named(id) ?? []))),
    itemCount: items.size,
    serialsMentionedIn: (text) => serialsIn(readableText(text)).map(({ known }) => known.serial),
    watched: watchedIn([...dated.values()]),
  };
}

/** Apart from the function above, all of whose logs a function within it would keep in memory. */
const watchedIn =
  (log: readonly Dated[]): GroupedCollection["watched"] =>
  (watching) =>
    yearsWatched(watching, log);

/** In the order in which they were found. */
function inOrder(some: readonly RecordText[], { texts }: CollectionTexts): RecordText[] {
  if (some.length < 2) return [...some];
  const chosen = new Set(some);
  return texts.filter((text) => chosen.has(text));
}
