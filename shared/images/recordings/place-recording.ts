import { createHash, randomUUID } from "node:crypto";
import {
  chmodSync,
  closeSync,
  constants,
  copyFileSync,
  existsSync,
  mkdirSync,
  openSync,
  renameSync,
  rmSync,
  writeSync,
} from "node:fs";
import path from "node:path";
import { realOriginal } from "../original-bytes.ts";
import { RefusedFile } from "../refused-file.ts";
import { type ByteSource, byteSource, type Overwrite } from "./byte-source.ts";
import { flacOverwrites } from "./flac-overwrites.ts";
import { isoOverwrites } from "./iso-overwrites.ts";
import { matroskaOverwrites } from "./matroska-overwrites.ts";
import { mpegOverwrites } from "./mpeg-overwrites.ts";
import { headLength, playedFormats, type RecordingFormat, recordingFormat } from "./recording-format.ts";
import { waveOverwrites } from "./wave-overwrites.ts";

/** Raise it where the code changes what a recording is freed of. */
const pipeline = 2;

const overwritesOf: Readonly<
  Record<RecordingFormat["container"], (source: ByteSource) => Iterable<Overwrite>>
> = {
  matroska: matroskaOverwrites,
  iso: isoOverwrites,
  wave: waveOverwrites,
  mpeg: mpegOverwrites,
  flac: flacOverwrites,
};

interface PlacedRecording {
  readonly format: RecordingFormat;
  readonly name: string;
  readonly file: string;
}

/**
 * A copy of a recording, named by its content, of which only picture and sound are left and what they are played by:
 * whatever else a container says (place, time, owner, camera, programs) is written over, known or not. Picture and sound
 * themselves are not touched: whatever is seen, said or hidden within them stays. Throws RefusedFile for what is no
 * recording, and for one whose picture and sound cannot be told from the rest.
 */
export async function placeRecording(root: string, file: string, folder: string): Promise<PlacedRecording> {
  const original = await realOriginal(root, file);
  const descriptor = openSync(original, "r");
  try {
    const source = byteSource(descriptor);
    const format = recordingFormat(source.read(0, headLength));
    if (!format) throw new RefusedFile(`a file that is not a ${playedFormats}`);
    const name = `${contentHash(source)}.${format.extension}`;
    const target = path.join(folder, name);
    if (!existsSync(target)) copyWithout(original, target, overwritesOf[format.container](source));
    return { format, name, file: target };
  } finally {
    closeSync(descriptor);
  }
}

const piece = 4 * 1024 * 1024;

function contentHash(source: ByteSource): string {
  const hash = createHash("sha256").update(`recording ${pipeline}`);
  for (let at = 0; at < source.size; at += piece) hash.update(source.read(at, piece));
  return hash.digest("hex").slice(0, 24);
}

/** Under another name first: a file that has its name is whole, and nothing private ever stood under it. */
function copyWithout(original: string, target: string, overwrites: Iterable<Overwrite>): void {
  mkdirSync(path.dirname(target), { recursive: true });
  const part = `${target}.${randomUUID()}`;
  try {
    copyFileSync(original, part, constants.COPYFILE_FICLONE);
    // A copy may be written and published, however its original is kept.
    chmodSync(part, 0o644);
    const descriptor = openSync(part, "r+");
    try {
      for (const { at, bytes } of overwrites) {
        if (typeof bytes === "number") writeZeros(descriptor, at, bytes);
        else writeSync(descriptor, bytes, 0, bytes.length, at);
      }
    } finally {
      closeSync(descriptor);
    }
    renameSync(part, target);
  } catch (problem) {
    rmSync(part, { force: true });
    throw problem;
  }
}

function writeZeros(descriptor: number, at: number, count: number): void {
  const zeros = Buffer.alloc(Math.min(count, piece));
  for (let done = 0; done < count; done += zeros.length) {
    writeSync(descriptor, zeros, 0, Math.min(zeros.length, count - done), at + done);
  }
}
