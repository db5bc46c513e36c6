import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
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
