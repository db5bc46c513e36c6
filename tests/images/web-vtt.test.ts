import { describe, expect, it } from "vitest";
import { captionCues, captionsFile, sayings, wordsOfCue } from "../../shared/images/recordings/web-vtt.ts";

const published = (file: string) => captionsFile(captionCues(file));

// Written out by hand from WebVTT (W3C), 4.1 and 6.1.
describe("what is published of a captions file", () => {
  it("is its cues, without comments, heading, styles, regions and names", () => {
    expect(
      published(`WEBVTT - spoken by Ada
Kind: captions
Author: Ada

NOTE recorded in Ada's kitchen

STYLE
::cue { color: red } /* Ada likes red */

REGION
id:ada
width:40%

NOTE
over several
lines

ada-1
00:01.500 --> 00:04.000 align:start region:ada line:-2 ada:1
- The case is opened.
- With <i>care</i>.

NOTE and on

01:00:00.000 --> 01:00:02.250
The end.
`),
    ).toBe(`WEBVTT

00:00:01.500 --> 00:00:04.000 align:start line:-2
- The case is opened.
- With <i>care</i>.

01:00:00.000 --> 01:00:02.250
The end.
`);
  });

  it("is nothing of a cue that was made a comment", () => {
    const file =
      "WEBVTT\n\nNOTE\n00:01.000 --> 00:02.000\nAda\n\nNOTE taken out\nada\n00:03.000 --> 00:04.000\nAda\n";
    expect(published(file)).not.toContain("Ada");
  });

  it.each([
    ["of a Mac of old", "\r"],
    ["of Windows", "\r\n"],
  ])("is the same with the line ends %s", (_, end) => {
    const file = "WEBVTT\n\nNOTE Ada\n\n00:01.000 --> 00:02.000\nOne\nTwo\n";
    expect(published(file.replaceAll("\n", end))).toBe("WEBVTT\n\n00:00:01.000 --> 00:00:02.000\nOne\nTwo\n");
  });

  it("is what a browser would show of a file that does not keep to the rules", () => {
    const file =
      "WEBVTT\n00:01.000 --> 00:02.000\nOne\n00:03.000 --> 00:04.000\nTwo\n\n0:99 --> never\nThree\n\nFour\n";
    expect(captionCues(file).map(({ from, text }) => [from, text])).toEqual([
      [1, "One"],
      [3, "Two"],
    ]);
  });

  it("a word that begins as a comment does is none", () => {
    expect(captionCues("WEBVTT\n\nNOTES\n00:01.000 --> 00:02.000\nOne\n")).toHaveLength(1);
  });
});

describe("the words of a cue", () => {
  it.each([
    ["<v Ada>The <b>case</b>", "The case"],
    ["a <00:00:01.000>b", "a b"],
    ["A &amp; B &lt;c&gt; &#65;&#x42; &unknown;", "A & B <c> AB &unknown;"],
    ["never closed <i", "never closed "],
  ])("of %s", (text, words) => {
    expect(wordsOfCue(text)).toBe(words);
  });
});

describe("what is said", () => {
  // Read once for every beginning, as much as captions may have takes longer than any test may.
  it.each(["<v a", "<v.a", "<v ", "<v\n"])("is read in one go of nothing but %j", (beginning) => {
    const text = beginning.repeat(500_000);
    expect(() => sayings(captionCues(`WEBVTT\n\n00:01.000 --> 00:02.000\n${text}\n`))).not.toThrow();
  });

  it("has whoever says it before their words, and nothing of a cue without any", () => {
    const file =
      "WEBVTT\n\n00:01.000 --> 00:02.000\n<v.loud Ada B>One\n two</v>\n\n00:03.000 --> 00:04.000\n<i></i>\n\n01:01:05.250 --> 01:01:06.000\nThree\n";
    expect(sayings(captionCues(file))).toEqual([
      { seconds: 1, words: "Ada B: One two" },
      { seconds: 3665.25, words: "Three" },
    ]);
  });
});
