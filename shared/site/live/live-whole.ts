import { isError } from "../../diagnostics/diagnostic.ts";
import type { ListedFamily } from "../../pages/listed/listed-family.ts";
import { RememberedWords } from "../../pages/search/remembered-words.ts";
import type { PublishedCollection } from "../../publication/published.ts";
import { type LastSearch, type PackedFile, searchFiles } from "../files/search-files.ts";
import type { SiteFrame } from "../files/site-frame.ts";
import { wholeSite } from "../files/whole-site.ts";
import { type LiveAnswer, LiveFiles } from "./live-files.ts";

/** What a preview shows of the whole: lists, search, tables and feed, made anew over those on disk. */
export class LiveWhole {
  #files: LiveFiles | null = null;
  #addresses: readonly string[];
  #search: LastSearch = { words: new RememberedWords(), files: new Map() };
  /** Makes those of its files that are no pages. */
  #others: (() => void) | null = null;
  #isStale = false;
  #isRefused = false;

  /** `addresses`: of the files on disk, which show what is listed. */
  constructor(
    addresses: readonly string[],
    collection: PublishedCollection,
    listed: readonly ListedFamily[],
  ) {
    this.#addresses = addresses;
    this.#remember(searchFiles({ collection, listed }, this.#search).files);
  }

  get isStale(): boolean {
    return this.#isStale;
  }

  /** Whether the texts of the whole have errors. */
  get isRefused(): boolean {
    return this.#isRefused;
  }

  get isSettled(): boolean {
    return !this.#isStale && !this.#others;
  }

  /** Whether anything is held in memory that is not on disk. */
  get isAhead(): boolean {
    return this.#files !== null;
  }

  get addresses(): readonly string[] {
    return this.#addresses;
  }

  answer(address: string): LiveAnswer | null | undefined {
    return this.#files?.answer(address);
  }

  /** Something that it may show is no longer as it was. */
  outdate(): void {
    this.#isStale = true;
    this.#isRefused = false;
  }

  /** `addresses`: of everything that the groups have. */
  make(
    frame: SiteFrame,
    listed: readonly ListedFamily[],
    quoted: readonly PublishedCollection[],
    addresses: readonly string[],
  ): void {
    this.#isStale = false;
    const whole = wholeSite(frame, listed, quoted, addresses, this.#search);
    this.#remember(whole.searchFiles);
    if (whole.diagnostics.some(isError)) {
      this.#isRefused = true;
      return;
    }
    const files = new LiveFiles();
    for (const page of whole.pages) files.addPage(page, whole.siteOf);
    for (const file of whole.searchFiles) files.add(file, frame.site);
    this.#files = files;
    // Tables and feed come last, and until then nothing is said to be gone that may be among them.
    this.#addresses = [...new Set([...this.#addresses, ...files.addresses])];
    this.#others = () => {
      for (const file of whole.otherFiles()) files.add(file, frame.site);
      this.#addresses = files.addresses;
    };
  }

  /** Tables and feed; false where they have been made. */
  makeOthers(): boolean {
    if (!this.#others) return false;
    this.#others();
    this.#others = null;
    return true;
  }

  /** Lets go of what is held in memory, since the site on disk was made from the same. */
  rest(): void {
    this.#files = null;
  }

  #remember(files: readonly PackedFile[]): void {
    this.#search = {
      words: this.#search.words,
      files: new Map(files.map((file) => [file.address, file])),
    };
  }
}
