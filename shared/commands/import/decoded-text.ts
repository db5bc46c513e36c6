export type Encoding = "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";

export const encodings: readonly Encoding[] = ["utf-8", "utf-16le", "utf-16be", "windows-1252"];

/**
 * Bytes 80 to 9F of Windows-1252, from the WHATWG Encoding Standard's index; the five that it leaves unassigned are
 * controls there too. Node 20 decodes them as ISO 8859-1, which has controls in all of these places.
 */
const upperControls =
  "\u20ac\u0081\u201a\u0192\u201e\u2026\u2020\u2021\u02c6\u2030\u0160\u2039\u0152\u008d\u017d\u008f" +
  "\u0090\u2018\u2019\u201c\u201d\u2022\u2013\u2014\u02dc\u2122\u0161\u203a\u0153\u009d\u017e\u0178";

function decode(encoding: Encoding, bytes: Uint8Array): string {
  if (encoding !== "windows-1252") return new TextDecoder(encoding).decode(bytes);
  const latin1 = Buffer.from(bytes).toString("latin1");
  return latin1.replace(/[\u0080-\u009f]/g, (byte) => upperControls[byte.charCodeAt(0) - 0x80] ?? byte);
}

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
