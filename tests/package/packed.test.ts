import { readdirSync, readFileSync, rmSync } from "node:fs";
import path from "node:path";
import { publint } from "publint";
import { formatMessage } from "publint/utils";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { mountAddress } from "../../shared/site/eleventy/guest-site.ts";
import { writeFiles } from "../collections/collection.ts";
import { siteFiles } from "../collections/site-files.ts";
import { repository } from "../commands/run.ts";
import { installedPackage, npx } from "./installed-package.ts";

let project: string;
beforeAll(() => {
  project = installedPackage();
});
// As large as all that the package needs.
afterAll(() => rmSync(project, { recursive: true, force: true }));

const installed = (...names: string[]) => path.join(project, "node_modules/fittedcase", ...names);

describe("the package, as npm packs it", () => {
  it("has nothing that publint finds fault with", async () => {
    const { messages, pkg } = await publint({ pkgDir: installed(), strict: true, pack: false });
    expect(messages.map((message) => formatMessage(message, pkg ?? {}))).toEqual([]);
  });

  it("holds what its manifest lists, and neither tests nor the demonstration", () => {
    const { files } = JSON.parse(readFileSync(installed("package.json"), "utf8")) as { files: string[] };
    for (const file of files)
      expect(readdirSync(path.dirname(installed(file)))).toContain(path.basename(file));
    expect(readdirSync(installed()).sort()).toEqual([
      "DEVELOPERS.md",
      "LICENSE",
      "README.md",
      "dist",
      "package.json",
      "schemas",
      "templates",
    ]);
    expect(readdirSync(installed("schemas")).sort()).toEqual(["hazards.yaml", "records", "scales"]);
  });

  it("begins, checks and builds a collection in an empty project", () => {
    expect(npx(project, "fittedcase", "init", "cases", "--yes")).toContain("Wrote 8 files");
    expect(npx(project, "fittedcase", "check", "--root", "cases")).toMatch(/^0 errors/m);
    expect(npx(project, "fittedcase", "build", "--root", "cases")).toContain(
      "The public site is in cases/_site.",
    );
    const files = siteFiles(path.join(project, "cases/_site"));
    expect([...files.keys()]).toContain("items/quayside-case/index.html");
    expect([...files.keys()].filter((name) => name.endsWith(".woff2")).length).toBeGreaterThan(0);
  });
});

/** A small site of somebody else's, with a page, a layout, a style and a script of its own. */
const host = {
  // As the README has it.
  "eleventy.config.js":
    /```js\n([\s\S]*?)```/.exec(readFileSync(path.join(repository, "README.md"), "utf8"))?.[1] ?? "",
  "_includes/base.njk": `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<title>{{ title }} - The history of Wendle Ferry</title>
<meta name="description" content="{{ description }}">
{{ fittedcaseHead | safe }}
<style>h1 { color: rebeccapurple }</style>
</head>
<body>
<header><a href="/">Wendle Ferry</a> <a href="/cases/">The cases</a></header>
<main>{{ content | safe }}</main>
<footer>An invented society for an invented place.</footer>
</body>
</html>
`,
  "index.md": "---\ntitle: Home\nlayout: base.njk\n---\n\n# The ferry\n\nSee [the cases](/cases/).\n",
  "404.njk": "---\npermalink: 404.html\n---\nThe host's own.\n",
};

describe("the plugin in a plain Eleventy site of somebody else's", () => {
  it("puts our pages into their layout, below an address of their choice, and leaves theirs alone", () => {
    writeFiles(project, host);
    writeFiles(project, {
      "cases/content/articles/braces.md":
        "---\ntitle: Braces\nauthors: [I. Venn]\nupdated: 2026-03-20\n---\nA {{ brace }} stays a {% brace %}.\n",
    });
    npx(project, "eleventy", "--quiet");
    const files = siteFiles(path.join(project, "_site"));
    const page = (name: string) => files.get(name)?.toString("utf8") ?? "";

    expect(page("index.html")).toContain("<h1>The ferry</h1>");
    expect(page("404.html")).toBe("The host's own.\n");
    const item = page("cases/items/quayside-case/index.html");
    expect(item).toContain("<footer>An invented society for an invented place.</footer>");
    expect(item).toMatch(/<title>[^<]*quayside[^<]* - The history of Wendle Ferry<\/title>/i);
    expect(item.match(/<html/g)).toHaveLength(1);
    expect(item.match(/<main/g)).toHaveLength(1);
    expect(item).toContain("Sieve");
    expect(page("cases/articles/braces/index.html")).toContain("A {{ brace }} stays a {% brace %}.");

    // Every page of ours is in their layout, and every file that they ask for by a relative address is there.
    const ours = [...files.keys()].filter((name) => name.startsWith("cases/"));
    const pages = ours.filter((name) => name.endsWith("/index.html"));
    expect(pages.length).toBeGreaterThan(15);
    for (const name of pages) {
      const text = page(name);
      expect(text, name).toContain("An invented society");
      for (const [, address = ""] of text.matchAll(/(?:href|src)="(\.[^"#?]+)/g)) {
        const target = path.posix.join(path.posix.dirname(name), address);
        expect([...files.keys()], `${address} of ${name}`).toContain(
          target.endsWith("/") ? `${target}index.html` : target,
        );
      }
    }
    // Rules of a layer give way to every rule outside of it (CSS Cascading and Inheritance 5, 6.4.4).
    const style = /href="[^"]*(style-below\.[^"]+\.css)"/.exec(item)?.[1] ?? "";
    expect(page(`cases/assets/${style}`)).toMatch(/^@layer fittedcase \{\n/);
    // What speaks for a whole host is the host's.
    for (const name of ["_headers", ".htaccess", "404.html"]) expect(ours).not.toContain(`cases/${name}`);
    expect(JSON.parse(page("cases/data/items/quayside-case.json"))).toHaveProperty("completeness");
  });

  it.each(["../cases", "/a/../../b/", "/a//b/", "https://example.org/", "a\\b"])("refuses %j", (at) => {
    expect(() => mountAddress(at)).toThrow('expected an address such as "/cases/"');
  });

  it.each([
    ["", "/"],
    ["/", "/"],
    ["cases", "/cases/"],
    ["/the/cases/", "/the/cases/"],
  ])("takes %j", (at, address) => {
    expect(mountAddress(at)).toBe(address);
  });
});
