import type { ByteSource } from "./byte-source.ts";

const piece = 1024 * 1024;

/** A header has up to 16 bytes (RFC 9639, 9.1). */
const longestHeader = 16;

/** Remainders of a byte's division by a polynomial without its highest term. */
const remainders = (polynomial: number, bits: number): Uint16Array =>
  Uint16Array.from({ length: 256 }, (_, byte) => {
    let value = byte << (bits - 8);
    for (let bit = 0; bit < 8; bit++) {
      value = (value << 1) ^ (value & (1 << (bits - 1)) ? polynomial : 0);
    }
    return value & (2 ** bits - 1);
  });

/** RFC 9639, 9.1.8: x^8 + x^2 + x + 1; 9.3: x^16 + x^15 + x^2 + 1; both begin with 0. */
const ofHeader = remainders(0x07, 8);
const ofFrame = remainders(0x8005, 16);

/**
 * Where the sound ends that begins at a place: the end of the last frame, each of which has a checksum that leaves no
 * remainder where it ends, and where the header of the next one begins or the file ends.
 * Source  RFC 9639, 9.1 and 9.3
 */
export function flacSoundEnd(source: ByteSource, start: number): number {
  let end = start;
  let remainder = 0;
  let isWithin = false;
  for (let from = start; from < source.size; from += piece) {
    const bytes = source.read(from, piece + longestHeader);
    const count = Math.min(piece, bytes.length);
    for (let at = 0; at < count; at++) {
      // Most bytes are no end, and only of an end more is asked.
      if (remainder === 0 && bytes[at] === 0xff && isHeader(bytes, at)) {
        end = from + at;
        isWithin = true;
      }
      if (!isWithin) return end;
      remainder = ((remainder << 8) & 0xffff) ^ (ofFrame[(remainder >> 8) ^ (bytes[at] ?? 0)] ?? 0);
    }
  }
  return isWithin && remainder === 0 ? source.size : end;
}

/** Whether a frame's header stands here: its numbers mean something, and its own checksum fits. */
function isHeader(bytes: Buffer, at: number): boolean {
  const [second = 0, third = 0, fourth = 0, number = 0] = bytes.subarray(at + 1, at + 5);
  if ((second & 0xfe) !== 0xf8 || fourth & 1) return false;
  const [size, rate] = [third >> 4, third & 15];
  // The number of the frame is coded as UTF-8 codes letters: as many ones as there are bytes, or none of one.
  const ones = Math.clz32(~(number << 24));
  const length =
    4 +
    (ones || 1) +
    (size === 6 ? 1 : size === 7 ? 2 : 0) +
    (rate === 12 ? 1 : rate === 13 || rate === 14 ? 2 : 0);
  if (size === 0 || rate === 15 || fourth >> 4 > 10 || ones === 1 || ones > 7) return false;
  let remainder = 0;
  for (const byte of bytes.subarray(at, at + length)) remainder = ofHeader[remainder ^ byte] ?? 0;
  return at + length < bytes.length && remainder === bytes[at + length];
}
