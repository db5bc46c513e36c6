import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { command, repository } from "../commands/run.ts";
import { generateCollection } from "./generate-collection.ts";
import { previewDelays } from "./preview.ts";
import { timesWithin } from "./times-within.ts";
import { writeReport } from "./write-report.ts";

interface Used {
  /** Seconds of processor time, of all threads. */
  readonly cpu: number;
  readonly wall: number;
  /** Peak, in megabytes. */
  readonly memory: number;
}

/** A line of the table: what was measured, what was to be reached. */
interface Line {
  readonly what: string;
  readonly measured: number;
  readonly atMost: number;
  readonly unit: "× limit" | "MB" | "×" | "ms" | "files";
}

function use(script: string, args: readonly string[], scratch: string): Used {
  const report = path.join(scratch, "used.json");
  const hook = pathToFileURL(path.join(repository, "tests/benchmarks/used-at-exit.mjs")).href;
  const started = performance.now();
  const { status, stderr } = spawnSync(process.execPath, ["--import", hook, script, ...args], {
    env: { ...process.env, USED_AT_EXIT: report },
    encoding: "utf8",
  });
  if (status !== 0) throw new Error(`${path.basename(script)} failed.\n${stderr}`);
  return {
    wall: (performance.now() - started) / 1000,
    ...(JSON.parse(readFileSync(report, "utf8")) as Omit<Used, "wall">),
  };
}

/** The size of every file below a folder, and which file it is: one that is only linked is the same. */
function filesOf(folder: string): { readonly size: number; readonly ino: number }[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => statSync(path.join(entry.parentPath, entry.name)));
}

interface Measured {
  readonly files: number;
  readonly bytes: number;
  readonly limit: Used;
  readonly full: Used;
  readonly again: Used;
  readonly edited: Used;
  readonly rewritten: { readonly again: number; readonly edited: number };
}

function measure(root: string, scratch: string): Measured {
  const out = path.join(scratch, "site");
  const build = () => use(command, ["build", "--root", root, "--out", out], scratch);
  const full = build();
  const files = filesOf(out);
  const sizes = path.join(scratch, "sizes.json");
  writeFileSync(sizes, JSON.stringify(files.map(({ size }) => size)));
  const plain = path.join(repository, "tests/benchmarks/plain-limit.mjs");
  const limit = use(plain, [root, path.join(scratch, "plain"), sizes], scratch);
  rmSync(path.join(scratch, "plain"), { recursive: true });
  let known = new Set(files.map(({ ino }) => ino));
  const rewritten = () => {
    const now = filesOf(out);
    const count = now.filter(({ ino }) => !known.has(ino)).length;
    known = new Set(now.map(({ ino }) => ino));
    return count;
  };
  const again = build();
  const ofAgain = rewritten();
  const [item = ""] = readdirSync(path.join(root, "content/items"));
  const file = path.join(root, "content/items", item, "index.md");
  writeFileSync(file, `${readFileSync(file, "utf8")}One more word.\n`);
  const edited = build();
  return {
    files: files.length,
    bytes: files.reduce((sum, { size }) => sum + size, 0),
    limit,
    full,
    again,
    edited,
    rewritten: { again: ofAgain, edited: rewritten() },
  };
}

const seconds = (used: Used) =>
  `${used.cpu.toFixed(1)} s of processor, ${used.wall.toFixed(1)} s, ${used.memory.toFixed(0)} MB`;

/** A whole build against the plain-Node limit, in one run on one machine: only the ratios mean anything elsewhere. */
export async function benchmarkBuild(items: number, print: (line: string) => void): Promise<void> {
  const scratch = mkdtempSync(path.join(tmpdir(), "bench-build-"));
  try {
    const collectionOf = (count: number): string => {
      const root = path.join(scratch, `collection-${count}`);
      generateCollection({ folder: root, items: count });
      return root;
    };
    const tenth = Math.max(100, Math.round(items / 10));
    const small = measure(collectionOf(tenth), scratch);
    rmSync(path.join(scratch, "site"), { recursive: true, force: true });
    const root = collectionOf(items);
    const whole = measure(root, scratch);
    const start = use(command, ["--version"], scratch);
    const preview = await previewDelays(root, 20);
    const { assessing, searching } = timesWithin(root);

    const { limit, full, again, edited } = whole;
    const lines: Line[] = [
      { what: "full build, processor", measured: full.cpu / limit.cpu, atMost: 1.5, unit: "× limit" },
      { what: "full build, elapsed", measured: full.wall / limit.wall, atMost: 1, unit: "× limit" },
      { what: "peak memory", measured: full.memory, atMost: 400, unit: "MB" },
      {
        what: `peak memory, to that of ${tenth} items`,
        measured: full.memory / small.full.memory,
        atMost: 1.5,
        unit: "×",
      },
      {
        what: `processor, to that of ${tenth} items, after start-up`,
        measured: (full.cpu - start.cpu) / (small.full.cpu - start.cpu),
        atMost: (10.5 * items) / tenth / 10,
        unit: "×",
      },
      { what: "nothing changed, elapsed", measured: again.wall / limit.wall, atMost: 0.25, unit: "× limit" },
      { what: "nothing changed, files rewritten", measured: whole.rewritten.again, atMost: 0, unit: "files" },
      {
        what: "one item changed, elapsed",
        measured: edited.wall / limit.wall,
        atMost: 0.35,
        unit: "× limit",
      },
      {
        what: "one item changed, its page on screen, median",
        measured: preview.page.median,
        atMost: 200,
        unit: "ms",
      },
      {
        what: "one item changed, its page on screen, 95th percentile",
        measured: preview.page.most,
        atMost: 300,
        unit: "ms",
      },
      {
        what: "one item changed, its lists and search, 95th percentile",
        measured: preview.lists.most,
        atMost: 1000,
        unit: "ms",
      },
      { what: "search index", measured: searching / limit.cpu, atMost: 0.3, unit: "× limit" },
      { what: "all assessments", measured: assessing / limit.cpu, atMost: 0.3, unit: "× limit" },
    ];
    print(`${items} items: ${whole.files} files, ${(whole.bytes / 1e6).toFixed(1)} MB`);
    print(`  limit             ${seconds(limit)}`);
    print(`  full build        ${seconds(full)}`);
    print(`  nothing changed   ${seconds(again)}`);
    print(`  one item changed  ${seconds(edited)}, ${whole.rewritten.edited} files rewritten`);
    print("");
    for (const { what, measured, atMost, unit } of lines) {
      const figure = (value: number) =>
        unit === "MB" || unit === "ms" || unit === "files" ? value.toFixed(0) : value.toFixed(2);
      print(
        `${figure(measured).padStart(7)} ${unit.padEnd(8)} at most ${figure(atMost).padStart(5)}  ${measured <= atMost ? "  " : "! "} ${what}`,
      );
    }
    const report = path.join(repository, ".cache/bench/build.json");
    writeReport(report, { items, tenth, lines, whole, small });
    print(`\nThe same as JSON: ${path.relative(repository, report)}`);
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}
