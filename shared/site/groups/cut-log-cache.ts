import { digest } from "../digest.ts";
import { type CutLog, cutLog, type LogCutter } from "./cut-log.ts";

type Cuts = Readonly<Record<string, CutLog>>;

/** Logs as they were cut the last time: to take ten thousand rows apart again takes longer than to read what came of it. */
export class CutLogCache {
  readonly #tool: string;
  readonly #known: Cuts;
  readonly #cuts: Record<string, CutLog> = {};

  constructor(tool: string, known: Cuts) {
    this.#tool = tool;
    this.#known = known;
  }

  /** By the text of the log and the families of its variants, which is all that a cut is made from. */
  readonly cut: LogCutter = (log, familyOf) => {
    const key = digest(this.#tool, log.file, log.hash, JSON.stringify([...familyOf]));
    const cut = this.#known[key] ?? cutLog(log, familyOf);
    if (cut) this.#cuts[key] = cut;
    return cut;
  };

  /** All that were asked for; null where they are those that were known. */
  get changed(): Cuts | null {
    const [now, before] = [Object.keys(this.#cuts), Object.keys(this.#known)];
    return now.length === before.length && now.every((key) => key in this.#known) ? null : this.#cuts;
  }
}
