import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const root = fileURLToPath(new URL("..", import.meta.url));

// Whole sites are built and a browser is driven, on two cores.
const patience = {
  root,
  testTimeout: 120_000,
  hookTimeout: 120_000,
  expect: { poll: { timeout: 20_000 } },
  // What tests import is loaded once a worker: loading it for each file took a third of all their time.
  isolate: false,
};

export default defineConfig({
  test: {
    root,
    // Of two cores vitest would use one; much of the time a test waits for a process or a browser.
    maxWorkers: "100%",
    globalSetup: ["tests/scratch-folder.ts"],
    projects: [
      {
        test: { ...patience, name: "rooms", include: ["tests/**/*.test.ts"], exclude: ["tests/browser/**"] },
      },
      {
        test: {
          ...patience,
          name: "browser",
          include: ["tests/browser/**/*.test.ts"],
          globalSetup: ["tests/browser/demonstration.ts"],
        },
      },
    ],
  },
});
