import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import type { ListedFamily } from "../../pages/listed/listed-family.ts";
import type { Audience, PublishedCollection } from "../../publication/published.ts";
import type { RecordText } from "../../source/read-texts.ts";
import { groupSite } from "../files/group-site.ts";
import { standingFolder } from "../folders/build-folders.ts";
import { cacheFolder } from "../folders/cache-folder.ts";
import type { FamilyGroup } from "../groups/family-groups.ts";
import { siteKey, toolKey } from "../incremental/site-keys.ts";
import { StandingSite } from "../incremental/standing-site.ts";
import { groupProblems } from "./group-problems.ts";
import { itemSlice } from "./item-slice.ts";
import { type LiveAnswer, LiveFiles } from "./live-files.ts";
import { type LiveGroup, madeGroup, standingGroup } from "./live-group.ts";
import { groupId, type LiveSource, readSource, rereadSource } from "./live-source.ts";
import { LiveWhole } from "./live-whole.ts";
import { listedWith, type MadeAhead } from "./made-ahead.ts";

/** With more to be made again than this, a build that writes it out is as fast and takes less memory. */
const mostItems = 1000;

/**
 * What became of a change: nothing to be done, something to be made, a mistake, more than is held in memory; or nothing
 * yet, since every file would have to be read for it.
 */
export type Taken = "same" | "stale" | "unsound" | "whole" | "unread";

/**
 * The site of a preview: the site as it was last built into a folder and, over it in memory, whatever has changed
 * since. A change is taken in, and then made piece by piece, what is looked at first: the pages of what was edited,
 * the groups of families that depend on it, lists and search. All of it is made by the functions that build a site,
 * from the same input. What cannot be made leaves the last good page as it is.
 */
export class LiveSite {
  readonly #root: string;
  readonly #audience: Audience;
  readonly #out: string;
  readonly #tool: string;
  /** Null where what the files say cannot be shown. */
  #source: LiveSource | null;
  readonly #groups: Map<string, LiveGroup>;
  /** Of single items, until their group is made. */
  readonly #ahead = new Map<string, MadeAhead>();
  #edited: readonly RecordText[] = [];
  /** By their keys, the groups that turned out to have errors, with those that are known. */
  #refused = new Map<string, readonly Diagnostic[]>();
  readonly #whole: LiveWhole;
  /** Every address on disk, and those of them at which nothing is any longer. */
  #onDisk: ReadonlySet<string>;
  #gone: ReadonlySet<string> | null = null;

