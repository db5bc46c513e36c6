import { readFileSync } from "node:fs";
import path from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { type OpenSite, openSite } from "./open-site.ts";

let site: OpenSite;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site.close());

/** On a machine that is busy with other tests. */
const eventually = <Value>(get: () => Value | Promise<Value>) => expect.poll(get, { timeout: 30_000 });

const leave = (page: Page) => page.context().close();
const pair = "/compare/grauven-inspector-outfit/hale-ferrin-outfit/";
const told = (page: Page) => page.locator(".told-composed");

interface Record {
  readonly parts: Readonly<{
    [part: string]: { readonly name: string; readonly units: { readonly absent: number } };
  }>;
}
const recordOf = (id: string): Record =>
  JSON.parse(readFileSync(path.join(inject("demonstration"), `data/items/${id}.json`), "utf8"));

/** The rows of a table: what each is called, and its cells. */
const rowsOf = (page: Page, table: string) =>
  page
    .locator(`${table} tbody tr:not(.group):not(.plans)`)
    .evaluateAll((rows) =>
      rows.map((row) =>
        [...row.children].map((cell) => (cell as HTMLElement).textContent?.replace(/\s+/g, " ").trim()),
      ),
    );

describe("two outfits side by side", () => {
  it("show what differs, and the rest one click away, without a script", async () => {
    const page = await site.visit(pair, { javaScriptEnabled: false });
    const shown = await rowsOf(page, "#differs .matter > .scroll .beside");
    expect(shown.length).toBeGreaterThan(5);
    const alike = page.locator("#differs details").last();
    expect(await alike.locator("tbody").first().isVisible()).toBe(false);
    await alike.locator("summary").click();
    expect(await alike.locator("tbody").first().isVisible()).toBe(true);
    await leave(page);
  });

  it("differ in every part of which one has more missing than the other", async () => {
    const page = await site.visit(pair);
    const differing = (await rowsOf(page, "#differs .matter > .scroll .beside")).map(([name]) => name);
    const [first, second] = [recordOf("grauven-inspector-outfit"), recordOf("hale-ferrin-outfit")];
    const expected = Object.entries(first.parts)
      .filter(([id, { units }]) => units.absent !== second.parts[id]?.units.absent)
      .map(([, { name }]) => name);
    expect(expected.length).toBeGreaterThan(3);
    for (const name of expected) expect(differing).toContain(name);
    await leave(page);
  });

  it("are led to from either outfit, from their variant and from the list of comparisons", async () => {
    for (const from of ["/items/hale-ferrin-outfit/", "/items/grauven-inspector-outfit/", "/compare/"]) {
      const page = await site.visit(from);
      await page.locator(`a[href$="${pair}"]`).first().click();
      expect(new URL(page.url()).pathname).toBe(pair);
      await leave(page);
    }
    const page = await site.visit("/variants/survey-pattern-2/");
    await page.locator('#items a[href*="/compare/#"]').click();
    await page.locator(`a[href$="${pair}"]`).click();
    expect(new URL(page.url()).pathname).toBe(pair);
    await leave(page);
  });

  it("say in a table of distances what their own page says", async () => {
    const page = await site.visit("/compare/");
    const said = await page.locator(`a[href$="${pair}"]`).innerText();
    await page.goto(site.url + pair);
    expect(await page.locator("#likeness").innerText()).toContain(`${said.split(/\s/)[0]} alike`);
    await leave(page);
  });
});

