import { type Searched, shardsFor } from "../../../shared/pages/search/find-entries.ts";
import { type OpenWords, openWords } from "../../../shared/pages/search/match-word.ts";
import {
  type OpenCatalogue,
  type OpenDetails,
  openCatalogue,
  openDetails,
} from "../../../shared/pages/search/open-catalogue.ts";
import type { SearchDetails, SearchIndex, WordFile } from "../../../shared/pages/search/search-index.ts";
import { fetchPacked } from "./fetch-packed.ts";

/** The index and what else has been fetched of it; each file once. */
export class Fetched {
  readonly catalogue: OpenCatalogue;
  readonly #index: URL;
  readonly #words = new Map<string, OpenWords>();
  readonly #asked = new Map<string, Promise<void>>();
  #details: OpenDetails | null = null;

  private constructor(index: URL, catalogue: OpenCatalogue) {
    this.#index = index;
    this.catalogue = catalogue;
  }

  static async from(index: URL): Promise<Fetched> {
    return new Fetched(index, openCatalogue((await fetchPacked(index)) as SearchIndex));
  }

  get searched(): Searched {
    return {
      catalogue: this.catalogue,
      details: this.#details,
      textsFor: (word) => this.#shards(word).flatMap(({ address }) => this.#words.get(address) ?? []),
    };
  }

  get details(): OpenDetails | null {
    return this.#details;
  }

  /** Whether every file is here in which one of the words may be. */
  hasTexts(words: readonly string[]): boolean {
    return words.every((word) => this.#shards(word).every(({ address }) => this.#words.has(address)));
  }

  /** False where some of these files cannot be had; whoever asks again asks for them again. */
  async fetchTexts(words: readonly string[]): Promise<boolean> {
    const wanted = words.flatMap((word) => this.#shards(word).map(({ address }) => address));
    const fetched = await Promise.allSettled(
      wanted.map((address) =>
        this.#once(address, async () => {
          const file = (await fetchPacked(this.#beside(address))) as WordFile;
          this.#words.set(address, openWords(file));
        }),
      ),
    );
    return fetched.every(({ status }) => status === "fulfilled");
  }

  fetchDetails(): Promise<void> {
    const { index } = this.catalogue;
    return this.#once(index.details, async () => {
      const details = (await fetchPacked(this.#beside(index.details))) as SearchDetails;
      this.#details = openDetails(details, index.count);
    });
  }

  #shards(word: string) {
    return word.length < 2 ? [] : shardsFor(this.catalogue.index.shards, word);
  }

  /** All files of the index lie in one folder. */
  #beside(address: string): URL {
    return new URL(address.slice(address.lastIndexOf("/") + 1), this.#index);
  }

  #once(address: string, get: () => Promise<void>): Promise<void> {
    const asked = this.#asked.get(address);
    if (asked) return asked;
    const asking = get().catch((problem: unknown) => {
      this.#asked.delete(address);
      throw problem;
    });
    this.#asked.set(address, asking);
    return asking;
  }
}
