import type { Saying } from "./recording-set.ts";

/** What is said in a recording from one second of it to another. */
export interface Cue {
  readonly from: number;
  readonly to: number;
  /** Where a player puts it, as a captions file says it; may be empty. */
  readonly place: string;
  /** With its markup. */
  readonly text: string;
}

const timing = /^\s*(?:(\d+):)?([0-5]\d):([0-5]\d\.\d{3})\s*-->\s*(?:(\d+):)?([0-5]\d):([0-5]\d\.\d{3})(.*)$/;

/** Those that have a meaning by themselves: a region is described elsewhere, and what nobody reads may say anything. */
const placing =
  /^(?:vertical:(?:rl|lr)|line:-?\d+(?:\.\d+)?%?(?:,(?:start|center|end))?|position:\d+(?:\.\d+)?%(?:,(?:line-left|center|line-right))?|size:\d+(?:\.\d+)?%|align:(?:start|center|end|left|right))$/;

/**
 * What a captions file shows. All else that may be in one is for those who write it and is left out: comments, the
 * heading, styles and regions, and the names of cues.
 * Source  WebVTT (W3C), 4.1 for the syntax; 6.1 for what is read of a file that does not keep to it. A comment lasts to
 *   the next empty line here, even where a cue stands in it: whoever wrote that meant it to be left out.
 */
export function captionCues(file: string): Cue[] {
  const blocks = file
    .replaceAll("\0", "\uFFFD")
    .split(/\r\n|\n|\r/)
    .join("\n")
    .split(/\n{2,}/);
  return blocks.filter((block) => !/^\n*NOTE(?:[ \t\n]|$)/.test(block)).flatMap(cuesIn);
}

/** A line with an arrow begins a cue wherever it stands. */
function cuesIn(block: string): Cue[] {
  const lines = block.split("\n");
  const starts = lines.flatMap((line, at) => (line.includes("-->") ? at : []));
  return starts.flatMap((start, at) => {
    const [, hours, minutes, seconds, toHours, toMinutes, toSeconds, settings = ""] =
      timing.exec(lines[start] ?? "") ?? [];
    if (minutes === undefined || toMinutes === undefined) return [];
    return {
      from: inSeconds(hours, minutes, seconds),
      to: inSeconds(toHours, toMinutes, toSeconds),
      place: settings
        .split(/\s+/)
        .filter((setting) => placing.test(setting))
        .join(" "),
      text: lines
        .slice(start + 1, starts[at + 1])
        .filter((line) => line !== "")
        .join("\n"),
    };
  });
}

const inSeconds = (hours = "0", minutes = "0", seconds = "0"): number =>
  (Number(hours) * 60 + Number(minutes)) * 60 + Number(seconds);

export function captionsFile(cues: readonly Cue[]): string {
  const blocks = cues.map(
    ({ from, to, place, text }) =>
      `${timestamp(from)} --> ${timestamp(to)}${place === "" ? "" : ` ${place}`}\n${text}\n`,
  );
  return `WEBVTT\n\n${blocks.join("\n")}`;
}

function timestamp(seconds: number): string {
  const padded = (figure: number, digits: number) => String(figure).padStart(digits, "0");
  const all = Math.round(seconds * 1000);
  const whole = Math.floor(all / 1000);
  const clock = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  return `${clock.map((figure) => padded(figure, 2)).join(":")}.${padded(all % 1000, 3)}`;
}

/** WebVTT (W3C), 4.2.2: what could be read as markup is escaped. */
export const escapedCueText = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");

const characters: Readonly<Record<string, string>> = {
  amp: "&",
  lt: "<",
  gt: ">",
  nbsp: "\u00A0",
  lrm: "\u200E",
  rlm: "\u200F",
};

/** The words of a cue as they are shown, without markup. */
export const wordsOfCue = (text: string): string =>
  text
    .replace(/<[^>]*>?/g, "")
    .replace(/&(?:#(\d{1,7})|#x([\da-f]{1,6})|(\w+));/gi, (written, decimal, hexadecimal, name) => {
      if (name !== undefined) return characters[name] ?? written;
      const code = Number.parseInt(decimal ?? hexadecimal, decimal === undefined ? 16 : 10);
      return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : "\uFFFD";
    });

/** Nobody's name has more letters, and without an end a file of nothing but beginnings would be read once for each. */
const voice = /<v(?:\.[^\s>]{0,200})?[ \t\n]+([^>]{1,200})>/g;

/** Cues as a text to be read; who speaks stands before the words where the captions say it. WebVTT (W3C), 4.2.2 */
export const sayings = (cues: readonly Cue[]): Saying[] =>
  cues.flatMap(({ from, text }) => {
    const named = text.replace(voice, "$1: ");
    const words = wordsOfCue(named).replace(/\s+/g, " ").trim();
    return words === "" ? [] : { seconds: from, words };
  });