describe("any outfits side by side", () => {
  const three = "/compare/?items=hale-ferrin-outfit,grauven-inspector-outfit,signal-cabin-set";

  it("are composed from the address", async () => {
    const page = await site.visit(three);
    await eventually(() => told(page).innerText()).toMatch(/^3 outfits side by side/);
    expect(await page.locator(".composed .brief thead th a").count()).toBe(3);
    await leave(page);
  });

  it("say of a pair what the page of the pair says", async () => {
    const built = await site.visit(pair);
    const page = await site.visit("/compare/?items=grauven-inspector-outfit,hale-ferrin-outfit");
    await eventually(() => told(page).innerText()).toMatch(/^2 outfits/);
    for (const [composed, own] of [
      [".composed .brief", "#brief .brief"],
      [".composed-tables > .scroll:not(:first-child) .beside", "#differs .matter > .scroll .beside"],
      [".composed details:nth-of-type(1) .beside", "#differs details:nth-of-type(1) .beside"],
      [".composed details:nth-of-type(2) .beside", "#differs details:nth-of-type(2) .beside"],
    ] as const) {
      const rows = await rowsOf(page, composed);
      expect(rows.length).toBeGreaterThan(0);
      expect(rows).toEqual(await rowsOf(built, own));
    }
    await leave(page);
    await leave(built);
  });

  it("on a narrow screen leave the outfits most of it, and say that there is more", async () => {
    const page = await site.visit(
      "/compare/?items=brennock-depot-set,brennock-school-outfit,callow-first-outfit,estrow-exchange-set",
      { viewport: { width: 320, height: 800 } },
    );
    const table = page.locator(".composed .beside").first();
    await table.waitFor();
    const sizeOf = (selector: string) =>
      table
        .locator(selector)
        .first()
        .evaluate(({ clientWidth: width, clientHeight: height }) => ({ width, height }));
    expect((await sizeOf("tbody th")).width).toBeLessThan(320 / 3);
    expect((await sizeOf("thead tr")).height).toBeLessThan(200);
    expect(await page.locator(".goes-on").isVisible()).toBe(true);
    await page.setViewportSize({ width: 1280, height: 900 });
    expect(await page.locator(".goes-on").isVisible()).toBe(false);
    await leave(page);
  });

  it("need not be of one variant, and are not said to be", async () => {
    const page = await site.visit(three);
    expect(await page.locator(".lead").innerText()).not.toContain("one variant");
    await leave(page);
  });

  it("are taken out one by one, and back again by the browser", async () => {
    const page = await site.visit(three);
    await page.locator(".composed .brief .take-out").last().click();
    await eventually(() => told(page).innerText()).toMatch(/^2 outfits/);
    expect(new URL(page.url()).search).toBe("?items=hale-ferrin-outfit,grauven-inspector-outfit");
    await page.goBack();
    await eventually(() => told(page).innerText()).toMatch(/^3 outfits/);
    await leave(page);
  });

  it("are the same outfit by a former id, which stands once and can be taken out", async () => {
    const page = await site.visit(
      "/compare/?items=ossel-outfit,hale-ferrin-outfit,ossel-district-outfit,signal-cabin-set",
    );
    await eventually(() => told(page).innerText()).toMatch(/^3 outfits/);
    await page.locator(".composed .brief .take-out").first().click();
    await eventually(() => told(page).innerText()).toMatch(/^2 outfits/);
    expect(new URL(page.url()).search).toBe("?items=hale-ferrin-outfit,signal-cabin-set");
    await leave(page);
  });

  it("name what is not in the catalogue, and ask for two at least", async () => {
    const page = await site.visit("/compare/?items=hale-ferrin-outfit,no-such-outfit");
    await eventually(() => told(page).innerText()).toMatch(/At least two outfits.*no-such-outfit/);
    await leave(page);
  });

  it("are no way out of the folder of data", async () => {
    const page = await site.visit("/404.html");
    const asked: string[] = [];
    page.on("request", (request) => asked.push(new URL(request.url()).pathname));
    await page.goto(`${site.url}/compare/?items=${encodeURIComponent("../../collection")},..`);
    await eventually(() => told(page).innerText()).toMatch(/Not in this catalogue/);
    const data = asked.filter((address) => address.endsWith(".json"));
    for (const address of data) expect(address).toMatch(/^\/data\/items\/[^/]+$/);
    await leave(page);
  });

  it("without a script say what can be compared all the same, and that they need one", async () => {
    const page = await site.visit(three, { javaScriptEnabled: false });
    expect(await page.locator(".distances").first().isVisible()).toBe(true);
    expect(await page.locator("noscript").innerText()).toContain("are set side by side by a script");
    await leave(page);
  });

  it.each([
    ["the script", "**/assets/compare-outfits.*"],
    ["what the script imports", "**/assets/beside-table.*"],
    ["the words", "**/assets/en.*"],
    ["an outfit's data", "**/data/items/hale-ferrin-outfit.json"],
  ])("leave what can be compared without them in its place where %s cannot be had", async (_, lost) => {
    const page = await site.visit("/404.html");
    await page.route(lost, (route) => route.abort());
    await page.goto(site.url + three);
    // Sooner than the five seconds after which it is shown anyhow.
    await page.locator(".no-answer").waitFor({ timeout: 4000 });
    const table = page.locator(".distances").first();
    expect(await table.isVisible()).toBe(true);
    // Within the first window, and not below an empty one.
    expect((await table.boundingBox())?.y).toBeLessThan(900);
    await leave(page);
  });

  it("say that their data are being fetched, and nothing of a failure, until they are there", async () => {
    const page = await site.visit("/404.html");
    let go = () => {};
    const until = new Promise<void>((resolve) => {
      go = resolve;
    });
    await page.route("**/assets/compare-outfits.*", async (route) => {
      await until;
      await route.continue();
    });
    await page.goto(site.url + three, { waitUntil: "commit" });
    await told(page).getByText("are being fetched").waitFor();
    expect(await page.locator(".no-answer").isVisible()).toBe(false);
    go();
    await eventually(() => told(page).innerText()).toMatch(/^3 outfits/);
    expect(await page.locator(".no-answer").isVisible()).toBe(false);
    await leave(page);
  });
});
