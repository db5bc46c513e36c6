import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

// Only the tests of what is mutated, all in process: each mutant is one run of those that reach it.
export default defineConfig({
  test: {
    root: fileURLToPath(new URL("../..", import.meta.url)),
    include: ["tests/assessments/**/*.test.ts"],
    // It reads the whole demonstration, which takes too long for each of two thousand mutants.
    exclude: ["tests/assessments/recomputed.test.ts"],
    testTimeout: 120_000,
  },
});
