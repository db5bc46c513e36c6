import { describe, expect, it } from "vitest";
import type { ByteSource } from "../../shared/images/recordings/byte-source.ts";
import { flacSoundEnd } from "../../shared/images/recordings/flac-frames.ts";
import { flacFrame } from "./handmade-recordings.ts";

/** Division bit by bit, as RFC 9639 says it in 9.1.8 and 9.3. */
function remainder(bytes: Uint8Array, polynomial: number, bits: number): number {
  let value = 0;
  for (const byte of bytes) {
    value ^= byte << (bits - 8);
    for (let bit = 0; bit < 8; bit++) {
      value = value & (1 << (bits - 1)) ? (value << 1) ^ polynomial : value << 1;
      value &= 2 ** bits - 1;
    }
  }
  return value;
}

/** A frame with a header of these bytes; what is in it is not looked at. */
function frame(header: string, sound: Buffer): Buffer {
  const head = Buffer.from(header, "hex");
  const body = Buffer.concat([head, Buffer.of(remainder(head, 0x07, 8)), sound]);
  const check = remainder(body, 0x8005, 16);
  return Buffer.concat([body, Buffer.of(check >> 8, check & 0xff)]);
}

const endOf = (bytes: Buffer): number => {
  const source: ByteSource = { size: bytes.length, read: (at, length) => bytes.subarray(at, at + length) };
  return flacSoundEnd(source, 0);
};
/** Bytes that look like the beginning of a header again and again. */
const sound = (length: number) => Buffer.alloc(length, Buffer.from("fff8ff", "hex"));

describe("where the sound of a FLAC ends", () => {
  it("the frame of RFC 9639, D.1, has the checksums that its authors give", () => {
    expect(remainder(flacFrame.subarray(0, 6), 0x07, 8)).toBe(0xbf);
    expect(remainder(flacFrame.subarray(0, -2), 0x8005, 16)).toBe(0xaa9a);
  });

  // RFC 9639, 9.1: sync and blocking, size and rate, channels and depth, the number, then size and rate where they are said.
  it.each([
    ["4096 samples at 44.1 kHz, the first", "fff8c91800"],
    ["the 2,000th, whose number takes two bytes", "fff8c918df90"],
    ["samples of a variable size, the number in seven bytes", "fff9c918febfbfbfbfbfbf"],
    ["a size in one byte", "fff869180010"],
    ["a size in two bytes", "fff8791800ffff"],
    ["a rate in one byte", "fff8cc180060"],
    ["a rate in two bytes", "fff8cd1800ac44"],
    ["both", "fff87d1800ffffac44"],
    ["side and mid", "fff8c9a800"],
  ])("is behind a frame of %s", (_, header) => {
    const one = frame(header, sound(5000));
    expect(endOf(Buffer.concat([one, flacFrame, one]))).toBe(2 * one.length + flacFrame.length);
  });

  it("is found in a file of several megabytes, wherever its frames lie", () => {
    const frames = Array.from({ length: 700 }, (_, at) =>
      frame("fff8c918df90", sound(4000 + 13 * (at % 90))),
    );
    const all = Buffer.concat(frames);
    expect(all.length).toBeGreaterThan(2 ** 21);
    expect(endOf(all)).toBe(all.length);
    expect(endOf(Buffer.concat([all, Buffer.from("TAG")]))).toBe(all.length - (frames.at(-1)?.length ?? 0));
  });
});
