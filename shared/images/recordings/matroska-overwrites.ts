import type { ByteSource, Overwrite } from "./byte-source.ts";
import { type EbmlElement, elements, info, segment } from "./matroska-elements.ts";

const tracks = 0x1654ae6b;
const trackEntry = 0xae;

/** Tags, attachments and chapters of the file's own. */
const droppedSections: readonly number[] = [0x1254c367, 0x1941a469, 0x1043a770];
/** Title, date, and the names of this file and its neighbours. */
const droppedFacts: readonly number[] = [
  0x7ba9, 0x4461, 0x7384, 0x3c83ab, 0x3e83bb, 0x73a4, 0x3cb923, 0x3eb923,
];
/** The programs that wrote it: these must be there, and may be empty. */
const emptiedFacts: readonly number[] = [0x4d80, 0x5741];
const trackName = 0x536e;

/**
 * Writes over what a WebM file says beside picture and sound. An element that is dropped becomes a Void of the same
 * length, so that every place in the file is where it was.
 * Source  Matroska (RFC 9559), 5.1; EBML (RFC 8794), 4 for sizes, 11.3.2 for Void
 */
export function matroskaOverwrites(source: ByteSource): Overwrite[] {
  return [...elements(source, 0, source.size)].flatMap((top) =>
    top.id === segment ? inSegment(source, top.data, top.end ?? source.size) : [],
  );
}

function inSegment(source: ByteSource, from: number, to: number): Overwrite[] {
  return [...elements(source, from, to)].flatMap((section) => {
    const end = section.end ?? to;
    if (droppedSections.includes(section.id)) return asVoid(section, end);
    if (section.id === info) {
      return [...elements(source, section.data, end)].flatMap((fact) => {
        if (droppedFacts.includes(fact.id)) return asVoid(fact, fact.end ?? end);
        return emptiedFacts.includes(fact.id) ? [zeros(fact.data, fact.end ?? end)] : [];
      });
    }
    if (section.id !== tracks) return [];
    return [...elements(source, section.data, end)].flatMap((entry) =>
      entry.id !== trackEntry
        ? []
        : [...elements(source, entry.data, entry.end ?? end)].flatMap((fact) =>
            fact.id === trackName ? asVoid(fact, fact.end ?? end) : [],
          ),
    );
  });
}

function asVoid({ start }: EbmlElement, end: number): Overwrite[] {
  const length = end - start;
  // A size in one byte where there is room for no more, else in eight.
  const head = Buffer.alloc(length < 9 ? 2 : 9);
  head[0] = 0xec;
  if (length < 9) head[1] = 0x80 | (length - 2);
  else {
    head.writeBigUInt64BE(BigInt(length - 9), 1);
    head[1] = 0x01;
  }
  return [{ at: start, bytes: head }, zeros(start + head.length, end)];
}

const zeros = (from: number, to: number): Overwrite => ({ at: from, bytes: Math.max(0, to - from) });
