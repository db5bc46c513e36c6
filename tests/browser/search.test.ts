import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type OpenSite, openSite } from "./open-site.ts";

let site: OpenSite;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site.close());

/** On a machine that is busy with other tests. */
const eventually = <Value>(get: () => Value | Promise<Value>) => expect.poll(get, { timeout: 30_000 });

const leave = (page: Page) => page.context().close();
const told = (page: Page) => page.locator(".told-found");
const titles = (page: Page) => page.locator(".found tr.entry th a").allInnerTexts();
const asked = (page: Page) => new URL(page.url()).search;
/** What was found is told last of all. */
const answered = (page: Page, what: RegExp = /\d+ of \d+ outfits|All \d+|None/) =>
  eventually(() => told(page).innerText()).toMatch(what);

describe("the search of the catalogue", () => {
  it("finds by words, tells how many, and writes the question into the address", async () => {
    const page = await site.visit("/items/");
    await page.getByLabel("Words").fill("hale ferrin");
    await answered(page);
    expect(await titles(page)).toContainEqual(expect.stringContaining("Hale Ferrin"));
    expect(asked(page)).toBe("?q=hale+ferrin");
    expect(await told(page).evaluate((output) => output.tagName)).toBe("OUTPUT");
    await leave(page);
  });

  it("shows the same view to somebody who is sent its address", async () => {
    const page = await site.visit("/items/");
    await page.locator(".finder summary").click();
    await page.getByLabel("of the family").selectOption("survey-outfit");
    await page.getByLabel("in the order of").selectOption("complete");
    await answered(page);
    const other = await site.visit(`/items/${asked(page)}`);
    await answered(other);
    expect(await titles(other)).toEqual(await titles(page));
    expect(await other.getByLabel("of the family").inputValue()).toBe("survey-outfit");
    expect(await other.locator(".finder details").getAttribute("open")).not.toBeNull();
    await leave(page);
    await leave(other);
  });

  it("goes back a question at a time, and to what was there before any", async () => {
    const page = await site.visit("/items/");
    await page.getByLabel("Words").pressSequentially("lamp");
    await answered(page);
    await page.locator(".finder summary").click();
    await page.getByLabel("of the family").selectOption("line-testing-set");
    await eventually(() => asked(page)).toBe("?q=lamp&family=line-testing-set");
    await answered(page);
    const both = await titles(page);
    await page.goBack();
    expect(asked(page)).toBe("?q=lamp");
    await eventually(() => titles(page)).not.toEqual(both);
    expect(await page.getByLabel("of the family").inputValue()).toBe("");
    // The word was typed letter by letter, and is undone at once.
    await page.goBack();
    expect(asked(page)).toBe("");
    expect(await page.locator(".listed").isVisible()).toBe(true);
    expect(await page.getByLabel("Words").inputValue()).toBe("");
    await page.goForward();
    await answered(page);
    expect(await page.getByLabel("Words").inputValue()).toBe("lamp");
    await leave(page);
  });

  it("has what was asked again on the way back from an outfit", async () => {
    const page = await site.visit("/items/?q=hale+ferrin");
    await answered(page);
    const before = await titles(page);
    await page.locator(".found tr.entry th a").first().click();
    await page.waitForURL(/\/items\/[^?/]+\/$/);
    await page.goBack();
    await answered(page);
    expect(await titles(page)).toEqual(before);
    await leave(page);
  });

  it("is asked, read and left by keyboard alone", async () => {
    const page = await site.visit("/items/");
    await page.getByLabel("Words").focus();
    await page.keyboard.type("marchby");
    await answered(page);
    const reached = () => page.evaluate(() => document.activeElement?.tagName);
    await page.keyboard.press("Tab");
    expect(await reached()).toBe("BUTTON");
    await page.keyboard.press("Tab");
    expect(await reached()).toBe("SUMMARY");
    await page.keyboard.press("Enter");
    await page.locator("details[open]").first().waitFor();
    await page.keyboard.press("Tab");
    await page.keyboard.press("ArrowDown");
    await eventually(() => asked(page)).toMatch(/family=/);
    await page.locator(".show-all").focus();
    await page.keyboard.press("Enter");
    await eventually(() => asked(page)).toBe("");
    await eventually(() => page.evaluate(() => document.activeElement?.getAttribute("name"))).toBe("q");
    await leave(page);
  });

  it("offers the parts of the family chosen, and finds what lacks one", async () => {
    const page = await site.visit("/items/?family=survey-outfit");
    const part = page.getByLabel("without the part");
    await eventually(() => part.locator("option").count()).toBeGreaterThan(5);
    await part.selectOption({ label: "Agate pestle" });
    await eventually(() => asked(page)).toMatch(/missing=pestle/);
    await answered(page);
    // Its front matter: `pestle: absent`.
    expect(await titles(page)).toContainEqual(expect.stringContaining("Hale Ferrin"));
    await leave(page);
  });

  it("offers the parts of the family that stands in the form, back and forth", async () => {
    const page = await site.visit("/items/");
    await page.locator(".finder summary").click();
    const part = page.getByLabel("without the part");
    const offered = () => part.locator("option").count();
    await eventually(offered).toBeGreaterThan(5);
    const all = await offered();
    await page.getByLabel("of the family").selectOption("survey-outfit");
    await eventually(offered).toBeLessThan(all);
    await page.goBack();
    await eventually(offered).toBe(all);
    await page.getByLabel("of the family").selectOption("survey-outfit");
    await eventually(offered).toBeLessThan(all);
    await page.locator(".show-all").click();
    await eventually(offered).toBe(all);
    await leave(page);
  });

  it("shows as asked a variant that is of another family, until a family is chosen", async () => {
    const page = await site.visit("/items/?family=line-testing-set&variant=survey-pattern-2");
    await answered(page, /None/);
    const variant = page.getByLabel("of the variant");
    expect(await variant.inputValue()).toBe("survey-pattern-2");
    await page.getByLabel("standing as").selectOption({ index: 1 });
    await eventually(() => asked(page)).toMatch(/variant=survey-pattern-2&status=/);
    await page.getByLabel("of the family").selectOption("survey-outfit");
    await eventually(() => asked(page)).toMatch(/family=survey-outfit&variant=survey-pattern-2/);
    await page.getByLabel("of the family").selectOption("line-testing-set");
    await eventually(() => asked(page)).not.toMatch(/variant/);
    await leave(page);
  });

  it("shows nothing as an answer before it has what the answer takes", async () => {
    const page = await site.visit("/404.html");
    let go = () => {};
    const until = new Promise<void>((resolve) => {
      go = resolve;
    });
    await page.route("**/assets/search/details.*", async (route) => {
      await until;
      await route.continue();
    });
    await page.goto(`${site.url}/items/?missing=pestle`);
    await answered(page, /being looked through/);
    expect(await titles(page)).toEqual([]);
    go();
    await answered(page);
    expect((await titles(page)).length).toBeGreaterThan(0);
    await leave(page);
  });

  it("says that not all texts could be had, and looks again with the next question", async () => {
    const page = await site.visit("/404.html");
    const texts = /\/assets\/search\/(?!index|details)/;
    await page.route(texts, (route) => route.abort());
    await page.goto(`${site.url}/items/?q=mouthpiece`);
    await answered(page, /Not all texts/);
    expect(await told(page).innerText()).not.toMatch(/None|Nothing has/);
    await page.unroute(texts);
    await page.getByLabel("Words").fill("mouthpieces");
    await page.getByLabel("Words").fill("mouthpiece");
    await answered(page, /^\d+ of \d+ outfits\.?$/);
    await leave(page);
  });

  it("answers where the browser lets no more addresses be written", async () => {
    const page = await site.visit("/404.html");
    await page.addInitScript(() => {
      for (const name of ["pushState", "replaceState"] as const)
        history[name] = () => {
          throw new DOMException("Too many calls", "SecurityError");
        };
    });
    await page.goto(`${site.url}/items/`);
    await page.getByLabel("Words").pressSequentially("hale ferrin");
    await answered(page);
    expect(await titles(page)).toContainEqual(expect.stringContaining("Hale Ferrin"));
    await leave(page);
  });

  it("reads a percentage with its sign", async () => {
    const page = await site.visit("/items/?least=80%25");
    const bare = await site.visit("/items/?least=80");
    for (const each of [page, bare]) await answered(each, /\d+ of \d+ outfits/);
    expect(await titles(page)).toEqual(await titles(bare));
    for (const each of [page, bare]) await leave(each);
  });

  it.each([
    ["least", "abc", /expected a number/],
    ["from", "c. 1920", /expected a year/],
    ["to", "1920-13", /expected a year/],
  ])("says at the blank %s that %s cannot be read, and holds to the rest", async (field, typed, expected) => {
    const page = await site.visit("/items/?family=survey-outfit");
    await answered(page);
    const before = await told(page).innerText();
    const blank = page.locator(`[name="${field}"]`);
    await blank.pressSequentially(typed);
    await blank.press("Tab");
    // An output is announced when what it says changes (ARIA 1.2, status).
    const unread = page.locator(`output#finder-${field}-unread`);
    expect(await unread.textContent()).toMatch(expected);
    expect(await blank.getAttribute("aria-invalid")).toBe("true");
    expect(await blank.inputValue()).toBe(typed);
    expect(await told(page).innerText()).toBe(before);

    const again = await site.visit(`/items/${asked(page)}`);
    await again.locator("output.unread", { hasText: expected }).waitFor();
    await leave(again);

    await blank.fill(field === "least" ? "20" : "1907");
    expect(await unread.textContent()).toBe("");
    expect(await blank.getAttribute("aria-invalid")).toBeNull();
    await leave(page);
  });

  it("mends a slip of the finger and says so", async () => {
    const page = await site.visit("/items/?q=marhcby");
    await answered(page);
    expect(await told(page).innerText()).toMatch(/Nothing has “marhcby”; searched instead for “marchby”/);
    expect((await titles(page)).length).toBeGreaterThan(0);
    await leave(page);
  });

  it("says when nothing answers", async () => {
    const page = await site.visit("/items/?q=xyzzyxyzzy");
    await answered(page, /None of the 25 outfits/);
    expect(await page.locator(".found table").isVisible()).toBe(false);
    await leave(page);
  });

  it("says when the index cannot be fetched, and leaves the lists", async () => {
    const page = await site.visit("/404.html");
    await page.route("**/assets/search/**", (route) => route.abort());
    await page.goto(`${site.url}/items/?q=lamp`);
    await page.locator(".no-answer").getByText("The search needs a script").waitFor();
    expect(await page.locator(".listed").isVisible()).toBe(true);
    await leave(page);
  });

  it("loads nothing of the index before somebody is about to ask", async () => {
    const page = await site.visit("/404.html");
    const loaded: string[] = [];
    page.on("request", (request) => loaded.push(request.url()));
    await page.goto(`${site.url}/items/`, { waitUntil: "networkidle" });
    expect(loaded.filter((url) => url.includes("/assets/search/"))).toEqual([]);
    await page.getByLabel("Words").focus();
    await eventually(() => loaded.filter((url) => url.includes("/assets/search/index")).length).toBe(1);
    await leave(page);
  });

  it("reads an index that the host has unpacked on the way", async () => {
    const page = await site.visit("/404.html");
    await page.route("**/assets/search/**", async (route) => {
      const response = await route.fetch();
      const { gunzipSync } = await import("node:zlib");
      await route.fulfill({ status: 200, body: gunzipSync(await response.body()) });
    });
    await page.goto(`${site.url}/items/?q=marchby`);
    await answered(page);
    expect((await titles(page)).length).toBeGreaterThan(0);
    await leave(page);
  });

  it("keeps titles within the margin of a narrow screen", async () => {
    const page = await site.visit("/items/", { viewport: { width: 320, height: 800 } });
    const edge = await page.locator(".listed").evaluate((list) => list.getBoundingClientRect().right);
    const ends = await page
      .locator(".listed tr.entry th")
      .evaluateAll((heads) => heads.map((head) => head.getBoundingClientRect().right));
    expect(Math.max(...ends)).toBeLessThanOrEqual(edge);
    await leave(page);
  });

  it("moves nothing on the page while it gets ready", async () => {
    const page = await site.visit("/404.html");
    await page.addInitScript(() => {
      Object.assign(window, { moved: 0 });
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) {
          const { value, hadRecentInput } = entry as PerformanceEntry & {
            value: number;
            hadRecentInput: boolean;
          };
          if (!hadRecentInput)
            Object.assign(window, { moved: (window as never as { moved: number }).moved + value });
        }
      }).observe({ type: "layout-shift", buffered: true });
    });
    await page.goto(`${site.url}/items/`, { waitUntil: "networkidle" });
    expect(await page.evaluate(() => (window as never as { moved: number }).moved)).toBeLessThan(0.02);
    await leave(page);
  });
});