  private constructor(
    root: string,
    audience: Audience,
    out: string,
    tool: string,
    source: LiveSource,
    groups: ReadonlyMap<string, LiveGroup>,
    onDisk: readonly string[],
  ) {
    this.#root = root;
    this.#audience = audience;
    this.#out = out;
    this.#tool = tool;
    this.#source = source;
    this.#groups = new Map(groups);
    this.#onDisk = new Set(onDisk);
    const ofGroups = new Set(
      [...groups.values()].flatMap(({ addresses, copies }) => [...addresses, ...copies]),
    );
    this.#whole = new LiveWhole(
      onDisk.filter((address) => !ofGroups.has(address)),
      source.frame.published,
      this.#listed(source),
    );
  }

  /** On top of the site that was just built; null where its content has errors, or is no longer what it was built from. */
  static async over(root: string, out: string, audience: Audience): Promise<LiveSite | null> {
    const tool = toolKey(root, audience);
    const source = await readSource(root, audience, tool);
    const standing = standingSite(root, out);
    if (!source || standing.record?.key !== siteKey(tool, root, source.texts)) return null;
    const groups = new Map<string, LiveGroup>();
    for (const group of source.grouped.groups) {
      const kept = standing.group(group.families, source.keys.get(group) ?? "");
      if (!kept) return null;
      groups.set(groupId(group), standingGroup(kept));
    }
    return new LiveSite(root, audience, out, tool, source, groups, standing.record.addresses);
  }

  /** What an address answers with: null for nothing, undefined for what stands on disk. */
  answer(address: string): LiveAnswer | null | undefined {
    for (const { files } of this.#ahead.values()) {
      const found = files.answer(address);
      if (found) return found;
    }
    for (const { files } of this.#groups.values()) {
      const found = files?.answer(address);
      if (found) return found;
    }
    return this.#whole.answer(address) ?? (this.#goneAddresses().has(address) ? null : undefined);
  }

  /** Whether all that was taken in could be made, and was. */
  get isSettled(): boolean {
    return this.isSound && this.#stale().length === 0 && this.#whole.isSettled;
  }

  /** Whether anything is held in memory that is not on disk. */
  get isAhead(): boolean {
    return this.#whole.isAhead || [...this.#groups.values()].some(({ files }) => files !== null);
  }

  get isSound(): boolean {
    return this.#source !== null && this.#refused.size === 0 && !this.#whole.isRefused;
  }

  /** What is known to be wrong; there may be more, which a build of the whole reports. */
  get problems(): readonly Diagnostic[] {
    return [...this.#refused.values()].flat();
  }

  get filesRead(): number {
    return this.#source?.texts.files.length ?? 0;
  }

  /** Whether a path is that of a record that was read. */
  isKnown(file: string): boolean {
    return this.#source?.texts.files.some((known) => known.file === file) ?? false;
  }

  /**
   * Takes in that some files, given by their paths from the root, were written, added or removed. While they may
   * still be being written, it is better not to read the whole collection: a half-written file looks like a new
   * beginning.
   */
  async take(files: ReadonlySet<string>, mayReadAll = true): Promise<Taken> {
    if ([...files].some((file) => file.startsWith("templates/"))) return "whole";
    const before = this.#source;
    const read = before
      ? await rereadSource(this.#root, this.#audience, this.#tool, before, files, mayReadAll)
      : await readSource(this.#root, this.#audience, this.#tool).then(
          (source) => source && { source, items: [] },
        );
    if (read === undefined) return "unread";
    this.#source = read?.source ?? null;
    if (!read) return "unsound";
    if (read.source === before) return "same";
    this.#edited = read.items;
    this.#refused.clear();
    this.#whole.outdate();
    const stale = this.#stale();
    // A group that is as it was again, or is there no longer, will not be made and take its place.
    const willBeMade = new Set(stale.map(groupId));
    for (const [id, ahead] of this.#ahead) {
      if (!willBeMade.has(id)) this.#ahead.delete(id);
      else if (read.items.length === 0) ahead.listed = null;
    }
    const items = stale.flatMap(({ texts }) => texts.filter(({ kind }) => kind === "item"));
    return items.length > mostItems ? "whole" : "stale";
  }

  /** The pages of the items that were edited, without those that depend on them. */
  async makeEdited(): Promise<boolean> {
    const source = this.#source;
    const edited = this.#edited;
    this.#edited = [];
    if (!source || edited.length > 2) return false;
    let made = false;
    for (const item of edited) {
      const group = source.grouped.groups.find(({ texts }) => texts.includes(item));
      const slice = group && itemSlice(group, item);
      if (!slice) continue;
      const site = await groupSite(slice, source, { only: item.id });
      if (!site.isSound) continue;
      const id = groupId(group);
      const { files, listed } = this.#ahead.get(id) ?? {
        files: new LiveFiles(),
        listed: this.#groups.get(id)?.listed ?? null,
      };
      for (const file of site.filesOfItem(item.id)) files.add(file, source.frame.site);
      this.#ahead.set(id, { files, listed: listed && listedWith(listed, item.id, site.listed) });
      made = true;
    }
    return made;
  }

  /** Goes through what an edit of an item will ask for, so that it has been done before, and most of it is at hand. */
  async prepare(address: string): Promise<void> {
    const source = this.#source;
    const id = /^\/items\/([^/]+)\/$/.exec(address)?.[1];
    if (!source || id === undefined) return;
    for (const group of source.grouped.groups) {
      const item = group.texts.find((text) => text.kind === "item" && text.id === id);
      const slice = item && itemSlice(group, item);
      const site = slice && (await groupSite(slice, source, { only: id }));
      if (!site?.isSound) continue;
      const files = new LiveFiles();
      for (const file of site.filesOfItem(id)) files.add(file, source.frame.site);
      files.answer(address);
    }
  }

  /** Makes one more piece of what is stale, first what somebody looks at; false where nothing is left to be made. */
  async makeNext(lookedAt: ReadonlySet<string>): Promise<boolean> {
    const source = this.#source;
    if (!source) return false;
    const group = this.#nextGroup(lookedAt, source);
    if (group) {
      await this.#makeGroup(group, source);
      return true;
    }
    if (this.#refused.size > 0) return false;
    if (this.#whole.isStale) await this.#makeWhole(source);
    else if (!this.#whole.makeOthers()) return false;
    this.#gone = null;
    return true;
  }

  /** The group to be made next; undefined where none is to be, or lists and search can come before it. */
  #nextGroup(lookedAt: ReadonlySet<string>, source: LiveSource): FamilyGroup | undefined {
    const stale = this.#stale();
    const lookedAtGroup = stale.find((group) => {
      const ahead = this.#ahead.get(groupId(group));
      const isAwaited = (address: string) => lookedAt.has(address) && !ahead?.files.has(address);
      return this.#groups.get(groupId(group))?.addresses.some(isAwaited);
    });
    if (lookedAtGroup) return lookedAtGroup;
    const isListedAhead = (group: FamilyGroup) =>
      this.#ahead.get(groupId(group))?.listed && !isQuotedByWhole(group, source);
    const isWholeNext = this.#whole.isStale && this.#refused.size === 0 && stale.every(isListedAhead);
    return isWholeNext ? undefined : stale[0];
  }

  /**
   * Releases what is held in memory, since the site on disk has been built again. False where that was made from
   * something other than what was taken in here.
   */
  rest(): boolean {
    const source = this.#source;
    const { record } = standingSite(this.#root, this.#out);
    if (!source || !record || !this.isSettled) return false;
    if (record.key !== siteKey(this.#tool, this.#root, source.texts)) return false;
    for (const [id, group] of this.#groups) this.#groups.set(id, { ...group, files: null });
    this.#whole.rest();
    this.#onDisk = new Set(record.addresses);
    this.#gone = null;
    return true;
  }

  /** The groups that have changed since they were made, without those that are known to have errors. */
  #stale(): FamilyGroup[] {
    const source = this.#source;
    if (!source) return [];
    return source.grouped.groups.filter((group) => {
      const key = source.keys.get(group) ?? "";
      return this.#groups.get(groupId(group))?.key !== key && !this.#refused.has(key);
    });
  }

  async #makeGroup(group: FamilyGroup, source: LiveSource): Promise<void> {
    const id = groupId(group);
    const key = source.keys.get(group) ?? "";
    const site = await groupSite(group, source);
    const ahead = this.#ahead.get(id);
    const before = this.#groups.get(id);
    this.#ahead.delete(id);
    if (!site.isSound) {
      this.#refused.set(key, [...groupProblems(group, source), ...site.refused]);
      // Lists that were made ahead of it go back to what it was.
      if (ahead?.listed && !this.#whole.isStale) await this.#makeWhole(source);
      return;
    }
    const made = madeGroup(key, site, source.frame);
    const isAsListed =
      ahead?.listed &&
      JSON.stringify([ahead.listed, before?.addresses]) === JSON.stringify([made.listed, made.addresses]);
    if (!isAsListed) this.#whole.outdate();
    this.#groups.set(id, made);
    this.#gone = null;
  }

  async #makeWhole(source: LiveSource): Promise<void> {
    const { grouped, frame, keys } = source;
    const wanted = new Set(grouped.groups.map(groupId));
    for (const id of this.#groups.keys()) if (!wanted.has(id)) this.#groups.delete(id);
    const groups: LiveGroup[] = [];
    const quoted: PublishedCollection[] = [];
    for (const group of grouped.groups) {
      const isQuoted = isQuotedByWhole(group, source);
      const known = this.#groups.get(groupId(group));
      if (isQuoted && !known?.published) {
        const site = await groupSite(group, source);
        if (site.isSound)
          this.#groups.set(groupId(group), madeGroup(keys.get(group) ?? "", site, source.frame));
      }
      const live = this.#groups.get(groupId(group));
      if (!live) continue;
      groups.push(live);
      if (isQuoted && live.published) quoted.push(live.published);
    }
    const addresses = groups.flatMap((group) => group.addresses);
    this.#whole.make(frame, this.#listed(source), quoted, addresses);
  }

  /** Every family, in order. */
  #listed({ grouped }: LiveSource): ListedFamily[] {
    return grouped.groups
      .flatMap((group) => {
        const id = groupId(group);
        return this.#ahead.get(id)?.listed ?? this.#groups.get(id)?.listed ?? [];
      })
      .sort((a, b) => (a.id < b.id ? -1 : 1));
  }

  #goneAddresses(): ReadonlySet<string> {
    if (this.#gone) return this.#gone;
    const gone = new Set(this.#onDisk);
    for (const { addresses: of, copies } of this.#groups.values())
      for (const address of [...of, ...copies]) gone.delete(address);
    for (const address of this.#whole.addresses) gone.delete(address);
    this.#gone = gone;
    return gone;
  }
}

/** Whether the texts of the whole take something from a group. */
const isQuotedByWhole = ({ families }: FamilyGroup, { grouped }: LiveSource): boolean =>
  families.some((family) => grouped.quotedFamilies?.has(family) ?? true);

const standingSite = (root: string, out: string): StandingSite =>
  new StandingSite(cacheFolder(root), out, standingFolder(out));
