import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { type OpenSite, openSite } from "./open-site.ts";

let site: OpenSite;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site.close());

/** The digest by which W3C Subresource Integrity (2016) knows a file. */
const digest = (file: string) => `sha384-${createHash("sha384").update(readFileSync(file)).digest("base64")}`;

/** On the catalogue run the scripts that import others. */
const address = "/items/";

describe("scripts", () => {
  it("are sealed, each with the digest of the file that it names", async () => {
    const page = await site.visit(address);
    const sealed = await page.$$eval("script[src], link[rel=modulepreload]", (elements) =>
      elements.map((element) => ({
        url: element.getAttribute("src") ?? element.getAttribute("href") ?? "",
        integrity: element.getAttribute("integrity"),
      })),
    );
    expect(sealed.length).toBeGreaterThan(3);
    for (const { url, integrity } of sealed) {
      const { pathname } = new URL(url, `${site.url}${address}`);
      expect(integrity, url).toBe(digest(path.join(inject("demonstration"), pathname)));
    }
  });

  it("do not run where one is not the one that was built", async () => {
    const page = await site.visit("/404.html");
    await page.route("**/assets/*.js", async (route) => {
      const answer = await route.fetch();
      await route.fulfill({ response: answer, body: `document.title = "taken";${await answer.text()}` });
    });
    await page.goto(`${site.url}${address}`, { waitUntil: "networkidle" });
    expect(await page.title()).not.toBe("taken");
    await expect.poll(() => page.locator("form.finder").isVisible()).toBe(false);
  });
});

it("a page that is opened from disk keeps its look", async () => {
  const page = await site.visit("/404.html");
  await page.goto(`file://${path.join(inject("demonstration"), "items/index.html")}`);
  const paper = await page.evaluate(() => getComputedStyle(document.body).fontFamily);
  expect(paper).toContain("Alegreya");
});
