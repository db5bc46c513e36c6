import { captionsFile, escapedCueText } from "../../images/recordings/web-vtt.ts";
import type { PublishedItem } from "../../publication/published.ts";

type Moments = NonNullable<PublishedItem["video"]>["moments"];

/** A line ends a cue's text. */
const cueText = (text: string): string => escapedCueText(text).replace(/\s+/g, " ").trim();

/** A last chapter goes on to the end, which nobody has measured. */
const open = 99 * 3600;

/**
 * The chapters of a recording: from each moment to the next, named by the parts that it comes to. Empty where
 * there are none.
 * Source  WebVTT (W3C), 4.1 and 6: chapter cues follow one another, each with its title
 */
export function chaptersText(moments: Moments, nameOf: (part: string) => string): string {
  const starts = [...new Set(moments.map(({ seconds }) => seconds))].sort((a, b) => a - b);
  if (starts.length === 0) return "";
  const cues = starts.map((start, at) => {
    const parts = moments.filter(({ seconds }) => seconds === start).map(({ part }) => nameOf(part));
    const end = starts[at + 1] ?? Math.max(open, start + 1);
    return { from: start, to: end, place: "", text: cueText(parts.join("; ")) };
  });
  return captionsFile(cues);
}
