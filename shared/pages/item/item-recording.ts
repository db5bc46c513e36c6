import type { Recording, Recordings } from "../../images/recordings/recording-set.ts";
import { addUnder } from "../../lists/grouping.ts";
import type { PublishedItem } from "../../publication/published.ts";
import type { Words } from "../../words/words.ts";
import type { Link } from "../page.ts";
import type { MomentLink } from "../views/item-parts.ts";

/** The second of a recording at which a part is shown. */
export interface MomentView {
  readonly part: Link;
  readonly partId: string;
  readonly seconds: number;
  /** "1:17" */
  readonly time: string;
  /** The recording from this second on: a media fragment. */
  readonly address: string;
}

/** What is said at a second of a recording. */
interface SayingView {
  readonly words: string;
  readonly seconds: number;
  readonly time: string;
  readonly address: string;
}

export interface RecordingView extends Omit<Recording, "said"> {
  readonly caption: string | null;
  readonly said: readonly SayingView[];
  readonly moments: readonly MomentView[];
}

/** Minutes and seconds, and hours where there are any. */
export function timeInDigits(seconds: number): string {
  const [hours, minutes, rest] = [
    Math.floor(seconds / 3600),
    Math.floor(seconds / 60) % 60,
    Math.floor(seconds % 60),
  ];
  const two = (figure: number) => String(figure).padStart(2, "0");
  return hours > 0 ? `${hours}:${two(minutes)}:${two(rest)}` : `${minutes}:${two(rest)}`;
}

/** Media Fragments URI 1.0 (W3C 2012), 4.2.1: normal play time, from here to the end. */
const addressFrom = ({ address }: Recording, seconds: number): string => `${address}#t=${seconds}`;

export function recordingView(
  item: PublishedItem,
  recordings: Recordings,
  partLink: (part: string) => Link,
): RecordingView | null {
  const recording = recordings.get(item.id);
  if (!item.video || !recording) return null;
  return {
    ...recording,
    caption: item.video.caption,
    said: recording.said.map(({ seconds, words }) => ({
      words,
      seconds,
      time: timeInDigits(seconds),
      address: addressFrom(recording, seconds),
    })),
    moments: item.video.moments.map(({ part, seconds }) => ({
      part: partLink(part),
      partId: part,
      seconds,
      time: timeInDigits(seconds),
      address: addressFrom(recording, seconds),
    })),
  };
}

/** When each part is shown, by its id. */
export function momentsOf(
  recording: RecordingView | null,
  words: Words,
): ReadonlyMap<string, readonly MomentLink[]> {
  const shown = new Map<string, MomentLink[]>();
  for (const { partId, time, address, seconds } of recording?.moments ?? []) {
    const link = { address, name: words.pages.photographs.moment(time), seconds };
    addUnder(shown, partId, link);
  }
  return shown;
}
