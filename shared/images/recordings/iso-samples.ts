import type { ByteSource } from "./byte-source.ts";
import { type IsoBox, within } from "./iso-boxes.ts";

/**
 * Where the samples of a track lie in the file, as place and length, a chunk at a time.
 * Source  ISO/IEC 14496-12: 8.7.3 stsz, 8.7.4 stsc, 8.7.5 stco and co64
 */
export function sampleRanges(source: ByteSource, media: readonly IsoBox[]): (readonly [number, number])[] {
  const information = media.find(({ type }) => type === "minf");
  const table = information && within(source, information).find(({ type }) => type === "stbl");
  const boxes = new Map(table ? within(source, table).map((box) => [box.type, box]) : []);
  const bytesOf = (type: string) => {
    const box = boxes.get(type);
    return box ? source.read(box.data, box.end - box.data) : Buffer.alloc(0);
  };
  const long = boxes.has("co64");
  const [offsets, sizes, runs] = [bytesOf(long ? "co64" : "stco"), bytesOf("stsz"), bytesOf("stsc")];
  if (offsets.length < 8 || sizes.length < 12) return [];
  const same = sizes.readUInt32BE(4);
  const sizeOf = (sample: number) => (same > 0 ? same : sizes.readUInt32BE(12 + 4 * sample));
  // What a damaged file claims may be beyond all measure.
  const most = same > 0 ? Math.floor(source.size / same) : Math.floor((sizes.length - 12) / 4);
  const count = Math.min(sizes.readUInt32BE(8), most);
  const samplesIn = samplesToChunk(runs);
  const step = long ? 8 : 4;
  const chunks = Math.min(offsets.readUInt32BE(4), Math.floor((offsets.length - 8) / step));
  const ranges: (readonly [number, number])[] = [];
  let sample = 0;
  for (let chunk = 0; chunk < chunks; chunk++) {
    const at = 8 + step * chunk;
    const offset = long ? Number(offsets.readBigUInt64BE(at)) : offsets.readUInt32BE(at);
    let length = 0;
    for (let n = samplesIn(chunk + 1); n > 0 && sample < count; n--) length += sizeOf(sample++);
    if (length > 0 && offset + length <= source.size) ranges.push([offset, length]);
  }
  return ranges;
}

/** How many samples a chunk has, by its number from 1: each entry holds from its first chunk on. */
function samplesToChunk(runs: Buffer): (chunk: number) => number {
  const entries: { first: number; samples: number }[] = [];
  for (let at = 8; at + 12 <= runs.length; at += 12) {
    entries.push({ first: runs.readUInt32BE(at), samples: runs.readUInt32BE(at + 4) });
  }
  return (chunk) => entries.findLast(({ first }) => first <= chunk)?.samples ?? 0;
}
