import { assessCollection } from "../../assessments/assess-collection.ts";
import { concernsOf } from "../../assessments/concerns.ts";
import type { YearsWatched } from "../../assessments/rarity/appearance.ts";
import { type Diagnostic, isError } from "../../diagnostics/diagnostic.ts";
import { addresses } from "../../pages/addresses/addresses.ts";
import { type CollectionIndex, indexCollection } from "../../pages/collection-index.ts";
import { familyData } from "../../pages/data/family-data.ts";
import { iiifManifest } from "../../pages/data/iiif-manifest.ts";
import { itemData } from "../../pages/data/item-data.ts";
import type { OutputFile } from "../../pages/data/output-file.ts";
import { atFormerAddresses, familyRedirects, itemRedirects } from "../../pages/data/redirects.ts";
import { figuresFile, variantData } from "../../pages/data/variant-data.ts";
import { listFamilies } from "../../pages/listed/list-families.ts";
import type { ListedFamily } from "../../pages/listed/listed-family.ts";
import { familyPages, itemPages } from "../../pages/site-pages.ts";
import { guessableSerials } from "../../publication/guessable-serials.ts";
import { type HiddenSerial, hiddenSerials } from "../../publication/masking.ts";
import { publishCollection } from "../../publication/publish-collection.ts";
import type { PublishedCollection, PublishedItem } from "../../publication/published.ts";
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
import type { SiteFile } from "./site-file.ts";
import type { SiteFrame } from "./site-frame.ts";

/** What is made of a group of families. */
export type GroupSite =
  | SoundGroup
  /** Its records have errors, or what cannot be shown. */
  | { readonly isSound: false; readonly refused: readonly Diagnostic[] };

export interface SoundGroup {
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
  /** Its files one after the other, each made when it is come to. */
  readonly files: () => Iterable<SiteFile>;
  /** Those that are of no item alone, with photographs and recordings. */
  readonly filesOfNoItem: () => Iterable<SiteFile>;
  /** Those of the items of one variant, without photographs and recordings. */
  readonly filesOfVariant: (id: string) => Iterable<SiteFile>;
  /** Those of one item alone, with the photographs and recordings of the group. */
  readonly filesOfItem: (id: string) => Iterable<SiteFile>;
}

const unsound = (refused: readonly Diagnostic[]): GroupSite => ({ isSound: false, refused });

/** Content → records → assessments → publication → pages, for one group of families. */
export async function groupSite(
  group: FamilyGroup,
  { shared, itemCount }: Pick<SharedContent, "shared" | "itemCount">,
  watched: YearsWatched | null,
  texts: CollectionTexts,
  frame: SiteFrame,
  onPhotographs?: OnPhotographs,
  /** The one item whose photographs and recordings are wanted, where only its own files are. */
  only?: string,
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
  const making: Making = {
    index,
    media,
    recorded(file) {
      versions.set(file.address, citedVersion(file.text));
      return asText(file);
    },
  };
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
    *files() {
      yield* familyFiles(making);
      yield* itemFiles(published.items, making);
      yield* mediaFiles(media);
    },
    *filesOfNoItem() {
      yield* familyFiles(making);
      yield* mediaFiles(media);
    },
    filesOfVariant: (id) =>
      itemFiles(
        published.items.filter(({ variant }) => variant.id === id),
        making,
      ),
    *filesOfItem(id) {
      yield* itemFiles(
        published.items.filter((item) => item.id === id),
        making,
      );
      yield* mediaFiles(media);
    },
  };
}

const asText = (file: OutputFile): SiteFile => ({ kind: "text", ...file });

/** What the files of a group are made with. */
interface Making {
  readonly index: CollectionIndex;
  readonly media: CollectionMedia;
  /** A record as a file: its page, which comes after it, names the version of its data. */
  readonly recorded: (file: OutputFile) => SiteFile;
}

function* familyFiles({ index, recorded }: Making): Generator<SiteFile> {
  const { collection } = index;
  for (const family of collection.families) {
    const data = familyData(family, index);
    yield recorded(data);
    yield* atFormerAddresses(data, family, addresses.familyData).map(asText);
  }
  for (const variant of collection.variants) {
    const data = variantData(variant);
    yield recorded(data);
    yield* atFormerAddresses(data, variant, addresses.variantData).map(asText);
  }
  for (const page of familyPages(index)) yield { kind: "page", ...page };
  yield* familyRedirects(index).map(asText);
}

function* itemFiles(items: readonly PublishedItem[], making: Making): Generator<SiteFile> {
  const { index, media, recorded } = making;
  const { collection, words } = index;
  for (const item of items) {
    const data = itemData(item, index);
    yield recorded(data);
    yield* atFormerAddresses(data, item, addresses.itemData).map(asText);
    for (const page of itemPages(item, index)) yield { kind: "page", ...page };
    yield* itemRedirects(item, index).map(asText);
    const manifest = iiifManifest(item, collection, words, media);
    if (!manifest) continue;
    yield asText(manifest);
    yield* atFormerAddresses(manifest, item, addresses.manifest).map(asText);
  }
}

function* mediaFiles({ files, copied }: CollectionMedia): Generator<SiteFile> {
  for (const file of files) yield { kind: "text", ...file };
  for (const { from, address } of copied) yield { kind: "copy", from, address };
}
