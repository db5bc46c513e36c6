import { describe, expect, it } from "vitest";
import { chaptersText } from "../../shared/pages/data/chapters-text.ts";

const names: Readonly<Record<string, string>> = {
  balance: "Balance",
  weights: "Weights & <brass> block",
  lamp: "Lamp\nand --> wick",
};
const nameOf = (part: string) => names[part] ?? part;

// Written out by hand from WebVTT (W3C), 4.1; a browser reads the same in tests/browser/photographs.test.ts.
describe("the chapters of a recording", () => {
  it("last from each moment to the next, and the last to the end", () => {
    const moments = [
      { part: "balance", seconds: 0 },
      { part: "lamp", seconds: 77 },
      { part: "balance", seconds: 3723 },
    ];
    expect(chaptersText(moments, nameOf)).toBe(`WEBVTT

00:00:00.000 --> 00:01:17.000
Balance

00:01:17.000 --> 01:02:03.000
Lamp and --&gt; wick

01:02:03.000 --> 99:00:00.000
Balance
`);
  });

  it("name all parts that are shown at once, and read as text whatever a name holds", () => {
    const moments = [
      { part: "weights", seconds: 5 },
      { part: "balance", seconds: 5 },
    ];
    expect(chaptersText(moments, nameOf)).toContain(
      "00:00:05.000 --> 99:00:00.000\nWeights &amp; &lt;brass&gt; block; Balance\n",
    );
  });

  it("stand in order whatever order the moments came in", () => {
    const text = chaptersText(
      [
        { part: "lamp", seconds: 9 },
        { part: "balance", seconds: 2 },
      ],
      nameOf,
    );
    expect([...text.matchAll(/^(\S+) --> (\S+)$/gm)].map(([, from, to]) => [from, to])).toEqual([
      ["00:00:02.000", "00:00:09.000"],
      ["00:00:09.000", "99:00:00.000"],
    ]);
  });

  it("are none where there is no moment", () => {
    expect(chaptersText([], nameOf)).toBe("");
  });
});
