import type { ListedFamily } from "../../pages/listed/listed-family.ts";
import type { PublishedCollection } from "../../publication/published.ts";
import type { SoundGroup } from "../files/group-site.ts";
import type { SiteFrame } from "../files/site-frame.ts";
import type { GroupRecord } from "../incremental/standing-site.ts";
import { LiveFiles } from "./live-files.ts";

/** A group of families as a preview has it: as it stands on disk, or as it was made since. */
export interface LiveGroup {
  /** Of everything that it was made from. */
  readonly key: string;
  readonly listed: readonly ListedFamily[];
  readonly addresses: readonly string[];
  /** Of photographs and recordings, which another group may show, too. */
  readonly copies: readonly string[];
  /** Null where its files are those on disk. */
  readonly files: LiveFiles | null;
  /** Null where it was not asked for. */
  readonly published: PublishedCollection | null;
}

export const standingGroup = ({ key, listed, addresses, copies }: GroupRecord): LiveGroup => ({
  key,
  listed,
  addresses,
  copies,
  files: null,
  published: null,
});

/** Its pages are rendered when somebody looks at them. */
export function madeGroup(key: string, site: SoundGroup, { site: around }: SiteFrame): LiveGroup {
  const files = new LiveFiles();
  const addresses: string[] = [];
  const copies: string[] = [];
  for (const file of site.files()) {
    files.add(file, around);
    (file.kind === "copy" ? copies : addresses).push(file.address);
  }
  return {
    key,
    listed: site.listed,
    addresses,
    copies,
    files,
    published: site.published,
  };
}
