import type { BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { below, kindsOfPage, type OpenSite, openSite } from "./open-site.ts";
import { axeFaults, faintTexts, overlappingTexts, tabStops } from "./seen-on-page.ts";

let site: OpenSite;
let withoutScript: BrowserContext;

beforeAll(async () => {
  site = await openSite();
  withoutScript = await site.browser.newContext({ javaScriptEnabled: false });
});
afterAll(() => site.close());

const kinds = Object.entries(kindsOfPage);

const leave = (page: Page) => page.context().close();

/** The files of templates/fonts.ts that are asked for before anything is painted: a face without one would be made up. */
const faces = [
  "Alegreya 400 normal",
  "Alegreya 400 italic",
  '"IBM Plex Sans Condensed" 400 normal',
  '"IBM Plex Sans Condensed" 600 normal',
];

describe.each(kinds)("%s", (_, address) => {
  let page: Page;
  const asked: string[] = [];
  const said: string[] = [];

  beforeAll(async () => {
    page = await site.blank();
    page.on("request", (request) => asked.push(request.url()));
    page.on("console", (message) => said.push(message.text()));
    page.on("pageerror", (error) => said.push(error.message));
    await page.addInitScript(() => {
      const shifts: number[] = [];
      Object.assign(window, { shifts });
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) shifts.push((entry as unknown as { value: number }).value);
      }).observe({ type: "layout-shift", buffered: true });
    });
    await page.goto(site.url + address);
  });
  afterAll(() => leave(page));

  it("moves nothing while it loads, photographs and type included", async () => {
    for (let screen = 0; screen < 12; screen++) {
      await page.mouse.wheel(0, 900);
      await page.waitForTimeout(25);
    }
    await page.evaluate(() => document.fonts.ready.then(() => window.scrollTo(0, 0)));
    const shifts = await page.evaluate(() => (window as unknown as { shifts: number[] }).shifts);
    expect(shifts).toEqual([]);
  });

  it("is of those faces alone that come with every page", async () => {
    const used = await page.evaluate(() => {
      const found = new Set<string>();
      for (const each of document.querySelectorAll("body *")) {
        const says = [...each.childNodes].some(
          ({ nodeType, textContent }) => nodeType === Node.TEXT_NODE && textContent?.trim(),
        );
        // Code and formulas are in what the system has for them.
        if (!says || each.closest("script, template, code, math, video, audio")) continue;
        const { fontFamily, fontWeight, fontStyle } = getComputedStyle(each);
        found.add(`${fontFamily.split(",")[0]} ${fontWeight} ${fontStyle}`);
      }
      return [...found];
    });
    expect(used.length).toBeGreaterThan(0);
    expect(used.filter((face) => !faces.includes(face))).toEqual([]);
  });

  // WCAG 2.2 AA by the rules of axe-core, and its best practices.
  it("has no accessibility fault that axe finds, light", async () => {
    await page.emulateMedia({ colorScheme: "light" });
    expect(await axeFaults(page)).toEqual([]);
  });

  it("has no accessibility fault that axe finds, dark", async () => {
    await page.emulateMedia({ colorScheme: "dark" });
    // Between the schemes nothing differs but colours.
    expect(await faintTexts(page)).toEqual([]);
  });

  it.each([320, 768, 880, 1280, 2560])(
    "neither scrolls sideways nor lays text over text at %d px",
    async (width) => {
      await page.setViewportSize({ width, height: 900 });
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      expect(await overlappingTexts(page)).toEqual([]);
    },
  );

  it("can be gone through by keyboard: every stop seen, named and marked, and a way out at the end", async () => {
    await page.setViewportSize({ width: 1280, height: 900 });
    await page.emulateMedia({ reducedMotion: "reduce" });
    await page.goto(site.url + address);
    await page.evaluate(() => {
      window.scrollTo(0, 0);
      (document.activeElement as HTMLElement | null)?.blur();
    });
    const most = 600;
    const stops = await tabStops(page, most);
    expect(stops.length).toBeGreaterThan(3);
    expect(stops.length).toBeLessThan(most);
    const faults = stops.filter(({ isSeen, hasName, isMarked }) => !(isSeen && hasName && isMarked));
    expect(faults).toEqual([]);
  });

  it("moves nothing by itself where the reader wants no motion", async () => {
    const moving = await page.evaluate(() => {
      const styled = [...document.querySelectorAll("*")].filter((each) => {
        const { transitionDuration, animationName, scrollBehavior } = getComputedStyle(each);
        return /[1-9]/.test(transitionDuration) || animationName !== "none" || scrollBehavior === "smooth";
      });
      return styled.length + document.getAnimations().length;
    });
    expect(moving).toBe(0);
  });

  it("says nothing on the console, and asks nobody else for anything", () => {
    expect(asked.filter((url) => !url.startsWith(site.url) && !url.startsWith("data:"))).toEqual([]);
    expect(said).toEqual([]);
  });

  it("reads the same without JavaScript, and says that it is invented", async () => {
    const plain = await withoutScript.newPage();
    // Where lines end is known when the styles are there.
    await plain.goto(site.url + address, { waitUntil: "load" });
    const text = (of: Page) => of.locator("h1").first().innerText();
    expect(await text(plain)).toBe(await text(page));
    expect((await plain.locator("main").innerText()).length).toBeGreaterThan(20);
    expect(await plain.locator("body").innerText()).toMatch(/invented/i);
    await plain.close();
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

describe("a figure in a sentence", () => {
  it("opens what it rests on below the sentence, without the note's ways back, and closes it again", async () => {
    const page = await site.visit("/articles/numbers-that-match/");
    // As a note has them whose figure stands in several places.
    await page.locator("#basis-1 .back").evaluate((back) => back.after(" ", back.cloneNode(true)));
    const told = page.locator("a.told[href='#basis-1']");
    await told.click();
    const here = page.locator(".basis-here");
    expect(await here.innerText()).toContain("Method");
    expect(await here.locator(".back").count()).toBe(0);
    await told.click();
    expect(await here.count()).toBe(0);
    await leave(page);
  });
});

describe("the page for what is not there", () => {
  it("is whole at any address, at the root of a host and below a path", async () => {
    const page = await site.visit(`${below}/items/no/such/outfit/`);
    const ground = await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
    expect(ground).not.toBe("rgba(0, 0, 0, 0)");
    await page.locator("main a").last().click();
    expect(new URL(page.url()).pathname).toBe(`${below}/sources/`);
    expect(await page.locator("h1").innerText()).toBe("Sources");
    await leave(page);
  });
});

describe("a table that a small screen lays out otherwise", () => {
  it.each([
    ["item", "table.parts"],
    ["catalogue", "table.entries"],
    ["variant", "table.issued"],
    ["family", "table.known"],
    ["sightings", "table.logs"],
    ["sightings of a variant", "table.log"],
  ] as const)("is a table for a screen reader all the same: %s", async (kind, table) => {
    const page = await site.visit(kindsOfPage[kind], { viewport: { width: 320, height: 800 } });
    const client = await page.context().newCDPSession(page);
    const { nodes } = (await client.send("Accessibility.getFullAXTree")) as {
      nodes: { role?: { value: string }; ignored: boolean }[];
    };
    const roles = nodes.filter(({ ignored }) => !ignored).map(({ role }) => role?.value);
    expect(
      await page
        .locator(table)
        .first()
        .evaluate((each) => getComputedStyle(each).display),
    ).toBe("block");
    for (const role of ["table", "row", "columnheader", "rowheader", "cell"]) expect(roles).toContain(role);
    await leave(page);
  });
});

describe("where the reader forces colours", () => {
  it.each(["item", "catalogue", "an item whose evidence contradicts its label"] as const)(
    "everything is in the colours forced: %s",
    async (kind) => {
      const page = await site.visit(kindsOfPage[kind], { forcedColors: "active", colorScheme: "dark" });
      const found = await page.evaluate(() => {
        const system = document.createElement("p");
        document.body.append(system);
        const of = (colour: string) => {
          system.style.color = colour;
          return getComputedStyle(system).color;
        };
        const text = of("CanvasText");
        const link = of("LinkText");
        system.remove();
        const colours = new Set(
          [...document.querySelectorAll("main p, main td, main th, main h2, main dd")].map(
            (each) => getComputedStyle(each).color,
          ),
        );
        const part = document.querySelector(
          ".surface-absent > rect, .entries .completeness-mark .plot-outline",
        );
        const stroke = part ? getComputedStyle(part).stroke : "";
        return { others: [...colours].filter((each) => each !== text && each !== link), stroke, text };
      });
      expect(found.others).toEqual([]);
      expect(found.stroke).toBe(found.text);
      await leave(page);
    },
  );
});
