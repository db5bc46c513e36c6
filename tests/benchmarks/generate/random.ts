/** The same numbers for the same seed, on every machine (mulberry32). */
export interface Random {
  /** At least 0, less than 1. */
  readonly next: () => number;
  /** A whole number of at least 0, less than `below`. */
  readonly below: (below: number) => number;
  readonly chance: (probability: number) => boolean;
  readonly pick: <Value>(from: readonly Value[]) => Value;
  /** Low numbers often, high ones seldom, as the words of a language (Zipf). */
  readonly ranked: (below: number) => number;
}

export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const below = (limit: number) => Math.floor(next() * limit);
  return {
    next,
    below,
    chance: (probability) => next() < probability,
    pick: (from) => {
      const picked = from[below(from.length)];
      if (picked === undefined) throw new RangeError("Found an empty list; expected something to pick from.");
      return picked;
    },
    ranked: (limit) => Math.min(limit - 1, Math.floor((limit + 1) ** next()) - 1),
  };
}
