/**
 * `node --import ./tests/benchmarks/typescript.mjs tests/mutation/bundle-tests.ts ROOM`: all tests of a room, and all
 * that they import, in one file that loads in a quarter of a second, for `in-process.mjs` to run.
 */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { rolldown } from "rolldown";

const [room = ""] = process.argv.slice(2);
const folder = path.resolve("tests", room);
const described = path.resolve("tests/mutation/described.ts");

/** The one reads the whole demonstration, for each of two thousand mutants; the other loads sources as they stand. */
const leftOut = ["recomputed.test.ts", "docstrings.test.ts"];

/** A mutant is done with at the first test that fails: those that read a whole collection from files come last. */
const isSlow = (file: string) =>
  readFileSync(path.join(folder, file), "utf8").includes("/collections/collection.ts");

/** `MUTATION_TESTS=direct`: without these, for a first look that takes a tenth of the time. */
const isWanted = (file: string) => process.env.MUTATION_TESTS !== "direct" || !isSlow(file);

const files = readdirSync(folder, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".test.ts") && !leftOut.includes(file) && isWanted(file))
  .sort((a, b) => Number(isSlow(a)) - Number(isSlow(b)) || (a < b ? -1 : 1));

const entry = "all-tests";
const bundle = await rolldown({
  input: { tests: entry },
  platform: "node",
  external: (id, importer) => id.startsWith("node:") || (id === "vitest" && importer === described),
  checks: { eval: false },
  plugins: [
    {
      name: entry,
      resolveId: (id, importer) =>
        id === entry ? id : id === "vitest" && importer !== described ? described : null,
      load: (id) =>
        id === entry
          ? [
              ...files.map((file) => `import ${JSON.stringify(path.join(folder, file))};`),
              `export { described } from ${JSON.stringify(described)};`,
            ].join("\n")
          : null,
      // What lies beside a module is read from where the module was.
      transform: (code, id) =>
        code.includes("import.meta.url")
          ? code.replaceAll("import.meta.url", JSON.stringify(pathToFileURL(id).href))
          : null,
    },
  ],
});
await bundle.write({ dir: ".cache/bundled", format: "esm", entryFileNames: "[name].mjs" });
