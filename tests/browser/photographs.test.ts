import { readdirSync } from "node:fs";
import path from "node:path";
import type { BrowserContextOptions, Locator, Page } from "playwright-core";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { typefaces } from "../../shared/images/preview-picture/typeface.ts";
import { htmlRules } from "./html-rules.ts";
import { type OpenSite, openSite } from "./open-site.ts";
import { partIds, serial, siteWithPhotographs } from "./outfit-with-photographs.ts";
import { axeFaults, faintTexts } from "./seen-on-page.ts";

let folder: string;
let site: OpenSite;
const said: string[] = [];

beforeAll(async () => {
  folder = await siteWithPhotographs();
  site = await openSite(folder);
});
afterAll(() => site.close());

async function visit(address = "/items/filmed/", options: BrowserContextOptions = {}): Promise<Page> {
  const context = await site.browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  const page = await context.newPage();
  page.on("console", (message) => said.push(message.text()));
  page.on("pageerror", (error) => said.push(error.message));
  await page.goto(site.url + address);
  return page;
}
const leave = (page: Page) => page.context().close();

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const boxOf = async (locator: Locator): Promise<Box> => {
  const box = await locator.boundingBox();
  if (!box) throw new Error("not shown");
  return box;
};
const middleOf = ({ x, y, width, height }: Box) => ({ x: x + width / 2, y: y + height / 2 });
const marksOn = (page: Page, plate: number) => page.locator(`#photograph-${plate} .callout:visible`);

