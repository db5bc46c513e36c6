import { randomUUID } from "node:crypto";
import { chmod, readdir, readFile, rename, rm, stat, truncate, utimes, writeFile } from "node:fs/promises";
import path from "node:path";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { renderImages } from "../../shared/images/render-images.ts";
import { slots } from "../../shared/images/slots.ts";
import { type PictureFolder, pictureFolder } from "./picture-folder.ts";
import { expectQuarters, plain, quartersPicture } from "./quarters.ts";

async function withPictures(): Promise<PictureFolder> {
  const folder = await pictureFolder();
  await folder.put("a.png", await quartersPicture(plain, 700, 400).png().toBuffer());
  await folder.put("b.png", await quartersPicture(plain, 240, 160).png().toBuffer());
  return folder;
}

const originals = ["a.png", "b.png"];

async function filesOf(folder: string): Promise<Map<string, Buffer>> {
  const names = (await readdir(folder)).sort();
  return new Map(
    await Promise.all(names.map(async (name) => [name, await readFile(path.join(folder, name))] as const)),
  );
}

describe("a second run", () => {
  it("encodes nothing, and gives the same files and the same answer", async () => {
    const folder = await withPictures();
    const first = await folder.render(...originals);
    expect(first).toMatchObject({ encoded: 2, reused: 0 });
    const files = await filesOf(path.join(folder.outFolder, "images"));
    // a.png in 320 and 700, 640 being nearly as wide; b.png in its own 240; three formats each.
    expect(files.size).toBe(9);

    const again = await renderImages({ ...folder, originals, outFolder: `${folder.outFolder}-private` });
    expect(again).toMatchObject({ encoded: 0, reused: 2 });
    expect(again.images).toEqual(first.images);
    expect(await filesOf(path.join(`${folder.outFolder}-private`, "images"))).toEqual(files);

    const overItself = await folder.render(...originals);
    expect(overItself).toMatchObject({ encoded: 0, reused: 2 });
    expect(await filesOf(path.join(folder.outFolder, "images"))).toEqual(files);
  });

  it("goes by content: neither another name, nor another time, nor another place makes it encode", async () => {
    const folder = await withPictures();
    const first = await folder.render(...originals);
    await rename(path.join(folder.root, "a.png"), path.join(folder.root, "other.jpg"));
    await utimes(path.join(folder.root, "b.png"), 1, 1);
    const moved = `${folder.cacheFolder}-moved`;
    await rename(folder.cacheFolder, moved);
    const again = await renderImages({ ...folder, cacheFolder: moved, originals: ["other.jpg", "b.png"] });
    expect(again).toMatchObject({ encoded: 0, reused: 2 });
    expect(again.images.get("other.jpg")).toEqual(first.images.get("a.png"));
  });

  it("encodes what has changed, and nothing else", async () => {
    const folder = await withPictures();
    const first = await folder.render(...originals);
    await folder.put(
      "b.png",
      await quartersPicture({ ...plain, topLeft: [9, 9, 9] })
        .png()
        .toBuffer(),
    );
    const again = await folder.render(...originals);
    expect(again).toMatchObject({ encoded: 1, reused: 1 });
    expect(again.images.get("b.png")?.fallback.address).not.toBe(first.images.get("b.png")?.fallback.address);
  });

  it("makes copies of one photograph once", async () => {
    const folder = await withPictures();
    const bytes = await readFile(path.join(folder.root, "a.png"));
    await folder.put("copy/c.png", bytes);
    const { images, encoded } = await folder.render("a.png", "copy/c.png");
    expect(encoded).toBe(1);
    expect(images.get("a.png")).toEqual(images.get("copy/c.png"));
    expect((await folder.render("a.png", "copy/c.png")).reused).toBe(1);
  });
});

describe("a torn entry is noticed and made again", () => {
  const damages: readonly [string, (file: string) => Promise<void>][] = [
    ["cut short", (file) => stat(file).then(({ size }) => truncate(file, size - 1))],
    ["emptied", (file) => truncate(file, 0)],
    ["gone", (file) => rm(file)],
    [
      "altered in one byte",
      async (file) => {
        const bytes = await readFile(file);
        bytes[bytes.length >> 1] = (bytes[bytes.length >> 1] ?? 0) ^ 1;
        await writeFile(file, bytes);
      },
    ],
  ];

  it.each(damages)("%s, whichever of its files", async (_, damage) => {
    const folder = await withPictures();
    await folder.render("b.png");
    const site = path.join(folder.outFolder, "images");
    const whole = await filesOf(site);
    const [hash = ""] = (await readdir(folder.cacheFolder)).filter((name) => name !== "parts");
    const entry = path.join(folder.cacheFolder, hash);
    const names = await readdir(entry);
    expect(names.length).toBe(4);
    for (const name of names) {
      await damage(path.join(entry, name));
      const again = await folder.render("b.png");
      expect(again, name).toMatchObject({ encoded: 1, reused: 0 });
      expect(await filesOf(site), name).toEqual(whole);
    }
    await expectQuarters(folder, (await folder.render("b.png")).images.get("b.png"), plain, 8);
  });

  it.each([
    "{}",
    "null",
    "[]",
    '{"colour":"#000000","sizes":[],"digests":{}}',
    '{"colour":1,"sizes":[{}],"digests":{}}',
  ])("a record that says %s", async (record) => {
    const folder = await withPictures();
    await folder.render("b.png");
    const [hash = ""] = (await readdir(folder.cacheFolder)).filter((name) => name !== "parts");
    await writeFile(path.join(folder.cacheFolder, hash, "record.json"), record);
    expect(await folder.render("b.png")).toMatchObject({ encoded: 1, refused: [] });
  });
});

