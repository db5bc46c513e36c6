import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { build } from "../../shared/commands/build/build.ts";
import { progressLine } from "../../shared/commands/terminal/progress-line.ts";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";

const nothing = { cwd: "/", out: () => {}, err: () => {} };

describe("the line that says how far the photographs are", () => {
  it("is written over as they are done, and taken away at the end", () => {
    let time = 0;
    const lines: string[] = [];
    const progress = progressLine({ ...nothing, status: (line) => void lines.push(line) }, () => time);
    progress.onProgress?.("photographs", 1, 80);
    time = 5000;
    progress.onProgress?.("photographs", 12, 80);
    progress.onProgress?.("photographs", 80, 80);
    progress.clear();
    progress.clear();
    expect(lines).toEqual(["Photographs: 12 of 80", "Photographs: 80 of 80", ""]);
  });

  it("is not there where nobody watches", () => {
    expect(progressLine(nothing).onProgress).toBeUndefined();
  });

  it("comes from a build that takes long, one step for each photograph", async () => {
    const photo = (shade: number) =>
      sharp({ create: { width: 1800, height: 1200, channels: 3, background: { r: shade, g: 90, b: 60 } } })
        .jpeg()
        .toBuffer();
    const root = writeCollection(
      smallCollection("parts: { balance: { standing: core } }\n", {
        "content/items/one/index.md": item(
          "photos: [{ file: a.jpg, alt: A }, { file: b.jpg, alt: B }, { file: c.jpg, alt: C }]",
        ),
        "content/items/one/a.jpg": await photo(10),
        "content/items/one/b.jpg": await photo(90),
        "content/items/one/c.jpg": await photo(170),
      }),
    );
    const out = path.join(mkdtempSync(path.join(tmpdir(), "fittedcase-progress-")), "site");
    const lines: string[] = [];
    const errors: string[] = [];
    const code = await build.run(["--root", root, "--out", out], {
      cwd: root,
      out: () => {},
      err: (text) => void errors.push(text),
      status: (line) => void lines.push(line),
    });
    expect({ code, errors }).toEqual({ code: 0, errors: [] });
    const steps = lines.filter((line) => line.startsWith("Photographs"));
    expect(steps.at(-1)).toBe("Photographs: 3 of 3");
    for (const line of steps) expect(line).toMatch(/^Photographs: [1-3] of 3$/);
    expect(lines.at(-1)).toBe("");
  });
});
