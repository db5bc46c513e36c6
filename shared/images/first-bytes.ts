import { closeSync, openSync, readSync } from "node:fs";
import { realOriginal } from "./original-bytes.ts";
import { rasterFormat } from "./raster-format.ts";
import { headLength, playedFormats, recordingFormat } from "./recordings/recording-format.ts";
import { RefusedFile } from "./refused-file.ts";

/** What a file is, by its first bytes, since a name may say anything. Each throws RefusedFile where it is something else. */
export const firstBytes = {
  photograph: (head: Buffer): void => void rasterFormat(head),
  recording(head: Buffer): void {
    if (!recordingFormat(head)) throw new RefusedFile(`a file that is not a ${playedFormats}`);
  },
  /** A WebVTT file begins with its name (WebVTT, 4.1). */
  captions(head: Buffer): void {
    if (!/^\uFEFF?WEBVTT(?:[ \t\r\n]|$)/.test(head.toString("utf8")))
      throw new RefusedFile("a file that is not WebVTT");
  },
  /** WOFF File Format 2.0 (W3C 2022), 4: the signature. */
  typeface(head: Buffer): void {
    if (head.toString("latin1", 0, 4) !== "wOF2") throw new RefusedFile("a file that is not WOFF2");
  },
} as const;

/** Why a file that a record names cannot be shown, as far as its first bytes tell; null where they tell nothing. */
export async function refusalOf(
  root: string,
  file: string,
  kind: keyof typeof firstBytes,
): Promise<RefusedFile | null> {
  try {
    firstBytes[kind](headOf(await realOriginal(root, file)));
    return null;
  } catch (problem) {
    if (problem instanceof RefusedFile) return problem;
    throw problem;
  }
}

function headOf(file: string): Buffer {
  const descriptor = openSync(file, "r");
  try {
    const head = Buffer.alloc(headLength);
    return head.subarray(0, readSync(descriptor, head, 0, headLength, 0));
  } finally {
    closeSync(descriptor);
  }
}
