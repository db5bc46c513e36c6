import { separatingSets } from "../../shared/statistics/separating-sets.ts";
import { randomFrom } from "./generate/random.ts";

/** A family of so many variants and features, each of three values, all by chance. */
export function generatedFamily(variants: number, features: number, seed: number) {
  const random = randomFrom(seed);
  const ids = Array.from({ length: features }, (_, at) => `f${at}`);
  return {
    features: ids.map((id) => ({ id, effort: 1 + random.below(3) })),
    variants: Array.from({ length: variants }, (_, at) => ({
      id: `v${at}`,
      values: new Map(ids.map((id) => [id, [random.pick(["a", "b", "c"])]])),
    })),
  };
}

/** All smallest separating sets of 30 variants by 60 features. */
export function benchmarkSeparatingSets(print: (line: string) => void): void {
  const times = Array.from({ length: 5 }, (_, seed) => {
    const { features, variants } = generatedFamily(30, 60, seed + 1);
    const from = performance.now();
    const found = separatingSets(features, variants);
    return { time: performance.now() - from, ...found };
  });
  print("smallest sets of features that separate 30 variants, out of 60 features");
  for (const { time, sets, proven, complete } of times) {
    print(
      `${time.toFixed(0).padStart(7)} ms  ${sets.length} sets of ${sets[0]?.length ?? 0} features, ${proven ? "proven smallest" : "not proven"}, ${complete ? "all of them" : "not all"}`,
    );
  }
}
