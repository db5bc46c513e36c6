import { closeSync, openSync } from "node:fs";
import { type Diagnostic, diagnose } from "../../diagnostics/diagnostic.ts";
import { realOriginal } from "../../images/original-bytes.ts";
import { byteSource } from "../../images/recordings/byte-source.ts";
import { headLength, recordingFormat } from "../../images/recordings/recording-format.ts";
import { recordingLength } from "../../images/recordings/recording-length.ts";
import { timeInDigits } from "../../pages/item/item-recording.ts";
import type { Item } from "../../records/item.ts";
import { isLeftOut } from "../../source/document.ts";

/** Moments at which a recording is over, where it says how long it is. A part of a second is nobody's mistake. */
export async function momentsAfterEnd(root: string, items: Iterable<Item>): Promise<Diagnostic[]> {
  const found: Diagnostic[] = [];
  for (const { document, video } of items) {
    if (!video || video.moments.length === 0) continue;
    const folder = document.file.slice(0, document.file.lastIndexOf("/") + 1);
    const length = await lengthOf(root, folder + video.src);
    if (length === null) continue;
    for (const [at, { seconds }] of video.moments.entries()) {
      if (isLeftOut(document, "video", "moments", at, "at") || seconds <= Math.ceil(length)) continue;
      found.push(
        diagnose("moment-after-end", document.locate(["video", "moments", at, "at"]), {
          found: `"${timeInDigits(seconds)}"`,
          expected: `a moment within the recording, which ends at ${timeInDigits(Math.ceil(length))}`,
        }),
      );
    }
  }
  return found;
}

/** Null of what is no recording, which is told of elsewhere. */
async function lengthOf(root: string, file: string): Promise<number | null> {
  const original = await realOriginal(root, file).catch(() => null);
  if (original === null) return null;
  let descriptor: number | undefined;
  try {
    descriptor = openSync(original, "r");
    const source = byteSource(descriptor);
    const format = recordingFormat(source.read(0, headLength));
    return format && recordingLength(source, format);
  } catch {
    return null;
  } finally {
    if (descriptor !== undefined) closeSync(descriptor);
  }
}
