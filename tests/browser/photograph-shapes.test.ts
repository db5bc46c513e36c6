import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Page } from "playwright-core";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";
import { run } from "../commands/run.ts";
import { type OpenSite, openSite } from "./open-site.ts";

const shapes = {
  "tower.jpg": [900, 5200],
  "upright.jpg": [800, 1200],
  "wide.jpg": [2400, 1600],
  "square.jpg": [1500, 1500],
  "tiny.png": [24, 18],
  "strip.jpg": [300, 1500],
} as const;

/** Each file in the order in which its outfit shows it. */
const outfits = {
  tower: ["tower.jpg", "upright.jpg", "wide.jpg"],
  square: ["square.jpg", "tiny.png"],
  tiny: ["tiny.png"],
  upright: ["upright.jpg"],
  strip: ["wide.jpg", "strip.jpg"],
} as const;

let site: OpenSite;
beforeAll(async () => {
  const files: Record<string, string | Uint8Array> = {};
  for (const [id, names] of Object.entries(outfits)) {
    const photos = names.map(
      (file) => `{ file: ${file}, alt: A chest., callouts: [{ part: lamp, at: [0.25, 0.75] }] }`,
    );
    files[`content/items/${id}/index.md`] = item(
      `parts: { lamp: present }\nphotos: [${photos.join(", ")}]`,
    ).replace("A chest", `The ${id} chest`);
    for (const name of names) {
      const [width, height] = shapes[name];
      const made = sharp({ create: { width, height, channels: 3, background: "#635" } });
      files[`content/items/${id}/${name}`] = await made
        .toFormat(name.endsWith("png") ? "png" : "jpeg")
        .toBuffer();
    }
  }
  const root = writeCollection(smallCollection("parts: { lamp: { standing: issued } }\n", files));
  const out = path.join(mkdtempSync(path.join(tmpdir(), "fittedcase-shapes-")), "site");
  const built = await run(["build", "--root", root, "--out", out], root);
  if (built.code !== 0) throw new Error(built.err);
  site = await openSite(out);
}, 60_000);
afterAll(() => site.close());

/** Every photograph of the page as it is shown, once it is there, with where its number lies on it and its caption below. */
async function shown(page: Page) {
  for (const image of await page.locator(".plate img").all()) {
    await image.scrollIntoViewIfNeeded();
    await image.evaluate((element: HTMLImageElement) => element.decode());
  }
  return page.locator(".plate").evaluateAll((plates) =>
    plates.map((plate) => {
      const box = (selector: string) => {
        const found = [...plate.querySelectorAll(selector)].find((each) => each.checkVisibility());
        return found?.getBoundingClientRect() ?? new DOMRect();
      };
      const [image, number] = [box("img"), box(".callouts .callout-target")];
      return {
        width: image.width,
        height: image.height,
        number: [
          (number.x + number.width / 2 - image.x) / image.width,
          (number.y + number.height / 2 - image.y) / image.height,
        ],
        caption: box("figcaption").y,
      };
    }),
  );
}

describe("photographs of any shape", () => {
  it.each([
    [1280, 900],
    [1366, 768],
    [390, 800],
  ])(
    "are seen whole in a window of %i by %i, undistorted, no larger than they are",
    async (width, height) => {
      for (const [id, names] of Object.entries(outfits)) {
        const page = await site.visit(`/items/${id}/`, { viewport: { width, height } });
        for (const [at, { width: across, height: down, number }] of (await shown(page)).entries()) {
          const [own, ownDown] = shapes[names[at] ?? "wide.jpg"];
          expect(across, `${id} ${at}`).toBeLessThanOrEqual(own);
          expect(down, `${id} ${at}`).toBeLessThanOrEqual(1.1 * height);
          expect(Math.abs(across - (down * own) / ownDown), `${id} ${at}`).toBeLessThanOrEqual(1);
          if (own < 100) continue;
          expect(number[0]).toBeCloseTo(0.25, 1);
          expect(number[1]).toBeCloseTo(0.75, 1);
        }
        await page.context().close();
      }
    },
  );

  it("at the head of the first page is seen whole too", async () => {
    const page = await site.visit("/", { viewport: { width: 1280, height: 900 } });
    const { height } = (await page.locator(".frontispiece img").boundingBox()) ?? { height: 0 };
    expect(height).toBeGreaterThan(0);
    expect(height).toBeLessThanOrEqual(901);
    await page.context().close();
  });

  it("side by side have their captions on one line", async () => {
    const page = await site.visit("/items/tower/");
    const [, one, other] = await shown(page);
    expect(one?.height).toBeGreaterThan((other?.height ?? 0) + 100);
    expect(one?.caption).toBeCloseTo(other?.caption ?? 0, 0);
    await page.context().close();
  });

  it("has its caption at its side where it is narrow and the last", async () => {
    const page = await site.visit("/items/strip/");
    await shown(page);
    const strip = page.locator(".plate").last();
    const [image, caption] = await Promise.all([
      strip.locator("img").boundingBox(),
      strip.locator("figcaption").boundingBox(),
    ]);
    if (!image || !caption) throw new Error("The photograph is not shown.");
    expect(caption.x - (image.x + image.width)).toBeGreaterThan(0);
    expect(caption.x - (image.x + image.width)).toBeLessThan(60);
    await page.context().close();
  });

  it("are brought as near as any other, however small they stand in the page", async () => {
    const page = await site.visit("/items/tower/");
    await page.locator(".look-closely").first().click();
    const across = await page.locator(".closer-sheet img").evaluate(({ clientHeight }) => clientHeight);
    expect(across).toBeGreaterThan(700);
    await page.context().close();
  });

  it("among plates, upright and small ones stand whole on a ground", async () => {
    const page = await site.visit("/items/");
    await page.locator("#as-plates").check();
    for (const id of ["tower", "upright", "tiny"]) {
      const image = page.locator(`tr[data-entry="${id}"] .sight img`).first();
      await image.scrollIntoViewIfNeeded();
      const seen = await image.evaluate(async (element: HTMLImageElement) => {
        await element.decode();
        const { objectFit, backgroundColor } = getComputedStyle(element);
        return { objectFit, backgroundColor, natural: element.naturalWidth };
      });
      expect(seen, id).toMatchObject({ objectFit: "scale-down", backgroundColor: "rgb(234, 233, 225)" });
      if (id === "tiny") expect(seen.natural).toBeLessThanOrEqual(24);
    }
    await page.context().close();
  });
});
