import {
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { item, smallCollection, writeCollection, writeFiles } from "../collections/collection.ts";
import { differences, siteFiles } from "../collections/site-files.ts";
import { run } from "./run.ts";
import { runHere } from "./run-here.ts";

const parts = "parts:\n  oil-bottle: { standing: consumable }\n  sextant: { standing: core }\n";
const sound = smallCollection(parts, { "content/items/one/index.md": item("parts: { sextant: present }") });
const broken = { "content/items/one/index.md": item("parts: { sextent: present }") };
const scratch = () => mkdtempSync(path.join(tmpdir(), "fittedcase-out-"));

describe("fittedcase build", () => {
  it("writes every page and data file of the contract, from any current folder", async () => {
    const root = writeCollection({
      ...sound,
      "content/articles/essay.md": "---\ntitle: Essay\n---\nText.\n",
      "content/sightings/log.csv": "seen,variant,kind\n2001,chest-a,offer\n",
    });
    const out = path.join(scratch(), "site");
    const { code, out: said, err } = await run(["build", "--root", root, "--out", out], "/");
    expect(err).toBe("");
    expect(code).toBe(0);
    expect(said).toMatch(/^1 item, \d+ pages; \d+ files written, 0 unchanged; 2 warnings; [\d.]+ s\./);
    const files = [...siteFiles(out).keys()];
    for (const expected of [
      "index.html",
      "404.html",
      "items/index.html",
      "items/one/index.html",
      "families/chest/index.html",
      "variants/chest-a/index.html",
      "articles/essay/index.html",
      "sources/index.html",
      "methods/index.html",
      "sightings/index.html",
      "sitemap.xml",
      "feed.xml",
      "data/collection.json",
      "data/items.csv",
      "data/items/one.json",
      "data/variants/chest-a.json",
    ]) {
      expect(files).toContain(expected);
    }
  });

  it("writes below the collection's folder where no --out is given, public and private apart", async () => {
    const root = writeCollection(sound);
    expect((await runHere(["build"], root)).code).toBe(0);
    expect((await runHere(["build", "--private"], root)).out).toMatch(/not for publication/);
    expect(existsSync(path.join(root, "_site/index.html"))).toBe(true);
    const own = readFileSync(path.join(root, "_private/index.html"), "utf8");
    expect(own).toMatch(/<meta name="robots" content="noindex/);
    expect(existsSync(path.join(root, "_private/sitemap.xml"))).toBe(false);
  });

  it("refuses to put the owner's site where the public one stands, and the other way round", async () => {
    const root = writeCollection(sound);
    const out = path.join(scratch(), "published");
    const build = (...more: string[]) => runHere(["build", "--out", out, ...more], root);
    for (const [first, second, found] of [
      [[], ["--private"], "public"],
      [["--private"], [], "private"],
    ] as const) {
      expect((await build(...first)).code).toBe(0);
      // What is known of a site goes with the cache; whom it is for does not.
      rmSync(path.join(root, ".cache"), { recursive: true });
      const before = siteFiles(out);
      const { code, err } = await build(...second);
      expect(code).toBe(2);
      expect(err).toContain(`the ${found} site's folder or lies in it, as --out of a`);
      expect(differences(siteFiles(out), before)).toEqual([]);
      expect((await build(...first)).code).toBe(0);
      rmSync(out);
    }
  });

  it.each([
    ["_site", ["--private"]],
    ["_site/owner", ["--private"]],
    ["_private", []],
    ["_private/for-all", []],
  ])("leaves %s to whom it is for, even before anything stands there", async (folder, more) => {
    const root = writeCollection(sound);
    const { code, err } = await runHere(["build", "--out", folder, ...more], root);
    expect(code, err).toBe(2);
    expect(existsSync(path.join(root, folder))).toBe(false);
  });

  it("puts no site into that of others, by whatever path", async () => {
    const root = writeCollection(sound);
    const elsewhere = path.join(scratch(), "published");
    symlinkSync(root, path.join(path.dirname(elsewhere), "by-link"));
    const byLink = path.join(path.dirname(elsewhere), "by-link");
    const refusedAt = async (out: string, from = root) => {
      const { code, err } = await runHere(["build", "--private", "--root", from, "--out", out], root);
      expect(code, out).toBe(2);
      expect(err).toContain("the public site's folder");
    };
    await refusedAt(path.join(realpathSync(root), "_site"), byLink);
    await refusedAt(path.join(byLink, "_site/owner"));
    expect((await runHere(["build"], root)).code).toBe(0);
    expect((await runHere(["build", "--out", elsewhere], root)).code).toBe(0);
    const before = siteFiles(elsewhere);
    symlinkSync(elsewhere, path.join(path.dirname(elsewhere), "served"));
    for (const out of [
      path.join(root, "_site/owner"),
      path.join(byLink, "_site/deep/owner"),
      path.join(elsewhere, "owner"),
      path.join(path.dirname(elsewhere), "served"),
      path.join(realpathSync(elsewhere), "owner"),
    ])
      await refusedAt(out);
    expect(readdirSync(elsewhere)).not.toContain(".owner.builds");
    expect(differences(siteFiles(elsewhere), before)).toEqual([]);
  });

  it("gives the same bytes again, from another folder and in another time zone and locale", async () => {
    const [first, second] = [path.join(scratch(), "a"), path.join(scratch(), "b")];
    const root = writeCollection(sound);
    await run(["build", "--root", root, "--out", first], root, {
      TZ: "Pacific/Kiritimati",
      LC_ALL: "de_DE.UTF-8",
    });
    await run(["build", "--root", writeCollection(sound), "--out", second], "/", {
      TZ: "America/Adak",
      LC_ALL: "C",
    });
    expect(differences(siteFiles(second), siteFiles(first))).toEqual([]);
  });

  it("writes nothing where the content has errors, and leaves the last good site as it was", async () => {
    const root = writeCollection(sound);
    const out = path.join(scratch(), "site");
    await runHere(["build", "--root", root, "--out", out], root);
    const before = siteFiles(out);
    const target = realpathSync(out);
    writeFiles(root, broken);
    const { code, err } = await runHere(["build", "--root", root, "--out", out], root);
    expect(code).toBe(1);
    expect(err).toContain("content/items/one/index.md:4:10  error  unknown-part");
    expect(err).toContain("Nothing was written.");
    expect(differences(siteFiles(out), before)).toEqual([]);
    expect(realpathSync(out)).toBe(target);
    const never = path.join(scratch(), "never");
    await runHere(["build", "--root", root, "--out", never], root);
    expect(existsSync(never)).toBe(false);
  });

  it("fills an empty folder, and refuses one that it did not build", async () => {
    const root = writeCollection(sound);
    const empty = scratch();
    expect((await runHere(["build", "--root", root, "--out", empty], root)).code).toBe(0);
    expect(lstatSync(empty).isSymbolicLink()).toBe(true);
    const full = scratch();
    writeFileSync(path.join(full, "mine.txt"), "");
    const { code, err } = await runHere(["build", "--root", root, "--out", full], root);
    expect(code).toBe(2);
    expect(err).toContain("did not build");
    expect(readdirSync(full)).toEqual(["mine.txt"]);
  });

  it.each(["content/out", "content/items/one/deep/out", "schemas/out", "templates/out", "linked/out"])(
    "refuses %s, where the collection itself lies, and leaves it sound",
    async (inside) => {
      const root = writeCollection({ ...sound, "templates/styles/own.css": "" });
      symlinkSync(path.join(root, "content"), path.join(root, "linked"));
      const before = [...siteFiles(root).keys()];
      const { code, err } = await runHere(["build", "--root", root, "--out", path.join(root, inside)], root);
      expect(code).toBe(2);
      expect(err).toMatch(/^Found ".*out", inside (?:content|schemas|templates)\//);
      expect(err).toContain("expected a folder outside it");
      expect([...siteFiles(root).keys()]).toEqual(before);
    },
  );

  it("runs nothing and picks up nothing that lies in the content", async () => {
    const root = writeCollection({
      ...sound,
      "content/content.11tydata.js": "throw new Error('ran');",
      "content/items/one/evil.11ty.js": "throw new Error('ran');",
      "content/items/items.11tydata.json": '{ "permalink": "/stolen/" }',
      ".eleventy.js": "throw new Error('ran');",
      "content/_data/evil.js": "throw new Error('ran');",
    });
    const out = path.join(scratch(), "site");
    const { code, err } = await run(["build", "--root", root, "--out", out], root);
    expect(err).toBe("");
    expect(code).toBe(0);
    expect(existsSync(path.join(out, "stolen"))).toBe(false);
  });

  it("renders no raw HTML, and leaves braces as they were typed", async () => {
    const text = `${item("")}\n<script>alert(1)</script>\n\n{{ braces }} and {% tags %}\n\n[a](javascript:alert(1))\n`;
    const out = path.join(scratch(), "site");
    const root = writeCollection({ ...sound, "content/items/one/index.md": text });
    await runHere(["build", "--root", root, "--out", out], root);
    const page = readFileSync(path.join(out, "items/one/index.html"), "utf8");
    expect(page).toContain("{{ braces }} and {% tags %}");
    expect(page).toContain("&lt;script&gt;alert(1)&lt;/script&gt;");
    expect(page).not.toContain('href="javascript:');
  });

  it("lets a user's own template and style sheet stand in for ours, a file at a time", async () => {
    const root = writeCollection({
      ...sound,
      "templates/pages/missing.js": "export default () => '<h1>Lost</h1>';",
      "templates/styles/99-own.css": "body { color: rebeccapurple; }",
    });
    const out = path.join(scratch(), "site");
    const { code, err } = await runHere(["build", "--root", root, "--out", out], root);
    expect(code).toBe(0);
    expect(err).toBe("This collection contains code, which is run: templates/pages/missing.js.\n");
    expect(readFileSync(path.join(out, "404.html"), "utf8")).toContain("<h1>Lost</h1>");
    const style =
      [...siteFiles(out)].find(([file]) => /assets\/style\..*\.css$/.test(file))?.[1].toString() ?? "";
    expect(style).toContain("rebeccapurple");
    expect(style.length).toBeGreaterThan(1000);
  });

  it.each([
    [
      "imports what lies elsewhere",
      "import '../../lost.js';\nexport default () => '';",
      /^templates\/pages\/missing\.js: Error: Found an import of "\.\.\/\.\.\/lost\.js", which lies outside templates\/; expected a file inside it\.$/m,
    ],
    [
      "is no JavaScript",
      "export default () => <h1>;",
      /^templates\/pages\/missing\.js(?::\d+)?: SyntaxError: .+$/m,
    ],
    [
      "gives nothing",
      "export const page = 1;",
      /^templates\/pages\/missing\.js: Found no default function; expected/m,
    ],
    [
      "fails",
      "\nexport default () => nothing.here;",
      /^templates\/pages\/missing\.js:2: ReferenceError: nothing is not defined\.$/m,
    ],
  ])(
    "names a template of the user's own that %s, in a line and without a stack trace",
    async (_, text, told) => {
      const root = writeCollection({ ...sound, "templates/pages/missing.js": text, "lost.js": "" });
      const out = path.join(scratch(), "site");
      const { code, err } = await run(["build", "--root", root, "--out", out], root);
      expect(err).toMatch(told);
      expect(err).not.toMatch(/^\s+at /m);
      expect(code).toBe(2);
      expect(existsSync(out)).toBe(false);
    },
  );

  it("cannot be led out of the collection by a link", async () => {
    const secret = scratch();
    writeFileSync(path.join(secret, "index.md"), item(""));
    const root = writeCollection(sound);
    symlinkSync(secret, path.join(root, "content/items/out"));
    const { code, err } = await runHere(
      ["build", "--root", root, "--out", path.join(scratch(), "site")],
      root,
    );
    expect(code).toBe(1);
    expect(err).toContain("outside-root");
    rmSync(path.join(root, "content/items/out"));
    mkdirSync(path.join(root, "content/items/in"));
    expect((await runHere(["build", "--root", root], root)).code).toBe(0);
  });

  it("says nothing of what may be missing in a content that leads out", async () => {
    const root = writeCollection(sound);
    const elsewhere = path.join(scratch(), "content");
    renameSync(path.join(root, "content"), elsewhere);
    symlinkSync(elsewhere, path.join(root, "content"));
    const { code, err } = await runHere(["build"], root);
    expect(code).toBe(1);
    expect(err).toContain("content:1:1  error  outside-root");
    expect(err).toContain("1 error and 0 warnings");
  });
});
