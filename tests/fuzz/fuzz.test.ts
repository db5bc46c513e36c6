import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { parseEdtf } from "../../shared/dates/edtf-interval.ts";
import { buildSite } from "../../shared/site/build/build-site.ts";
import { checkCollection } from "../../shared/site/checks/check-collection.ts";
import { everyFile } from "../../shared/site/eleventy/every-file.ts";
import { groupFamilies } from "../../shared/site/groups/family-groups.ts";
import { readTexts } from "../../shared/source/read-texts.ts";
import { differences, siteFiles } from "../collections/site-files.ts";
import { FuzzedFolder } from "./fuzzed-folder.ts";
import { gatherFailures } from "./gathered-failures.ts";
import { expectNumbers, expectOwnNames, expectPlainWords, expectSoundSite } from "./kept-promises.ts";
import { anyChanges, mutate } from "./mutated-files.ts";
import { edtfLike } from "./nasty-values.ts";
import { type SoundCollection, soundCollections } from "./sound-collections.ts";

/** `npm run test:fuzz` asks for 100,000; several processes with a FUZZ_SEED each share the work. */
const cases = Number(process.env.FUZZ_CASES ?? 1000);

/** A test that everybody runs is the same for everybody; new cases are looked for on demand. */
const seed = Number(
  process.env.FUZZ_SEED ?? (process.env.FUZZ_CASES === undefined ? 20261125 : Date.now() % 2 ** 31),
);

/** Every accepted collection is assessed; every page of it, and a site on the disk, are made of one in so many cases. */
const pagesEvery = 200;
const siteEvery = 500;

/** No case takes longer than this, in milliseconds of the processor: a machine that has other things to do is no fault. */
const bound = 10_000;
const spent = (): number => process.cpuUsage().user / 1000;

describe("whatever is done to the files of a collection", () => {
  let sound: readonly SoundCollection[] = [];
  beforeAll(async () => {
    sound = await soundCollections();
  });

  it(
    `is either reported with its place or makes a site (${cases} cases)`,
    async () => {
      const folders = new Map(sound.map((each) => [each, new FuzzedFolder()]));
      const scratch = mkdtempSync(path.join(tmpdir(), "fittedcase-fuzzed-"));
      const out = path.join(scratch, "site");
      const told = { accepted: 0, pages: 0, sites: 0 };
      let [count, longest] = [0, 0];
      let [pagesDue, siteDue] = [false, false];

      const holds = async (of: SoundCollection, changes: Parameters<typeof mutate>[1]) => {
        const { files, isBuilt } = of;
        const folder = folders.get(of) ?? new FuzzedFolder();
        folder.hold(files, mutate(files, changes));
        const started = spent();
        const { sound: accepted, diagnostics } = checkCollection(folder.root);
        // A build cuts what it has read into groups before it knows whether it is sound.
        groupFamilies(readTexts(folder.root));
        expectPlainWords(diagnostics, JSON.stringify(changes));
        expect(accepted === null).toBe(diagnostics.some(({ severity }) => severity === "error"));
        longest = Math.max(longest, spent() - started);
        expect(spent() - started).toBeLessThan(bound);
        count++;
        pagesDue ||= count % pagesEvery === 0;
        siteDue ||= count % siteEvery === 0;
        if (accepted) {
          told.accepted++;
          expectNumbers(accepted.assessments);
          expectOwnNames(accepted.collection);
          if (pagesDue && isBuilt) {
            pagesDue = false;
            told.pages++;
            expectSoundSite(await everyFile(folder.root, count % 2 ? "public" : "private"));
          }
        }
        if (siteDue && isBuilt) {
          siteDue = false;
          const before = told.sites > 0 ? siteFiles(out) : new Map<string, Buffer>();
          const { written, diagnostics: problems } = await buildSite(folder.root, out, "public");
          expect(written === null).toBe(accepted === null);
          if (written) told.sites++;
          else {
            expect(problems.some(({ severity }) => severity === "error")).toBe(true);
            // Nothing is written of what has errors; and the next one is built instead.
            if (told.sites > 0) expect(differences(siteFiles(out), before)).toEqual([]);
            siteDue = true;
          }
        }
      };
      const taken = sound.flatMap((each) => Array.from({ length: each.weight }, () => each));
      const { failures, ...tried } = await gatherFailures(
        (isKnown) =>
          fc.asyncProperty(fc.nat(taken.length - 1), anyChanges, async (which, changes) => {
            const of = taken[which];
            if (!of) return;
            try {
              await holds(of, changes);
            } catch (problem) {
              if (isKnown(problem)) return;
              throw problem;
            }
          }),
        {
          cases,
          seed,
          onProgress(done, found) {
            if (process.env.FUZZ_CASES && done % 1000 < 250)
              process.stderr.write(
                `${JSON.stringify({ done, seed, ...told, longest: Math.round(longest), found })}\n`,
              );
          },
        },
      );
      if (process.env.FUZZ_CASES)
        process.stderr.write(`${JSON.stringify({ ...tried, seed, ...told, longest })}\n`);
      expect(failures).toEqual([]);
      expect(told.accepted).toBeGreaterThan(cases / 5);
      expect(told.sites).toBeGreaterThanOrEqual(Math.floor(cases / siteEvery) - 1);
    },
    cases * 200 + 60_000,
  );
});

describe("whatever is written for a date", () => {
  it("is a date with its ends in order, or none", () => {
    const date = fc.oneof(
      edtfLike,
      fc.string({ unit: fc.constantFrom(..."0123456789-/.XYES?~%[]{},:TZ ") }),
      fc.string({ unit: "binary" }),
    );
    fc.assert(
      fc.property(date, (text) => {
        const read = parseEdtf(text);
        if (read === null || read.earliest === null || read.latest === null) return;
        expect(read.earliest).toBeLessThanOrEqual(read.latest);
      }),
      { numRuns: cases, seed },
    );
  });
});
