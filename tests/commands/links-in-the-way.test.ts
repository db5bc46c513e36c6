import {
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { item, smallCollection, writeCollection, writeFiles } from "../collections/collection.ts";
import { siteFiles } from "../collections/site-files.ts";
import { runHere } from "./run-here.ts";

const parts = "parts: { sextant: { standing: core } }\n";
const sound = smallCollection(parts, { "content/items/one/index.md": item("parts: { sextant: present }") });
const scratch = () => mkdtempSync(path.join(tmpdir(), "fittedcase-links-"));

/** What is somebody else's: old files, and folders named as a build might be, by whoever lays a trap. */
function elsewhere(): string {
  const folder = scratch();
  writeFiles(folder, {
    "thesis.txt": "Years of work.",
    "photos/one.jpg": "A picture.",
    "spare/part.txt": "A part.",
    "1-0-public/index.html": "A page.",
  });
  for (const name of readdirSync(folder)) utimesSync(path.join(folder, name), 1, 1);
  return folder;
}

/** Writes a link into a collection, builds, and says what came of it and of what the link leads to. */
async function buildWith(link: string, out: (root: string) => string, files = {}) {
  const root = writeCollection({ ...sound, ...files });
  const target = elsewhere();
  mkdirSync(path.dirname(path.join(root, link)), { recursive: true });
  symlinkSync(target, path.join(root, link));
  const before = [...siteFiles(target)];
  const ran = await runHere(["build", "--root", root, "--out", out(root)], root);
  return { root, ran, target, isUntouched: () => expect([...siteFiles(target)]).toEqual(before) };
}

describe("a link in the folder of a collection", () => {
  const site = (root: string) => path.join(root, "_site");

  it.each([
    ["where the builds lie", "._site.builds", site],
    [
      "where the builds of the preview lie",
      ".cache/fittedcase/preview/.site.builds",
      (root: string) => path.join(root, ".cache/fittedcase/preview/site"),
    ],
    ["where parts of pictures lie", ".cache/fittedcase/parts", site],
    ["where what is known of sites lies", ".cache/fittedcase/standing", site],
    ["where pictures lie", ".cache/fittedcase/site/images", site],
    ["where the cache lies", ".cache/fittedcase", site],
    ["where all caches lie", ".cache", site],
  ])("%s is refused, and what it leads to stays as it was", async (_, link, out) => {
    const { root, ran, isUntouched } = await buildWith(link, out);
    expect(ran.code).toBe(2);
    expect(ran.err).toContain(`Found a link at "${path.join(root, link)}"`);
    isUntouched();
  });

  it("is refused as well where the content has errors", async () => {
    const wrong = { "content/items/one/index.md": item("parts: { sextent: present }") };
    const { ran, isUntouched } = await buildWith("._site.builds", site, wrong);
    expect(ran.code).toBe(2);
    isUntouched();
  });

  it("that somebody has put where the site goes is not replaced", async () => {
    const { root, ran, target, isUntouched } = await buildWith("_site", site);
    expect(ran.code).toBe(2);
    expect(ran.err).toContain(`Found a link at "${path.join(root, "_site")}" that Fittedcase did not build`);
    expect(readlinkSync(path.join(root, "_site"))).toBe(target);
    expect(existsSync(path.join(root, "._site.builds"))).toBe(false);
    isUntouched();
  });
});

describe("what a command makes of a collection", () => {
  it.each([
    ["checklist-one.html", "thesis.txt", ["checklist", "one"]],
    ["sheet.html", "thesis.txt", ["checklist", "one", "--out", "sheet.html"]],
    ["items.csv", "thesis.txt", ["export", "items", "--out", "items.csv"]],
    ["editor-schemas", ".", ["schemas"]],
    ["editor-schemas/item.schema.json", "thesis.txt", ["schemas"]],
  ])("is not written where the link %s leads", async (link, to, args) => {
    const root = writeCollection(sound);
    const target = elsewhere();
    const before = [...siteFiles(target)];
    mkdirSync(path.dirname(path.join(root, link)), { recursive: true });
    symlinkSync(path.join(target, to), path.join(root, link));
    const { code, err } = await runHere(args, root);
    expect(code).toBe(2);
    expect(err).toContain(`Found a link at "${link}"`);
    expect([...siteFiles(target)]).toEqual(before);
  });

  it.each([
    ["content/items/one/index.md", ["checklist", "one"]],
    ["schemas/reference/chest/chest-a.yaml", ["export", "items"]],
    ["schemas/records", ["schemas"]],
  ])("is not written over %s, by whatever path", async (file, args) => {
    const root = writeCollection(sound);
    const byLink = path.join(scratch(), "by-link");
    symlinkSync(root, byLink);
    const before = [...siteFiles(root)];
    for (const out of [file, path.join(byLink, file)]) {
      const { code, err } = await runHere([...args, "--out", out], root);
      expect(code).toBe(2);
      expect(err).toContain("among the collection's own records");
    }
    expect([...siteFiles(root)]).toEqual(before);
  });
});

describe("the folder where builds lie", () => {
  it("is swept of builds of processes that are no more, and of nothing else", async () => {
    const root = writeCollection(sound);
    const builds = path.join(root, "._site.builds");
    // No process has a number beyond 2^22 (proc(5), /proc/sys/kernel/pid_max).
    const dead = [
      "4194305-0-public",
      "4194305-0a1b-private",
      "4194305-0-public-twin",
      "4194305-3f-public-last",
    ];
    const others = ["thesis.txt", "2026-11-27", "photos", "4194305-notes", "4194305-0-public-and-more"];
    for (const name of [...dead, ...others]) writeFiles(path.join(builds, name), { "index.html": "A page." });
    writeFileSync(path.join(builds, "4194305-0-public.link"), "");
    expect((await runHere(["build"], root)).code).toBe(0);
    const [ours, ...more] = readdirSync(builds).filter((name) => !others.includes(name) && name !== "spare");
    expect(more).toEqual([]);
    expect(readlinkSync(path.join(root, "_site"))).toBe(`._site.builds/${ours}`);
    for (const name of others)
      expect(readFileSync(path.join(builds, name, "index.html"), "utf8")).toBe("A page.");
    expect(lstatSync(builds).isDirectory()).toBe(true);
  });
});
