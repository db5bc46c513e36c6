import type { YearsWatched } from "../../assessments/rarity/appearance.ts";
import type { DiagnosticCode } from "../../diagnostics/catalogue.ts";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import type { CollectionTexts } from "../../source/read-texts.ts";
import { type GroupSite, groupSite, type SoundGroup } from "../files/group-site.ts";
import type { SiteFrame } from "../files/site-frame.ts";
import type { SiteFolder } from "../folders/out-folder.ts";
import { type Attachments, attachmentsOf } from "../groups/attachments.ts";
import type { FamilyGroup, SharedContent } from "../groups/family-groups.ts";
import { attachmentStamps } from "../incremental/site-keys.ts";
import { SiteWriter, type Writing } from "../incremental/site-writer.ts";
import type { GroupRecord, StandingSite, VariantRecord } from "../incremental/standing-site.ts";
import { variantKeys } from "../incremental/variant-keys.ts";
import type { OnPhotographs } from "../progress.ts";

/** What a group is given of the collection, besides its own texts. Plain data, as a group is. */
export interface GroupContext extends SharedContent {
  /** What lies beside the records, and what could not be read; the texts themselves come with the groups. */
  readonly found: CollectionTexts;
  readonly watched: YearsWatched | null;
  /** Of all of this. */
  readonly key: string;
}

/** What came of a group. */
export type MadeGroup =
  | {
      readonly isSound: true;
      /** Read when all groups are made: until then it takes a third of the room as bytes. */
      readonly kept: () => GroupRecord;
      /** Null where it was not made again. */
      readonly writing: Writing | null;
    }
  /** Its records have errors, or what cannot be shown. */
  | { readonly isSound: false; readonly refused: readonly Diagnostic[] };

/** A group whose files were written. Plain data, which a thread hands over. */
export interface WrittenGroup {
  /** What is kept of it, as JSON in UTF-8. */
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly writing: Writing;
}

export const fromWritten = ({ bytes, writing }: WrittenGroup): MadeGroup => ({
  isSound: true,
  kept: () => JSON.parse(new TextDecoder().decode(bytes)) as GroupRecord,
  writing,
});

/** Takes groups from their texts to their files, one after the other. */
export class GroupMaker {
  readonly #around: GroupContext;
  readonly #frame: SiteFrame;
  readonly #standing: StandingSite;
  readonly #into: SiteFolder;
  readonly #beside: Attachments;

  constructor(around: GroupContext, frame: SiteFrame, standing: StandingSite, into: SiteFolder) {
    this.#around = around;
    this.#frame = frame;
    this.#standing = standing;
    this.#into = into;
    this.#beside = attachmentsOf(around.found);
  }

  site(group: FamilyGroup, onPhotographs?: OnPhotographs): Promise<GroupSite> {
    const { found, watched } = this.#around;
    const around = { texts: found, grouped: this.#around, watched, frame: this.#frame };
    return groupSite(group, around, { onPhotographs });
  }

  write(group: FamilyGroup, key: string, site: SoundGroup): WrittenGroup {
    const writer = new SiteWriter(this.#into, this.#standing);
    const addresses: string[] = [];
    const copies = new Set<string>();
    for (const file of site.filesOfNoItem()) {
      writer.write(file, this.#frame.site);
      if (file.kind === "copy") copies.add(file.address);
      else addresses.push(file.address);
    }
    const variants = this.#writeItems(group, site, writer);
    const kept: GroupRecord = {
      key,
      listed: site.listed,
      warnings: warningsOf(site, group),
      names: site.names,
      addresses: [...addresses, ...variants.flatMap(({ addresses: of }) => of)],
      copies: [...copies],
      variants,
    };
    const bytes = new TextEncoder().encode(JSON.stringify(kept));
    this.#standing.keepGroup(group.families, bytes);
    return { bytes, writing: writer.writing };
  }

  /** The files of items, without those of variants that are as they were. */
  #writeItems(group: FamilyGroup, site: SoundGroup, writer: SiteWriter): VariantRecord[] {
    const { root } = this.#frame;
    const keys = variantKeys(group, site, this.#around.key, (items) =>
      attachmentStamps(root, items, this.#beside),
    );
    const last = this.#standing.lastGroup(group.families)?.variants ?? [];
    return site.published.variants.map(({ id }) => {
      const key = keys.get(id) ?? null;
      const known = last.find((variant) => key !== null && variant.key === key);
      if (known) {
        for (const address of known.addresses) writer.keep(address);
        return known;
      }
      const addresses: string[] = [];
      for (const file of site.filesOfVariant(id)) {
        writer.write(file, this.#frame.site);
        addresses.push(file.address);
      }
      return { key, addresses };
    });
  }
}

/** What a group has a share in, and all of them together are told of. */
const ofWhole: ReadonlySet<DiagnosticCode> = new Set(["offers-after-watching"]);

/**
 * A name for each warning, by which those of several groups can be counted: a log without sources counts once,
 * however many groups have sightings in it. What all groups share is looked at elsewhere.
 */
function warningsOf({ diagnostics }: SoundGroup, { families, texts }: FamilyGroup): string[] {
  const own = new Set(texts.map(({ file }) => file));
  return diagnostics.flatMap(({ file, code }, at) => {
    const isLog = file.startsWith("content/sightings/");
    if (ofWhole.has(code) || (isLog && code === "source-missing")) return [`${code} ${file}`];
    return own.has(file) ? [`${families[0]} ${at}`] : [];
  });
}
