import { assessCollection } from "../../assessments/assess-collection.ts";
import { concernsOf } from "../../assessments/concerns.ts";
import type { YearsWatched } from "../../assessments/rarity/appearance.ts";
import { type Diagnostic, isError } from "../../diagnostics/diagnostic.ts";
import { indexCollection } from "../../pages/collection-index.ts";
import { figuresFile } from "../../pages/data/variant-data.ts";
import { listFamilies } from "../../pages/listed/list-families.ts";
import type { ListedFamily } from "../../pages/listed/listed-family.ts";
import { guessableSerials } from "../../publication/guessable-serials.ts";
import { type HiddenSerial, hiddenSerials } from "../../publication/masking.ts";
import { publishCollection } from "../../publication/publish-collection.ts";
import type { PublishedCollection } from "../../publication/published.ts";
import { checkTexts } from "../../publication/references/check-texts.ts";
import { type PrivateWords, privateNames } from "../../records/checks/private-words.ts";
import { collectionFrom } from "../../records/intake/collection-from.ts";
import type { Sighting } from "../../records/sighting.ts";
import { recordsIn } from "../../source/read-records.ts";
import type { CollectionTexts } from "../../source/read-texts.ts";
import { recordValidator } from "../../validation/record-validator.ts";
import { momentsAfterEnd } from "../checks/moments-after-end.ts";
import { refusedFiles } from "../checks/refused-files.ts";
import type { FamilyGroup, SharedContent } from "../groups/family-groups.ts";
import { type CollectionMedia, collectionMedia } from "../media/collection-media.ts";
import type { OnPhotographs } from "../progress.ts";
import { citedVersion } from "./cited-version.ts";
import { type GroupFiles, groupFiles } from "./group-files.ts";
import type { SiteFrame } from "./site-frame.ts";

/** What is made of a group of families. */
export type GroupSite =
  | SoundGroup
  /** Its records have errors, or what cannot be shown. */
  | { readonly isSound: false; readonly refused: readonly Diagnostic[] };

export interface SoundGroup extends GroupFiles {
  readonly isSound: true;
  readonly published: PublishedCollection;
  readonly sightings: readonly Sighting[];
  readonly listed: readonly ListedFamily[];
  readonly media: CollectionMedia;
  readonly diagnostics: readonly Diagnostic[];
  /** Serials of its items, which none of its texts may tell. */
  readonly hidden: readonly HiddenSerial[];
  /** Names that its items keep private, which no text of any other record may tell. */
  readonly names: readonly PrivateWords[];
}

/** All that a group is given besides its own texts: `aroundKey` is made of the same. */
export interface AroundGroup {
  /** What lies beside the records, and what could not be read. */
  readonly texts: CollectionTexts;
  readonly grouped: Pick<SharedContent, "shared" | "itemCount">;
  readonly watched: YearsWatched | null;
  readonly frame: SiteFrame;
}

const unsound = (refused: readonly Diagnostic[]): GroupSite => ({ isSound: false, refused });

/** Content → records → assessments → publication → pages, for one group of families. */
export async function groupSite(
  group: FamilyGroup,
  { texts, grouped: { shared, itemCount }, watched, frame }: AroundGroup,
  {
    only,
    onPhotographs,
  }: {
    /** The one item whose photographs and recordings are wanted, where only its own files are. */
    readonly only?: string | undefined;
    readonly onPhotographs?: OnPhotographs | undefined;
  } = {},
): Promise<GroupSite> {
  const { words } = frame.site;
  const own = [...shared, ...group.texts];
  const read = recordsIn({ ...texts, texts: own, files: own, diagnostics: [] });
  const { collection, diagnostics } = collectionFrom(read, recordValidator(), itemCount);
  if (!collection || [...read.diagnostics, ...diagnostics].some(isError)) return unsound([]);
  const assessments = assessCollection(collection, { watched, compared: group.compared });
  const published = publishCollection(collection, assessments, frame.audience, words, frame.hidden);
  const found = [
    ...diagnostics,
    ...concernsOf(collection, assessments),
    ...guessableSerials(collection),
    ...checkTexts({ ...collection, articles: new Map() }, undefined, () => published, frame.hidden),
    ...(await momentsAfterEnd(frame.root, collection.items.values())),
  ];
  if (found.some(isError)) return unsound([]);
  const isShown = (id: string) => only === undefined || id === only;
  const media = await collectionMedia(
    frame.root,
    { ...published, items: published.items.filter(({ id }) => isShown(id)) },
    { ...collection, items: new Map([...collection.items].filter(([id]) => isShown(id))) },
    words,
    onPhotographs,
  );
  const refused = refusedFiles({ collection }, media.refused);
  if (refused.some(isError)) return unsound(refused);

  const versions = new Map<string, string>();
  for (const { address, text } of published.variants.map(figuresFile))
    versions.set(address, citedVersion(text));
  const index = indexCollection(published, words, media, versions, itemCount);
  let listed: readonly ListedFamily[] | undefined;
  return {
    isSound: true,
    published,
    sightings: collection.sightings,
    get listed() {
      listed ??= listFamilies(index);
      return listed;
    },
    media,
    diagnostics: [...found, ...refused],
    hidden: frame.audience === "private" ? [] : hiddenSerials(collection.items.values()),
    get names() {
      return privateNames(collection.items.values());
    },
    ...groupFiles(index, media, versions),
  };
}