describe("numbers on a photograph", () => {
  it("lie clear of one another and on the picture from 320 to 2560 px", async () => {
    const page = await visit();
    for (const width of [320, 360, 768, 1280, 2560]) {
      await page.setViewportSize({ width, height: 900 });
      for (const plate of [1, 2]) {
        const discs = await marksOn(page, plate).all();
        expect(discs).toHaveLength(partIds.length);
        const boxes = await Promise.all(discs.map(boxOf));
        const picture = await boxOf(page.locator(`#photograph-${plate} img`));
        for (const [at, box] of boxes.entries()) {
          expect(box.width).toBeGreaterThanOrEqual(24);
          const [one, other] = [middleOf(box), middleOf(picture)];
          expect(Math.abs(one.x - other.x)).toBeLessThanOrEqual(picture.width / 2);
          expect(Math.abs(one.y - other.y)).toBeLessThanOrEqual(picture.height / 2);
          for (const next of boxes.slice(at + 1)) {
            const [a, b] = [middleOf(box), middleOf(next)];
            // Round, so that two are clear where their middles are further apart than they are wide.
            expect(Math.hypot(a.x - b.x, a.y - b.y), `${width} px`).toBeGreaterThanOrEqual(24);
          }
        }
      }
    }
    await leave(page);
  });

  it("stand on the spots that the record gives, where nothing presses on them", async () => {
    const page = await visit();
    const picture = await boxOf(page.locator("#photograph-1 img"));
    const { x, y } = middleOf(await boxOf(marksOn(page, 1).first().locator(".callout-dot")));
    expect((x - picture.x) / picture.width).toBeCloseTo(0.125, 2);
    expect((y - picture.y) / picture.height).toBeCloseTo(0.17, 2);
    await leave(page);
  });

  it("read without JavaScript: a number, its name below, and a link to the line of its part", async () => {
    const page = await visit(undefined, { javaScriptEnabled: false });
    expect(await marksOn(page, 1).count()).toBe(partIds.length);
    const legend = page.locator("#photograph-1 .legend li");
    expect(await legend.allInnerTexts()).toEqual(
      partIds.map((id, at) => expect.stringMatching(new RegExp(`^${at + 1}\\s+${id}`, "i"))),
    );
    await marksOn(page, 1).nth(2).click();
    expect(new URL(page.url()).hash).toBe("#part-lamp");
    expect(await page.locator("#part-lamp").innerText()).toMatch(/lamp/i);
    await leave(page);
  });

  it("read on paper, numbers and names", async () => {
    const page = await visit();
    await page.emulateMedia({ media: "print" });
    expect(await marksOn(page, 1).count()).toBe(partIds.length);
    const picture = await boxOf(page.locator("#photograph-1 img"));
    const overlay = await boxOf(page.locator("#photograph-1 .callouts:visible"));
    expect(overlay.width).toBeCloseTo(picture.width, 0);
    expect(overlay.height).toBeCloseTo(picture.height, 0);
    expect(await page.locator("#photograph-1 .legend li:visible").count()).toBe(partIds.length);
    expect(await page.locator(".look-closely:visible, .seen-in:visible, .recording:visible").count()).toBe(0);
    await leave(page);
  });

  it("and the plan and the list of parts find one another by pointer", async () => {
    const page = await visit();
    const marked = (selector: string) => page.locator(`${selector}.pointed-at`).count();
    await marksOn(page, 1).nth(2).hover();
    expect(await marked("tr#part-lamp")).toBe(1);
    expect(await marked('.case-plan-drawing a[href="#part-lamp"]')).toBeGreaterThan(0);
    expect(await marked('.legend li[data-part="lamp"]')).toBe(2);
    await page.locator("#part-anvil").hover();
    expect(await marked('.callout[href="#part-anvil"]')).toBeGreaterThan(0);
    expect(await marked(':is([data-part="lamp"], [href="#part-lamp"], tr#part-lamp)')).toBe(0);
    await page.locator('.case-plan-drawing a[href="#part-key"]:visible').first().hover();
    expect(await marked('.callout[href="#part-key"]')).toBeGreaterThan(0);
    await leave(page);
  });

  it("and by keyboard: the list below the picture marks its number", async () => {
    const page = await visit();
    await page.locator("#photograph-1 .look-closely").focus();
    await page.keyboard.press("Tab");
    await page.keyboard.press("Tab");
    expect(await page.locator(".callout.pointed-at:visible").first().getAttribute("href")).toBe(
      "#part-weights",
    );
    await page.keyboard.press("Enter");
    expect(new URL(page.url()).hash).toBe("#part-weights");
    // And back: the line leads to the number below the photograph.
    await page.locator("#part-weights .seen-in a").first().focus();
    await page.keyboard.press("Enter");
    expect(new URL(page.url()).hash).toBe("#photograph-1-2");
    expect(await page.locator("#photograph-1 img").isVisible()).toBe(true);
    const picture = await boxOf(page.locator("#photograph-1 img"));
    expect(picture.y + picture.height).toBeGreaterThan(200);
    await leave(page);
  });

  it("and by touch", async () => {
    const page = await visit(undefined, {
      viewport: { width: 390, height: 800 },
      hasTouch: true,
      isMobile: true,
    });
    await marksOn(page, 1).nth(4).tap();
    expect(new URL(page.url()).hash).toBe("#part-blowpipe");
    await page.locator("#part-blowpipe .seen-in a").first().tap();
    expect(new URL(page.url()).hash).toBe("#photograph-1-5");
    expect(await page.locator('.callout.pointed-at[href="#part-blowpipe"]').count()).toBeGreaterThan(0);
    await leave(page);
  });
});

