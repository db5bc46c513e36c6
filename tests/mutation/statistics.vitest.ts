import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

// Only the tests of what is mutated, all in process. Mutated, the hardest proof takes minutes.
export default defineConfig({
  test: {
    root: fileURLToPath(new URL("../..", import.meta.url)),
    include: ["tests/statistics/*.test.ts"],
    testTimeout: 300_000,
  },
});
