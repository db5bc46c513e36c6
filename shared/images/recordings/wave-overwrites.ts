import { type ByteSource, lookedAt, type Overwrite, zeros } from "./byte-source.ts";

/** Programs write some dozens. */
const mostChunks = 10_000;

/**
 * The first format, the first samples and how many they are; every other chunk becomes room to spare.
 * Source  RIFF (1991), chapter 2: `JUNK`, and that each begins at an even place; chapter 3: `fmt `, `fact`, `data`
 */
export function* waveOverwrites(given: ByteSource): Generator<Overwrite> {
  const source = lookedAt(given, mostChunks);
  /** In bytes; a format of 40 is the longest that there is. */
  const longest = new Map([
    ["fmt ", 40],
    ["fact", 4],
    ["data", Number.POSITIVE_INFINITY],
  ]);
  let at = 12;
  while (at + 8 <= source.size) {
    const head = source.read(at, 8);
    const name = head.toString("latin1", 0, 4);
    const end = Math.min(at + 8 + head.readUInt32LE(4), source.size);
    const kept = longest.get(name);
    longest.delete(name);
    if (kept === undefined) yield { at, bytes: Buffer.from("JUNK", "latin1") };
    const next = Math.min(end + ((end - at) % 2), source.size);
    yield* zeros(Math.min(at + 8 + (kept ?? 0), end), next);
    at = next;
  }
  yield* zeros(at, source.size);
}
