import { execFileSync } from "node:child_process";
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readlinkSync,
  rmSync,
  watch,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { randomFrom } from "../benchmarks/generate/random.ts";
import { item, smallCollection, writeCollection, writeFiles } from "../collections/collection.ts";
import { differences, siteFiles } from "../collections/site-files.ts";
import { type Ran, run, start } from "./run.ts";
import { runHere } from "./run-here.ts";

const parts = "parts:\n  oil-bottle: { standing: consumable }\n  sextant: { standing: core }\n";
const one = item("parts: { sextant: present }");
const sound = smallCollection(parts, { "content/items/one/index.md": one });
const scratch = () => mkdtempSync(path.join(tmpdir(), "fittedcase-good-"));
const isSuperuser = process.getuid?.() === 0;
/** Moments are by chance, and the same again: SEED=7 for other ones. */
const random = randomFrom(Number(process.env.SEED ?? 1));

const words = (root: string, out: string) => ["build", "--root", root, "--out", out];
const build = (root: string, out: string) => run(words(root, out), root);
/** For builds to which nothing happens. */
const buildHere = (root: string, out: string) => runHere(words(root, out), root);
const isWordOfAFault = ({ out, err }: Ran) => /^\s+at |undefined|\[object/m.test(out + err);

/** Each has a collection and a folder for sites of its own; the first site is built once, and stands in all of them. */
let first: { readonly folder: string; readonly milliseconds: number };
beforeAll(async () => {
  const folder = scratch();
  const started = performance.now();
  expect((await build(writeCollection(sound), path.join(folder, "site"))).code).toBe(0);
  first = { folder, milliseconds: performance.now() - started };
});

/** A site that stands, with what is in it; nothing is remembered of how it was made. */
function standing() {
  const root = writeCollection(sound);
  const folder = scratch();
  const out = path.join(folder, "site");
  cpSync(first.folder, folder, { recursive: true, verbatimSymlinks: true });
  return { root, folder, out, before: siteFiles(out) };
}

/** So that the next build has something to do. */
const forget = (root: string) => rmSync(path.join(root, ".cache"), { recursive: true, force: true });

/** What builds left behind is swept up by the next: the site that stands is all there is, and its spare. */
async function expectRecovery(root: string, out: string, before: ReadonlyMap<string, Buffer>) {
  expect((await buildHere(root, out)).code).toBe(0);
  expect(differences(siteFiles(out), before)).toEqual([]);
  const builds = readdirSync(path.join(path.dirname(out), `.${path.basename(out)}.builds`));
  expect(builds.filter((name) => name !== "spare")).toHaveLength(1);
}

describe("the last good site stays as it was", () => {
  it("when a build is killed, at whatever moment", async () => {
    const { root, out, before } = standing();
    for (const signal of ["SIGKILL", "SIGTERM", "SIGKILL", "SIGINT", "SIGKILL", "SIGHUP"] as const) {
      const moment = random.next() * first.milliseconds;
      forget(root);
      const running = start(["build", "--root", root, "--out", out], root);
      setTimeout(() => running.kill(signal), moment);
      await running.done;
      expect(differences(siteFiles(out), before), `${signal} after ${moment} ms`).toEqual([]);
    }
    await expectRecovery(root, out, before);
  });

  it("when a build is killed as it puts its site in place", async () => {
    const { root, folder, out, before } = standing();
    // What comes before the link is turned, what is the link, and what comes after it.
    for (const sign of [/-twin$/, /\.link$/, /^site$/, /-last$|^spare$/]) {
      forget(root);
      const running = start(["build", "--root", root, "--out", out], root);
      const watchers = [folder, path.join(folder, ".site.builds")].map((where) =>
        watch(where, (_, name) => name !== null && sign.test(name) && running.kill("SIGKILL")),
      );
      const ran = await running.done;
      for (const watcher of watchers) watcher.close();
      expect(ran.signal ?? ran.code, `${sign}`).toBe("SIGKILL");
      expect(differences(siteFiles(out), before), `${sign}`).toEqual([]);
    }
    await expectRecovery(root, out, before);
  });

  it("when a file goes while it is read, or comes back", async () => {
    const { root, out } = standing();
    const two = { "content/items/two/index.md": item("serial: H2") };
    const without = siteFiles(out);
    writeFiles(root, two);
    await buildHere(root, out);
    const withIt = siteFiles(out);
    for (let round = 0; round < 4; round++) {
      const running = start(["build", "--root", root, "--out", out], root);
      const moment = setTimeout(
        () => {
          rmSync(path.join(root, "content/items/two"), { recursive: true, force: true });
        },
        200 + random.next() * 700,
      );
      const ran = await running.done;
      clearTimeout(moment);
      // The machine refuses nothing: what is there no longer is an error of the content, or no error.
      expect([0, 1]).toContain(ran.code);
      expect(isWordOfAFault(ran), ran.out + ran.err).toBe(false);
      const now = siteFiles(out);
      expect([differences(now, without), differences(now, withIt)]).toContainEqual([]);
      writeFiles(root, two);
    }
  });

  it("when two builds run at once: one whole site", async () => {
    const { root, out, before } = standing();
    const both = await Promise.all([build(root, out), build(root, out)]);
    expect(both.map(({ code, err }) => [code, err])).toEqual([
      [0, ""],
      [0, ""],
    ]);
    expect(differences(siteFiles(out), before)).toEqual([]);
  });

  it("when its folder may not be written, and says which", async () => {
    const { root, folder, out, before } = standing();
    forget(root);
    const uid = isSuperuser ? 65_534 : undefined;
    execFileSync("chmod", ["-R", "a+rX", root, folder]);
    chmodSync(folder, 0o555);
    chmodSync(path.join(folder, ".site.builds"), 0o555);
    const ran = await start(["build", "--root", root, "--out", out], root, {}, { uid }).done;
    chmodSync(folder, 0o755);
    chmodSync(path.join(folder, ".site.builds"), 0o755);
    expect(ran.code).toBe(2);
    expect(ran.err).toMatch(/The system refused: EACCES: permission denied, .*site\.builds/);
    expect(isWordOfAFault(ran)).toBe(false);
    expect(differences(siteFiles(out), before)).toEqual([]);
    await expectRecovery(root, out, before);
  });

  it("when what it replaces cannot be taken away: the new site stands, and the old one is named", async () => {
    const { root, folder, out, before } = standing();
    const builds = path.join(folder, ".site.builds");
    const left = path.join(builds, path.basename(readlinkSync(out)));
    const uid = isSuperuser ? 65_534 : undefined;
    execFileSync("chmod", ["-R", "a+rwX", root, folder]);
    chmodSync(path.join(left, "items"), 0o555);
    const edited = { "content/items/one/index.md": one.replace("sextant: present", "sextant: absent") };
    for (const files of [edited, {}]) {
      writeFiles(root, files);
      const ran = await start(["build", "--root", root, "--out", out], root, {}, { uid }).done;
      expect(ran.code, ran.err).toBe(0);
      expect(ran.err).toMatch(/^Left over from an earlier build, for you to remove: .*EACCES/);
      expect(ran.err).toContain(left);
      expect(existsSync(path.join(left, "items"))).toBe(true);
      expect(differences(siteFiles(out), before)).toContain("items/one/index.html");
    }
    chmodSync(path.join(left, "items"), 0o755);
    writeFiles(root, sound);
    await expectRecovery(root, out, before);
  });

  it("when a folder of the content may not be read, which is an error of its own", async () => {
    const { root, folder, out, before } = standing();
    const uid = isSuperuser ? 65_534 : undefined;
    mkdirSync(path.join(root, "content/items/shut"));
    execFileSync("chmod", ["-R", "a+rX", root]);
    execFileSync("chmod", ["-R", "a+rwX", folder]);
    const shut = path.join(root, "content/items/shut");
    chmodSync(shut, 0);
    const ran = await start(["build", "--root", root, "--out", out], root, {}, { uid }).done;
    chmodSync(shut, 0o755);
    expect(ran.code).toBe(1);
    expect(ran.err).toContain("content/items/shut:1:1  error  unreadable-file");
    expect(differences(siteFiles(out), before)).toEqual([]);
  });

  it("when a file stands where its folder should be", async () => {
    const { root } = standing();
    const file = path.join(scratch(), "file");
    writeFileSync(file, "");
    const ran = await build(root, path.join(file, "site"));
    expect(ran.code).toBe(2);
    expect(isWordOfAFault(ran)).toBe(false);
    expect(ran.err).toContain(file);
  });
});

describe("on a disk that is full", () => {
  const mounted: string[] = [];
  afterAll(() => {
    for (const folder of mounted) execFileSync("umount", [folder]);
  });

  /** A real file system in memory; null where this machine lets nobody mount one. */
  function smallDisk(size: string): string | null {
    const folder = scratch();
    try {
      execFileSync("mount", ["-t", "tmpfs", "-o", `size=${size}`, "tmpfs", folder], { stdio: "ignore" });
    } catch {
      return null;
    }
    mounted.push(folder);
    return folder;
  }

  it("a build says so, the site that stood stays, and the next build recovers when there is room", async ({
    skip,
  }) => {
    const { root, before } = standing();
    const bytes = [...before.values()].reduce((sum, { length }) => sum + 4096 * Math.ceil(length / 4096), 0);
    const disk = smallDisk(`${Math.ceil((bytes * 1.5) / 1024)}k`);
    if (disk === null) return skip("nobody may mount a file system here; the next test sets a limit instead");
    const out = path.join(disk, "site");
    expect((await buildHere(root, out)).code).toBe(0);
    expect(differences(siteFiles(out), before)).toEqual([]);
    forget(root);
    const ran = await build(root, out);
    expect(ran.code).toBe(2);
    expect(ran.err).toMatch(/^The system refused: ENOSPC: no space left on device/);
    expect(isWordOfAFault(ran)).toBe(false);
    expect(differences(siteFiles(out), before)).toEqual([]);
    execFileSync("mount", ["-o", `remount,size=${Math.ceil((bytes * 3) / 1024)}k`, disk]);
    await expectRecovery(root, out, before);
  });

  it("or where no file may grow: the site that stood stays, and the next build recovers", async () => {
    const { root, out, before } = standing();
    forget(root);
    const limit = "ulimit -f 16";
    const elsewhere = scratch();
    const ran = await start(["build", "--root", root, "--out", out], elsewhere, {}, { limit }).done;
    expect(ran.code).not.toBe(0);
    expect(readdirSync(elsewhere)).toEqual([]);
    expect(isWordOfAFault(ran)).toBe(false);
    expect(differences(siteFiles(out), before)).toEqual([]);
    await expectRecovery(root, out, before);
  });
});
