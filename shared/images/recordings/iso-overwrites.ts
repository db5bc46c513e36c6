import { RefusedFile } from "../refused-file.ts";
import { type ByteSource, lookedAt, type Overwrite, zeros } from "./byte-source.ts";
import { type IsoBox, isoBoxes, within } from "./iso-boxes.ts";
import { asFreeSpace, entries, fields, inside, type Kept, only } from "./iso-kept.ts";
import { sampleTable } from "./iso-sample-entries.ts";
import { sampleRanges } from "./iso-samples.ts";

/** What players need; every other track (positions, sensors, time codes, texts) goes with its samples. */
const keptHandlers = ["vide", "soun"] as const;

/** A film of hours has some hundreds of them. */
const mostBoxes = 50_000;

/**
 * Writes over all of an MP4 file but picture and sound and what they are played by. No box changes its size, so that every
 * offset in the file still holds; one that is dropped becomes free space. Throws RefusedFile where picture and sound
 * cannot be told from the rest.
 * Source  ISO/IEC 14496-12: 4.3 ftyp, 8.1.1 mdat, 8.2.1 moov; 8.8 fragments
 */
export function isoOverwrites(given: ByteSource): Overwrite[] {
  const source = lookedAt(given, mostBoxes);
  const overwrites: (readonly Overwrite[])[] = [];
  const media: (readonly [number, number])[] = [];
  const ranges: (readonly (readonly [number, number])[])[] = [];
  let rest = 0;
  for (const box of isoBoxes(source, 0, source.size)) {
    rest = box.end;
    if (box.type === "moof") {
      throw new RefusedFile(
        "a film in fragments (moof), in which picture and sound cannot be told from everything else",
        "Save it again without fragments.",
      );
    }
    if (box.type === "mdat") media.push([box.data, box.end]);
    else if (box.type === "ftyp") overwrites.push(fields(mostBrands)(source, box));
    else if (box.type === "moov") {
      ranges.push(mediaRanges(source, box));
      overwrites.push(movie(source, box));
    } else overwrites.push(asFreeSpace(box));
  }
  const samples = ranges.flat();
  if (samples.length === 0) throw new RefusedFile("a film without a list of its pictures and sounds (moov)");
  // A film that breaks off does so within its samples, which are played as far as they go.
  const cut = source.read(rest, 16);
  if (cut.toString("latin1", 4, 8) === "mdat") {
    media.push([rest + (cut.readUInt32BE(0) === 1 ? 16 : 8), source.size]);
  } else if (source.size - rest >= 8) {
    // Of no size: it lasts to the end of the file (4.2).
    overwrites.push(
      zeros(rest, rest + 4),
      asFreeSpace({ type: "", start: rest, data: rest + 8, end: source.size }),
    );
  } else overwrites.push(zeros(rest, source.size));
  return [...overwrites.flat(), ...between(media, samples)];
}

/** The brands of a file are four letters each, and nobody claims more than some of them. */
const mostBrands = 8 + 4 * 16;

/** Zeros over what is in some stretches of the file and in none of the ranges. */
function between(
  media: readonly (readonly [number, number])[],
  ranges: readonly (readonly [number, number])[],
): Overwrite[] {
  const sorted = [...ranges].sort((a, b) => a[0] - b[0]);
  const overwrites: Overwrite[] = [];
  let at = 0;
  for (const [from, to] of media) {
    let done = from;
    for (; at < sorted.length; at++) {
      const [start, end] = sorted[at] ?? [0, 0];
      if (start >= to) break;
      overwrites.push(...zeros(done, start));
      done = Math.max(done, end);
      // What reaches beyond is asked again of the next stretch.
      if (end > to) break;
    }
    overwrites.push(...zeros(done, to));
  }
  return overwrites;
}

/** A way through boxes in boxes. */
const find = (source: ByteSource, box: IsoBox, ...types: readonly string[]): IsoBox | undefined =>
  types.reduce<IsoBox | undefined>(
    (at, type) => at && within(source, at).find((each) => each.type === type),
    box,
  );

/** The handler of a track (8.4.3) that is kept. */
function handlerOf(source: ByteSource, track: IsoBox): (typeof keptHandlers)[number] | undefined {
  const handler = find(source, track, "mdia", "hdlr");
  const name = handler && source.read(handler.data + 8, 4).toString("latin1");
  return keptHandlers.find((each) => each === name);
}

const mediaRanges = (source: ByteSource, movie: IsoBox) =>
  within(source, movie).flatMap((box) => {
    const isKept = box.type === "trak" && handlerOf(source, box) !== undefined;
    const table = isKept && find(source, box, "mdia", "minf", "stbl");
    return table ? sampleRanges(source, table) : [];
  });

const movie: Kept = inside((type) => (type === "mvhd" ? movieHeader : type === "trak" ? track : undefined));

const track: Kept = (source, box) => {
  const handler = handlerOf(source, box);
  if (handler === undefined) return asFreeSpace(box);
  return only({
    tkhd: trackHeader,
    // 8.6.6: which of it is played, and when.
    edts: only({ elst: (source, box) => entries(source.read(box.data, 1)[0] === 1 ? 20 : 12)(source, box) }),
    mdia: only({
      mdhd: mediaHeader,
      // Beyond version, type and handler stand a maker and a name: of a program or a camera.
      hdlr: (_, { data, end }) => zeros(data + 12, end),
      minf: only({
        vmhd: fields(12),
        smhd: fields(8),
        // 8.7.2: that samples lie in this file. Where else they would lie is left out.
        dinf: only({ dref: only({ "url ": fields(4), alis: fields(4) }, 8) }),
        stbl: sampleTable(handler),
      }),
    }),
  })(source, box);
};

/** Times of making and changing come first; zero is the standard's own "not known". Then all is a word longer, or two. */
const dated =
  (short: number, rest: (more: number) => readonly (readonly [number, number])[]): Kept =>
  (source, box) => {
    const more = source.read(box.data, 1)[0] === 1 ? 12 : 0;
    return fields(short + more, [4, more > 0 ? 20 : 12], ...rest(more))(source, box);
  };

/** 8.2.2: reserved words, where QuickTime has times of its own. */
const movieHeader = dated(100, (more) => [
  [26 + more, 36 + more],
  [72 + more, 96 + more],
]);

/** 8.3.2 */
const trackHeader = dated(84, (more) => [
  more > 0 ? [24, 28] : [16, 20],
  [24 + more, 32 + more],
  [38 + more, 40 + more],
]);

/** 8.4.2 */
const mediaHeader = dated(24, (more) => [[22 + more, 24 + more]]);
