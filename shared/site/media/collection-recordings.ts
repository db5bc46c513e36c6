import path from "node:path";
import { askedFor } from "../../images/asked-for.ts";
import { firstBytes } from "../../images/first-bytes.ts";
import { readOriginal } from "../../images/original-bytes.ts";
import { placeRecording } from "../../images/recordings/place-recording.ts";
import type { Recording } from "../../images/recordings/recording-set.ts";
import {
  type Cue,
  captionCues,
  captionsFile,
  escapedCueText,
  sayings,
  wordsOfCue,
} from "../../images/recordings/web-vtt.ts";
import { RefusedFile } from "../../images/refused-file.ts";
import { chaptersText } from "../../pages/data/chapters-text.ts";
import type { OutputFile } from "../../pages/data/output-file.ts";
import type { Redact } from "../../publication/masking.ts";
import { redactFor } from "../../publication/publish-item.ts";
import type { PublishedCollection } from "../../publication/published.ts";
import type { Collection } from "../../records/collection.ts";
import type { CopiedFile } from "../assets/assets.ts";
import { named } from "../assets/script-files.ts";
import type { CollectionImages } from "./collection-images.ts";

export interface CollectionRecordings {
  readonly recordings: ReadonlyMap<string, Recording>;
  readonly copied: readonly CopiedFile[];
  /** Chapters, and captions without the serials that are not shown. */
  readonly files: readonly OutputFile[];
  readonly refused: CollectionImages["refused"];
}

/** Every recording of the collection, freed of what its camera wrote beside it, with what is read along with it. */
export async function placeRecordings(
  root: string,
  cacheFolder: string,
  { items, audience }: PublishedCollection,
  collection: Collection,
): Promise<CollectionRecordings> {
  const site = path.join(cacheFolder, "site");
  const recordings = new Map<string, Recording>();
  const copied = new Map<string, CopiedFile>();
  const files: OutputFile[] = [];
  const refused: CollectionRecordings["refused"][number][] = [];
  const attempt = async <Made>(file: string, make: () => Promise<Made>): Promise<Made | null> => {
    try {
      return await make();
    } catch (problem) {
      if (!(problem instanceof RefusedFile)) throw problem;
      refused.push({ file, reason: problem.message, remedy: problem.remedy });
      return null;
    }
  };

  for (const { id, video, parts } of items) {
    const record = collection.items.get(id);
    if (!video || !record) continue;
    const placed = await attempt(video.original, () =>
      placeRecording(root, video.original, path.join(site, "recordings")),
    );
    const { captions: said } = video;
    const cues = said === null ? null : await attempt(said, () => captionsOf(root, said));
    const shown = cues && redactedCues(cues, redactFor(record, audience));
    if (!placed) continue;
    await askedFor(placed.file);
    const address = `/recordings/${placed.name}`;
    copied.set(address, { from: placed.file, address });
    const nameOf = (part: string) => parts.find((each) => each.id === part)?.name ?? part;
    const beside = (name: string, content: string | null) => {
      if (content === null || content === "") return null;
      const file = named(`${id}-${name}`, "vtt", content);
      files.push(file);
      return file.address;
    };
    recordings.set(id, {
      kind: placed.format.kind,
      type: placed.format.type,
      address,
      captions: beside("captions", shown && captionsFile(shown)),
      said: sayings(shown ?? []),
      chapters: beside("chapters", chaptersText(video.moments, nameOf)),
    });
  }
  return { recordings, copied: [...copied.values()], files, refused };
}

const megabyte = 1024 * 1024;
const longestCaptions = 4 * megabyte;

/** Throws RefusedFile. */
async function captionsOf(root: string, file: string): Promise<Cue[]> {
  const bytes = await readOriginal(root, file);
  firstBytes.captions(bytes);
  if (bytes.length > longestCaptions)
    throw new RefusedFile(
      `captions of ${(bytes.length / megabyte).toFixed(1)} MB, where at most 4 MB are read`,
    );
  return captionCues(bytes.toString("utf8").replace(/^\uFEFF/, ""));
}

/** Markup may part a serial where no reader sees it: of such a cue only the words are left. */
const redactedCues = (cues: readonly Cue[], redact: Redact): Cue[] =>
  cues.map((cue) => {
    const text = redact(cue.text);
    const words = wordsOfCue(text);
    const shown = redact(words);
    return { ...cue, text: shown === words ? text : escapedCueText(shown) };
  });
