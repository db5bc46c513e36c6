import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";

/**
 * Clears away what is no longer needed before this thread waits for others: V8 does so only when it needs room, and a
 * thread that waits needs none. Node has no other way to ask for it than the flag.
 */
export function collectGarbage(): void {
  setFlagsFromString("--expose-gc");
  const collect: unknown = runInNewContext("gc");
  setFlagsFromString("--no-expose-gc");
  if (typeof collect === "function") collect();
}
