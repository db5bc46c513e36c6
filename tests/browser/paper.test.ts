import { readFileSync } from "node:fs";
import path from "node:path";
import { gzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { siteFiles } from "../collections/site-files.ts";
import { type OpenSite, openSite } from "./open-site.ts";

let site: OpenSite;

beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site.close());

const items = [...siteFiles(inject("demonstration"))].flatMap(([file, bytes]) =>
  bytes.includes('http-equiv="refresh"') ? [] : (/^items\/([^/]+)\/card\/index\.html$/.exec(file)?.[1] ?? []),
);

type Paper = "A4" | "A5" | "another";

/** ISO 216, in points, of which there are 72 to the 25.4 mm of an inch. */
const sizes: Readonly<Record<Exclude<Paper, "another">, readonly [number, number]>> = {
  A4: [595.3, 841.9],
  A5: [419.5, 595.3],
};

const paperOf = (width: number, height: number): Paper =>
  (["A4", "A5"] as const).find(
    (name) => Math.abs(sizes[name][0] - width) < 1 && Math.abs(sizes[name][1] - height) < 1,
  ) ?? "another";

/** What a page is printed on, sheet by sheet, as its own style has it. */
async function sheets(address: string): Promise<Paper[]> {
  const page = await site.visit(address);
  // Pictures keep their room, and are left out of the file: to put one in takes seconds.
  await page.evaluate(() => {
    for (const picture of document.querySelectorAll<HTMLElement | SVGElement>("img, svg"))
      picture.style.visibility = "hidden";
  });
  const pdf = (await page.pdf({ preferCSSPageSize: true, printBackground: true })).toString("latin1");
  await page.context().close();
  // ISO 32000-1, 7.7.3.3: every leaf of the page tree says that it is one, and how large its sheet is.
  const leaves = pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0;
  const boxes = [...pdf.matchAll(/\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)\s*\]/g)];
  expect(boxes).toHaveLength(leaves);
  return boxes.map(([, width, height]) => paperOf(Number(width), Number(height)));
}

describe("on paper", () => {
  it.each(items)("%s is two sheets of A4, and its card one of A5", async (id) => {
    const entry = await sheets(`/items/${id}/`);
    expect(entry.length).toBeLessThanOrEqual(2);
    expect(new Set(entry)).toEqual(new Set(["A4"]));
    expect(await sheets(`/items/${id}/card/`)).toEqual(["A5"]);
  });

  it("a card without a photograph, whose parts nobody has examined, is drawn without a pixel", async () => {
    const page = await site.visit("/items/marchby-crate-set/card/");
    const pdf = (await page.pdf({ preferCSSPageSize: true, printBackground: true })).toString("latin1");
    await page.context().close();
    // ISO 32000-1, 8.9.5: an image says that it is one. The links show that there is something to be found.
    expect(pdf).toMatch(/\/Subtype\s*\/Link/);
    expect(pdf).not.toMatch(/\/Subtype\s*\/Image/);
  });

  it.each(["estrow-exchange-set", "tolleray-coast-outfit"])(
    "the plan of %s goes from margin to margin, and its smallest label has 6.5 points",
    async (id) => {
      // 210 mm less two margins of 12 mm are 186 mm; an inch of 25.4 mm has 96 px and 72 points.
      const page = await site.visit(`/items/${id}/`, { viewport: { width: 703, height: 1000 } });
      await page.emulateMedia({ media: "print" });
      const plan = await page.evaluate(() => {
        const svg = document.querySelector<SVGSVGElement>(".drawing-plan .plot-wide svg");
        const across = svg?.getBoundingClientRect().width ?? 0;
        const sizes = [...(svg?.querySelectorAll("text") ?? [])].map((text) =>
          Number.parseFloat(getComputedStyle(text).fontSize),
        );
        return { across, units: Math.min(...sizes) / (svg?.viewBox.baseVal.width ?? 0) };
      });
      expect(plan.across).toBeGreaterThan(700);
      expect(plan.units * plan.across * (72 / 96)).toBeGreaterThanOrEqual(6.5);
      await page.context().close();
    },
  );

  it("an entry says what it leaves out, and on a screen, which has it, nothing of the kind", async () => {
    const page = await site.visit("/items/orm-head-coast-outfit/");
    const note = page.locator(".off-sheet");
    expect(await note.isVisible()).toBe(false);
    expect(await page.locator(".plate").nth(1).isVisible()).toBe(true);
    expect(await page.locator(".observed").isVisible()).toBe(true);
    await page.emulateMedia({ media: "print" });
    expect(await note.innerText()).toMatch(/further photographs, .*feature by feature/);
    expect(await page.locator(".plate").nth(1).isVisible()).toBe(false);
    expect(await page.locator(".observed").isVisible()).toBe(false);
    await page.context().close();
  });

  it("a card leaves nothing out for want of room", async () => {
    const page = await site.visit("/items/hale-ferrin-outfit/card/", {
      viewport: { width: 559, height: 793 },
    });
    await page.emulateMedia({ media: "print" });
    const over = await page.evaluate(() => {
      const sheet = document.querySelector(".card-sheet");
      const plan = sheet?.querySelector(".plot-wide svg")?.getBoundingClientRect();
      return sheet && plan ? { over: sheet.scrollHeight - sheet.clientHeight, plan: plan.height } : null;
    });
    expect(over?.over).toBe(0);
    // 793 px are the 210 mm of the sheet.
    expect(over?.plan).toBeGreaterThan(793 / 3);
    await page.context().close();
  });
});

describe("what a page weighs", () => {
  it.each(items)("%s: HTML, style and scripts together stay under 60 kB compressed", (id) => {
    const folder = inject("demonstration");
    const read = (file: string) => readFileSync(path.join(folder, file));
    const html = read(`items/${id}/index.html`);
    const asked = [
      ...html
        .toString("utf8")
        .matchAll(
          /<(?:script type="module" src|link rel="(?:stylesheet|modulepreload)" href)="(?:\.\.\/)+([^"]+)"/g,
        ),
    ].map((match) => match[1] ?? "");
    expect(asked.length).toBeGreaterThan(1);
    const bytes = [html, ...[...new Set(asked)].map(read)].map((file) => gzipSync(file).byteLength);
    expect(bytes.reduce((sum, each) => sum + each, 0)).toBeLessThan(60_000);
  });
});
