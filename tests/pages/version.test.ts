import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import path from "node:path";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { buildSite } from "../../shared/site/build/build-site.ts";
import { item, smallCollection, writeCollection, writeFiles } from "../collections/collection.ts";

/** A grey picture: no two shades have the same bytes. */
const picture = (grey: number): Promise<Buffer> =>
  sharp({ create: { width: 64, height: 48, channels: 3, background: { r: grey, g: grey, b: grey } } })
    .jpeg()
    .toBuffer();

const log = (...rows: string[]) => ["seen,variant,serial,source,kind", ...rows, ""].join("\n");
const sources = "- { id: register, title: A register }\n";
const sighting = "2001,chest-a,12,register,offer";
const pages = ["items/box", "variants/chest-a", "families/chest"];

const variant = (count: number) =>
  `parts: { lamp: { standing: issued } }\nmade: { count: ${count}, source: register }\n`;

type Data = Readonly<Record<string, unknown>> & { readonly variant: { readonly figures: string } };

async function site() {
  const root = writeCollection(
    smallCollection(variant(40), {
      "content/sources.yaml": sources,
      "content/sightings/log.csv": log(sighting),
      "content/items/box/index.md": item(
        "serial: '3'\nparts: { lamp: present }\nphotos: [{ file: open.jpg, alt: A box }]",
      ),
      "content/items/box/open.jpg": await picture(90),
    }),
  );
  const out = path.join(root, "_site");
  /** The version by which each page is cited once the files are written and the site is built again. */
  const versions = async (files: Parameters<typeof writeFiles>[1] = {}): Promise<(string | undefined)[]> => {
    writeFiles(root, files);
    const { written, diagnostics } = await buildSite(root, out, "public");
    if (!written) throw new Error(JSON.stringify(diagnostics));
    return pages.map(
      (page) =>
        /Version ([0-9a-f]{12})\. https/.exec(readFileSync(path.join(out, page, "index.html"), "utf8"))?.[1],
    );
  };
  const data = (file: string): Data => JSON.parse(readFileSync(path.join(out, "data", file), "utf8"));
  return { versions, data };
}

/** Which of the pages are another version. */
const changed = (before: readonly unknown[], after: readonly unknown[]) =>
  pages.filter((_, at) => before[at] !== after[at]);

// Common practice in citing what may change: the version is another whenever what is cited is.
describe("the version that a page is cited by", () => {
  it("stays while nothing changes, and is another where a figure on the page is", async () => {
    const { versions } = await site();
    const first = await versions();
    expect(first.every((version) => version !== undefined)).toBe(true);
    expect(await versions()).toEqual(first);

    const more = await versions({ "schemas/reference/chest/chest-a.yaml": `name: Chest A\n${variant(30)}` });
    expect(changed(first, more)).toEqual(pages);
    const seen = await versions({
      "content/sightings/log.csv": log(sighting, "2002,chest-a,7,register,offer"),
    });
    expect(changed(more, seen)).toEqual(pages);
  });

  it("rests on the figures of the variant as they stand in its data file", async () => {
    const { versions, data } = await site();
    await versions();
    const figures = createHash("sha256")
      .update(JSON.stringify(data("variants/chest-a.json").rarity))
      .digest("hex");
    expect(data("items/box.json").variant.figures).toBe(figures.slice(0, 12));
  });

  it("is another where a photograph of the same name is another picture", async () => {
    const { versions } = await site();
    const first = await versions();
    expect(changed(first, await versions({ "content/items/box/open.jpg": await picture(200) }))).toEqual([
      "items/box",
    ]);
  });
});