describe("builds beside and after one another", () => {
  it("may share the cache and the site at the same time", async () => {
    const folder = await withPictures();
    const runs = await Promise.all([1, 2, 3].map(() => folder.render(...originals)));
    for (const run of runs) {
      expect(run.refused).toEqual([]);
      expect(run.images).toEqual(runs[0]?.images);
    }
    expect(await folder.render(...originals)).toMatchObject({ encoded: 0, reused: 2 });
    expect(await readdir(path.join(folder.cacheFolder, "parts"))).toEqual([]);
    expect((await readdir(path.join(folder.outFolder, "images"))).length).toBe(9);
  });

  it("clear away what a killed one left half written, once it is a day old", async () => {
    const folder = await withPictures();
    await folder.render("b.png");
    const parts = path.join(folder.cacheFolder, "parts");
    const [old, young] = [randomUUID(), randomUUID()];
    // What has another name is no part of a picture.
    for (const name of [old, young, "thesis.txt"]) await writeFile(path.join(parts, name), "half");
    for (const name of [old, "thesis.txt"]) await utimes(path.join(parts, name), 1, 1);
    await folder.render("b.png");
    expect(await readdir(parts)).toEqual([young, "thesis.txt"].sort());
  });

  it("let go of a picture that no build has asked for in a season, and of nothing else", async () => {
    const folder = await withPictures();
    await folder.render(...originals);
    const entries = async () => (await readdir(folder.cacheFolder)).filter((name) => name !== "parts").sort();
    const asked = async (entry: string, daysAgo: number) => {
      const then = new Date(Date.now() - daysAgo * 24 * 60 * 60 * 1000);
      await utimes(path.join(folder.cacheFolder, entry, "record.json"), then, then);
    };
    const [one = "", other = ""] = await entries();
    // What is in a folder of another name is somebody else's.
    await writeFile(path.join(folder.cacheFolder, "notes.txt"), "kept");
    await utimes(path.join(folder.cacheFolder, "notes.txt"), 1, 1);
    await asked(one, 89);
    await asked(other, 89);
    await folder.render("b.png");
    expect(await entries()).toEqual([one, other, "notes.txt"].sort());

    // Of the two only that of b.png was asked for just now.
    const stamps = await Promise.all(
      [one, other].map((entry) => stat(path.join(folder.cacheFolder, entry, "record.json"))),
    );
    const [unasked, inUse] =
      (stamps[0]?.mtimeMs ?? 0) < (stamps[1]?.mtimeMs ?? 0) ? [one, other] : [other, one];
    await asked(unasked, 91);
    expect(await folder.render("b.png")).toMatchObject({ encoded: 0, reused: 1 });
    expect(await entries()).toEqual([inUse, "notes.txt"].sort());
    expect(await folder.render(...originals)).toMatchObject({ encoded: 1, reused: 1 });
  });

  it("leave sharp's own setting as they found it", async () => {
    const folder = await withPictures();
    const before = sharp.concurrency();
    await folder.render(...originals);
    expect(sharp.concurrency()).toBe(before);
  });

  it("fail as a whole where the site cannot be written, with everything at rest", async () => {
    const folder = await withPictures();
    await writeFile(folder.outFolder, "a file where the folder should be");
    await expect(folder.render(...originals)).rejects.toThrow(/EEXIST|ENOTDIR/);
    await rm(folder.outFolder);
    await folder.render("b.png");
    await rm(path.join(folder.cacheFolder, "parts"), { recursive: true });
    await writeFile(path.join(folder.cacheFolder, "parts"), "");
    await chmod(path.join(folder.cacheFolder, "parts"), 0o400);
    await expect(folder.render(...originals)).rejects.toThrow(/EEXIST|ENOTDIR/);
  });
});

describe("slots", () => {
  it("let in at most so many, in order, and free a place whatever happens", async () => {
    const run = slots(2);
    let inside = 0;
    let most = 0;
    const order: number[] = [];
    const work = Array.from({ length: 7 }, (_, n) =>
      run(async () => {
        order.push(n);
        most = Math.max(most, ++inside);
        await new Promise((done) => setTimeout(done, 5));
        inside--;
        if (n === 3) throw new Error("one fails");
        return n;
      }),
    );
    const results = await Promise.allSettled(work);
    expect(most).toBe(2);
    expect(order).toEqual([0, 1, 2, 3, 4, 5, 6]);
    expect(results.map((it) => it.status === "fulfilled")).toEqual([
      true,
      true,
      true,
      false,
      true,
      true,
      true,
    ]);
  });
});
