import { existsSync } from "node:fs";
import path from "node:path";
import { reportAsText } from "../../diagnostics/report.ts";
import { buildSite } from "../../site/build/build-site.ts";
import { LiveSite } from "../../site/live/live-site.ts";
import { type BackgroundBuild, buildInBackground } from "./build-in-background.ts";
import type { PreviewState } from "./open-pages.ts";

/** Editors write a file in several steps; a mistake is believed only when nothing has changed for so long. */
const settled = 60;
/** And the site is written to disk again when nobody has written anything for so long. */
const quiet = 3000;

export interface Previewed {
  readonly root: string;
  /** Where the site of the preview is built. */
  readonly site: string;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  readonly tell: (state: PreviewState) => Promise<void>;
  /** Whoever asks is answered between two pieces of work. */
  readonly served: () => Promise<void>;
  readonly lookedAt: () => ReadonlySet<string>;
}

interface Changes {
  /** Files and folders, by their paths from the root. */
  readonly changed: ReadonlySet<string>;
  readonly areSettled: boolean;
}

const pause = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));
/** What other files have changed at the same time is told of before any is taken in. */
const turn = () => new Promise((resolve) => setImmediate(resolve));

const isWatched = (file: string) =>
  !file.split("/").some((name) => name.startsWith(".") || name.endsWith("~"));

/**
 * Keeps the site of a preview in step with the files. One change after the other is taken in and made in memory, the pages
 * that are looked at first; the site on disk follows in a process of its own, once all is quiet.
 */
export class PreviewLoop {
  readonly #previewed: Previewed;
  readonly #changed = new Map<string, number>();
  #live: LiveSite | null = null;
  #build = 0;
  #problems: string | null = null;
  #isRunning = false;
  #isStopped = false;
  #isPreparing = false;
  #prepared: string | null = null;
  #beside: BackgroundBuild | null = null;
  #timer: NodeJS.Timeout | undefined;

  constructor(previewed: Previewed) {
    this.#previewed = previewed;
  }

  get live(): LiveSite | null {
    return this.#live;
  }

  /** The first build, and any that changes more than is held in memory. */
  async buildWhole(): Promise<void> {
    const { root, site, out, err } = this.#previewed;
    const started = performance.now();
    const { written, diagnostics, filesRead } = await buildSite(root, site, "public");
    this.#problems = written ? null : reportAsText(diagnostics, filesRead);
    if (written) {
      this.#live = await LiveSite.over(root, site, "public");
      out(`Built ${written.pages} pages in ${seconds(started)} s.`);
    } else err(this.#problems ?? "");
    void this.#tell();
  }

  /** A file or folder has changed, by its path from the root. */
  onChange(file: string): void {
    if (!isWatched(file)) return;
    this.#changed.set(file, performance.now());
    if (!this.#isRunning && !this.#isPreparing) this.#start();
  }

  /** Somebody has opened a page, and may be about to edit what it shows. */
  onLook(address: string): void {
    setTimeout(() => {
      if (this.#isRunning || this.#isPreparing || this.#isStopped || this.#prepared === address) return;
      this.#prepared = address;
      this.#isPreparing = true;
      const done = () => {
        this.#isPreparing = false;
        if (this.#changed.size > 0) this.#start();
      };
      (this.#live?.prepare(address) ?? Promise.resolve()).then(done, done);
    }, settled);
  }

  stop(): void {
    this.#isStopped = true;
    this.#rest();
  }

  #tell(): Promise<void> {
    this.#build++;
    return this.#previewed.tell({ build: this.#build, problems: this.#problems });
  }

  /** Leaves the site on disk to itself for now. */
  #rest(): void {
    clearTimeout(this.#timer);
    this.#beside?.stop();
    this.#beside = null;
  }

  #start(): void {
    this.#run().catch((problem: unknown) => {
      this.#previewed.err(String(problem));
      // Whatever it was that could not be made in memory, what stands on disk is built without it.
      this.#live = null;
      this.#writeOut();
    });
  }

  #writeOut(): void {
    this.#buildInBackground().catch((problem: unknown) => this.#previewed.err(String(problem)));
  }

  async #run(): Promise<void> {
    this.#isRunning = true;
    this.#rest();
    try {
      await turn();
      while (this.#changed.size > 0 && !this.#isStopped) await this.#follow();
    } finally {
      this.#isRunning = false;
    }
  }

  /** Takes in what has changed, and makes what depends on it, until something changes again. */
  async #follow(): Promise<void> {
    const started = performance.now();
    let files = await this.#next();
    const live = this.#live;
    if (!live) return this.buildWhole();
    let taken = await live.take(files.changed, files.areSettled);
    if (taken === "unread") {
      for (const file of files.changed) this.#changed.set(file, this.#changed.get(file) ?? performance.now());
      files = await this.#atRest();
      taken = await live.take(files.changed);
    }
    if (taken === "whole") return this.buildWhole();
    if (await live.makeEdited()) await this.#tell();
    const first = seconds(started);
    while (this.#changed.size === 0 && (await live.makeNext(this.#previewed.lookedAt()))) {
      await this.#tell();
      await this.#previewed.served();
    }
    if (this.#changed.size > 0) return;
    if (!live.isSettled) {
      // What an editor has half written is no mistake.
      await pause(settled);
      if (this.#changed.size > 0) return;
      if (live.problems.length > 0) {
        this.#problems = reportAsText(live.problems, live.filesRead);
        void this.#tell();
      }
      this.#writeOut();
      return;
    }
    if (taken === "stale")
      this.#previewed.out(
        `${[...files.changed].join(", ")}: shown after ${first} s, all after ${seconds(started)} s.`,
      );
    if (this.#problems !== null) {
      this.#problems = null;
      void this.#tell();
    }
    if (live.isAhead) this.#timer = setTimeout(() => this.#writeOut(), quiet);
  }

  /** The files that have changed: at once those that are known and there, the others when they have come to rest. */
  async #next(): Promise<Changes> {
    const { root } = this.#previewed;
    const isThere = (file: string) => this.#live?.isKnown(file) && existsSync(path.join(root, file));
    const known = [...this.#changed.keys()].filter(isThere);
    if (known.length === 0) return this.#atRest();
    for (const file of known) this.#changed.delete(file);
    return { changed: new Set(known), areSettled: false };
  }

  /** All that have changed, when none has for a while. */
  async #atRest(): Promise<Changes> {
    while (performance.now() - Math.max(...this.#changed.values()) < settled) await pause(settled / 2);
    const changed = new Set(this.#changed.keys());
    this.#changed.clear();
    return { changed, areSettled: true };
  }

  /** Writes the site to disk, or has told what is wrong with it. */
  async #buildInBackground(): Promise<void> {
    const { root, site, err } = this.#previewed;
    const build = buildInBackground(root, site);
    this.#beside = build;
    const problems = await build.problems;
    if (problems === undefined || this.#beside !== build || this.#isRunning) return;
    this.#beside = null;
    if (problems !== null) {
      if (problems !== this.#problems) err(problems);
      this.#problems = problems;
      void this.#tell();
      return;
    }
    // A change that nobody has told of is in it all the same.
    if (!this.#live?.rest()) this.#live = await LiveSite.over(root, site, "public");
    this.#problems = null;
    void this.#tell();
  }
}

const seconds = (since: number): string => ((performance.now() - since) / 1000).toFixed(2);
