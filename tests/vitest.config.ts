import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    root: fileURLToPath(new URL("..", import.meta.url)),
    include: ["tests/**/*.test.ts"],
    globalSetup: ["tests/browser/demonstration.ts"],
    // Whole sites are built and a browser is driven, on two cores.
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