describe("without a script", () => {
  it("the catalogue has no form and no box to tick, and leads to lists of everything", async () => {
    const page = await site.visit("/items/", { javaScriptEnabled: false });
    expect(await page.locator(".finder").isVisible()).toBe(false);
    expect(await page.locator(".tick-box").first().isVisible()).toBe(false);
    expect(await page.locator(".listed tr.entry").count()).toBe(25);
    await page.locator('a[href$="by/variant/survey-pattern-2/"]').click();
    expect(await page.locator("tr.entry").count()).toBe(3);
    await leave(page);
  });
});

describe("ticked outfits", () => {
  it("last from one list to another, and are set side by side", async () => {
    const page = await site.visit("/items/");
    const tick = (title: string) => page.getByLabel(`Tick to set beside others: ${title}`);
    await tick("Survey Outfit no. 318, the Grauven inspector’s").check();
    await eventually(() => page.locator(".told-ticked").innerText()).toMatch(/1 outfit ticked/);
    expect(await page.locator(".set-beside").isVisible()).toBe(false);
    await page.goto(`${site.url}/variants/survey-pattern-2/`);
    await eventually(() => page.locator(".told-ticked").innerText()).toMatch(/1 outfit ticked/);
    await tick("The sealed pattern of 1905").check();
    await page.locator(".set-beside").click();
    await page.waitForURL(/\/compare\/\?items=/);
    expect(asked(page)).toBe("?items=grauven-inspector-outfit,estrow-sealed-pattern");
    await leave(page);
  });

  it("among what was found are those in the list, and are unticked together", async () => {
    const page = await site.visit("/items/?q=hale+ferrin");
    await answered(page);
    await page.locator(".found .tick-box").first().check();
    await page.locator(".show-all").click();
    expect(await page.locator(".listed .tick-box:checked").count()).toBe(1);
    await page.locator(".untick").click();
    expect(await page.locator(".tick-box:checked").count()).toBe(0);
    expect(await page.locator(".ticked").isVisible()).toBe(false);
    await leave(page);
  });

  it("are known on their page by a browser that keeps nothing", async () => {
    const page = await site.visit("/404.html");
    await page.addInitScript(() =>
      Object.defineProperty(window, "sessionStorage", {
        get() {
          throw new DOMException("Denied", "SecurityError");
        },
      }),
    );
    await page.goto(`${site.url}/items/`);
    const boxes = page.locator(".listed .tick-box");
    for (const at of [0, 1]) await boxes.nth(at).check();
    await eventually(() => page.locator(".told-ticked").innerText()).toMatch(/2 outfits ticked/);
    const ids = await boxes.evaluateAll((all) =>
      all.slice(0, 2).map((box) => (box as HTMLInputElement).value),
    );
    expect(await page.locator(".set-beside").getAttribute("href")).toMatch(`?items=${ids.join(",")}`);
    await leave(page);
  });

  it("unticked together leave the keyboard at the box ticked last", async () => {
    const page = await site.visit("/items/");
    const box = page.locator(".listed .tick-box").nth(3);
    await box.check();
    await page.locator(".untick").focus();
    await page.keyboard.press("Enter");
    expect(await box.evaluate((it) => it === document.activeElement)).toBe(true);
    await leave(page);
  });
});
