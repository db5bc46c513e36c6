import { availableParallelism } from "node:os";
import path from "node:path";
import { Worker } from "node:worker_threads";
import type { Audience } from "../../publication/published.ts";
import { packageFolder } from "../../source/package-folder.ts";
import type { SiteFolder } from "../folders/out-folder.ts";
import type { FamilyGroup } from "../groups/family-groups.ts";
import { LostSite } from "../incremental/standing-site.ts";
import type { OnPhotographs } from "../progress.ts";
import { fromWritten, type GroupContext, type MadeGroup } from "./group-maker.ts";
import type { GroupAnswer, GroupOrder } from "./group-worker.ts";

/** What a thread is given once. Plain data. */
export interface ThreadTask {
  readonly root: string;
  readonly cache: string;
  readonly audience: Audience;
  readonly around: GroupContext;
  readonly out: string;
  /** The folder of the site that stands; undefined where nothing is known of it. */
  readonly standing: string | undefined;
  /** Where the new one is written. */
  readonly into: SiteFolder;
}

interface Order extends GroupOrder {
  readonly resolve: (made: MadeGroup | null) => void;
  readonly reject: (problem: unknown) => void;
  readonly onPhotographs: OnPhotographs;
}

/** In megabytes. A thread's garbage is collected in time where it has not the whole machine's memory to fill. */
const youngHeap = 32;
const baseHeap = 192;
const perItem = 0.25;
/** A sighting takes some thirty bytes of a log, and two hundred times as much as a record with all that is made of it. */
const perByteOfLog = 0.25 / 1000;

const heapFor = (group: FamilyGroup): number => {
  const logs = group.texts.filter(({ kind }) => kind === "sightings");
  const bytes = logs.reduce((sum, { text }) => sum + text.length, 0);
  return baseHeap + itemsIn(group) * perItem + bytes * perByteOfLog;
};

/** Fewer items than this are made sooner than a thread has read its code. */
const enough = 400;

export const itemsIn = ({ texts }: FamilyGroup): number => texts.filter(({ kind }) => kind === "item").length;

export const areWorthThreads = (groups: readonly FamilyGroup[]): boolean =>
  groups.length > 1 && groups.reduce((sum, group) => sum + itemsIn(group), 0) >= enough;

/** The threads that make groups of families, each one group at a time: as many as the machine has cores. */
export class GroupThreads {
  #workers: readonly Worker[];
  readonly #waiting: Order[] = [];
  readonly #busy = new Map<Worker, Order>();

  constructor(task: ThreadTask, groups: readonly FamilyGroup[]) {
    const count = Math.min(availableParallelism(), groups.length);
    const oldHeap = Math.max(...groups.map(heapFor));
    const options = {
      workerData: task,
      resourceLimits: { maxYoungGenerationSizeMb: youngHeap, maxOldGenerationSizeMb: oldHeap },
    };
    const code = path.join(packageFolder, "dist/shared/site/build/group-worker.js");
    this.#workers = Array.from({ length: count }, () => new Worker(code, options));
    for (const worker of this.#workers) {
      worker.on("message", (answer: GroupAnswer) => this.#answered(worker, answer));
      worker.on("error", (problem) => this.#failed(worker, problem));
    }
  }

  /** Null where the group is too much for a thread. */
  make(group: FamilyGroup, key: string, onPhotographs: OnPhotographs): Promise<MadeGroup | null> {
    return new Promise((resolve, reject) => {
      this.#waiting.push({ group, key, resolve, reject, onPhotographs });
      this.#next();
    });
  }

  async end(): Promise<void> {
    await Promise.all(this.#workers.map((worker) => worker.terminate()));
  }

  #next(): void {
    for (const worker of this.#workers) {
      if (this.#busy.has(worker)) continue;
      const order = this.#waiting.shift();
      if (!order) return;
      this.#busy.set(worker, order);
      worker.postMessage({ group: order.group, key: order.key } satisfies GroupOrder);
    }
  }

  #answered(worker: Worker, answer: GroupAnswer): void {
    const order = this.#busy.get(worker);
    if (!order) return;
    if ("photographs" in answer) {
      order.onPhotographs(...answer.photographs);
      return;
    }
    this.#busy.delete(worker);
    if ("lost" in answer) order.reject(new LostSite(answer.lost));
    else if ("written" in answer) order.resolve(fromWritten(answer.written));
    else order.resolve({ isSound: false, refused: answer.refused });
    this.#next();
  }

  #failed(worker: Worker, problem: unknown): void {
    if (problem instanceof Error && "code" in problem && problem.code === "ERR_WORKER_OUT_OF_MEMORY") {
      this.#exhausted(worker);
      return;
    }
    for (const { reject } of [...this.#busy.values(), ...this.#waiting.splice(0)]) reject(problem);
    this.#busy.clear();
  }

  /** A thread that has run out of memory is no more. */
  #exhausted(worker: Worker): void {
    this.#workers = this.#workers.filter((each) => each !== worker);
    this.#busy.get(worker)?.resolve(null);
    this.#busy.delete(worker);
    if (this.#workers.length === 0) for (const { resolve } of this.#waiting.splice(0)) resolve(null);
  }
}