describe("looking closely", () => {
  const state = (page: Page) =>
    page.evaluate(() => {
      const sheet = document.querySelector(".closer-sheet")?.getBoundingClientRect();
      const stage = document.querySelector(".closer-stage")?.getBoundingClientRect();
      const dialog = document.querySelector("dialog");
      if (!sheet || !stage || !dialog) throw new Error("no dialog");
      return {
        open: dialog.open,
        place: document.querySelector(".closer-place")?.textContent,
        sheet: { x: sheet.x - stage.x, y: sheet.y - stage.y, width: sheet.width, height: sheet.height },
        stage: { width: stage.width, height: stage.height },
      };
    });
  const openAt = async (plate = 1, options: BrowserContextOptions = {}) => {
    const page = await visit(undefined, options);
    const link = page.locator(`#photograph-${plate} .look-closely`);
    await link.focus();
    await page.keyboard.press("Enter");
    await page.locator("dialog[open]").waitFor();
    return page;
  };

  it("opens by keyboard, fills the window with the whole picture, and leads back to where the reader was", async () => {
    const page = await visit();
    const link = page.locator("#photograph-2 .look-closely");
    await link.focus();
    const scrolled = await page.evaluate(() => scrollY);
    await page.keyboard.press("Enter");
    const { open, place, sheet, stage } = await state(page);
    expect({ open, place }).toEqual({ open: true, place: "Photograph 2 of 4" });
    // 1500 by 1000, in a window of 1280 by 900 less what is written above and below.
    expect(sheet.width / sheet.height).toBeCloseTo(1.5, 2);
    expect(Math.max(sheet.width / stage.width, sheet.height / stage.height)).toBeCloseTo(1, 3);
    expect(await page.evaluate(() => document.activeElement?.closest("dialog") !== null)).toBe(true);
    await page.keyboard.press("ArrowRight");
    expect((await state(page)).place).toBe("Photograph 3 of 4");
    await page.keyboard.press("Escape");
    expect((await state(page)).open).toBe(false);
    expect(await link.evaluate((element) => element === document.activeElement)).toBe(true);
    expect(await page.evaluate(() => scrollY)).toBe(scrolled);
    await leave(page);
  });

  it("goes nearer, farther and about by keys", async () => {
    const page = await openAt();
    const whole = (await state(page)).sheet;
    await page.keyboard.press("+");
    await page.keyboard.press("+");
    const near = (await state(page)).sheet;
    expect(near.width / whole.width).toBeCloseTo(2.25, 2);
    await page.keyboard.press("ArrowRight");
    expect((await state(page)).sheet.x).toBeLessThan(near.x);
    expect((await state(page)).place).toBe("Photograph 1 of 4");
    await page.keyboard.press("-");
    expect((await state(page)).sheet.width / whole.width).toBeCloseTo(1.5, 2);
    await page.keyboard.press("0");
    expect((await state(page)).sheet).toEqual(whole);
    await page.keyboard.press("End");
    expect((await state(page)).place).toBe("Photograph 4 of 4");
    await page.keyboard.press("PageDown");
    expect((await state(page)).place).toBe("Photograph 1 of 4");
    await leave(page);
  });

  it("goes nearer and farther, on and back, and shuts by buttons", async () => {
    const page = await openAt();
    const press = (name: string) => page.getByRole("button", { name, exact: true }).click();
    const whole = (await state(page)).sheet;
    await press("Nearer");
    expect((await state(page)).sheet.width).toBeGreaterThan(whole.width);
    await press("Farther");
    expect((await state(page)).sheet.width).toBeCloseTo(whole.width, 1);
    await press("Nearer");
    await press("Whole");
    expect((await state(page)).sheet).toEqual(whole);
    await press("Previous");
    expect((await state(page)).place).toBe("Photograph 4 of 4");
    // A small picture is not blown up.
    expect((await state(page)).sheet.width).toBeCloseTo(300, 0);
    await press("Next");
    await press("Numbers");
    expect(await page.locator("dialog .callouts:visible").count()).toBe(0);
    expect(await page.getByRole("button", { name: "Numbers" }).getAttribute("aria-pressed")).toBe("false");
    await press("Close");
    expect((await state(page)).open).toBe(false);
    await leave(page);
  });

  it("goes nearer about the pointer by wheel, and is dragged", async () => {
    const page = await openAt();
    const at = { x: 400, y: 300 };
    const stage = await boxOf(page.locator(".closer-stage"));
    await page.mouse.move(stage.x + at.x, stage.y + at.y);
    const before = (await state(page)).sheet;
    await page.mouse.wheel(0, -400);
    const after = (await state(page)).sheet;
    const scale = after.width / before.width;
    expect(scale).toBeCloseTo(Math.E, 1);
    // The point of the picture below the pointer has stayed there.
    expect((at.x - after.x) / scale).toBeCloseTo(at.x - before.x, 0);
    expect((at.y - after.y) / scale).toBeCloseTo(at.y - before.y, 0);
    await page.mouse.down();
    await page.mouse.move(stage.x + at.x + 60, stage.y + at.y + 40, { steps: 4 });
    await page.mouse.up();
    const moved = (await state(page)).sheet;
    expect(moved.x - after.x).toBeCloseTo(60, 0);
    expect(moved.y - after.y).toBeCloseTo(40, 0);
    await leave(page);
  });

  it("goes nearer where it is clicked, and a click brings a point to the middle: no drag is needed", async () => {
    const page = await openAt(2);
    const stage = await boxOf(page.locator(".closer-stage"));
    await page.mouse.click(stage.x + 200, stage.y + 200);
    const near = (await state(page)).sheet;
    await page.mouse.click(stage.x + stage.width / 2 + 100, stage.y + stage.height / 2 + 50);
    const moved = (await state(page)).sheet;
    expect(near.x - moved.x).toBeCloseTo(100, 0);
    expect(near.y - moved.y).toBeCloseTo(50, 0);
    await leave(page);
  });

  it("opens at a click on the picture, and by touch is pinched nearer and swiped on", async () => {
    const page = await visit(undefined, {
      viewport: { width: 390, height: 800 },
      hasTouch: true,
      isMobile: true,
    });
    await page.locator("#photograph-3 .plate-picture").tap({ position: { x: 20, y: 20 } });
    await page.locator("dialog[open]").waitFor();
    const before = await state(page);
    expect(before.place).toBe("Photograph 3 of 4");
    const session = await page.context().newCDPSession(page);
    const stage = await boxOf(page.locator(".closer-stage"));
    const [cx, cy] = [stage.x + stage.width / 2, stage.y + stage.height / 2];
    const touch = (type: "touchStart" | "touchMove" | "touchEnd", ...points: (readonly [number, number])[]) =>
      session.send("Input.dispatchTouchEvent", {
        type,
        touchPoints: points.map(([x, y], id) => ({ x, y, id })),
      });
    await touch("touchStart", [cx - 40, cy], [cx + 40, cy]);
    for (const apart of [50, 60, 70, 80]) await touch("touchMove", [cx - apart, cy], [cx + apart, cy]);
    await touch("touchEnd");
    // From 80 apart to 160.
    expect((await state(page)).sheet.width / before.sheet.width).toBeCloseTo(2, 1);
    await page.getByRole("button", { name: "Whole" }).tap();
    await touch("touchStart", [cx + 80, cy]);
    for (const x of [40, 0, -40, -80]) await touch("touchMove", [cx + x, cy]);
    await touch("touchEnd");
    expect((await state(page)).place).toBe("Photograph 4 of 4");
    await leave(page);
  });

  it("a number in it leads to the line of its part", async () => {
    const page = await openAt();
    await page.locator("dialog .callout-target:visible").nth(3).click();
    expect((await state(page)).open).toBe(false);
    expect(new URL(page.url()).hash).toBe("#part-mortar");
    await leave(page);
  });

  it("has no accessibility fault that axe finds, by day and by night", async () => {
    const page = await openAt(1, { colorScheme: "light" });
    expect(await axeFaults(page)).toEqual([]);
    // Between the schemes nothing differs but colours.
    await page.emulateMedia({ colorScheme: "dark" });
    expect(await faintTexts(page)).toEqual([]);
    await leave(page);
  });

  it("without JavaScript the link leads to the largest file", async () => {
    const page = await visit(undefined, { javaScriptEnabled: false });
    const href = await page.locator("#photograph-1 .look-closely").getAttribute("href");
    const file = path.join(folder, new URL(href ?? "", `${site.url}/items/filmed/`).pathname);
    const { width, height, format } = await sharp(file).metadata();
    expect({ width, height, format }).toEqual({ width: 2200, height: 1467, format: "jpeg" });
    expect(await page.locator("dialog").isVisible()).toBe(false);
    await leave(page);
  });
});

