export type Slots = <T>(work: () => Promise<T>) => Promise<T>;

/** Runs at most so many pieces of work at once, in the order in which they were handed over. */
export function slots(count: number): Slots {
  let free = count;
  const waiting: (() => void)[] = [];
  return async (work) => {
    if (free > 0) free--;
    else await new Promise<void>((turn) => waiting.push(turn));
    try {
      return await work();
    } finally {
      const next = waiting.shift();
      if (next) next();
      else free++;
    }
  };
}
