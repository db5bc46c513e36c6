import type { Audience } from "../../publication/published.ts";
import { type CollectionTexts, type RecordText, readTexts } from "../../source/read-texts.ts";
import type { AroundGroup } from "../files/group-site.ts";
import { siteFrame } from "../files/site-frame.ts";
import { type Attachments, attachmentsOf } from "../groups/attachments.ts";
import { type FamilyGroup, type GroupedCollection, groupFamilies } from "../groups/family-groups.ts";
import { aroundKey, groupKey } from "../incremental/site-keys.ts";
import { changedTexts } from "./changed-texts.ts";
import { regrouped } from "./regrouped.ts";

/** What the files of a collection say, cut into groups, each with the key of all that it is made from. */
export interface LiveSource extends AroundGroup {
  readonly grouped: GroupedCollection;
  /** The key of all that a group is given besides its own files. */
  readonly around: string;
  readonly keys: ReadonlyMap<FamilyGroup, string>;
}

export interface ReadSource {
  readonly source: LiveSource;
  /** The items that were written again, where nothing else was; in any other case none. */
  readonly items: readonly RecordText[];
}

export const groupId = ({ families }: Pick<FamilyGroup, "families">): string => families.join(" ");

/** What the files say, each read anew. Null where it cannot be cut into groups, or nothing can be shown of it. */
export async function readSource(root: string, audience: Audience, tool: string): Promise<LiveSource | null> {
  const texts = readTexts(root);
  const grouped = groupFamilies(texts);
  return grouped && framed(root, audience, tool, texts, grouped);
}

/**
 * The same after some files were written again, reading as few of them as will do. Undefined where all would have to
 * be read and that is not wanted yet.
 */
export async function rereadSource(
  root: string,
  audience: Audience,
  tool: string,
  before: LiveSource,
  files: ReadonlySet<string>,
  mayReadAll: boolean,
): Promise<ReadSource | null | undefined> {
  const known = changedTexts(root, before.texts, files);
  if (known?.changed.length === 0) return { source: before, items: [] };
  const grouped = known && regrouped(before.grouped, known.changed);
  if (!grouped) {
    if (!mayReadAll) return undefined;
    const source = await readSource(root, audience, tool);
    return source && { source, items: [] };
  }
  const { texts, changed } = known;
  const isAround = grouped.shared !== before.grouped.shared || grouped.articles !== before.grouped.articles;
  if (isAround) {
    const source = await framed(root, audience, tool, texts, grouped);
    return source && { source, items: [] };
  }
  const keys = keysOf(root, grouped, before.around, texts, before);
  const items = changed.map(({ after }) => after);
  return {
    source: { ...before, texts, grouped, keys },
    items: items.every(({ kind }) => kind === "item") ? items : [],
  };
}

async function framed(
  root: string,
  audience: Audience,
  tool: string,
  texts: CollectionTexts,
  grouped: GroupedCollection,
): Promise<LiveSource | null> {
  const frame = await siteFrame(root, audience, texts, grouped);
  if (!frame || frame.refused.length > 0) return null;
  const watched = grouped.watched(frame.collection.settings.watching);
  const given = { texts, grouped, watched, frame };
  const around = aroundKey(tool, given);
  return { ...given, around, keys: keysOf(root, grouped, around, texts) };
}

/** A group that is as it was `before`, when all else was the same, has the key that it had. */
function keysOf(
  root: string,
  grouped: GroupedCollection,
  around: string,
  texts: CollectionTexts,
  before?: LiveSource,
): Map<FamilyGroup, string> {
  let beside: Attachments | undefined;
  const keyOf = (group: FamilyGroup): string => {
    beside ??= attachmentsOf(texts);
    return groupKey(around, root, group, beside);
  };
  return new Map(grouped.groups.map((group) => [group, before?.keys.get(group) ?? keyOf(group)]));
}
