import { mkdirSync, mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import Eleventy from "@11ty/eleventy";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import fittedcase from "../../shared/site/plugin.ts";
import { item, smallCollection, writeCollection, writeFiles } from "../collections/collection.ts";
import { type OpenSite, openSite } from "./open-site.ts";

/** What a small site of somebody else's says of itself, in a frame on both sides of what is ours. */
const host = {
  "source/_includes/base.njk": `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>{{ title }}</title>
<style>
html { font-size: 62.5% }
body { font-family: Arial; margin: 0 }
</style>
{{ fittedcaseHead | safe }}
</head>
<body>
<header class="theirs"><h2>Wendle Ferry</h2> <a href="/">Home</a> <ul><li>Boats</li></ul></header>
<main>{{ content | safe }}</main>
<footer class="theirs"><p>An invented society.</p> <table><tr><th>Tides</th><td>12</td></tr></table></footer>
</body>
</html>
`,
  "source/index.md": "---\ntitle: Home\nlayout: base.njk\n---\n# The ferry\n",
};

const kinds = ["/", "/items/", "/items/lamp-case/", "/families/", "/methods/"].map((at) => `/cases${at}`);

async function built(): Promise<string> {
  const root = writeCollection(
    smallCollection("parts: { lamp: { name: Lamp, standing: issued } }\n", {
      "content/items/lamp-case/index.md": item("parts: { lamp: present }"),
    }),
  );
  const folder = mkdtempSync(path.join(tmpdir(), "fittedcase-host-"));
  mkdirSync(path.join(folder, "source"));
  writeFiles(folder, host);
  const cwd = process.cwd();
  process.chdir(folder);
  try {
    const eleventy = new Eleventy("source", "_site", {
      configPath: "",
      quietMode: true,
      config: (eleventyConfig) => fittedcase(eleventyConfig, { root, at: "/cases/", layout: "base.njk" }),
    });
    eleventy.disableLogger();
    await eleventy.write();
  } finally {
    process.chdir(cwd);
  }
  return path.join(folder, "_site");
}

let site: OpenSite;
beforeAll(async () => {
  site = await openSite(await built());
}, 60_000);
afterAll(() => site.close());

/** Where the host's own things stand and how they look; a foot is wherever what is above it ends. */
const frameOf = (page: Page) =>
  page.evaluate(() => {
    const looks = ["fontFamily", "fontSize", "color", "lineHeight", "textDecoration", "padding", "margin"];
    return [document.body, ...document.querySelectorAll(".theirs, .theirs *")].map((element) => {
      const style = getComputedStyle(element) as unknown as Record<string, string>;
      const { x, y, width, height } = element.getBoundingClientRect();
      const isOfHead = element.closest("header") !== null;
      const box =
        element === document.body ? [x, width] : isOfHead ? [x, y, width, height] : [x, width, height];
      return [element.localName, box, looks.map((look) => style[look])];
    });
  });

const looksOf = (page: Page, selector: string) =>
  page
    .locator(selector)
    .first()
    .evaluate((element) => {
      const { fontFamily, fontSize, color, backgroundColor } = getComputedStyle(element);
      return { family: fontFamily.split(",")[0], size: Number.parseFloat(fontSize), color, backgroundColor };
    });

describe("in somebody else's layout", () => {
  it.each(["light", "dark"] as const)(
    "the host's frame is what it is on the host's own page, %s",
    async (colorScheme) => {
      const page = await site.visit("/", { colorScheme });
      const own = await frameOf(page);
      expect(own.length).toBeGreaterThan(10);
      for (const address of kinds) {
        await page.goto(site.url + address);
        expect(await frameOf(page), address).toEqual(own);
      }
      await page.context().close();
    },
  );

  it("our own type and our own paper hold within it, of a size that can be read", async () => {
    const page = await site.visit("/cases/items/lamp-case/", { colorScheme: "dark" });
    for (const selector of [".fittedcase h1", ".fittedcase h2"])
      expect(await looksOf(page, selector)).toMatchObject({ family: "Alegreya" });
    const around = await looksOf(page, ".fittedcase");
    expect(around).toMatchObject({
      family: "Alegreya",
      color: "rgb(229, 225, 214)",
      backgroundColor: "rgb(20, 24, 26)",
    });
    expect(around.size).toBeGreaterThanOrEqual(17);
    await page.context().close();
  });

  it("says where each page stands, once", async () => {
    const page = await site.visit("/cases/items/lamp-case/");
    const said = await page
      .locator('link[rel="canonical"]')
      .evaluateAll((links) => links.map((link) => (link as HTMLLinkElement).href));
    // The collection's own address, to which the page's is added.
    expect(said).toEqual(["https://example.org/items/lamp-case/"]);
    await page.context().close();
  });

  it.each([320, 1280])("nothing reaches over the side, %i px wide", async (width) => {
    const page = await site.visit("/", { viewport: { width, height: 900 } });
    for (const address of kinds) {
      await page.goto(site.url + address);
      expect(await page.evaluate(() => document.documentElement.scrollWidth), address).toBe(width);
    }
    await page.context().close();
  });
});
