import type { PublishedItem } from "../../publication/published.ts";

type Moments = NonNullable<PublishedItem["video"]>["moments"];

/** WebVTT (W3C), 4.2.2: what could be read as markup is escaped; a line ends a cue's text. */
const cueText = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replace(/\s+/g, " ").trim();

function timestamp(seconds: number): string {
  const two = (figure: number) => String(figure).padStart(2, "0");
  const whole = Math.floor(seconds);
  const thousandths = String(Math.round((seconds - whole) * 1000)).padStart(3, "0");
  return `${two(Math.floor(whole / 3600))}:${two(Math.floor(whole / 60) % 60)}:${two(whole % 60)}.${thousandths}`;
}

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
    return `${timestamp(start)} --> ${timestamp(end)}\n${cueText(parts.join("; "))}\n`;
  });
  return `WEBVTT\n\n${cues.join("\n")}`;
}
