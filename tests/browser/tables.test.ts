import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { smallCollection, writeCollection } from "../collections/collection.ts";
import { run } from "../commands/run.ts";
import { type OpenSite, openSite } from "./open-site.ts";

const row = (cells: readonly string[]) => `| ${cells.join(" | ")} |\n`;
const columns = (count: number, word: string) => Array.from({ length: count }, (_, at) => `${word} ${at}`);
const table = (heads: readonly string[], cells: readonly string[]) =>
  `${row(heads)}${row(heads.map(() => "---"))}${row(cells).repeat(3)}\n`;

const long = "A sentence that goes on and on, and tells at length of the case, its lid and what is in it";

const tables = {
  short: `${row(["Word", "Wort", "mot"])}${row(["---", ":-:", "---:"])}${row(["case", "Kasten", "12"])}`,
  two: table(["Thing", "What is said of it"], ["case", long]),
  wide: table(columns(4, "What is said"), columns(4, long)),
  sixteen: table(columns(16, "Heading of the column"), columns(16, "value")),
  mixed: table(columns(16, "Column"), [long, ...columns(14, "1,234.50"), "Handschuhfachverriegelungen"]),
};

let site: OpenSite;
beforeAll(async () => {
  const articles = Object.entries(tables).map(([id, text]) => [
    `content/articles/${id}.md`,
    `---\ntitle: ${id}\n---\n${text}`,
  ]);
  const root = writeCollection(smallCollection("parts: { lamp: {} }\n", Object.fromEntries(articles)));
  const out = path.join(mkdtempSync(path.join(tmpdir(), "fittedcase-tables-")), "site");
  const built = await run(["build", "--root", root, "--out", out], root);
  if (built.code !== 0) throw new Error(built.err);
  site = await openSite(out);
}, 60_000);
afterAll(() => site.close());

/** How wide the table is, the box that it stands in, and how far its last column reaches. */
const sizesOf = (page: Page) =>
  page.locator(".prose .scroll").evaluate((box) => {
    const last = [...box.querySelectorAll("th, td")].map((cell) => {
      const range = document.createRange();
      range.selectNodeContents(cell);
      return range.getBoundingClientRect().right;
    });
    return {
      box: box.clientWidth,
      table: box.querySelector("table")?.offsetWidth ?? 0,
      reaches: Math.max(...last),
    };
  });

async function seen(id: string, width: number) {
  const page = await site.visit(`/articles/${id}/`, { viewport: { width, height: 900 } });
  const sizes = await sizesOf(page);
  await page.context().close();
  return sizes;
}

describe("a table that a writer typed", () => {
  it.each([390, 1280])("is as wide as it needs in a window of %i", async (width) => {
    const short = await seen("short", width);
    expect(short.table).toBeLessThan(short.box);
    expect(short.table).toBeLessThan(250);
    for (const id of ["two", ...(width > 1000 ? ["wide"] : [])]) {
      const { table: across, box } = await seen(id, width);
      expect(across, id).toBeLessThanOrEqual(box);
    }
    const sixteen = await seen("sixteen", width);
    expect(sixteen.table).toBeGreaterThan(sixteen.box);
  });

  it("has its columns set by the style sheet, which the policy of the page lets in", async () => {
    const refused: string[] = [];
    const page = await site.visit("/articles/short/");
    page.on("console", (message) => refused.push(message.text()));
    await page.reload();
    const alignments = await page
      .locator(".prose td")
      .evaluateAll((cells) => cells.map((cell) => getComputedStyle(cell).textAlign));
    expect(alignments).toEqual(["start", "center", "end"]);
    expect(refused).toEqual([]);
    await page.context().close();
  });

  // A4 less two margins of 12 mm is 186 mm, of 96/25.4 pixels each.
  it.each(Object.keys(tables))("loses nothing on paper (%s)", async (id) => {
    const across = Math.floor((186 * 96) / 25.4);
    const page = await site.visit(`/articles/${id}/`, { viewport: { width: across, height: 900 } });
    await page.emulateMedia({ media: "print" });
    expect((await sizesOf(page)).reaches).toBeLessThanOrEqual(across);
    expect(await page.locator(".prose .scroll").evaluate((box) => getComputedStyle(box).overflowX)).toBe(
      "visible",
    );
    await page.context().close();
  });
});
