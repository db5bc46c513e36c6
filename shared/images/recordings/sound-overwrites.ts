import type { ByteSource, Overwrite } from "./byte-source.ts";

/** Every chunk but format and samples becomes room to spare. Source  RIFF (1991), chapter 2: `JUNK` */
export function waveOverwrites(source: ByteSource): Overwrite[] {
  const overwrites: Overwrite[] = [];
  let at = 12;
  while (at + 8 <= source.size) {
    const head = source.read(at, 8);
    const name = head.toString("latin1", 0, 4);
    const length = Math.min(head.readUInt32LE(4), source.size - at - 8);
    if (!["fmt ", "data", "fact"].includes(name)) {
      overwrites.push({ at, bytes: Buffer.from("JUNK", "latin1") }, { at: at + 8, bytes: length });
    }
    at += 8 + length + (length % 2);
  }
  return overwrites;
}

/** Tags at the head are emptied, those at the end written over. Sources  ID3v2.4.0, 3.1 and 3.4; ID3v1; APEv2 */
export function mpegOverwrites(source: ByteSource): Overwrite[] {
  const overwrites: Overwrite[] = [];
  let at = 0;
  for (;;) {
    const head = source.read(at, 10);
    if (head.length < 10 || head.toString("latin1", 0, 3) !== "ID3") break;
    // Seven bits to a byte.
    const length = head.subarray(6, 10).reduce((total, byte) => total * 128 + (byte & 0x7f), 0);
    // No flags: what is left is an empty tag and its padding.
    overwrites.push(
      { at: at + 5, bytes: 1 },
      { at: at + 10, bytes: Math.min(length, source.size - at - 10) },
    );
    at += 10 + length + ((head[5] ?? 0) & 0x10 ? 10 : 0);
  }
  let end = source.size;
  if (source.read(end - 128, 3).toString("latin1") === "TAG") {
    overwrites.push({ at: end - 128, bytes: 128 });
    end -= 128;
  }
  const footer = source.read(end - 32, 32);
  if (footer.toString("latin1", 0, 8) === "APETAGEX") {
    const length = Math.min(footer.readUInt32LE(12) + 32, end);
    overwrites.push({ at: end - length, bytes: length });
  }
  return overwrites;
}

/** Comments, pictures, cue sheets and what programs left become padding. Source  RFC 9639, 8.1 */
export function flacOverwrites(source: ByteSource): Overwrite[] {
  const overwrites: Overwrite[] = [];
  let at = 4;
  for (;;) {
    const head = source.read(at, 4);
    if (head.length < 4) break;
    const last = (head[0] ?? 0) & 0x80;
    const kind = (head[0] ?? 0) & 0x7f;
    const length = head.readUIntBE(1, 3);
    // 0 is the stream's own description, 3 its seek table.
    if (kind !== 0 && kind !== 3) {
      overwrites.push(
        { at, bytes: Uint8Array.of(last | 1) },
        { at: at + 4, bytes: Math.min(length, source.size - at - 4) },
      );
    }
    at += 4 + length;
    if (last) break;
  }
  return overwrites;
}
