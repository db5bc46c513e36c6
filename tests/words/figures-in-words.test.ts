import { describe, expect, it } from "vitest";
import type { Unit } from "../../shared/assessments/figure.ts";
import { english } from "../../shared/words/en/english.ts";

const say = (unit: Unit, value: number | null, low: number | null = null, high: number | null = null) =>
  english.phrase({ unit, value, low, high });

// The rule is the design's own: 26.14 with 22.13 to 44.41 is "about 26, 22 to 44".
describe("a figure in words", () => {
  it.each([
    ["examples", 26.14, 22.13, 44.41, "about 26, 22 to 44"],
    ["examples", 412, 412, 412, "412"],
    ["examples", 2883.27, 2705, 3202, "about 2,883, 2,705 to 3,202"],
    ["examples", null, 400, 450, "400 to 450"],
    ["examples", null, null, null, "not known"],
    ["share", 6 / 15, 0.198, 0.643, "about 40%, 20% to 64%"],
    ["share", 0.931, null, null, "93%"],
    ["examples", 1.504, 0.267, 10.6, "about 2, under 1 to 11"],
    ["years", 14.7, 0.4335, 266.6, "about 15 years, 5 months to over 100 years"],
    ["years", 75.2, 1.27, 39975, "about 75 years, 15 months to over 100 years"],
    // Nothing is about a number that is only said to lie below or above another; and what is 0 is not about 0.
    ["examples", 0, 0, 11.6, "0, 0 to 12"],
    ["examples", 0.3, 0, 11.6, "under 1, 0 to 12"],
    ["share", 0, 0, 0.215, "0%, 0% to 22%"],
    ["share", 0.004, 0, 0.215, "under 1%, 0% to 22%"],
    ["share", 0.997, 0.9, 0.999, "over 99%, 90% to over 99%"],
    ["offers a year", 0, 0, 1.844, "0 a year, 0 to 1.8"],
    ["offers a year", 0.004, 0, 1.844, "under 0.01 a year, 0 to 1.8"],
    ["years", 130, 8, 70000, "over 100 years, 8 to over 100"],
    ["years", 400, 120, 70000, "over 100 years"],
    ["years", 2.737671, 0.184539, 16.919336, "about 2.7 years, 2 months to 17 years"],
    ["years", 0.8206, 0.0284, 4.7, "about 10 months, under 1 month to 4.7 years"],
    ["years", 0.5, 0.1, 1.2, "about 6 months, 1 to 14"],
    ["years", 0.08, 0.02, 1.99, "about 1 month, under 1 to 24"],
    ["years", 6, 2.3, 41, "about 6 years, 2.3 to 41"],
    ["years", 0.01, 0.001, 0.03, "under 1 month"],
    ["offers a year", 0.3, 0.0618672, 0.8767273, "about 0.3 a year, 0.06 to 0.88"],
  ] as const)("%s %d, %d to %d", (unit, value, low, high, words) => {
    expect(say(unit, value, low, high)).toBe(words);
  });
});

describe("a date in words", () => {
  it.each([
    ["1931", "1931"],
    ["1931/1938", "1931 to 1938"],
    ["1984~", "about 1984"],
    ["1984?", "1984 (uncertain)"],
    ["1984%", "about 1984 (uncertain)"],
    ["2026-03-14", "14 March 2026"],
    ["2026-03", "March 2026"],
    // Of the first thousand years, as it was written: "March 87" would be of another century.
    ["0087-03", "0087-03"],
    ["0087-03-04/0087-03-06", "0087-03-04 to 0087-03-06"],
    ["193X", "1930s"],
    ["1985/..", "from 1985"],
    ["1985/", "from 1985, end unknown"],
    ["/1985", "until 1985, beginning unknown"],
    ["193X~", "about the 1930s"],
    ["193X/", "from the 1930s, end unknown"],
    ["193X~/..", "from about the 1930s"],
    ["../193X", "until the 1930s"],
    ["19XX?", "1900 to 1999 (uncertain)"],
    ["18XX", "1800 to 1899"],
    ["192X?", "1920s (uncertain)"],
    ["../1985", "until 1985"],
    ["1960-21", "spring 1960"],
    ["1960-24~", "about winter 1960"],
    ["1960-23/1961-22", "autumn 1960 to summer 1961"],
    // The second quarter, of level 2, is no season.
    ["1960-34", "1960-34"],
    // One event, on or before the last day of 1930: in some year before 1931.
    ["[..1930]", "before 1931"],
    ["[1932..]", "after 1931"],
    ["[..1930?]", "before 1931 (uncertain)"],
    ["[1932~..]", "after about 1931"],
    ["[..1930-06]", "in June 1930 at the latest"],
    ["[..193X]", "in the 1930s at the latest"],
    ["[1932-03-14?..]", "on 14 March 1932 at the earliest (uncertain)"],
    ["[193X~..]", "in about the 1930s at the earliest"],
    ["[1931..1938]", "between 1931 and 1938"],
    ["[1931~..1938?]", "between about 1931 and 1938 (uncertain)"],
    ["[1667,1668,1670..1672]", "[1667,1668,1670..1672]"],
  ])("%s", (edtf, words) => {
    expect(english.date(edtf)).toBe(words);
  });
});
