export type Encoding = "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";

export const encodings: readonly Encoding[] = ["utf-8", "utf-16le", "utf-16be", "windows-1252"];

const decode = (encoding: Encoding, bytes: Uint8Array) => new TextDecoder(encoding).decode(bytes);

/** Text in UTF-16 without a mark has a NUL in every other byte wherever it is Latin. */
function looksLikeUtf16(bytes: Uint8Array): Encoding | undefined {
  const sample = bytes.subarray(0, 2000);
  const nuls = [0, 0];
  for (const [at, byte] of sample.entries()) if (byte === 0) nuls[at % 2] = (nuls[at % 2] ?? 0) + 1;
  const [even = 0, odd = 0] = nuls;
  if (odd > sample.length / 6 && odd > 4 * even) return "utf-16le";
  if (even > sample.length / 6 && even > 4 * odd) return "utf-16be";
  return undefined;
}

function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}

/**
 * The encoding that a spreadsheet was saved in: as its byte order mark says, else UTF-8 where it is that, else
 * Windows-1252, which every byte is (WHATWG Encoding Standard).
 */
export function detectEncoding(bytes: Uint8Array): Encoding {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return "utf-16le";
  if (first === 0xfe && second === 0xff) return "utf-16be";
  return looksLikeUtf16(bytes) ?? (isUtf8(bytes) ? "utf-8" : "windows-1252");
}

/** The text of a file, without its byte order mark. */
export const decodedText = (bytes: Uint8Array, encoding: Encoding): string =>
  decode(encoding, bytes).replace(/^\uFEFF/, "");
