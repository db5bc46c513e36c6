import { readFileSync, writeFileSync } from 'node:fs';
import { inflateSync } from 'node:zlib';

/**
 * Unpacks a WOFF 1.0 file into the TrueType file that it wraps, since the renderer reads only the latter.
 * Source: W3C Recommendation WOFF File Format 1.0, sections 3 to 5.
 */
export function unpackFont(woff, ttf) {
  const from = readFileSync(woff);
  const count = from.readUInt16BE(12);
  const power = 2 ** Math.floor(Math.log2(count));
  const head = Buffer.alloc(12 + count * 16);
  head.writeUInt32BE(from.readUInt32BE(4), 0);
  head.writeUInt16BE(count, 4);
  head.writeUInt16BE(power * 16, 6);
  head.writeUInt16BE(Math.log2(power), 8);
  head.writeUInt16BE(count * 16 - power * 16, 10);
  const tables = [];
  let place = head.length;
  for (let i = 0; i < count; i += 1) {
    const at = 44 + i * 20;
    const [offset, packed, length, sum] = [4, 8, 12, 16].map((k) => from.readUInt32BE(at + k));
    const raw = from.subarray(offset, offset + packed);
    const data = packed < length ? inflateSync(raw) : raw;
    const padded = Buffer.alloc(Math.ceil(length / 4) * 4);
    data.copy(padded);
    from.copy(head, 12 + i * 16, at, at + 4);
    head.writeUInt32BE(sum, 12 + i * 16 + 4);
    head.writeUInt32BE(place, 12 + i * 16 + 8);
    head.writeUInt32BE(length, 12 + i * 16 + 12);
    tables.push(padded);
    place += padded.length;
  }
  writeFileSync(ttf, Buffer.concat([head, ...tables]));
}
