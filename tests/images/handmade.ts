import { crc32 } from "node:zlib";

/** A directory of a TIFF file by its entries: tag -> value, each a LONG; TIFF 6.0, section 2. */
export function tiff(
  directories: readonly Readonly<Record<number, number>>[],
  { big = false, motorola = false }: { big?: boolean; motorola?: boolean } = {},
): Buffer {
  const size = big ? 8 : 4;
  const entrySize = big ? 20 : 12;
  const head = big ? 16 : 8;
  const sizes = directories.map((it) => (big ? 8 : 2) + Object.keys(it).length * entrySize + size);
  const bytes = Buffer.alloc(head + sizes.reduce((sum, n) => sum + n, 0));
  const put = (value: number, at: number, length: number) => {
    for (let n = 0; n < length; n++) {
      const place = motorola ? length - 1 - n : n;
      bytes[at + place] = Math.floor(value / 256 ** n) % 256;
    }
  };
  bytes.write(motorola ? "MM" : "II", 0, "latin1");
  put(big ? 43 : 42, 2, 2);
  if (big) put(8, 4, 2);
  put(directories.length > 0 ? head : 0, big ? 8 : 4, size);
  let at = head;
  for (const [n, directory] of directories.entries()) {
    const entries = Object.entries(directory);
    put(entries.length, at, big ? 8 : 2);
    let entry = at + (big ? 8 : 2);
    for (const [tag, value] of entries) {
      put(Number(tag), entry, 2);
      put(4, entry + 2, 2);
      put(1, entry + 4, size);
      put(value, entry + 4 + size, 4);
      entry += entrySize;
    }
    const next = at + (sizes[n] ?? 0);
    put(n + 1 < directories.length ? next : 0, entry, size);
    at = next;
  }
  return bytes;
}

/** Puts a chunk behind the header of a PNG; PNG third edition, sections 5.3 and 5.5. */
export function withPngChunk(png: Buffer, name: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(name, "latin1"), data]);
  const chunk = Buffer.alloc(4 + body.length + 4);
  chunk.writeUInt32BE(data.length, 0);
  body.copy(chunk, 4);
  chunk.writeUInt32BE(crc32(body), 4 + body.length);
  const afterHeader = 8 + 4 + 4 + 13 + 4;
  return Buffer.concat([png.subarray(0, afterHeader), chunk, png.subarray(afterHeader)]);
}

/** The first box of an ISO base media file, with its brands; ISO/IEC 14496-12, 4.3. */
export function fileTypeBox(...brands: readonly [string, ...string[]]): Buffer {
  const names = Buffer.from(`${brands[0]}\0\0\0\0${brands.slice(1).join("")}`, "latin1");
  const box = Buffer.alloc(8 + names.length);
  box.writeUInt32BE(box.length, 0);
  box.write("ftyp", 4, "latin1");
  names.copy(box, 8);
  return box;
}

/** Turns the colour profile in an AVIF into code points (`nclx`); ISO/IEC 14496-12, 12.1.5. */
export function withColourCodes(avif: Buffer, primaries: number, transfer: number): Buffer {
  const changed = Buffer.from(avif);
  const at = changed.indexOf("colrrICC", 0, "latin1");
  if (at < 0) throw new Error("The AVIF file has no colour profile to change.");
  changed.write("nclx", at + 4, "latin1");
  changed.writeUInt16BE(primaries, at + 8);
  changed.writeUInt16BE(transfer, at + 10);
  changed.writeUInt16BE(6, at + 12);
  changed.writeUInt8(0x80, at + 14);
  return changed;
}

/** Writes another size into the frame header (SOF0) of a JPEG; ITU-T T.81, B.2.2. */
export function withJpegSize(jpeg: Buffer, width: number, height: number): Buffer {
  const changed = Buffer.from(jpeg);
  const at = changed.indexOf(Buffer.from([0xff, 0xc0]));
  if (at < 0) throw new Error("The JPEG file has no baseline frame header.");
  changed.writeUInt16BE(height, at + 5);
  changed.writeUInt16BE(width, at + 7);
  return changed;
}
