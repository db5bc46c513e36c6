import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { kindsOfPage, type OpenSite, openSite } from "./open-site.ts";

let site: OpenSite;

beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site.close());

const kinds = Object.entries(kindsOfPage);

const leave = (page: Page) => page.context().close();

describe.each(kinds)("%s", (_, address) => {
  let page: Page;
  const asked: string[] = [];
  const said: string[] = [];

  beforeAll(async () => {
    page = await site.visit("/404.html");
    page.on("request", (request) => asked.push(request.url()));
    page.on("console", (message) => said.push(message.text()));
    page.on("pageerror", (error) => said.push(error.message));
    await page.goto(site.url + address);
  });
  afterAll(() => leave(page));

  // WCAG 2.2 AA by the rules of axe-core, and its best practices.
  it.each(["light", "dark"] as const)(
    "has no accessibility fault that axe finds, %s",
    async (colorScheme) => {
      await page.emulateMedia({ colorScheme });
      const { violations } = await new AxeBuilder({ page }).analyze();
      const found = violations.map(
        ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(" | ")}`,
      );
      expect(found).toEqual([]);
    },
  );

  it.each([320, 768, 1280, 2560])("does not scroll sideways at %d px", async (width) => {
    await page.setViewportSize({ width, height: 900 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  });

  it("says nothing on the console, and asks nobody else for anything", () => {
    expect(asked.filter((url) => !url.startsWith(site.url) && !url.startsWith("data:"))).toEqual([]);
    expect(said).toEqual([]);
  });

  it("reads the same without JavaScript, and says that it is invented", async () => {
    const plain = await site.visit(address, { javaScriptEnabled: false });
    const text = (of: Page) => of.locator("h1").first().innerText();
    expect(await text(plain)).toBe(await text(page));
    expect((await plain.locator("main").innerText()).length).toBeGreaterThan(20);
    expect(await plain.locator("body").innerText()).toMatch(/invented/i);
    await leave(plain);
  });
});

describe("by keyboard", () => {
  it("the first stop leads past the navigation to the text", async () => {
    const page = await site.visit(kindsOfPage.item);
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    expect(await page.evaluate(() => location.hash)).toBe(
      `#${await page.locator("main").getAttribute("id")}`,
    );
    await leave(page);
  });

  it("a compartment of the case plan leads to its line in the list of parts", async () => {
    const page = await site.visit(kindsOfPage.item);
    const compartment = page.locator('svg a[href="#part-blowpipe"]:visible').first();
    await compartment.focus();
    await page.keyboard.press("Enter");
    expect(await page.evaluate(() => location.hash)).toBe("#part-blowpipe");
    expect(await page.locator("#part-blowpipe").innerText()).toMatch(/blowpipe/i);
    await leave(page);
  });

  it("a figure opens to its method", async () => {
    const page = await site.visit(kindsOfPage.item);
    const summary = page.locator("details:not([open]) > summary:visible").first();
    await summary.focus();
    await page.keyboard.press("Enter");
    expect(await page.locator("details[open]").count()).toBeGreaterThan(0);
    await leave(page);
  });
});
