import { mkdtempSync, symlinkSync } from "node:fs";
import { chmod, readFile, stat } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ByteSource, Overwrite } from "../../shared/images/recordings/byte-source.ts";
import { flacOverwrites } from "../../shared/images/recordings/flac-overwrites.ts";
import { isoOverwrites } from "../../shared/images/recordings/iso-overwrites.ts";
import { matroskaOverwrites } from "../../shared/images/recordings/matroska-overwrites.ts";
import { mpegOverwrites } from "../../shared/images/recordings/mpeg-overwrites.ts";
import { placeRecording } from "../../shared/images/recordings/place-recording.ts";
import { waveOverwrites } from "../../shared/images/recordings/wave-overwrites.ts";
import { RefusedFile } from "../../shared/images/refused-file.ts";
import {
  canary,
  flacSound,
  isoFilm,
  isoPicture,
  mpegSound,
  waveSound,
  webmFilm,
} from "./handmade-recordings.ts";
import { metadataTool } from "./metadata-tool.ts";
import { pictureFolder } from "./picture-folder.ts";

const exiftool = metadataTool();
const folder = () => mkdtempSync(path.join(tmpdir(), "recordings-"));

async function placed(file: string, bytes: Buffer) {
  const { root, put } = await pictureFolder();
  await put(file, bytes);
  return placeRecording(root, file, folder());
}

const made = {
  "a film as WebM": { file: "a.webm", make: () => webmFilm({ seconds: 3 }), type: "video/webm" },
  "a film as WebM of unknown length": {
    file: "a.webm",
    make: () => webmFilm({ seconds: 3, open: true }),
    type: "video/webm",
  },
  "a film as MP4": { file: "a.mp4", make: async () => isoFilm(), type: "video/mp4" },
  "sound as WAV": { file: "a.wav", make: async () => waveSound(1), type: "audio/wav" },
  "sound as MP3": { file: "a.mp3", make: async () => mpegSound(), type: "audio/mpeg" },
  "sound as FLAC": { file: "a.flac", make: async () => flacSound(), type: "audio/flac" },
} as const;

describe.each(Object.entries(made))("%s", (_, { file, make, type }) => {
  it("loses what stands beside picture and sound, and keeps its length", async () => {
    const bytes = await make();
    // Otherwise it would prove nothing.
    expect(bytes.includes(canary)).toBe(true);
    const { file: published, format, name } = await placed(file, bytes);
    const after = await readFile(published);
    expect(format.type).toBe(type);
    expect(name).toMatch(/^[0-9a-f]{24}\.\w+$/);
    expect(after.length).toBe(bytes.length);
    const at = after.indexOf(canary);
    expect(after.toString("latin1", Math.max(0, at - 20), at + 30)).toBe(
      at < 0 ? after.toString("latin1", 0, 29) : "",
    );
  });

  it("has nothing to tell ExifTool of its maker, place or time", async () => {
    const { file: published } = await placed(file, await make());
    const tags = await exiftool.read(published);
    expect(JSON.stringify(tags)).not.toMatch(new RegExp(`${canary}|47\\.12|11\\.65|GPS`));
    const told = Object.entries(tags).filter(
      ([tag, value]) =>
        /:(Create|Modify|Media\w*|Track\w*)?Date\w*$/.test(tag) &&
        !/^System:|^0000:00:00|^$/.test(tag.startsWith("System:") ? tag : value),
    );
    expect(told).toEqual([]);
  });
});

describe("picture and sound themselves", () => {
  it("stay where they were, to the byte: MP4", async () => {
    const { file } = await placed("a.mp4", isoFilm());
    const [before, after] = [isoFilm(), await readFile(file)];
    const at = before.indexOf(isoPicture);
    expect(after.indexOf(isoPicture)).toBe(at);
    // The box around them as well.
    expect(after.subarray(at - 8, at)).toEqual(before.subarray(at - 8, at));
  });

  it("stay where they were, to the byte: WebM, from the first cluster on", async () => {
    const bytes = await webmFilm({ seconds: 3 });
    const { file } = await placed("a.webm", bytes);
    const after = await readFile(file);
    const at = bytes.indexOf(Buffer.from("1f43b675", "hex"));
    expect(at).toBeGreaterThan(0);
    expect(after.subarray(at).equals(bytes.subarray(at))).toBe(true);
  });

  it("stay where they were, to the byte: WAV", async () => {
    const { file } = await placed("a.wav", waveSound(1));
    const [before, after] = [waveSound(1), await readFile(file)];
    const at = before.lastIndexOf("data");
    expect(after.subarray(at).equals(before.subarray(at))).toBe(true);
    expect(after.subarray(0, 36).equals(before.subarray(0, 36))).toBe(true);
  });
});

