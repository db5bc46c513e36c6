import { mkdtempSync, openSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { byteSource } from "../../shared/images/recordings/byte-source.ts";
import { recordingFormat } from "../../shared/images/recordings/recording-format.ts";
import { recordingLength } from "../../shared/images/recordings/recording-length.ts";
import { flacSound, isoFilm, mpegSound, waveSound, webmFilm } from "./handmade-recordings.ts";

function lengthOf(bytes: Buffer): number | null {
  const file = path.join(mkdtempSync(path.join(tmpdir(), "length-")), "recording");
  writeFileSync(file, bytes);
  const format = recordingFormat(bytes);
  if (!format) throw new Error("No recording.");
  return recordingLength(byteSource(openSync(file, "r")), format);
}

/** RFC 9639, 8.2: 20 bits for the rate, 3 and 5 for channels and bits, 36 for the number of samples. */
function flacOf(samples: number, rate: number): Buffer {
  const bytes = flacSound();
  const bits = [rate.toString(2).padStart(20, "0"), "00000111", samples.toString(2).padStart(36, "0")].join(
    "",
  );
  bytes.writeBigUInt64BE(BigInt(`0b${bits}`), 18);
  return bytes;
}

describe("the length of a recording", () => {
  it.each([
    ["WebM", () => webmFilm({ seconds: 7 }), 7],
    // 2000 units of a thousandth each.
    ["MP4", async () => isoFilm(), 2],
    ["WAV", async () => waveSound(5), 5],
    ["FLAC", async () => flacOf(661_500, 44_100), 15],
  ])("is what %s says", async (_, make, seconds) => {
    expect(lengthOf(await make())).toBe(seconds);
  });

  it.each([
    ["WebM that was recorded live", () => webmFilm({ seconds: 2, open: true })],
    ["FLAC that was recorded live", async () => flacOf(0, 44_100)],
    ["MP3, which does not say it", async () => mpegSound()],
    ["WAV that breaks off", async () => waveSound(5).subarray(0, 30)],
    ["MP4 that breaks off", async () => isoFilm().subarray(0, 60)],
  ])("is not known of %s", async (_, make) => {
    expect(lengthOf(await make())).toBeNull();
  });
});
