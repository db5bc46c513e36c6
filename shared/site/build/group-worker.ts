import { parentPort, workerData } from "node:worker_threads";
import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { siteFrame } from "../files/site-frame.ts";
import { cacheFolder, useCacheFolder } from "../folders/cache-folder.ts";
import type { FamilyGroup } from "../groups/family-groups.ts";
import { LostSite, StandingSite } from "../incremental/standing-site.ts";
import { GroupMaker, type WrittenGroup } from "./group-maker.ts";
import type { ThreadTask } from "./group-threads.ts";

/** What is asked of a thread: a group, and the key to keep it under. */
export interface GroupOrder {
  readonly group: FamilyGroup;
  readonly key: string;
}

export type GroupAnswer =
  | { readonly photographs: readonly [done: number, of: number] }
  | { readonly written: WrittenGroup }
  | { readonly refused: readonly Diagnostic[] }
  | { readonly lost: string };

// One of the threads that make groups. What goes wrong otherwise ends the thread, and the build with it.
const { root, cache, audience, around, out, standing, into } = workerData as ThreadTask;
useCacheFolder(root, cache);
const frame = await siteFrame(root, audience, around.found, around);
if (!frame)
  throw new Error("What all families share was sound for the build, but is not for one of its threads.");
const kept = new StandingSite(cacheFolder(root), out, standing);
const maker = new GroupMaker(around, frame, kept, into);
const answer = (message: GroupAnswer): void => parentPort?.postMessage(message);

/** Bytes are handed over, where a text would be copied. */
const answerWritten = (written: WrittenGroup): void =>
  parentPort?.postMessage({ written } satisfies GroupAnswer, [written.bytes.buffer]);

parentPort?.on("message", async ({ group, key }: GroupOrder) => {
  try {
    const site = await maker.site(group, (...photographs) => answer({ photographs }));
    if (site.isSound) answerWritten(maker.write(group, key, site));
    else answer({ refused: site.refused });
  } catch (problem) {
    if (!(problem instanceof LostSite)) throw problem;
    answer({ lost: problem.message });
  }
});