describe("the recording", () => {
  it("is a player with its chapters and captions, which a browser reads as they were written", async () => {
    const page = await visit();
    const tracks = await page.evaluate(async () => {
      const player = document.querySelector("video");
      const read = async (kind: string) => {
        const element = player?.querySelector<HTMLTrackElement>(`track[kind='${kind}']`);
        if (!element) throw new Error(`no ${kind}`);
        element.track.mode = "hidden";
        if (element.readyState !== 2)
          await new Promise((resolve) => element.addEventListener("load", resolve));
        return [...(element.track.cues ?? [])].map((cue) => ({
          start: cue.startTime,
          end: cue.endTime,
          text: (cue as VTTCue).getCueAsHTML().textContent,
        }));
      };
      return { chapters: await read("chapters"), captions: await read("captions") };
    });
    expect(tracks.chapters).toEqual([
      { start: 4, end: 20, text: "Balance" },
      { start: 20, end: 99 * 3600, text: "Lamp; Key" },
    ]);
    expect(tracks.captions).toEqual([
      { start: 1, end: 5, text: "The chest, number H2718\u2022\u2022, is opened." },
    ]);
    await leave(page);
  });

  it("is moved to a moment by its link, above and in the list of parts", async () => {
    const page = await visit();
    const time = () => page.evaluate(() => document.querySelector("video")?.currentTime ?? -1);
    await page.locator(".moments a.moment").nth(1).click();
    await page.waitForFunction(() => (document.querySelector("video")?.currentTime ?? 0) >= 20);
    expect(await time()).toBeLessThan(25);
    expect(await page.locator(".moments li.current").count()).toBe(2);
    await page.evaluate(() => document.querySelector("video")?.pause());
    await page.locator("#part-balance a.moment").click();
    await page.waitForFunction(() => {
      const at = document.querySelector("video")?.currentTime ?? 0;
      return at >= 4 && at < 10;
    });
    // It stayed on its page.
    expect(new URL(page.url()).pathname).toBe("/items/filmed/");
    const player = await boxOf(page.locator("video"));
    await page.waitForFunction(() => {
      const box = document.querySelector("video")?.getBoundingClientRect();
      return box !== undefined && box.top < innerHeight && box.bottom > 0;
    });
    expect(player.width).toBeGreaterThan(300);
    await leave(page);
  });

  it("plays as sound where it is sound, and jumps there too", async () => {
    const page = await visit("/items/told/");
    expect(await page.locator(".recording audio[controls]").count()).toBe(1);
    await page.locator(".moments a.moment").click();
    await page.waitForFunction(() => (document.querySelector("audio")?.currentTime ?? 0) >= 77);
    await leave(page);
  });

  it("is read as well as heard, since no browser shows captions over sound", async () => {
    const page = await visit("/items/told/");
    // Without the time, which is a link to that second.
    const lines = page.locator(".said li");
    expect(await lines.locator("span").allInnerTexts()).toEqual([
      "Ada: This is the chest, number H2718\u2022\u2022, as it came to the house.",
      "Its lid is of oak & lined with green cloth, which has faded along the edge that faced the window for longer than anybody here can say.",
      "And this is the balance.",
    ]);
    expect(await lines.locator("a").allInnerTexts()).toEqual(["0:00", "0:06", "1:17"]);
    await lines.locator("a").nth(1).click();
    await page.waitForFunction(() => (document.querySelector("audio")?.currentTime ?? 0) >= 6);
    expect(new URL(page.url()).pathname).toBe("/items/told/");
    expect(await page.content()).not.toMatch(new RegExp(`${serial}|taken down`));
    // A sheet of paper has no room for all that somebody may say, and says that there is a recording.
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".said").isVisible()).toBe(false);
    expect(await page.locator(".off-sheet").innerText()).toContain("film or sound");
    await leave(page);
  });

  it("that is a film has what is said behind a line of its own", async () => {
    const page = await visit("/items/filmed/", { javaScriptEnabled: false });
    const said = page.locator(".transcript .said");
    expect(await said.isVisible()).toBe(false);
    await page.locator(".transcript summary").click();
    expect(await said.innerText()).toMatch(/^0:01\s+The chest, number H2718\u2022\u2022, is opened\.$/);
    await leave(page);
  });

  it("without JavaScript is a plain player with a list of links to its seconds", async () => {
    const page = await visit(undefined, { javaScriptEnabled: false });
    expect(await page.locator(".recording video[controls][preload='metadata']").count()).toBe(1);
    const links = await page
      .locator(".moments a.moment")
      .evaluateAll((all) => all.map((each) => each.getAttribute("href")));
    // Media Fragments URI 1.0, 4.2.1: seconds of normal play time.
    expect(
      links.map((href) => /^\.\.\/\.\.\/recordings\/[0-9a-f]{24}\.webm#t=(\d+)$/.exec(href ?? "")?.[1]),
    ).toEqual(["4", "20", "20"]);
    await leave(page);
  });

  it("keeps its file's own name, and a masked serial, out of the site", async () => {
    const names = readdirSync(folder, { recursive: true }).map(String);
    expect(names.filter((name) => /film\.|told\.(wav|vtt)$/.test(name))).toEqual([]);
    const page = await visit();
    expect(await page.content()).not.toContain(serial);
    await leave(page);
  });
});

