import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  statSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import sharp from "sharp";
import { beforeAll, describe, expect, it } from "vitest";
import { type Files, item, smallCollection, writeCollection } from "../collections/collection.ts";
import { differences, siteFiles } from "../collections/site-files.ts";
import { webmFilm } from "../images/handmade-recordings.ts";
import { start } from "./run.ts";

const isSuperuser = process.getuid?.() === 0;
/** Permissions bind no superuser. */
const uid = isSuperuser ? 65_534 : undefined;

/** With everything that is made ready in a cache: photographs, cards, recordings, a sign. */
async function everything(): Promise<Files> {
  const picture = await sharp({ create: { width: 400, height: 300, channels: 3, background: "#543" } })
    .jpeg()
    .toBuffer();
  const { "content/collection.yaml": settings, ...rest } = smallCollection(
    "parts: { sextant: { standing: core } }\n",
  );
  return {
    ...rest,
    "content/collection.yaml": `${settings}theme: { logo: sign.jpg }\n`,
    "content/theme/sign.jpg": picture,
    "content/items/one/index.md": item(
      'photos: [{ file: a.jpg, alt: The case }]\nvideo: { src: a.webm, captions: a.vtt, moments: [{ part: sextant, at: "0:01" }] }',
    ),
    "content/items/one/a.jpg": picture,
    "content/items/one/a.webm": await webmFilm({ seconds: 2 }),
    "content/items/one/a.vtt": "WEBVTT\n\n00:01.000 --> 00:02.000\nThe case.\n",
    "content/sightings/log.csv": "seen,variant,kind\n2001,chest-a,offer\n",
  };
}

/** Builds where temporary files have a folder of their own. */
async function build(root: string, as?: number) {
  const folder = mkdtempSync(path.join(tmpdir(), "fittedcase-uncached-"));
  const temporary = path.join(folder, "temporary");
  mkdirSync(temporary);
  for (const open of [folder, temporary]) chmodSync(open, 0o777);
  const out = path.join(folder, "site");
  const flags = ["build", "--root", root, "--out", out];
  const ran = await start(flags, folder, { TMPDIR: temporary }, { uid: as }).done;
  return { ran, out, left: readdirSync(temporary) };
}

describe("a collection beside which no cache can be kept", () => {
  let cached: Map<string, Buffer>;
  let files: Files;
  beforeAll(async () => {
    files = await everything();
    cached = siteFiles((await build(writeCollection(files))).out);
    expect([...cached.keys()].filter((name) => /^(?:images|recordings)\//.test(name)).length).toBeGreaterThan(
      2,
    );
  });

  it("is built all the same where its folder may not be written, and nothing of it stays elsewhere", async () => {
    const root = writeCollection(files);
    chmodSync(root, 0o555);
    const { ran, out, left } = await build(root, uid);
    chmodSync(root, 0o755);
    expect(ran).toMatchObject({ code: 0, err: "" });
    expect(differences(siteFiles(out), cached)).toEqual([]);
    expect(existsSync(path.join(root, ".cache"))).toBe(false);
    expect(left).toEqual([]);
  });

  it("is built all the same where a file stands in the place of the cache, which is left alone", async () => {
    const root = writeCollection(files);
    writeFileSync(path.join(root, ".cache"), "mine");
    const { ran, out, left } = await build(root);
    expect(ran).toMatchObject({ code: 0, err: "" });
    expect(differences(siteFiles(out), cached)).toEqual([]);
    expect(readFileSync(path.join(root, ".cache"), "utf8")).toBe("mine");
    expect(left).toEqual([]);
  });
});

describe("a collection beside which a cache is kept", () => {
  it("keeps of photographs, cards and recordings what a build has asked for in a season", async () => {
    const root = writeCollection(await everything());
    expect((await build(root)).ran).toMatchObject({ code: 0, err: "" });
    const cache = path.join(root, ".cache/fittedcase");
    const kept = ["cards", "site/images", "site/recordings"].flatMap((kind) =>
      readdirSync(path.join(cache, kind)).map((name) => path.join(cache, kind, name)),
    );
    // A photograph in its sizes and formats, with its card, the card by itself, a sign and a recording.
    expect(kept.length).toBeGreaterThan(5);
    const daysAgo = (days: number) => new Date(Date.now() - days * 24 * 60 * 60 * 1000);
    for (const file of kept) utimesSync(file, daysAgo(89), daysAgo(89));
    const old = ["cards/0123456789abcdef01234567", "site/images/0123456789abcdef01234567-320.jpg"];
    const others = ["cards/notes.txt", "site/recordings/walk-through.webm"];
    for (const name of [...old, ...others]) {
      writeFileSync(path.join(cache, name), "Something.");
      utimesSync(path.join(cache, name), daysAgo(91), daysAgo(91));
    }
    expect((await build(root)).ran).toMatchObject({ code: 0, err: "" });
    for (const file of kept) expect(statSync(file).mtimeMs, file).toBeGreaterThan(daysAgo(1).getTime());
    expect(old.filter((name) => existsSync(path.join(cache, name)))).toEqual([]);
    expect(others.filter((name) => existsSync(path.join(cache, name)))).toEqual(others);
  });
});
