import type { OnProgress } from "../../site/progress.ts";
import type { Terminal } from "../command.ts";

/** Work that is over sooner than this is not worth a line. */
const patience = 400;

export interface ProgressLine {
  readonly onProgress: OnProgress | undefined;
  /** Takes the line away: whatever is printed next stands in its place. */
  readonly clear: () => void;
}

const names = { items: "Outfits", photographs: "Photographs" } as const;

/** "Outfits: 120 of 800", in one line that is written over; nothing where nobody sits at a terminal. */
export function progressLine({ status }: Terminal, now = () => performance.now()): ProgressLine {
  if (!status) return { onProgress: undefined, clear: () => {} };
  const began = now();
  let shown = false;
  return {
    onProgress(what, done, of) {
      if (now() - began < patience) return;
      shown = true;
      status(`${names[what]}: ${done} of ${of}`);
    },
    clear() {
      if (shown) status("");
      shown = false;
    },
  };
}
