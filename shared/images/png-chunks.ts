/**
 * The chunks before the first pixels, by name.
 * Source  PNG (W3C Recommendation, third edition), section 5.3: length, name, data, check sum.
 */
export function pngChunks(bytes: Buffer): ReadonlyMap<string, Buffer> {
  const chunks = new Map<string, Buffer>();
  let at = 8;
  while (at + 8 <= bytes.length) {
    const name = bytes.toString("latin1", at + 4, at + 8);
    if (name === "IDAT") break;
    const end = at + 8 + bytes.readUInt32BE(at);
    chunks.set(name, bytes.subarray(at + 8, end));
    at = end + 4;
  }
  return chunks;
}
