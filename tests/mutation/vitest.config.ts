import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

// Only the tests of what is mutated, all in process: each mutant is one run of those that reach it.
export default defineConfig({
  test: {
    root: fileURLToPath(new URL("../..", import.meta.url)),
    include: ["tests/statistics/*.test.ts", "tests/assessments/*.test.ts"],
    testTimeout: 60_000,
  },
});
