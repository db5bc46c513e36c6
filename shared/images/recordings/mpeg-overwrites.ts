import { RefusedFile } from "../refused-file.ts";
import { type ByteSource, lookedAt, type Overwrite, zeros } from "./byte-source.ts";
import { frameLength } from "./mpeg-frames.ts";

/** Frames of a day's sound, and bytes that are none. */
const mostLooks = 10_000_000;

/**
 * Tags at the head are emptied; of the rest only frames are kept, one after the other: whatever stands between or behind
 * them, by whatever name, is written over. Throws RefusedFile where there are none.
 * Sources  ID3v2.4.0, 3.1 and 3.4; ISO/IEC 11172-3, 2.4.1.1
 */
export function* mpegOverwrites(given: ByteSource): Generator<Overwrite> {
  const source = lookedAt(given, mostLooks);
  const start = yield* emptyTags(source);
  if (source.read(start, 4).toString("latin1") === "fLaC") {
    throw new RefusedFile(
      "sound as FLAC behind an ID3 tag, which FLAC does not have",
      "Save it again as FLAC.",
    );
  }
  const lengthAt = (at: number) => frameLength(source.read(at, 4));
  let frames = 0;
  let rest = start;
  let at = start;
  while (at < source.size) {
    const end = at + (lengthAt(at) ?? Number.POSITIVE_INFINITY);
    // What is followed by nothing known may have been cut short, and hold a tag: nobody hears the fortieth of a second.
    const isFrame =
      end === source.size || (end < source.size && (lengthAt(end) !== null || isTag(source, end)));
    if (!isFrame) {
      at = nextSync(source, at + 1);
      continue;
    }
    yield* zeros(rest, at);
    frames++;
    rest = at = end;
  }
  yield* zeros(rest, source.size);
  if (frames === 0) throw new RefusedFile("a file that begins as an MP3 does and has no sound in it");
}

/** No flags: what is left of each is an empty tag and its padding. Returns where they end. */
function* emptyTags(source: ByteSource): Generator<Overwrite, number> {
  let at = 0;
  for (;;) {
    const head = source.read(at, 10);
    if (head.length < 10 || head.toString("latin1", 0, 3) !== "ID3") return at;
    // Seven bits to a byte.
    const length = head.subarray(6, 10).reduce((total, byte) => total * 128 + (byte & 0x7f), 0);
    const end = Math.min(at + 10 + length + ((head[5] ?? 0) & 0x10 ? 10 : 0), source.size);
    yield { at: at + 5, bytes: 1 };
    yield* zeros(at + 10, end);
    at = end;
  }
}

/** What programs write behind the sound: ID3 of three kinds, APEv2, Lyrics3. */
const isTag = (source: ByteSource, at: number): boolean =>
  /^(?:TAG|ID3|APETAGEX|LYRICSBEGIN)/.test(source.read(at, 11).toString("latin1"));

const piece = 1024;

/** The next byte of ones, with which a frame may begin, or the end. */
function nextSync(source: ByteSource, from: number): number {
  for (let at = from; at < source.size; at += piece) {
    const found = source.read(at, piece).indexOf(0xff);
    if (found >= 0) return at + found;
  }
  return source.size;
}
