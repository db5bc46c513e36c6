/**
 * Runs the tests that `bundle-tests.ts` has put into one file, in the process that asks for it, which keeps them
 * loaded: a mutant is switched on, its tests are run until one fails, and most take some milliseconds. A mutant that
 * works while a module is loaded gets a process of its own (`reloadEnvironment: false`), and so does what follows a
 * mutant that never ends.
 */
import { mkdirSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { declareFactoryPlugin, PluginKind } from "@stryker-mutator/api/plugin";
import {
  DryRunStatus,
  determineHitLimitReached,
  TestStatus,
  toMutantRunResult,
} from "@stryker-mutator/api/test-runner";

/** What instrumented code asks which mutant it is. */
// biome-ignore lint/suspicious/noAssignInExpressions: made where it is not there yet
const switches = (globalThis.__stryker__ ??= {});

class InProcessRunner {
  #tests = null;
  /** How long each took when it last ran: the quick ones go first. */
  #costs = new Map();
  #isWarm = false;

  capabilities() {
    return { reloadEnvironment: false };
  }

  /** Folders that tests make go with the sandbox. */
  init() {
    process.env.TMPDIR = path.resolve(".cache/tmp");
    mkdirSync(process.env.TMPDIR, { recursive: true });
  }

  async dryRun() {
    const tests = await this.#load();
    this.#isWarm = true;
    const results = [];
    for (const test of tests) {
      switches.currentTestId = test.name;
      results.push(await this.#run(test));
      switches.currentTestId = undefined;
    }
    return { status: DryRunStatus.Complete, tests: results, mutantCoverage: switches.mutantCoverage };
  }

  async mutantRun({ activeMutant, mutantActivation, testFilter, hitLimit, disableBail }) {
    switches.activeMutant = mutantActivation === "static" ? activeMutant.id : undefined;
    switches.hitCount = hitLimit === undefined ? undefined : 0;
    switches.hitLimit = hitLimit;
    let tests;
    try {
      tests = await this.#load();
    } catch (error) {
      return toMutantRunResult({
        status: DryRunStatus.Complete,
        tests: [failed("loading", "loading", 0, error)],
      });
    }
    if (mutantActivation !== "static") await this.#warmUp(tests);
    switches.activeMutant = activeMutant.id;
    const wanted = testFilter && new Set(testFilter);
    const cost = ({ name }) => this.#costs.get(name) ?? 0;
    const chosen = tests.filter(({ name }) => !wanted || wanted.has(name)).sort((a, b) => cost(a) - cost(b));
    const results = [];
    for (const test of chosen) {
      const result = await this.#run(test);
      results.push(result);
      if (result.status === TestStatus.Failed && !disableBail) break;
    }
    switches.activeMutant = undefined;
    const endless = determineHitLimitReached(switches.hitCount, switches.hitLimit);
    return toMutantRunResult(endless ?? { status: DryRunStatus.Complete, tests: results });
  }

  /** What modules keep from one call to the next is kept from code as it stands, and from no mutant. */
  async #warmUp(tests) {
    if (this.#isWarm) return;
    this.#isWarm = true;
    for (const test of tests) await this.#run(test);
  }

  async #load() {
    if (!this.#tests) {
      const bundle = await import(pathToFileURL(path.resolve(".cache/bundled/tests.mjs")).href);
      this.#tests = bundle.described;
    }
    return this.#tests;
  }

  async #run({ name, run }) {
    const start = performance.now();
    const taken = () => Math.round(performance.now() - start);
    try {
      await run();
      this.#costs.set(name, taken());
      return { id: name, name, timeSpentMs: taken(), status: TestStatus.Success };
    } catch (error) {
      return failed(name, name, taken(), error);
    }
  }
}

const failed = (id, name, timeSpentMs, error) => ({
  id,
  name,
  timeSpentMs,
  status: TestStatus.Failed,
  failureMessage: String(error?.message ?? error).slice(0, 2000) || "It failed without a word.",
});

export const strykerPlugins = [
  declareFactoryPlugin(PluginKind.TestRunner, "in-process", () => new InProcessRunner()),
];
