import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";

/** Above this the heap is tidied between two groups; a small collection never comes so far. */
const plenty = 300 * 1024 * 1024;

let collect: (() => void) | undefined;

/**
 * A group that is written is garbage, of which the engine, on a machine with much memory, would let a gigabyte gather
 * before it looks. Told to look, it finds that a tenth of it is in use.
 */
export function tidyMemory(): void {
  if (process.memoryUsage.rss() < plenty) return;
  if (!collect) {
    setFlagsFromString("--expose-gc");
    collect = runInNewContext("gc") as () => void;
  }
  collect();
}
