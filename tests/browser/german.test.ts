import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { writeCollection } from "../collections/collection.ts";
import { germanCollection } from "../collections/german-collection.ts";
import { siteFiles } from "../collections/site-files.ts";
import { run } from "../commands/run.ts";
import { type OpenSite, openSite } from "./open-site.ts";
import { overlappingTexts } from "./seen-on-page.ts";

let site: OpenSite;
let out: string;

beforeAll(async () => {
  const root = writeCollection(germanCollection());
  out = path.join(mkdtempSync(path.join(tmpdir(), "fittedcase-german-")), "site");
  const built = await run(["build", "--root", root, "--out", out], root);
  expect(built.code, built.err + built.out).toBe(0);
  site = await openSite(out);
});
afterAll(() => site.close());

it("the longer words of German have room on the smallest screen, on every page", async () => {
  const page = await site.visit("/", { viewport: { width: 320, height: 800 } });
  const faults: string[] = [];
  const pages = [...siteFiles(out)].filter(
    ([file, bytes]) => file.endsWith("index.html") && !bytes.includes('http-equiv="refresh"'),
  );
  for (const [file] of pages) {
    await page.goto(`${site.url}/${file.replace("index.html", "")}`);
    if ((await page.evaluate(() => document.documentElement.scrollWidth)) > 320)
      faults.push(`${file} scrolls`);
    for (const pair of await overlappingTexts(page)) faults.push(`${file} ${pair}`);
  }
  await page.context().close();
  expect(faults).toEqual([]);
  expect(pages.length).toBeGreaterThan(15);
});
