import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import type { PublishedCollection } from "../../publication/published.ts";
import type { SiteFrame } from "../files/site-frame.ts";
import { cacheFolder } from "../folders/cache-folder.ts";
import type { SiteFolder } from "../folders/out-folder.ts";
import { attachmentsOf } from "../groups/attachments.ts";
import type { FamilyGroup, GroupedCollection } from "../groups/family-groups.ts";
import { aroundKey, groupKey } from "../incremental/site-keys.ts";
import type { GroupRecord, StandingSite } from "../incremental/standing-site.ts";
import { collectGarbage } from "./collect-garbage.ts";
import { fromWritten, GroupMaker, type MadeGroup } from "./group-maker.ts";
import { areWorthThreads, GroupThreads, itemsIn } from "./group-threads.ts";
import type { BuildTask } from "./site-maker.ts";

interface Order {
  readonly group: FamilyGroup;
  readonly key: string;
  /** What is known of it where it stands as it should. */
  readonly known: GroupRecord | null;
  /** Whether the texts of the whole take something from it. */
  readonly isQuoted: boolean;
}

export interface MadeGroups {
  /** In the order of the groups; null where one of them cannot be shown. */
  readonly made: readonly Extract<MadeGroup, { isSound: true }>[] | null;
  readonly quoted: readonly PublishedCollection[];
  /** Photographs and recordings that cannot be shown. */
  readonly refused: readonly Diagnostic[];
}

const asItStands = (known: GroupRecord): MadeGroup => ({ isSound: true, kept: () => known, writing: null });

/**
 * Makes every group of a collection that does not stand as it should. A group from which the texts of the whole take
 * something is made here; the others, where there are many, on threads, unless one is too large for a thread.
 */
export async function makeGroups(
  { root, audience, tool, texts, onProgress }: BuildTask,
  grouped: GroupedCollection,
  frame: SiteFrame,
  standing: StandingSite,
  into: SiteFolder,
): Promise<MadeGroups> {
  const { shared, articles, serialsInShared, serialsInArticles, itemCount } = grouped;
  const watched = grouped.watched(frame.collection.settings.watching);
  const beside = attachmentsOf(texts);
  const key = aroundKey(tool, { texts, grouped, watched, frame });
  const orders = grouped.groups.map((group): Order => {
    const isQuoted = group.families.some((family) => grouped.quotedFamilies?.has(family) ?? true);
    const own = groupKey(key, root, group, beside);
    return { group, key: own, known: standing.group(group.families, own), isQuoted };
  });

  const ofWhole = new Set([...shared, ...articles].map(({ file }) => file));
  const found = { ...texts, texts: [], files: texts.files.filter(({ file }) => ofWhole.has(file)) };
  const around = { shared, articles, serialsInShared, serialsInArticles, itemCount, found, watched, key };
  const maker = new GroupMaker(around, frame, standing, into);
  const apart = orders.filter(({ known, isQuoted }) => !known && !isQuoted).map(({ group }) => group);
  const cache = cacheFolder(root);
  const task = { root, cache, audience, around, out: standing.out, standing: standing.record?.folder, into };
  const isApart = areWorthThreads(apart);
  if (isApart) collectGarbage();
  const threads = isApart ? new GroupThreads(task, apart) : null;

  const photographs = new Map<FamilyGroup, readonly [done: number, of: number]>();
  const sum = (at: 0 | 1) => [...photographs.values()].reduce((total, counts) => total + counts[at], 0);
  const photographsOf = (group: FamilyGroup) => (done: number, of: number) => {
    photographs.set(group, [done, of]);
    onProgress?.("photographs", sum(0), sum(1));
  };
  const quoted: PublishedCollection[] = [];
  const makeHere = async ({ group, key, known, isQuoted }: Order): Promise<MadeGroup> => {
    if (known && !isQuoted) return asItStands(known);
    const site = await maker.site(group, photographsOf(group));
    if (!site.isSound) return site;
    if (isQuoted) quoted.push(site.published);
    return known ? asItStands(known) : fromWritten(maker.write(group, key, site));
  };

  const made: MadeGroup[] = [];
  let done = 0;
  const take = (at: number, result: MadeGroup, group: FamilyGroup): void => {
    made[at] = result;
    done += itemsIn(group);
    onProgress?.("items", done, itemCount);
  };
  const later = new Map<number, Order>();
  const onThreads: Promise<void>[] = [];
  for (const [at, order] of orders.entries()) {
    const { group, key, known, isQuoted } = order;
    if (!threads || known || isQuoted) later.set(at, order);
    else
      onThreads.push(
        threads
          .make(group, key, photographsOf(group))
          .then(async (result) => take(at, result ?? (await makeHere(order)), group)),
      );
  }
  const inTurn = async (): Promise<void> => {
    for (const [at, order] of later) take(at, await makeHere(order), order.group);
  };
  try {
    await Promise.all([...onThreads, inTurn()]);
  } finally {
    await threads?.end();
  }
  const sound = made.flatMap((result) => (result.isSound ? [result] : []));
  const refused = made.flatMap((result) => (result.isSound ? [] : result.refused));
  return { made: sound.length === made.length ? sound : null, quoted, refused };
}
