import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { dataOf, item, smallCollection, writeCollection } from "../collections/collection.ts";
import { siteFiles } from "../collections/site-files.ts";
import { waveSound } from "../images/handmade-recordings.ts";
import { runHere } from "./run-here.ts";

/** One name in two spellings: a letter with its accent (Unicode's form NFC), and the two apart (NFD). */
const forms = { asOne: "f\u00FCr vorn", apart: "fu\u0308r vorn" };

const picture = () =>
  sharp({ create: { width: 400, height: 300, channels: 3, background: "#543" } })
    .jpeg()
    .toBuffer();

async function collection(onDisk: string, inRecord: string): Promise<string> {
  const { "content/collection.yaml": settings, ...rest } = smallCollection(
    "parts: { sextant: { standing: core } }\n",
  );
  return writeCollection({
    ...rest,
    "content/collection.yaml": `${settings}theme: { logo: "${inRecord}.png" }\n`,
    [`content/theme/${onDisk}.png`]: await sharp(await picture())
      .png()
      .toBuffer(),
    "content/items/one/index.md": item(
      `photos: [{ file: "${inRecord}/${inRecord}.jpg", alt: The case }]\nvideo: { src: "${inRecord}.wav", captions: "${inRecord}.vtt" }`,
    ),
    [`content/items/one/${onDisk}/${onDisk}.jpg`]: await picture(),
    [`content/items/one/${onDisk}.wav`]: waveSound(2),
    [`content/items/one/${onDisk}.vtt`]: "WEBVTT\n\n00:00.000 --> 00:01.000\nThe case.\n",
  });
}

describe("a file whose name is spelt one way on the disk and another in the record", () => {
  it.each([
    ["apart", "as one", forms.apart, forms.asOne],
    ["as one", "apart", forms.asOne, forms.apart],
  ])("is found: letter and accent %s on the disk, %s in the record", async (_, __, onDisk, inRecord) => {
    const root = await collection(onDisk, inRecord);
    expect(await runHere(["check", "--root", root], root)).toMatchObject({ code: 0 });
    const out = path.join(mkdtempSync(path.join(tmpdir(), "fittedcase-forms-")), "site");
    expect(await runHere(["build", "--root", root, "--out", out], root)).toMatchObject({ code: 0, err: "" });
    const names = [...siteFiles(out).keys()];
    const kinds = [
      /^images\/[\w-]+\.jpg$/,
      /^recordings\/\w+\.wav$/,
      /one-captions\S*\.vtt$/,
      /^images\/logo\S*\.png$/,
    ];
    for (const kind of kinds)
      expect(
        names.some((name) => kind.test(name)),
        String(kind),
      ).toBe(true);
    expect(names.filter((name) => /[^\x20-\x7e]/.test(name))).toEqual([]);
  });

  it("is still missing where another letter is meant", async () => {
    const root = await collection(forms.asOne, "fur vorn");
    const { code, out } = await runHere(["check", "--root", root], root);
    expect(code).toBe(1);
    expect(out).toContain('Did you mean "f\u00FCr vorn.wav"?');
  });
});

describe("the name of an example", () => {
  const { asOne, apart } = forms;

  it.each([
    ["apart in both", apart, apart],
    ["apart in the item, as one in the log", apart, asOne],
    ["as one in the item, apart in the log", asOne, apart],
  ])("is the same of an item and of a sighting: letter and accent %s", (_, ofItem, ofSighting) => {
    const data = dataOf(
      smallCollection("parts: { sextant: { standing: core } }\n", {
        "content/items/one/index.md": item(`example: ${ofItem}`),
        "content/sightings/log.csv": `seen,variant,kind,example\n1998,chest-a,record,${ofSighting}\n`,
      }),
    );
    // One example, seen twice: once in the log, once as the item.
    expect(data.get("/data/variants/chest-a.json")).toMatchObject({
      rarity: { sightings: 2, distinct: 1, twice: 1 },
    });
  });
});