it("what ExifTool writes into an MP4 is gone as well", async () => {
  const { root, put } = await pictureFolder();
  const full = await put("a.mp4", isoFilm());
  const secrets = {
    "Keys:GPSCoordinates": "47.123456 11.654321 0",
    "ItemList:Artist": `${canary}-list`,
    "UserData:Author": `${canary}-author`,
    "XMP-dc:Creator": `${canary}-creator`,
    "XMP-exif:GPSLatitude": "47.123456",
  };
  await exiftool.write(full, secrets);
  expect(JSON.stringify(await exiftool.read(full))).toMatch(/47\.123456/);
  const { file } = await placeRecording(root, "a.mp4", folder());
  expect(JSON.stringify(await exiftool.read(file))).not.toMatch(new RegExp(`${canary}|47\\.12`));
  const after = await readFile(file);
  const at = after.indexOf(canary);
  expect(at < 0 ? "" : after.toString("latin1", Math.max(0, at - 90), at + 60)).toBe("");
});

describe("what is no recording", () => {
  it.each([
    ["a record", "walk.webm", "---\ntitle: Private\n---\n"],
    ["a page", "walk.mp4", "<!doctype html><title>x</title>"],
    ["Matroska that is no WebM", "walk.webm", Buffer.from("1a45dfa38b4282886d6174726f736b61", "hex")],
    ["a photograph", "walk.mp4", Buffer.from("ffd8ffe000104a464946", "hex")],
    ["Ogg", "walk.ogg", "OggS\0\x02"],
    ["an AVIF", "walk.mp4", "\0\0\0\x1cftypavif\0\0\0\0"],
  ])("%s is refused", async (_, file, bytes) => {
    const { root, put } = await pictureFolder();
    await put(file, bytes);
    await expect(placeRecording(root, file, folder())).rejects.toThrow(
      "a file that is not a WebM, MP4, MP3, WAV or FLAC",
    );
  });

  it("nothing, an empty file, a folder and a link that leads out are refused", async () => {
    const { root, put } = await pictureFolder();
    await put("empty.webm", "");
    await put("folder/a.txt", "x");
    const outside = await (await pictureFolder()).put("secret.wav", waveSound(1));
    symlinkSync(outside, path.join(root, "link.wav"));
    for (const [file, reason] of [
      ["gone.webm", "no file there"],
      ["empty.webm", "an empty file (0 bytes)"],
      ["folder", "a folder"],
      ["link.wav", "a link that leads out of the collection"],
      ["../secret.wav", "no file there"],
    ] as const) {
      const refusal = await placeRecording(root, file, folder()).catch((problem: unknown) => problem);
      expect(refusal).toBeInstanceOf(RefusedFile);
      expect(refusal).toHaveProperty("message", reason);
    }
  });
});

it.each([0o444, 0o600])("may be read by a web server, however its original is kept: %o", async (mode) => {
  const { root, put } = await pictureFolder();
  await chmod(await put("a.wav", waveSound(1)), mode);
  const { file } = await placeRecording(root, "a.wav", folder());
  expect((await stat(file)).mode & 0o777).toBe(0o644);
});

it("is copied once, and anew where the file has changed", async () => {
  const { root, put } = await pictureFolder();
  const out = folder();
  await put("a.wav", waveSound(1));
  const first = await placeRecording(root, "a.wav", out);
  const { mtimeMs } = await stat(first.file);
  expect((await placeRecording(root, "a.wav", out)).file).toBe(first.file);
  expect((await stat(first.file)).mtimeMs).toBe(mtimeMs);
  await put("a.wav", waveSound(2));
  expect((await placeRecording(root, "a.wav", out)).name).not.toBe(first.name);
});

// Recordings come from anywhere, cut short and damaged: whatever they say, nothing is written outside of them.
describe("damaged files", () => {
  const readers: readonly (readonly [
    string,
    () => Promise<Buffer> | Buffer,
    (source: ByteSource) => Iterable<Overwrite>,
  ])[] = [
    ["WebM", () => webmFilm({ seconds: 2 }), matroskaOverwrites],
    ["open WebM", () => webmFilm({ seconds: 2, open: true }), matroskaOverwrites],
    ["MP4", isoFilm, isoOverwrites],
    ["WAV", () => waveSound(1, 100), waveOverwrites],
    ["MP3", mpegSound, mpegOverwrites],
    ["FLAC", flacSound, flacOverwrites],
  ];

  it.each(readers)("%s", async (_, make, overwritesOf) => {
    const whole = await make();
    fc.assert(
      fc.property(
        fc.nat(whole.length),
        fc.array(fc.tuple(fc.nat(whole.length - 1), fc.nat(255)), { maxLength: 8 }),
        (length, changes) => {
          const bytes = Buffer.from(whole);
          for (const [at, value] of changes) bytes[at] = value;
          const cut = bytes.subarray(0, length);
          const source: ByteSource = {
            size: cut.length,
            read: (at, count) =>
              at < 0 || at >= cut.length || count <= 0
                ? Buffer.alloc(0)
                : Buffer.from(cut.subarray(at, at + count)),
          };
          try {
            for (const { at, bytes: over } of overwritesOf(source)) {
              const count = typeof over === "number" ? over : over.length;
              expect(at).toBeGreaterThanOrEqual(0);
              expect(count).toBeGreaterThanOrEqual(0);
              expect(at + count).toBeLessThanOrEqual(cut.length);
            }
          } catch (problem) {
            if (!(problem instanceof RefusedFile)) throw problem;
          }
        },
      ),
      { numRuns: 300 },
    );
  });
});
