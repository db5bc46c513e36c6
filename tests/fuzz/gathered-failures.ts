import fc from "fast-check";

export interface Failure {
  readonly seed: number;
  readonly path: string;
  readonly counterexample: string;
  readonly message: string;
}

export interface Gathered {
  readonly cases: number;
  readonly failures: readonly Failure[];
}

/** Failures that differ only in what follows a colon, in numbers and in quoted text are one, where they come from one place. */
function kindOf(problem: unknown): string {
  if (!(problem instanceof Error)) return String(problem);
  const [told = ""] = problem.message.split(":");
  const from = problem.stack?.split("\n").find((line) => /^\s+at /.test(line) && !line.includes("mustBe"));
  return `${told.replace(/"[^"]*"|'[^']*'|\d+/g, "…")} ${from ?? ""}`;
}

/**
 * Tries so many cases, in blocks with a seed each: what is found in one block is made as small as it gets and kept, and the
 * next goes on. The same fault is not made small twice.
 */
export async function gatherFailures<Case extends unknown[]>(
  property: (isKnown: (problem: unknown) => boolean) => fc.IAsyncProperty<Case>,
  {
    cases,
    seed,
    block = 250,
    onProgress,
  }: {
    cases: number;
    seed: number;
    block?: number;
    onProgress?: (cases: number, failures: readonly Failure[]) => void;
  },
): Promise<Gathered> {
  const failures: Failure[] = [];
  const kinds = new Set<string>();
  let done = 0;
  for (let number = 0; done < cases; number++) {
    const found = await fc.check(
      property((problem) => kinds.has(kindOf(problem))),
      { numRuns: Math.min(block, cases - done), seed: (seed + number * 7919) | 0 },
    );
    done += found.numRuns;
    if (found.failed) {
      const error = found.errorInstance;
      const message = error instanceof Error ? (error.stack ?? error.message) : String(error);
      kinds.add(kindOf(error));
      failures.push({
        seed: found.seed,
        path: found.counterexamplePath ?? "",
        counterexample: fc.stringify(found.counterexample),
        message,
      });
    }
    onProgress?.(done, failures);
  }
  return { cases: done, failures };
}
