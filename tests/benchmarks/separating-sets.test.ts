import { describe, expect, it } from "vitest";
import { separatingSets } from "../../shared/statistics/separating-sets.ts";
import { generatedFamily } from "./separating-sets.ts";

type Family = ReturnType<typeof generatedFamily>;

const differ = (a: readonly string[], b: readonly string[]) => !a.some((value) => b.includes(value));

/** Whether a set of features tells every two variants apart: no value of the one is one of the other. */
const separates = (set: readonly string[], { variants }: Family): boolean =>
  variants.every((one, at) =>
    variants
      .slice(at + 1)
      .every((other) => set.some((id) => differ(one.values.get(id) ?? [], other.values.get(id) ?? []))),
  );

/** Every subset, tried: the definition of the minimum test set (Garey & Johnson 1979, SP6), and nothing cleverer. */
function smallestByTrial(family: Family): string[] {
  const { features } = family;
  let best = { effort: Number.POSITIVE_INFINITY, count: Number.POSITIVE_INFINITY };
  let sets: string[] = [];
  for (let mask = 0; mask < 2 ** features.length; mask++) {
    const chosen = features.filter((_, at) => mask & (1 << at));
    if (
      !separates(
        chosen.map(({ id }) => id),
        family,
      )
    )
      continue;
    const effort = chosen.reduce((sum, { effort: of }) => sum + of, 0);
    const found = { effort, count: chosen.length };
    const isBetter = effort < best.effort || (effort === best.effort && found.count < best.count);
    if (isBetter) [best, sets] = [found, []];
    if (effort === best.effort && found.count === best.count) sets.push(chosen.map(({ id }) => id).join(" "));
  }
  return sets.sort();
}

describe("the smallest sets of features of the benchmark's families", () => {
  it.each([1, 2, 3, 4, 5, 6])("are those that trying every subset finds (family %i)", (seed) => {
    const family = generatedFamily(7, 10, seed);
    const { sets, proven, complete } = separatingSets(family.features, family.variants);
    expect({ proven, complete }).toEqual({ proven: true, complete: true });
    expect(
      sets.map((set) => [...set].sort((a, b) => Number(a.slice(1)) - Number(b.slice(1))).join(" ")).sort(),
    ).toEqual(smallestByTrial(family));
  });
});
