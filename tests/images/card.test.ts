import { mkdtempSync } from "node:fs";
import { readdir, readFile, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import sharp from "sharp";
import { beforeAll, describe, expect, it } from "vitest";
import { fittedText } from "../../shared/images/preview-picture/fitted-text.ts";
import {
  type PreviewText,
  photographBox,
  previewDrawing,
  previewSize,
} from "../../shared/images/preview-picture/preview-drawing.ts";
import { renderPreviewPicture } from "../../shared/images/preview-picture/render-preview-picture.ts";
import { typefaces } from "../../shared/images/preview-picture/typeface.ts";
import type { CasePlanPart } from "../../shared/plots/case-plan/case-plan.ts";
import { parseMarkup } from "../plots/drawing.ts";

const text: PreviewText = {
  collection: "Cases & Outfits",
  title: "Survey Outfit no. 352, from the assay office at Hale Ferrin",
  held: "held to be Survey Outfit, Second Pattern: confirmed",
  complete: "62% to 87%",
  completeWords: "complete by weight",
};
const parts: readonly CasePlanPart[] = [
  { id: "a", name: "A", quantity: 1, weight: 4, plan: null, summary: "present" },
  { id: "b", name: "B", quantity: 1, weight: 2, plan: null, summary: "absent" },
  { id: "c", name: "C", quantity: 1, weight: 1, plan: null, summary: "unverified" },
];

const folder = () => mkdtempSync(path.join(tmpdir(), "cards-"));
let photograph: string;
beforeAll(async () => {
  photograph = path.join(folder(), "photograph.jpg");
  await sharp({ create: { width: 900, height: 600, channels: 3, background: "#cc2200" } })
    .withExif({ IFD0: { Artist: "CANARY" } })
    .jpeg()
    .toFile(photograph);
});

/** The colour of a point of a picture. */
async function colourAt(file: string, left: number, top: number): Promise<readonly number[]> {
  const { data } = await sharp(file)
    .extract({ left, top, width: 1, height: 1 })
    .raw()
    .toBuffer({ resolveWithObject: true });
  return [...data];
}

describe("the card of an entry", () => {
  it("is a JPEG of 1200 by 630 points, with the photograph on it and nothing else of its file", async () => {
    const out = folder();
    const { file, name } = await renderPreviewPicture({ text, parts }, photograph, folder(), out);
    const { width, height, format, exif, xmp, icc } = await sharp(file).metadata();
    // The size that those who show such pictures ask for: common practice, no source.
    expect({ width, height, format, exif, xmp, icc }).toEqual({ width: 1200, height: 630, format: "jpeg" });
    expect(previewSize).toEqual({ width, height });
    expect(name).toMatch(/^[0-9a-f]{24}-card\.jpg$/);
    expect((await readFile(file)).includes("CANARY")).toBe(false);
    const [red = 0, green = 255, blue = 255] = await colourAt(file, 370, 240);
    expect([red > 190, green < 50, blue < 20]).toEqual([true, true, true]);
    // Paper beyond the photograph's edge.
    const paper = await colourAt(file, photographBox.width + 10, 20);
    for (const channel of paper) expect(channel).toBeGreaterThan(235);
  });

  it("is drawn without any text that would need a font on the machine", () => {
    const drawing = previewDrawing({ text, parts });
    parseMarkup(drawing.replace(/<style>[^<]*<\/style>/, ""));
    expect(drawing).not.toMatch(/<text|font-family|NaN|undefined|<image|href|url\(/);
  });

  it("draws a name as it is spelt: markup in it is letters", () => {
    const drawing = previewDrawing({ text: { ...text, title: '<script>alert("1")</script>' }, parts });
    expect(drawing).not.toContain("<script");
    expect(drawing.length).toBeGreaterThan(previewDrawing({ text: { ...text, title: "x" }, parts }).length);
  });

  it("is the same every time, and another where anything on it is another", async () => {
    const name = async (of: PreviewText, from = photograph) =>
      (await renderPreviewPicture({ text: of, parts }, from, folder(), folder())).name;
    const other = path.join(folder(), "other.jpg");
    await sharp({ create: { width: 900, height: 600, channels: 3, background: "#0022cc" } })
      .jpeg()
      .toFile(other);
    const first = await name(text);
    expect(await name(text)).toBe(first);
    expect(await name({ ...text, complete: "63% to 87%" })).not.toBe(first);
    expect(await name(text, other)).not.toBe(first);
    expect(previewDrawing({ text, parts, accent: "#7a2e1f" })).not.toBe(previewDrawing({ text, parts }));
  });

  it("is taken from the cache, unless what lies there is not whole", async () => {
    const [cache, out] = [folder(), folder()];
    const content = { text, parts };
    const { file } = await renderPreviewPicture(content, photograph, cache, out);
    const [entry = ""] = await readdir(path.join(cache, "cards"));
    const cached = path.join(cache, "cards", entry);
    const { ino } = await stat(cached);
    const bytes = await readFile(file);
    await renderPreviewPicture(content, photograph, cache, folder());
    expect((await stat(cached)).ino).toBe(ino);
    await writeFile(cached, (await readFile(cached)).subarray(0, 500));
    const again = await renderPreviewPicture(content, photograph, cache, folder());
    expect((await readFile(again.file)).equals(bytes)).toBe(true);
  });

  it("shows the photograph and the plan where no face has the letters of the title", () => {
    const chinese = previewDrawing({ text: { ...text, title: "箱" }, parts });
    const none = previewDrawing({ text: { ...text, title: "" }, parts });
    expect(typefaces.serif.covers("箱")).toBe(false);
    expect(chinese.length).toBeLessThanOrEqual(none.length + 40);
    for (const title of ["Ærøskøbing å 12 ½", "Łódź, Ǆ", "Θησαυρός", "Сундук"]) {
      expect(typefaces.serif.covers(title), title).toBe(true);
    }
  });
});

describe("a line on the card", () => {
  // A face in which every letter is half as wide as it is high.
  const face = { width: (line: string, size: number) => [...line].length * size * 0.5 };

  it("is as large as it fits", () => {
    expect(fittedText("12345678", face, 200, [50, 40, 30])).toEqual({ text: "12345678", size: 50 });
    expect(fittedText("123456789", face, 200, [50, 40, 30])).toEqual({ text: "123456789", size: 40 });
  });

  it("is cut short at the smallest size where it fits at none, not at a comma", () => {
    // At 20 a letter is 10 wide: ten fit, one of them the ellipsis.
    expect(fittedText("Outfit 3, of many", face, 100, [40, 20])).toEqual({
      text: "Outfit 3\u2026",
      size: 20,
    });
    expect(fittedText("Outfitters of Hale", face, 100, [40, 20])).toEqual({
      text: "Outfitter\u2026",
      size: 20,
    });
    expect(fittedText("Outfit", face, 5, [40, 20]).text).toBe("");
  });
});
