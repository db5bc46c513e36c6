import { type ByteSource, lookedAt } from "./byte-source.ts";
import { isoBoxes, within } from "./iso-boxes.ts";
import { elements, info, segment } from "./matroska-elements.ts";
import type { RecordingFormat } from "./recording-format.ts";

const lengthOf: Readonly<Record<RecordingFormat["container"], (source: ByteSource) => number>> = {
  matroska: matroskaLength,
  iso: isoLength,
  wave: waveLength,
  flac: flacLength,
  // Nothing at its head says it.
  mpeg: () => Number.NaN,
};

/** What says how long a recording is stands among few pieces. */
const mostPieces = 50_000;

/**
 * In seconds, as the file itself says; null where it does not, as what was recorded live often does not. Throws RefusedFile
 * where it is in more pieces than any is.
 */
export function recordingLength(source: ByteSource, { container }: RecordingFormat): number | null {
  const seconds = lengthOf[container](lookedAt(source, mostPieces));
  return Number.isFinite(seconds) && seconds > 0 ? seconds : null;
}

/** Matroska (RFC 9559), 5.1.2.9 and 5.1.2.10: so many ticks of so many nanoseconds. */
function matroskaLength(source: ByteSource): number {
  let tick = 1_000_000;
  let ticks = Number.NaN;
  for (const top of elements(source, 0, source.size)) {
    if (top.id !== segment) continue;
    for (const section of elements(source, top.data, top.end ?? source.size)) {
      if (section.id !== info || section.end === null) continue;
      for (const { id, data, end } of elements(source, section.data, section.end)) {
        const bytes = source.read(data, (end ?? data) - data);
        if (id === 0x2ad7b1 && bytes.length > 0 && bytes.length <= 6)
          tick = bytes.readUIntBE(0, bytes.length);
        if (id === 0x4489 && bytes.length === 4) ticks = bytes.readFloatBE(0);
        if (id === 0x4489 && bytes.length === 8) ticks = bytes.readDoubleBE(0);
      }
      return (ticks * tick) / 1e9;
    }
  }
  return Number.NaN;
}

/** ISO/IEC 14496-12, 8.2.2: all ones say that it is not known. */
function isoLength(source: ByteSource): number {
  const movie = [...isoBoxes(source, 0, source.size)].find(({ type }) => type === "moov");
  const header = movie && within(source, movie).find(({ type }) => type === "mvhd");
  const bytes = header ? source.read(header.data, 32) : Buffer.alloc(0);
  if (bytes.length < 32) return Number.NaN;
  if (bytes[0] === 1) {
    const long = bytes.readBigUInt64BE(24);
    return long === 0xffff_ffff_ffff_ffffn ? Number.NaN : Number(long) / bytes.readUInt32BE(20);
  }
  const units = bytes.readUInt32BE(16);
  return units === 0xffff_ffff ? Number.NaN : units / bytes.readUInt32BE(12);
}

/** RIFF (1991), chapter 3: what a second takes stands in the format. */
function waveLength(source: ByteSource): number {
  let aSecond = Number.NaN;
  for (let at = 12; at + 8 <= source.size; ) {
    const head = source.read(at, 20);
    if (head.length < 8) break;
    const name = head.toString("latin1", 0, 4);
    const length = Math.min(head.readUInt32LE(4), source.size - at - 8);
    if (name === "fmt " && head.length === 20) aSecond = head.readUInt32LE(16);
    if (name === "data") return length / aSecond;
    at += 8 + length + (length % 2);
  }
  return Number.NaN;
}

/** RFC 9639, 8.2: the stream's own description comes first; no samples say that their number is not known. */
function flacLength(source: ByteSource): number {
  const bytes = source.read(8 + 10, 8);
  if (bytes.length < 8) return Number.NaN;
  const packed = bytes.readBigUInt64BE(0);
  return Number(packed & 0xf_ffff_ffffn) / Number(packed >> 44n);
}
