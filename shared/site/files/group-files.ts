import { addresses } from "../../pages/addresses/addresses.ts";
import type { CollectionIndex } from "../../pages/collection-index.ts";
import { familyData } from "../../pages/data/family-data.ts";
import { iiifManifest } from "../../pages/data/iiif-manifest.ts";
import { itemData } from "../../pages/data/item-data.ts";
import type { OutputFile } from "../../pages/data/output-file.ts";
import { atFormerAddresses, familyRedirects, itemRedirects } from "../../pages/data/redirects.ts";
import { variantData } from "../../pages/data/variant-data.ts";
import { familyPages, itemPages } from "../../pages/site-pages.ts";
import type { PublishedItem } from "../../publication/published.ts";
import type { CollectionMedia } from "../media/collection-media.ts";
import { citedVersion } from "./cited-version.ts";
import type { SiteFile } from "./site-file.ts";

/** The files of a group, each made when it is come to. */
export interface GroupFiles {
  /** One after the other. */
  readonly files: () => Iterable<SiteFile>;
  /** Those that are of no item alone, with photographs and recordings. */
  readonly filesOfNoItem: () => Iterable<SiteFile>;
  /** Those of the items of one variant, without photographs and recordings. */
  readonly filesOfVariant: (id: string) => Iterable<SiteFile>;
  /** Those of one item alone, with the photographs and recordings of the group. */
  readonly filesOfItem: (id: string) => Iterable<SiteFile>;
}

/** A page comes after the data that it is made from, and names their version: `versions` is filled on the way. */
export function groupFiles(
  index: CollectionIndex,
  media: CollectionMedia,
  versions: Map<string, string>,
): GroupFiles {
  const { items } = index.collection;
  const making: Making = {
    index,
    media,
    recorded(file) {
      versions.set(file.address, citedVersion(file.text));
      return asText(file);
    },
  };
  return {
    *files() {
      yield* familyFiles(making);
      yield* itemFiles(items, making);
      yield* mediaFiles(media);
    },
    *filesOfNoItem() {
      yield* familyFiles(making);
      yield* mediaFiles(media);
    },
    filesOfVariant: (id) =>
      itemFiles(
        items.filter(({ variant }) => variant.id === id),
        making,
      ),
    *filesOfItem(id) {
      yield* itemFiles(
        items.filter((item) => item.id === id),
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
