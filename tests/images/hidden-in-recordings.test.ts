import { mkdtempSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { placeRecording } from "../../shared/images/recordings/place-recording.ts";
import { RefusedFile } from "../../shared/images/refused-file.ts";
import {
  box,
  canary,
  ebml,
  flacFrame,
  flacSound,
  isoFilm,
  isoPicture,
  mpegSound,
  secret,
  waveSound,
  webmFilm,
} from "./handmade-recordings.ts";
import { pictureFolder } from "./picture-folder.ts";

async function published(name: string, bytes: Buffer): Promise<Buffer> {
  expect(bytes.includes(canary)).toBe(true);
  const { root, put } = await pictureFolder();
  await put(name, bytes);
  const placed = await placeRecording(root, name, mkdtempSync(path.join(tmpdir(), "hidden-")));
  return readFile(placed.file);
}

async function expectClean(name: string, bytes: Buffer): Promise<Buffer> {
  const after = await published(name, bytes);
  expect(after.length).toBe(bytes.length);
  const at = after.indexOf(canary);
  expect(at < 0 ? "" : after.toString("latin1", Math.max(0, at - 20), at + 30)).toBe("");
  return after;
}

const refusal = async (name: string, bytes: Buffer): Promise<unknown> => {
  const problem = await published(name, bytes).catch((thrown: unknown) => thrown);
  expect(problem).toBeInstanceOf(RefusedFile);
  return (problem as RefusedFile).message;
};

const text = (value: string) => Buffer.from(value, "latin1");
const zeros = (length: number) => Buffer.alloc(length);

/** A film with more at the end of a box: the first of each name on the way, all of which grow by it. */
function isoWith(more: Buffer, ...names: readonly string[]): Buffer {
  const film = isoFilm();
  let end = 0;
  let at = 0;
  for (const name of names) {
    at = film.indexOf(name, at, "latin1");
    end = at - 4 + film.readUInt32BE(at - 4);
    film.writeUInt32BE(film.readUInt32BE(at - 4) + more.length, at - 4);
  }
  return Buffer.concat([film.subarray(0, end), more, film.subarray(end)]);
}

const toTable = ["moov", "trak", "mdia", "minf", "stbl"] as const;

const textual = ["sbtl", "text", "subt", "meta", "tmcd"];

describe("an MP4 keeps nothing that no standard has, and nothing that no player needs", () => {
  it.each([
    ["an unknown box in the file", Buffer.concat([isoFilm(), box("gps0", secret("box"))])],
    ["an event message", Buffer.concat([isoFilm(), box("emsg", zeros(4), secret("event"))])],
    ["what is behind the last box", Buffer.concat([isoFilm(), text("\xff\xff\xff\xff"), secret("behind")])],
    ["a few bytes behind the last box", Buffer.concat([isoFilm(), secret("").subarray(0, 7)])],
    ["what is among the samples and none of them", isoWith(secret("no sample"), "mdat")],
    ["an unknown box in the film", isoWith(box("gps ", secret("box")), "moov")],
    ["an unknown box in a track", isoWith(box("loci", secret("box")), "moov", "trak")],
    ["an unknown box in the media", isoWith(box("gmhd", secret("box")), "moov", "trak", "mdia")],
    ["an unknown box in the table of samples", isoWith(box("sgpd", secret("box")), ...toTable)],
    ["an unknown box of the decoder", isoWith(box("GPS ", secret("box")), ...toTable, "stsd", "avc1")],
    ["what is behind a table", isoWith(secret("behind"), ...toTable, "stts")],
    ["what is behind the sizes of the samples", isoWith(secret("behind"), ...toTable, "stsz")],
    ["what is behind a header", isoWith(secret("behind"), "moov", "mvhd")],
    [
      "where samples are said to lie",
      isoWith(secret("file"), "moov", "trak", "mdia", "minf", "dinf", "dref", "url "),
    ],
    ["what is no box in one", isoWith(Buffer.concat([zeros(4), secret("no box")]), "moov", "trak")],
  ])("%s", async (_, film) => {
    const after = await expectClean("a.mp4", film);
    expect(after.indexOf(isoPicture)).toBe(film.indexOf(isoPicture));
  });

  it.each(textual)("the samples of a track of %s", async (handler) => {
    const film = isoFilm(handler);
    const after = await expectClean("a.mp4", film);
    expect(after.indexOf(isoPicture)).toBe(film.indexOf(isoPicture));
  });

  it("a list of brands that goes on for ever", async () => {
    await expectClean("a.mp4", isoWith(Buffer.concat([zeros(80), secret("brand")]), "ftyp"));
  });

  it("a film in fragments is refused, and so is one without a picture", async () => {
    const fragment = box("moof", box("mfhd", zeros(8)), box("traf", box("uuid", secret("fragment"))));
    expect(await refusal("a.mp4", Buffer.concat([isoFilm(), fragment]))).toMatch(/^a film in fragments/);
    const film = isoFilm();
    const cut = film.subarray(0, film.indexOf("moov") - 4);
    expect(await refusal("a.mp4", cut)).toMatch(/^a film without a list of its pictures and sounds/);
  });

  it("a film that breaks off within its samples keeps those that are there", async () => {
    const film = isoFilm();
    const [start, moov] = [film.indexOf("mdat") - 4, film.indexOf("moov") - 4];
    const samples = film.subarray(start, moov);
    // The list first, as it is written for sending; every place in the file moves by its length.
    const list = Buffer.from(film.subarray(moov, moov + film.readUInt32BE(moov)));
    for (let at = list.indexOf("stco"); at >= 0; at = list.indexOf("stco", at + 4))
      for (const entry of [12, 16])
        list.writeUInt32BE(list.readUInt32BE(at + entry) + list.length, at + entry);
    const whole = Buffer.concat([film.subarray(0, start), list, samples]);
    const after = await expectClean("a.mp4", whole);
    expect(after.includes(isoPicture)).toBe(true);
    const broken = await expectClean("a.mp4", whole.subarray(0, -60));
    expect(broken.subarray(-samples.length + 60)).toEqual(after.subarray(-samples.length, -60));
  });
});

/** A film with more at the beginning of an element, which is the last of several that lie in one another. */
async function webmWith(more: Buffer, ...ids: readonly string[]): Promise<Buffer> {
  const film = await webmFilm({ seconds: 2 });
  let at = 0;
  for (const id of ids) {
    at = film.indexOf(Buffer.from(id, "hex"), at) + id.length / 2;
    // Seven bytes of eight, behind the one that says so.
    film.writeUIntBE(film.readUIntBE(at + 2, 6) + more.length, at + 2, 6);
    at += 8;
  }
  return Buffer.concat([film.subarray(0, at), more, film.subarray(at)]);
}

const [segment, tracks, entry, cluster] = ["18538067", "1654ae6b", "ae", "1f43b675"] as const;
const positions = ebml("ae", [
  ebml("d7", [2]),
  ebml("83", [0x11]),
  ebml("86", text("S_TEXT/UTF8")),
  ebml("63a2", secret("setup")),
]);

describe("a WebM keeps no element that no player needs", () => {
  it.each([
    ["what a Void was written over", () => webmWith(ebml("ec", secret("void")), segment)],
    ["an unknown section", () => webmWith(ebml("1a2b3c4d", secret("section")), segment)],
    [
      "what is behind the film",
      async () => Buffer.concat([await webmWith(zeros(0)), ebml("1254c367", secret("tags"))]),
    ],
    [
      "bytes behind the film",
      async () => Buffer.concat([await webmWith(zeros(0)), zeros(1), secret("bytes")]),
    ],
    ["a track that is no picture and no sound", () => webmWith(positions, segment, tracks)],
    [
      "a block of such a track",
      () => webmWith(ebml("a3", [0x82, 0, 0, 0, secret("block")]), segment, cluster),
    ],
    [
      "a group of such a block",
      () => webmWith(ebml("a0", [ebml("a1", [0x82, 0, 0, 0, secret("block")])]), segment, cluster),
    ],
    [
      "what goes with a block",
      () =>
        webmWith(
          ebml("a0", [ebml("a1", [0x81, 0, 0, 0, zeros(4)]), ebml("75a1", secret("more"))]),
          segment,
          cluster,
        ),
    ],
    ["an unknown element of a cluster", () => webmWith(ebml("a4", secret("state")), segment, cluster)],
    ["a number that is none", () => webmWith(ebml("e7", secret("number")), segment, cluster)],
    [
      "an unknown fact of a track",
      () => webmWith(ebml("258688", secret("codec name")), segment, tracks, entry),
    ],
    ["a language that is none", () => webmWith(ebml("22b59d", secret("language")), segment, tracks, entry)],
    ["an unknown fact of the file", () => webmWith(ebml("4281", secret("extension")), "1a45dfa3")],
  ])("%s", async (_, make) => {
    const film = await make();
    const after = await expectClean("a.webm", film);
    const last = Buffer.from(cluster, "hex");
    const at = film.lastIndexOf(last);
    const behind = film.indexOf(canary, at);
    expect(after.subarray(at, behind < 0 ? undefined : behind - 20)).toEqual(
      film.subarray(at, behind < 0 ? undefined : behind - 20),
    );
  });

  it("the comments of Vorbis and FLAC, which stand in what sets them up", async () => {
    const vendor = secret("vendor");
    // Vorbis I, 4.2.1 and 5.2.1: seven bytes, then lengths of four, lowest first; a bit that is set ends the comments.
    const length = Buffer.alloc(4);
    length.writeUInt32LE(vendor.length);
    const comments = Buffer.concat([text("\x03vorbis"), length, vendor, zeros(4), Buffer.of(1)]);
    const first = Buffer.concat([text("\x01vorbis"), zeros(23)]);
    const setup = Buffer.concat([
      Buffer.of(2, first.length, comments.length),
      first,
      comments,
      text("\x05vorbis"),
    ]);
    const track = (codec: string, content: Buffer) =>
      ebml("ae", [ebml("d7", [2]), ebml("83", [2]), ebml("86", text(codec)), ebml("63a2", content)]);
    const vorbis = await expectClean("a.webm", await webmWith(track("A_VORBIS", setup), segment, tracks));
    // The name of its maker is as long as all that was there, and there are no comments.
    expect(
      vorbis.includes(
        Buffer.concat([text("\x03vorbis"), length, Buffer.alloc(vendor.length, " "), zeros(4), Buffer.of(1)]),
      ),
    ).toBe(true);
    const flac = flacSound().subarray(0, -flacFrame.length);
    await expectClean("a.webm", await webmWith(track("A_FLAC", flac), segment, tracks));
  });
});

describe("sound keeps nothing beside itself", () => {
  const frame = Buffer.concat([Buffer.of(0xff, 0xfb, 0x90, 0x64), zeros(413)]);
  const idTag = Buffer.concat([
    text("ID3"),
    Buffer.of(4, 0, 0, 0, 0, 0, 20),
    secret("tag"),
    zeros(20 - `${canary}-tag`.length),
  ]);

  it.each([
    ["Lyrics3", [frame, text("LYRICSBEGIN"), secret("lyrics"), text("000017LYRICS200TAG"), zeros(125)]],
    ["an ID3 tag at the end", [frame, frame, idTag]],
    ["an APE tag at the head", [idTag, text("APETAGEX"), secret("ape"), frame, frame]],
    ["what stands between the frames", [frame, frame, text("ID3"), secret("between"), frame, frame]],
    [
      "a tag where the sound breaks off",
      [frame, frame, frame.subarray(0, 200), text("TAG"), secret("title"), zeros(300)],
    ],
  ])("MP3: %s", async (_, pieces) => {
    const sound = Buffer.concat(pieces);
    const after = await expectClean("a.mp3", sound);
    const at = sound.indexOf(frame);
    expect(after.subarray(at, at + frame.length)).toEqual(frame);
  });

  it.each([
    [
      "samples that are there twice",
      [text("data"), Buffer.of(20, 0, 0, 0), secret("again"), zeros(20 - `${canary}-again`.length)],
    ],
    [
      "how many they are, and more",
      [text("fact"), Buffer.of(20, 0, 0, 0), zeros(4), secret("fact"), zeros(16 - `${canary}-fact`.length)],
    ],
    ["a few bytes at the end", [text(canary)]],
  ])("WAV: %s", async (_, pieces) => {
    await expectClean("a.wav", Buffer.concat([waveSound(1), ...pieces]));
  });

  it.each([
    [
      "FLAC behind an ID3 tag",
      "a.flac",
      () => Buffer.concat([idTag, flacSound()]),
      /^sound as FLAC behind an ID3 tag/,
    ],
    [
      "FLAC with a tag at its end",
      "a.flac",
      () => Buffer.concat([flacSound(), text("TAG"), secret("title")]),
      /^sound as FLAC with something else/,
    ],
    [
      "FLAC with something between its frames",
      "a.flac",
      () => Buffer.concat([flacSound(), secret("between"), flacFrame]),
      /^sound as FLAC with something else/,
    ],
    [
      "an ID3 tag without sound",
      "a.mp3",
      () => Buffer.concat([idTag, secret("text")]),
      /^a file that begins as an MP3 does/,
    ],
  ])("%s is refused", async (_, name, make, reason) => {
    expect(await refusal(name, make())).toMatch(reason);
  });

  it("and all of it is there still", async () => {
    const flac = await expectClean("a.flac", Buffer.concat([flacSound(), flacFrame, flacFrame]));
    expect(flac.subarray(-3 * flacFrame.length)).toEqual(Buffer.concat([flacFrame, flacFrame, flacFrame]));
    const sound = mpegSound();
    const mpeg = await expectClean("a.mp3", sound);
    // All but the last, behind which an APE tag begins that does not say so.
    const [start, end] = [sound.indexOf(frame), sound.lastIndexOf(frame)];
    expect(mpeg.subarray(start, end)).toEqual(sound.subarray(start, end));
    const wave = waveSound(1);
    const at = wave.lastIndexOf("data");
    expect((await expectClean("a.wav", wave)).subarray(at)).toEqual(wave.subarray(at));
  });
});

describe("a recording that is made to be looked at for ever", () => {
  // Half a million chunks, each with an entry of its own: 10 MB, where looking each up among all takes longer than any test may.
  it("has a long list of samples, which is read once", async () => {
    const count = 500_000;
    const words = (length: number, entries: number, word: (at: number) => number) => {
      const table = Buffer.alloc(8 + 4 * length * entries);
      table.writeUInt32BE(entries, 4);
      for (let at = 0; at < length * entries; at++) table.writeUInt32BE(word(at), 8 + 4 * at);
      return table;
    };
    const sizes = zeros(12);
    sizes.writeUInt32BE(1, 4);
    sizes.writeUInt32BE(count, 8);
    const track = box(
      "trak",
      box(
        "mdia",
        box("hdlr", zeros(8), text("vide"), zeros(13)),
        box(
          "minf",
          box(
            "stbl",
            // The chunk, one sample in it, its description.
            box(
              "stsc",
              words(3, count, (at) => (at % 3 === 0 ? at / 3 + 1 : 1)),
            ),
            box(
              "stco",
              words(1, count, (at) => 40 + at),
            ),
            box("stsz", sizes),
          ),
        ),
      ),
    );
    const film = Buffer.concat([isoFilm(), box("moov", track)]);
    expect((await published("a.mp4", film)).length).toBe(film.length);
  });

  it("is all boxes, and is refused", async () => {
    const film = Buffer.concat([isoFilm(), ...Array<Buffer>(250_000).fill(box("free"))]);
    expect(await refusal("a.mp4", film)).toBe("a file in more than 50,000 pieces");
  });
});
