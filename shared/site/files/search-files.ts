import { hash } from "node:crypto";
import { gzipSync } from "node:zlib";
import type { CatalogueIndex } from "../../pages/listed/catalogue-index.ts";
import { buildSearchIndex } from "../../pages/search/build-search-index.ts";
import type { RememberedWords } from "../../pages/search/remembered-words.ts";
import type { SearchIndex } from "../../pages/search/search-index.ts";

/** A file of the site that is no text. */
export interface PackedFile {
  readonly kind: "bytes";
  readonly address: string;
  readonly bytes: Uint8Array;
}

export interface SearchFiles {
  /** Where a search begins; null where there is nothing to search. */
  readonly index: string | null;
  readonly files: readonly PackedFile[];
}

/**
 * Compressed here, since many a static host does not: what a reader loads is then the same everywhere. Named by
 * what is inside, so that an entry that changes gives new names to the files that it is in and to the index.
 */
function packed(name: string, data: unknown, last: LastSearch | undefined): PackedFile {
  const text = JSON.stringify(data);
  const address = `/assets/search/${name}.${hash("sha256", text).slice(0, 10)}.json.gz`;
  let bytes: Uint8Array | undefined;
  return (
    last?.files.get(address) ?? {
      kind: "bytes",
      address,
      // When they are asked for: of a preview's index most are not. The highest level takes three times as long, and saves
      // one byte of two hundred.
      get bytes() {
        bytes ??= gzipSync(text);
        return bytes;
      },
    }
  );
}

/** What a preview keeps of the index that it made last: most of it is in the next one, too. */
export interface LastSearch {
  readonly words: RememberedWords;
  /** By address. */
  readonly files: ReadonlyMap<string, PackedFile>;
}

/** Letters of any script, as a name of a file may have them. */
const fileName = (prefix: string): string =>
  prefix === ""
    ? "words"
    : `words-${prefix.replace(/[^a-z0-9]/g, (letter) => `u${letter.charCodeAt(0).toString(16)}`)}`;

export function searchFiles(
  catalogue: Pick<CatalogueIndex, "collection" | "listed">,
  last?: LastSearch,
): SearchFiles {
  const { index, details, files } = buildSearchIndex(catalogue, last?.words.join);
  if (index.count < 2) return { index: null, files: [] };
  const detailsFile = packed("details", details, last);
  const wordFiles = files.map(({ prefix, words, entries }) => ({
    prefix,
    file: packed(fileName(prefix), { words, entries }, last),
  }));
  const whole: SearchIndex = {
    ...index,
    details: detailsFile.address,
    shards: wordFiles.map(({ prefix, file }) => ({ prefix, address: file.address })),
  };
  const indexFile = packed("index", whole, last);
  return {
    index: indexFile.address,
    files: [indexFile, detailsFile, ...wordFiles.map(({ file }) => file)],
  };
}