describe("what others show of an entry", () => {
  const meta = (page: Page) =>
    page.evaluate(() =>
      Object.fromEntries(
        [...document.querySelectorAll("meta[property], meta[name]")].map((each) => [
          each.getAttribute("property") ?? each.getAttribute("name"),
          each.getAttribute("content"),
        ]),
      ),
    );

  it("is its card, with whole addresses", async () => {
    const page = await visit();
    const found = await meta(page);
    // The Open Graph protocol: og:title, og:type, og:image and og:url are required of every page.
    expect(found).toMatchObject({
      "og:title": "A chest",
      "og:type": expect.any(String),
      "og:url": "https://example.org/items/filmed/",
      "og:image:width": "1200",
      "og:image:height": "630",
      "twitter:card": "summary_large_image",
    });
    expect(found["og:description"]).toMatch(/\w/);
    const image = found["og:image"] ?? "";
    expect(image).toMatch(/^https:\/\/example\.org\/images\/[0-9a-f]{24}-card\.jpg$/);
    const { width, height, format } = await sharp(path.join(folder, new URL(image).pathname)).metadata();
    expect({ width, height, format }).toEqual({ width: 1200, height: 630, format: "jpeg" });
    await leave(page);
  });

  it("is a title and a description where there is no photograph", async () => {
    const page = await visit("/items/told/");
    const found = await meta(page);
    expect(found).not.toHaveProperty("og:image");
    expect(found["twitter:card"]).toBe("summary");
    await leave(page);
  });

  it("is measured in the letters that the pages are set in: a browser measures the same", async () => {
    const page = await visit();
    const text = "Survey Outfit no. 352";
    const width = await page.evaluate(async (text) => {
      await document.fonts.load("100px Alegreya");
      const pen = document.createElement("canvas").getContext("2d");
      if (!pen) throw new Error("no canvas");
      pen.font = "100px Alegreya";
      return pen.measureText(text).width;
    }, text);
    expect(typefaces.serif.width(text, 100)).toBeCloseTo(width, -0.5);
    await leave(page);
  });
});

