import type { Surroundings } from "./command.ts";

/** Work that is over sooner than this is not worth a line. */
const patience = 400;

export interface ImageProgress {
  readonly onProgress: ((done: number, of: number) => void) | undefined;
  /** Takes the line away: whatever is printed next stands in its place. */
  readonly clear: () => void;
}

/** "Photographs: 12 of 80", in one line that is written over; nothing where nobody sits at a terminal. */
export function imageProgress({ status }: Surroundings, now = () => performance.now()): ImageProgress {
  if (!status) return { onProgress: undefined, clear: () => {} };
  const began = now();
  let shown = false;
  return {
    onProgress(done, of) {
      if (now() - began < patience) return;
      shown = true;
      status(`Photographs: ${done} of ${of}`);
    },
    clear() {
      if (shown) status("");
      shown = false;
    },
  };
}
