/** What a TIFF file says of its pictures, in the order of its directories. */
interface TiffPictures {
  /** The first is a preview or a mask of a picture that lies elsewhere, as in a camera's raw file. */
  readonly firstIsReduced: boolean;
  /** Pictures in their own right: neither a preview nor a mask of another. */
  readonly whole: number;
}

const newSubfileType = 254;
/** Bit 0: a reduced version of another picture; bit 2: a mask of another. */
const dependent = 0b101;

/**
 * Reads the directories alone. A file that is damaged there ends the reading; the decoder will say so.
 * Source  TIFF 6.0 (Adobe 1992), sections 2 and 8 (NewSubfileType); BigTIFF is the same with longer numbers.
 */
export function tiffPictures(bytes: Buffer): TiffPictures {
  const little = bytes[0] === 0x49;
  const short = (at: number) => (little ? bytes.readUInt16LE(at) : bytes.readUInt16BE(at));
  const long = (at: number) => (little ? bytes.readUInt32LE(at) : bytes.readUInt32BE(at));
  const longer = (at: number) => Number(little ? bytes.readBigUInt64LE(at) : bytes.readBigUInt64BE(at));
  const kinds: number[] = [];
  const visited = new Set<number>();
  try {
    const big = short(2) === 43;
    const offset = big ? longer : long;
    const entry = big
      ? { head: 8, size: 20, value: 12, count: longer }
      : { head: 2, size: 12, value: 8, count: short };
    let at = offset(big ? 8 : 4);
    while (at > 0 && !visited.has(at) && visited.size < 1000) {
      visited.add(at);
      const entries = entry.count(at);
      let kind = 0;
      for (let n = 0; n < entries; n++) {
        const tag = at + entry.head + n * entry.size;
        if (short(tag) === newSubfileType) kind = long(tag + entry.value);
      }
      kinds.push(kind);
      at = offset(at + entry.head + entries * entry.size);
    }
  } catch (problem) {
    if (!(problem instanceof RangeError)) throw problem;
  }
  const isWhole = (kind: number) => (kind & dependent) === 0;
  return {
    firstIsReduced: kinds[0] !== undefined && !isWhole(kinds[0]),
    whole: kinds.filter(isWhole).length,
  };
}
