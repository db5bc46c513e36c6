import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseEdtf } from "../../shared/dates/edtf-interval.ts";
import { everyFile } from "../../shared/site/every-file.ts";
import { loadCollection } from "../../shared/site/load-collection.ts";
import { renderPage } from "../../templates/render-page.ts";
import { writeFiles } from "../collections/collection.ts";
import { siteFiles } from "../collections/site-files.ts";
import { repository } from "../commands/run.ts";
import { anyChanges, mutate } from "./mutations.ts";

/** `npm run test:fuzz` asks for 100,000. */
const cases = Number(process.env.FUZZ_CASES ?? 2000);

/** A test that everybody runs is the same for everybody; new cases are looked for on demand. */
const seed = process.env.FUZZ_CASES === undefined ? { seed: 20261125 } : {};

const sound = new Map(
  [...siteFiles(path.join(repository, "tests/golden/lanterns/in"))].map(([name, bytes]) => [
    name,
    bytes.toString("utf8"),
  ]),
);

/** Every accepted collection is assessed; a whole site costs more than all the rest, and is made of one in so many. */
const siteEvery = 25;

/** No case takes longer than this, in milliseconds, on the slowest machine that runs it. */
const bound = 20_000;

describe("whatever is done to the files of a collection", () => {
  it(
    `is either reported with its place or makes a site (${cases} cases)`,
    async () => {
      const root = mkdtempSync(path.join(tmpdir(), "fittedcase-fuzz-"));
      writeFiles(root, Object.fromEntries(sound));
      let changed: string[] = [];
      let count = 0;
      await fc.assert(
        fc.asyncProperty(anyChanges, async (changes) => {
          const mutated = mutate(sound, changes);
          for (const name of changed) writeFiles(root, { [name]: sound.get(name) ?? "" });
          changed = [...mutated].filter(([name, text]) => sound.get(name) !== text).map(([name]) => name);
          for (const name of changed) writeFiles(root, { [name]: mutated.get(name) ?? "" });

          const started = performance.now();
          const loaded = loadCollection(root);
          for (const { file, line, column, message, frame } of loaded.diagnostics) {
            expect(file).not.toMatch(/^\/|\.\./);
            expect(line).toBeGreaterThan(0);
            expect(column).toBeGreaterThan(0);
            expect(message).not.toMatch(/undefined|\[object|NaN at|at .*\.[jt]s:/);
            expect(frame).toContain("^");
          }
          const errors = loaded.diagnostics.filter(({ severity }) => severity === "error");
          expect(loaded.sound === null).toBe(errors.length > 0);
          if (loaded.sound && count % siteEvery === 0) {
            const site = await everyFile(root, "public");
            if ("problems" in site) throw new Error(JSON.stringify(site.problems));
            for (const { files, site: around } of site.parts) {
              for (const file of files) {
                expect(file.address).not.toContain("..");
                if (file.kind === "text" && file.address.endsWith(".json")) JSON.parse(file.text);
                if (file.kind === "page")
                  expect(renderPage(file.make(), around)).not.toMatch(/<script>alert|href="javascript:/i);
              }
            }
          }
          count += 1;
          expect(performance.now() - started).toBeLessThan(bound);
        }),
        { numRuns: cases, ...seed },
      );
    },
    cases * 100 + 60_000,
  );
});

describe("whatever is written for a date", () => {
  it("is a date with its ends in order, or none", () => {
    const date = fc.oneof(
      fc.string({ unit: fc.constantFrom(..."0123456789-/.XYES?~%[]{},:TZ ") }),
      fc.string({ unit: "binary" }),
    );
    fc.assert(
      fc.property(date, (text) => {
        const read = parseEdtf(text);
        if (read === null || read.earliest === null || read.latest === null) return;
        expect(read.earliest).toBeLessThanOrEqual(read.latest);
      }),
      { numRuns: cases, ...seed },
    );
  });
});
