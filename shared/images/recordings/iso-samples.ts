import { RefusedFile } from "../refused-file.ts";
import type { ByteSource } from "./byte-source.ts";
import { type IsoBox, within } from "./iso-boxes.ts";

/** A day of film comes to half of it. */
const longestTable = 64 * 1024 * 1024;

/**
 * Where the samples of a track lie in the file, from one place to another, in the order of its chunks.
 * Source  ISO/IEC 14496-12: 8.7.3 stsz, 8.7.4 stsc, 8.7.5 stco and co64
 */
export function sampleRanges(source: ByteSource, table: IsoBox): (readonly [number, number])[] {
  const boxes = new Map(within(source, table).map((box) => [box.type, box]));
  if (boxes.has("stz2")) throw new RefusedFile("a film that says the sizes of its samples in brief (stz2)");
  const bytesOf = (type: string) => {
    const box = boxes.get(type);
    if (!box) return Buffer.alloc(0);
    if (box.end - box.data > longestTable)
      throw new RefusedFile(`a table of samples (${type}) that never ends`);
    return source.read(box.data, box.end - box.data);
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
  for (let chunk = 0; chunk < chunks && sample < count; chunk++) {
    const at = 8 + step * chunk;
    const offset = long ? Number(offsets.readBigUInt64BE(at)) : offsets.readUInt32BE(at);
    let length = 0;
    for (let n = samplesIn(chunk + 1); n > 0 && sample < count; n--) length += sizeOf(sample++);
    const end = Math.min(offset + length, source.size);
    if (end > offset) ranges.push([offset, end]);
  }
  return ranges;
}

/** How many samples a chunk has, by its number from 1, asked in order: each entry holds from its first chunk on. */
function samplesToChunk(runs: Buffer): (chunk: number) => number {
  let next = 8;
  let samples = 0;
  return (chunk) => {
    for (; next + 12 <= runs.length && runs.readUInt32BE(next) <= chunk; next += 12) {
      samples = runs.readUInt32BE(next + 4);
    }
    return samples;
  };
}