it("nothing moves while the page loads", async () => {
  const page = await visit();
  await page.waitForLoadState("networkidle");
  const moved = await page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        let total = 0;
        new PerformanceObserver((list) => {
          for (const entry of list.getEntries())
            total += (entry as PerformanceEntry & { value: number }).value;
        }).observe({ type: "layout-shift", buffered: true });
        setTimeout(() => resolve(total), 300);
      }),
  );
  // A tenth of what the Layout Instability measure calls good is 0.01; a late face in place of its stand-in, of
  // nearly the same width, can come to a thousandth. A picture without a size would be a hundred times that.
  expect(moved).toBeLessThan(0.01);
  await leave(page);
});

it.each(["/items/filmed/", "/items/told/"])(
  "%s has no accessibility fault that axe finds",
  async (address) => {
    const page = await visit(address, { colorScheme: "light" });
    expect(await axeFaults(page)).toEqual([]);
    // Between the schemes nothing differs but colours.
    await page.emulateMedia({ colorScheme: "dark" });
    expect(await faintTexts(page)).toEqual([]);
    await leave(page);
  },
);

it("is valid HTML, by the recommended rules of html-validate", async () => {
  for (const id of ["filmed", "told"]) {
    const { results } = await htmlRules.validateFile(path.join(folder, `items/${id}/index.html`));
    expect(
      results.flatMap(({ messages }) => messages.map(({ ruleId, message }) => `${ruleId}: ${message}`)),
    ).toEqual([]);
  }
});

it("says nothing on the console: the strict policy refuses none of it", () => {
  expect(said).toEqual([]);
});
