import { RefusedFile } from "../refused-file.ts";
import { type ByteSource, lookedAt, type Overwrite, zeros } from "./byte-source.ts";
import { flacSetup } from "./flac-blocks.ts";
import { cluster, type EbmlElement, elements, segment } from "./matroska-elements.ts";
import {
  type KeptElement,
  type KeptElements,
  keptOfGroup,
  keptOfHead,
  keptOfSegment,
  keptOfTrack,
} from "./matroska-kept.ts";
import { vorbisComment } from "./vorbis-comment.ts";

const head = 0x1a45dfa3;
const tracks = 0x1654ae6b;
const trackEntry = 0xae;
const trackNumber = 0xd7;
const trackType = 0x83;
const codec = 0x86;
const codecPrivate = 0x63a2;
const block = 0xa1;

/** Frames of a day's sound and more. */
const mostElements = 5_000_000;

/**
 * Writes over all of a WebM file but picture and sound and what they are played by. An element that is dropped becomes a
 * Void of the same length, so that every place in the file is where it was; so does a checksum, since it would be wrong.
 * Throws RefusedFile where picture and sound cannot be told from the rest.
 * Source  Matroska (RFC 9559), 5.1; EBML (RFC 8794), 4 for sizes, 11.3.1 for checksums, 11.3.2 for Void
 */
export function* matroskaOverwrites(given: ByteSource): Generator<Overwrite> {
  const source = lookedAt(given, mostElements);
  let rest = 0;
  let isPlayed = false;
  for (const top of elements(source, 0, source.size)) {
    rest = top.end ?? source.size;
    if (top.id === head) yield* inMaster(source, top.data, rest, keptOfHead, new Set());
    else if (top.id === segment) {
      const playing = playedTracks(source, top.data, rest);
      isPlayed ||= playing.size > 0;
      yield* inMaster(source, top.data, rest, keptOfSegment, playing);
    } else yield* asVoid(top.start, rest);
  }
  yield* asVoid(rest, source.size);
  if (!isPlayed) throw new RefusedFile("a film without a list of its pictures and sounds (Tracks)");
}

type Facts = ReadonlyMap<number, EbmlElement>;

/** Picture is 1, and sound is 2. RFC 9559, 5.1.4.1.3 */
const isPictureOrSound = (source: ByteSource, facts: Facts): boolean =>
  [1, 2].includes(numberIn(source, facts.get(trackType)));

function playedTracks(source: ByteSource, from: number, to: number): ReadonlySet<number> {
  for (const section of elements(source, from, to)) {
    if (section.id !== tracks) continue;
    const entries = [...elements(source, section.data, section.end ?? to)].filter(
      ({ id }) => id === trackEntry,
    );
    return new Set(
      entries.flatMap((entry) => {
        const facts = factsOf(source, entry, to);
        return isPictureOrSound(source, facts) ? numberIn(source, facts.get(trackNumber)) : [];
      }),
    );
  }
  return new Set();
}

const factsOf = (source: ByteSource, { data, end }: EbmlElement, to: number): Facts =>
  new Map([...elements(source, data, end ?? to)].map((fact) => [fact.id, fact]));

/** NaN of none, and of one that is too long to be one. */
function numberIn(source: ByteSource, element: EbmlElement | undefined): number {
  const bytes = element ? source.read(element.data, (element.end ?? 0) - element.data) : Buffer.alloc(0);
  return bytes.length > 0 && bytes.length <= 6 ? bytes.readUIntBE(0, bytes.length) : Number.NaN;
}

function* inMaster(
  source: ByteSource,
  from: number,
  to: number,
  kept: KeptElements,
  playing: ReadonlySet<number>,
): Generator<Overwrite> {
  let rest = from;
  for (const element of elements(source, from, to)) {
    const how = kept.get(element.id);
    if (element.end !== null) {
      rest = element.end;
      yield* inElement(source, element, element.end, how, playing);
    } else if (element.id === cluster && how !== undefined) rest = element.data;
    else throw new RefusedFile("a film with a section that does not say how long it is");
  }
  yield* asVoid(rest, to);
}

function* inElement(
  source: ByteSource,
  element: EbmlElement,
  end: number,
  how: KeptElement | undefined,
  playing: ReadonlySet<number>,
): Generator<Overwrite> {
  const { start, data } = element;
  if (how === undefined) yield* asVoid(start, end);
  else if (how === "empty") yield* zeros(data, end);
  // A number has up to eight bytes (RFC 8794, 7.1), and no name of a type or codec comes near so many.
  else if (how === "number" || how === "text") {
    if (end - data > (how === "number" ? 8 : 32)) yield* asVoid(start, end);
  } else if (how === "block") {
    if (!isPlayed(source, data, playing)) yield* asVoid(start, end);
  } else if (how === "group") {
    const blocks = [...elements(source, data, end)].filter(({ id }) => id === block);
    if (blocks.length === 1 && blocks.every((each) => isPlayed(source, each.data, playing)))
      yield* inMaster(source, data, end, keptOfGroup, playing);
    else yield* asVoid(start, end);
  } else if (how === "track") {
    const facts = factsOf(source, element, end);
    if (!isPictureOrSound(source, facts)) return yield* asVoid(start, end);
    yield* inMaster(source, data, end, keptOfTrack, playing);
    yield* inCodec(source, facts.get(codec), facts.get(codecPrivate));
  } else if (how !== "bytes") yield* inMaster(source, data, end, how, playing);
}

/** What two codecs are set up with holds comments. RFC 9559, 12; the other codecs have none there. */
function* inCodec(
  source: ByteSource,
  name: EbmlElement | undefined,
  setup: EbmlElement | undefined,
): Generator<Overwrite> {
  if (!name || !setup || name.end === null || setup.end === null) return;
  const codecName = source.read(name.data, name.end - name.data).toString("latin1");
  if (codecName === "A_VORBIS") yield* vorbisComment(source, setup.data, setup.end);
  // "fLaC" stands before the blocks.
  if (codecName === "A_FLAC") yield* flacSetup(source, setup.data + 4, setup.end);
}

/** A block begins with the number of its track, as long as its first byte says (RFC 9559, 10.1). */
function isPlayed(source: ByteSource, at: number, playing: ReadonlySet<number>): boolean {
  const bytes = source.read(at, 4);
  const length = Math.clz32(bytes[0] ?? 0) - 23;
  if (length > bytes.length) return false;
  return playing.has(bytes.readUIntBE(0, length) - 2 ** (7 * length));
}

function* asVoid(from: number, to: number): Generator<Overwrite> {
  const length = to - from;
  if (length < 2) return yield* zeros(from, to);
  // A size in one byte where there is room for no more, else in eight.
  const head = Buffer.alloc(length < 9 ? 2 : 9);
  head[0] = 0xec;
  if (length < 9) head[1] = 0x80 | (length - 2);
  else {
    head.writeBigUInt64BE(BigInt(length - 9), 1);
    head[1] = 0x01;
  }
  yield { at: from, bytes: head };
  yield* zeros(from + head.length, to);
}
