import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { init } from "../../shared/commands/init/init.ts";
import { siteFiles } from "../collections/site-files.ts";
import { run } from "./run.ts";
import { runHere } from "./run-here.ts";

const scratch = () => mkdtempSync(path.join(tmpdir(), "fittedcase-init-"));

describe("fittedcase init", () => {
  it("writes a collection that passes check and builds", async () => {
    const folder = scratch();
    const made = await run(["init", "my cases", "--title", "Cases: mine", "--language", "en-GB"], folder);
    expect({ code: made.code, err: made.err }).toEqual({ code: 0, err: "" });
    const root = path.join(folder, "my cases");
    expect(readFileSync(path.join(root, "content/collection.yaml"), "utf8")).toContain(
      'title: "Cases: mine"',
    );
    expect((await run(["check"], root)).code).toBe(0);
    expect((await run(["build"], root)).code).toBe(0);
    expect([...siteFiles(path.join(root, "_site")).keys()]).toContain("items/quayside-case/index.html");
    // The commands that it names, as they are printed.
    expect(made.out).toContain('fittedcase check --root "my cases"');
    expect((await run(["explain", "quayside-case"], root)).code).toBe(0);
  });

  it("says that what it wrote is invented", async () => {
    const root = path.join(scratch(), "new");
    await runHere(["init", root, "--yes"], "/");
    for (const [file, bytes] of siteFiles(root)) {
      if (file !== ".gitignore") expect(bytes.toString(), file).toMatch(/invented/i);
    }
  });

  it("keeps whatever a build writes out of version control", async () => {
    const root = path.join(scratch(), "kept");
    await runHere(["init", root, "--yes"], "/");
    const git = (...args: string[]) => execFileSync("git", ["-C", root, ...args], { encoding: "utf8" });
    git("init", "--quiet");
    const untracked = () =>
      git("status", "--porcelain", "--untracked-files=all").trimEnd().split("\n").sort();
    const before = untracked();
    expect(before.length).toBeGreaterThan(5);
    expect((await runHere(["build", "--private"], root)).code).toBe(0);
    expect(untracked()).toEqual(before);
    // Where else a site is to stand nobody can know: that is one link, and its builds are covered.
    expect((await runHere(["build", "--out", "docs"], root)).code).toBe(0);
    expect(untracked()).toEqual([...before, "?? docs"].sort());
  });

  it("asks at a terminal for what the flags leave open", async () => {
    const root = path.join(scratch(), "asked");
    const questions: string[] = [];
    const answers = ["What I have", ""];
    const code = await init.run([root], {
      cwd: "/",
      out: () => {},
      err: () => {},
      ask: async (question) => {
        questions.push(question);
        return answers.shift() ?? "";
      },
    });
    expect(code).toBe(0);
    expect(questions).toHaveLength(2);
    const settings = readFileSync(path.join(root, "content/collection.yaml"), "utf8");
    expect(settings).toMatch(/^title: What I have$/m);
    expect(settings).toMatch(/^language: en$/m);
  });

  it("takes an empty folder, and one with nothing but what is out of sight", async () => {
    const empty = scratch();
    const { code, out } = await runHere(["init", "."], empty);
    expect(code).toBe(0);
    expect(out).toContain("Wrote 8 files into this folder.");
    const again = await runHere(["init", "."], empty);
    expect(again.err).toContain(
      'Found ".gitignore" and 2 more in this folder; expected a new or empty folder.',
    );
    const repository = scratch();
    mkdirSync(path.join(repository, ".git"));
    writeFileSync(path.join(repository, ".DS_Store"), "");
    expect((await runHere(["init", repository], "/")).code).toBe(0);
  });

  it.each([
    [["init"], "expected one"],
    [["init", "taken"], 'Found "notes.txt" in "taken"; expected a new or empty folder.'],
    [["init", "file.txt"], "Found a file"],
    [["init", "new", "--language", "english please"], "BCP 47"],
    [["init", "new", "--title", " "], "empty title"],
  ])("%j is refused, and writes nothing", async (args, said) => {
    const folder = scratch();
    mkdirSync(path.join(folder, "taken"));
    writeFileSync(path.join(folder, "taken/notes.txt"), "mine");
    writeFileSync(path.join(folder, "file.txt"), "mine");
    const { code, err } = await runHere(args, folder);
    expect(code).toBe(2);
    expect(err).toContain(said);
    expect(readdirSync(folder).sort()).toEqual(["file.txt", "taken"]);
    expect(readdirSync(path.join(folder, "taken"))).toEqual(["notes.txt"]);
  });
});
