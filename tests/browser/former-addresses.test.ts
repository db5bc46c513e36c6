import path from "node:path";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { type OpenSite, openSite } from "./open-site.ts";

let site: OpenSite;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site.close());

const [former, present] = ["/items/ossel-outfit/", "/items/ossel-district-outfit/"];

describe("a former address", () => {
  it("leads to the present one, to what was asked for within the page", async () => {
    const page = await site.visit("/404.html");
    await page.goto(`${site.url}${former}#survivors`);
    await page.waitForURL(`${site.url}${present}#survivors`);
    // The way back is not to the page that leads on.
    await page.goBack();
    expect(page.url()).toBe(`${site.url}/404.html`);
  });

  it("leads there without a script", async () => {
    const page = await site.visit(former, { javaScriptEnabled: false });
    await page.waitForURL(`${site.url}${present}`);
  });

  it("leads there from a disk", async () => {
    const page = await site.visit("/404.html");
    const at = (address: string) => `file://${path.join(inject("demonstration"), address, "index.html")}`;
    await page.goto(`${at(former)}#survivors`);
    await page.waitForURL(/ossel-district-outfit\/#survivors$/);
  });
});
