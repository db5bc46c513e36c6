/** A likeness that is known, and on how much it rests. */
interface Near {
  readonly likeness: number;
  readonly compared: number;
}

/** Which of some that are ordered together were compared on less than half as much as the best compared. */
export function thinAmong(all: readonly Near[]): (near: Near) => boolean {
  const best = all.reduce((most, { compared }) => Math.max(most, compared), 0);
  return ({ compared }) => 2 * compared < best;
}

/** Likenesses that are the same fraction may differ by a rounding error, which must not order them. */
const steps = ({ likeness }: Near): number => Math.round(likeness * 1e9);

/**
 * The order of some that are more or less like another: the likest first, then those of which more is known. One thing in
 * common says little, and is easily the same: those compared on less than half as much as the best compared come last.
 * Assumes  likenesses that are to be ordered together
 * Source   common practice, no source
 * Checks   nearerFirst([{ likeness: 1, compared: 1 }, { likeness: 0.9, compared: 3 }])({ likeness: 1, compared: 1 }, { likeness: 0.9, compared: 3 }) => 1
 *          nearerFirst([])({ likeness: 1 - 1 / 3, compared: 1 }, { likeness: (1 + 1 / 3) / 2, compared: 2 }) => 1
 *          nearerFirst([{ likeness: 1, compared: 2 }])({ likeness: 1, compared: 1 }, { likeness: 1, compared: 2 }) => 1
 */
export function nearerFirst(all: readonly Near[]): (one: Near, other: Near) => number {
  const isThin = thinAmong(all);
  return (one, other) =>
    Number(isThin(one)) - Number(isThin(other)) || steps(other) - steps(one) || other.compared - one.compared;
}
