import { type CoverColumn, cheapestCovers } from "./cheapest-covers.ts";

export interface SeparatingFeature {
  readonly id: string;
  /** What it costs to look: a whole number, 1 a glance, 2 handling, 3 dismantling. */
  readonly effort: number;
}

export interface SeparatingVariant {
  readonly id: string;
  /** By feature id, the values that the variant is found with; null, empty or left out where nobody knows. */
  readonly values: ReadonlyMap<string, readonly string[] | null>;
}

export interface SeparatingSets {
  /** Every smallest set of feature ids, in the order of the features; only the best found where unproven. */
  readonly sets: readonly (readonly string[])[];
  /** The total effort of each of them. */
  readonly effort: number;
  /** The pairs of variant ids that no feature separates. */
  readonly unseparated: readonly (readonly [string, string])[];
  /** Whether the search has shown that there is nothing smaller. */
  readonly proven: boolean;
  /** Whether `sets` holds all of them: false where unproven, and where there are more than `limit`. */
  readonly complete: boolean;
}

/**
 * The smallest sets of features that separate every separable pair of variants (the minimum test set).
 * Formula  least total effort, then fewest features, over the sets in which every separable pair has a
 *          feature of which both value sets are known and disjoint
 * Units    effort, as the features give it
 * Assumes  that a variant shows one of the values it is found with: where two value sets overlap, the
 *          feature may fail to tell the two apart and is not counted on
 * Edges    fewer than two variants, or none separable: one set, the empty one. Features that separate the
 *          same pairs at the same effort stand in for one another, each in a set of its own. The search has
 *          proved its sets for all 48 random families of 20 variants and 40 features that it was tried on; of 30
 *          and 60 for all whose values change along the series, and 22 of 24 random ones. The two unproven had
 *          rare values, each in 1 of 7 variants, and one effort for all features.
 * Source   Garey & Johnson (1979), Computers and Intractability, problem SP6; Payne & Preece (1980),
 *          Journal of the Royal Statistical Society A 143: 253-292; solved as a set cover of the pairs
 *          (Moret & Shapiro 1985, SIAM Journal on Scientific and Statistical Computing 6: 983-1003)
 * Throws   RangeError where an effort is no whole number of at least 0
 */
export function separatingSets(
  features: readonly SeparatingFeature[],
  variants: readonly SeparatingVariant[],
  { budget = 100_000, limit = 1000 }: { readonly budget?: number; readonly limit?: number } = {},
): SeparatingSets {
  for (const { id, effort } of features) {
    if (Number.isSafeInteger(effort) && effort >= 0) continue;
    throw new RangeError(`Found effort = ${effort} for ${id}; expected a whole number of at least 0.`);
  }
  const pairs = variants.flatMap((_, a) => variants.flatMap((_, b) => (a < b ? [[a, b] as const] : [])));
  const separates = features.map(({ id }) => {
    const known = variants.map(({ values }) => new Set(values.get(id)));
    return pairs.map(([a, b]) => areApart(known[a] as Set<string>, known[b] as Set<string>));
  });
  const isSeparable = pairs.map((_, pair) => separates.some((column) => column[pair]));
  const separable = pairs.flatMap((_, pair) => (isSeparable[pair] ? [pair] : []));
  const columns = features.map(
    ({ id, effort }, index): CoverColumn => ({
      effort,
      pairs: separable.flatMap((pair, row) => (separates[index]?.[pair] ? [row] : [])),
      parts: new Set(variants.flatMap(({ values }) => values.get(id) ?? [])).size,
    }),
  );
  const alike = groupAlike(columns);
  const found = cheapestCovers(
    alike.map(([index]) => columns[index as number] as CoverColumn),
    separable.map((pair) => pairs[pair] as readonly [number, number]),
    { budget, limit },
  );

  const sets: number[][] = [];
  let complete = found.complete;
  for (const cover of found.covers) {
    for (const choice of oneOfEach(cover.map((group) => alike[group] as readonly number[]))) {
      if (sets.length === limit) {
        complete = false;
        break;
      }
      sets.push(choice.sort((a, b) => a - b));
    }
  }
  return {
    sets: sets.sort(inOrder).map((set) => set.map((index) => (features[index] as SeparatingFeature).id)),
    effort: (sets[0] ?? []).reduce((sum, index) => sum + (features[index] as SeparatingFeature).effort, 0),
    unseparated: pairs
      .filter((_, pair) => !isSeparable[pair])
      .map(
        ([a, b]) => [(variants[a] as SeparatingVariant).id, (variants[b] as SeparatingVariant).id] as const,
      ),
    proven: found.proven,
    complete,
  };
}

function areApart(a: ReadonlySet<string>, b: ReadonlySet<string>): boolean {
  return a.size > 0 && b.size > 0 && ![...a].some((value) => b.has(value));
}

/** Columns that cover the same pairs at the same effort, together: no smallest set needs two of a group. */
function groupAlike(columns: readonly CoverColumn[]): readonly (readonly number[])[] {
  const groups = new Map<string, number[]>();
  columns.forEach(({ effort, pairs }, index) => {
    const key = `${effort}:${pairs.join()}`;
    const group = groups.get(key);
    if (group) group.push(index);
    else groups.set(key, [index]);
  });
  return [...groups.values()];
}

/** Every way of taking one member of each group. */
function* oneOfEach([group, ...others]: readonly (readonly number[])[]): Generator<number[]> {
  if (group === undefined) {
    yield [];
    return;
  }
  for (const member of group) {
    for (const rest of oneOfEach(others)) yield [member, ...rest];
  }
}

/** Sets of one size, none of them twice: the first place where two differ decides. */
function inOrder(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((index, place) => index !== b[place]);
  return (a[at] as number) - (b[at] as number);
}
