import { describe, expect, it } from "vitest";
import { assessProvenance } from "../../shared/assessments/provenance.ts";
import { date } from "./properties/given.ts";

const assess = (issued: string | null, events: readonly string[], examined: string | null) =>
  assessProvenance(
    issued === null ? undefined : date(issued),
    events.map((each) => ({ date: date(each) })),
    examined === null ? undefined : date(examined),
  );

describe("the life of an object", () => {
  it.each<[string | null, string | null, number | null]>([
    ["1920/1925", "1980-05", 61],
    ["1920-05-01", "1920-05-01", 1],
    ["1920", "1920", 1],
    ["1920/1925", "1919", null],
    ["1920/..", "1980", 61],
    ["../1925", "1980", null],
    ["/1925", "1980", null],
    ["1920", "1980/..", 61],
    ["1920", "1980/", 61],
    ["1920", "198X", 61],
    [null, "1980", null],
    ["1920", null, null],
  ])("issued %s and examined %s is %s years", (issued, examined, years) => {
    expect(assess(issued, [], examined).lifetimeYears).toBe(years);
  });

  it("is documented in the year of its examination, and by nothing from the issue until then", () => {
    const found = assess("1920/1925", [], "1980");
    expect(found.documentedYears).toBe(1);
    // From New Year 1926 to New Year 1980; at most from 2 January 1920 to the last day of 1980, 364 days of 366 on.
    expect(found.gaps).toEqual([
      { from: 1925, to: 1980, years: 54, longest: expect.closeTo(60 + 364 / 366, 12) },
    ]);
  });

  it("of which nothing is known is not documented", () => {
    expect(assess("1920", [], null)).toEqual({
      documentedYears: 0,
      lifetimeYears: null,
      gaps: [],
      caveats: [],
    });
  });
});

// By hand: from the first year of issue to the last in which it is certain to have been there.
describe("the life of an object with a custody", () => {
  it.each<[string[], string | null, number]>([
    [["1990"], "1985", 71],
    [["1990"], null, 71],
    [["1930"], "1985", 66],
    [["1984/1990"], "1985", 71],
    [["1990-06-11/.."], "1985", 71],
    [["198X/.."], "1985", 70],
    [["/1990"], "1985", 71],
    [["199X"], "1985", 71],
    [["198X"], "1985", 66],
    [["199X/"], "1985", 71],
    [["19XX"], "1985", 66],
  ])("of %j, examined %s, is %s years", (events, examined, years) => {
    expect(assess("1920", events, examined).lifetimeYears).toBe(years);
  });

  it("goes on after the examination, and so do the years that are documented", () => {
    const events = ["1921/1938", "2013-12/2015-03", "2015-03/2018-09", "2018-10/2019-07-14", "2019", "2020"];
    const found = assess("1919/1929", [...events, "2024-06-11/.."], "2014-01-20");
    // From 1919 to 2024; of these 1921 to 1938, 2013 to 2020 with the examination, and 2024.
    expect(found.lifetimeYears).toBe(106);
    expect(found.documentedYears).toBe(18 + 8 + 1);
  });
});

// By hand: the least number of different years of its life in which the events can lie, the examination among them.
describe("documented years", () => {
  const years = (
    events: readonly string[],
    issued: string | null = "1920",
    examined: string | null = "1985",
  ) => assess(issued, events, examined).documentedYears;

  // Each with the year of the examination, 1985, where it does not lie in that anyway.
  it.each<[string, string[], number]>([
    ["a year", ["1930"], 2],
    ["years one after another", ["1930/1934"], 6],
    ["a day", ["1930-06-01"], 2],
    ["the turn of a year", ["1930-12-31/1931-01-01"], 3],
    ["some year of ten", ["193X"], 2],
    ["some year of ten, twice", ["193X", "193X"], 2],
    ["some year of ten, and one of them", ["193X", "1934"], 2],
    ["some year of ten, and the last before them", ["193X", "1929"], 3],
    ["some year of ten, and the first after them", ["193X", "1940"], 3],
    ["some year of ten, and its first", ["193X", "1930"], 2],
    ["some year of ten, and its last", ["193X", "1939"], 2],
    ["one of two years, and some year of the ten they lie in", ["193X", "[1935,1936]"], 2],
    ["some years of which two share none", ["193X", "[1935,1936]", "[1931,1932]"], 3],
    ["from some year of ten to a later one", ["193X/1945"], 8],
    ["from a year to some year of ten", ["1925/193X"], 7],
    ["from some year of ten on, with an end that nobody knows", ["193X/"], 2],
    ["from some year of ten on, with an end that nobody knows, and one of them", ["193X/", "1935"], 2],
    ["from a year on, with an end that nobody knows", ["1930/"], 2],
    ["from a year on", ["1980/.."], 6],
    ["until a year, nobody knows from when", ["/1930"], 2],
    ["until a year, always", ["../1930"], 2],
    ["until some year of ten, nobody knows from when", ["/193X"], 2],
    ["until some year of ten, and one of them", ["../193X", "1935"], 2],
    ["until a year before the object", ["../1910"], 1],
    ["some day until a year", ["[..1930]"], 1],
    ["some day from a year on", ["[1930..]"], 1],
    ["two years", ["{1930,1980}"], 3],
    ["a year, and a run of them", ["{1930,1932..1934}"], 5],
    ["until a year, and from another on", ["{..1930,1980..}"], 7],
    ["what is older than the object", ["1900/1925"], 7],
    ["what is older altogether", ["1900/1910"], 1],
    ["what may be older", ["19XX"], 1],
    ["what is younger than the examination", ["1984/1990"], 7],
    ["what may be younger", ["198X"], 1],
    ["what is younger altogether", ["199X"], 2],
    ["what goes on, and something that is younger than the examination", ["1984/..", "1990"], 7],
    ["nothing", [], 1],
  ])("of %s", (_, events, count) => {
    expect(years(events)).toBe(count);
    expect(years(events.toReversed())).toBe(count);
  });

  it("of what may be older are none, and one where its earliest year is that of issue", () => {
    expect(years(["193X"], "1931")).toBe(0 + 1);
    expect(years(["193X"], "1930")).toBe(1 + 1);
  });

  it("of what goes on last to what is last known, and where that is its beginning are those that are sure", () => {
    expect(years(["1980/.."], "1920", "1980")).toBe(1);
    expect(years(["1980/.."], "1920", null)).toBe(1);
    expect(years(["1980/..", "1982"], "1920", null)).toBe(3);
    // Whenever it began, it goes on in 1939; and the examination.
    expect(years(["193X/.."], "1920", "1935")).toBe(1 + 1);
  });

  it("of an object whose life is not known are all that are documented", () => {
    expect(years(["1900/1910", "199X", "2001"], null, null)).toBe(13);
    expect(years(["1900/1910", "199X", "2001"], "1920", null)).toBe(2);
  });

  it("are counted to ten thousand", () => {
    expect(years(["-9000/9999"], null, null)).toBe(10_000);
  });
});

// From the calendar: from the day after the first, which is documented, to the last, in years from anniversary to anniversary.
describe("a gap", () => {
  it("lies between all that ended before it and all that begins after", () => {
    const { gaps } = assess("1920/1925", ["1960", "1930/1940"], null);
    expect(gaps.map(({ from, to }) => [from, to])).toEqual([
      [1925, 1930],
      [1940, 1960],
    ]);
    // The years 1926 to 1929, and 1941 to 1959.
    expect(gaps.map(({ years }) => years)).toEqual([4, 19]);
    // From 2 January 1920, the day after it may have been issued, to 2 January 1930, and 363 days on, to the last of the
    // year; from 2 January 1940 to 1960, and 364 days of a leap year on.
    expect(gaps.map(({ longest }) => longest)).toEqual([
      expect.closeTo(10 + 363 / 365, 12),
      expect.closeTo(20 + 364 / 366, 12),
    ]);
  });

  it("after the issue begins when this one was issued, which is no later than what is first known of it", () => {
    const { gaps } = assess("1903/1911", ["1910-06-01", "1903-02-01", "1960"], null);
    expect(gaps.map(({ from, to }) => [from, to])).toEqual([
      [1903, 1910],
      [1910, 1960],
    ]);
    // From 2 February 1903 to 1910, and from there to 1 June: 28 days to March, 31 to April, 30 to May, and 30.
    expect(gaps[0]?.years).toBeCloseTo(7 + 119 / 365, 12);
    expect(gaps[0]?.longest).toBe(gaps[0]?.years);
    // From 2 June 1910 to 1959, and 213 days on to New Year, of the 366 until 2 June 1960; or to then, and 212 days on.
    expect(gaps[1]?.years).toBeCloseTo(49 + 213 / 366, 12);
    expect(gaps[1]?.longest).toBeCloseTo(50 + 212 / 365, 12);
    // What was there before any was issued says nothing of when this one was.
    expect(assess("1903/1911", ["1899", "1960"], null).gaps.map(({ from }) => from)).toEqual([1899]);
  });

  it("is one day long at least", () => {
    const between = (first: string, second: string) => assess(null, [first, second], null).gaps;
    expect(between("1925-12-31", "1926-01-01")).toEqual([]);
    expect(between("1925-12-31", "1925-12-31")).toEqual([]);
    expect(between("1925-12-30", "1926-01-01")).toEqual([
      {
        from: 1925,
        to: 1926,
        years: expect.closeTo(1 / 365, 12),
        longest: expect.closeTo(1 / 365, 12),
      },
    ]);
  });

  it("begins when the last of several custodies has ended, and ends when the first begins", () => {
    const { gaps } = assess(null, ["1920/1950", "1930/1935", "1960/1970", "1961"], null);
    expect(gaps.map(({ from, to }) => [from, to])).toEqual([[1950, 1960]]);
    // The years 1951 to 1959; at most from the second day of 1950 to the last of 1960, a leap year.
    expect(gaps[0]?.years).toBe(9);
    expect(gaps[0]?.longest).toBeCloseTo(10 + 364 / 366, 12);
  });

  it("ends at the earliest of what may come next, and at most lasts until the first that must have come", () => {
    const { gaps } = assess(null, ["1920", "195X", "1952"], null);
    expect(gaps.map(({ from, to }) => [from, to])).toEqual([[1920, 1950]]);
    // 1921 to 1949; at most from 2 January 1920 to 31 December 1952.
    expect(gaps[0]?.years).toBe(29);
    expect(gaps[0]?.longest).toBeCloseTo(32 + 364 / 366, 12);
  });

  it("is not claimed after a custody whose end is not known, nor while one goes on", () => {
    expect(assess(null, ["1920/", "1950"], null).gaps).toEqual([]);
    expect(assess(null, ["1920/..", "1930", "1950"], null).gaps).toEqual([]);
    expect(assess("1920/", ["1950"], null).gaps).toEqual([]);
  });

  // By hand: that of 193X may have begun after 1932, that of 1930 after the other of the same year, and both may have
  // gone on until 1950.
  it.each([
    [["193X/", "1932", "1950"]],
    [["1930/", "1930", "1950"]],
    [["1930", "1930/", "1950"]],
    [["1930-05-01/", "1930-05-01", "1950"]],
    [["1930/", "/1940", "1950"]],
    [["1930/1934", "1932/", "1933-02/1934", "1934/", "1950"]],
  ])("is not claimed while one whose end is not known may have begun last: %j", (events) => {
    expect(assess(null, events, null).gaps).toEqual([]);
  });

  it("is claimed after one that is sure to have begun later", () => {
    expect(assess(null, ["193X/", "1932", "1940", "1950"], null).gaps).toMatchObject([
      { from: 1940, to: 1950, years: 9 },
    ]);
  });

  it("is claimed after a later custody whose end is known", () => {
    expect(assess(null, ["1920/", "1930", "1950"], null).gaps).toMatchObject([{ from: 1930, to: 1950 }]);
  });

  it("before the examination is one as well, as before an event that follows it", () => {
    const { gaps } = assess("1900/1925", ["1930/1950"], "2020");
    expect(gaps.map(({ from, to }) => [from, to])).toEqual([
      [1925, 1930],
      [1950, 2020],
    ]);
    // The years 1951 to 2019; at most from 2 January 1950 to 31 December 2020, 364 days of 366 on.
    expect(gaps[1]).toMatchObject({ years: 69, longest: expect.closeTo(70 + 364 / 366, 12) });
    expect(assess("1950", ["1950/2010"], "2000").gaps).toEqual([]);
    expect(assess(null, ["2020", "2025"], "2022").gaps.map(({ from, to }) => [from, to])).toEqual([
      [2020, 2022],
      [2022, 2025],
    ]);
  });

  it("begins after what nobody knows the beginning of", () => {
    for (const kept of ["../1958", "/1958"]) {
      const { gaps } = assess("1921/1928", [kept, "2026-02-14/.."], "2026-02-20");
      expect(gaps.map(({ from, to }) => [from, to])).toEqual([[1958, 2026]]);
      // From New Year 1959 to 2026, and 31 + 13 days on; at most from 2 January 1958, so 1 year less a day longer.
      expect(gaps[0]?.years).toBeCloseTo(67 + 44 / 365, 12);
      expect(gaps[0]?.longest).toBeCloseTo(68 + 43 / 365, 12);
    }
  });

  it("lies between two years of a list", () => {
    const { gaps } = assess("1900", ["{1930,1980}"], null);
    // 1901 to 1929, and 1931 to 1979.
    expect(gaps).toMatchObject([
      { from: 1900, to: 1930, years: 29 },
      { from: 1930, to: 1980, years: 49 },
    ]);
    // From 2 January 1930 to the same of 1980, and 364 days of 366 on.
    expect(gaps[1]?.longest).toBeCloseTo(50 + 364 / 366, 12);
  });

  it("is not claimed before what nobody knows the beginning of, nor after an issue of that kind", () => {
    expect(assess("1920", ["/1950"], null).gaps).toEqual([]);
    expect(assess("1920", ["1930", "/1950"], null).gaps).toEqual([]);
    expect(assess("1920", ["[..1950]"], null).gaps).toEqual([]);
    expect(assess("1920", ["../1950"], null).gaps).toEqual([]);
    expect(assess("/1920", ["1950"], null).gaps).toEqual([]);
    expect(assess("../1920", ["1950"], null).gaps).toEqual([]);
  });
});

describe("dates that are uncertain or approximate", () => {
  it.each<[string | null, string[], string | null, boolean]>([
    ["1920", ["1947?/1999"], "2020", true],
    ["1920~", ["1947"], "2020", true],
    ["1920", ["1947"], "2020%", true],
    ["1920", ["{1947,1950~}"], null, true],
    ["1920", ["194X", "1950/.."], "2020", false],
    [null, [], null, false],
  ])("of issue %s, events %j and examination %s are told of: %s", (issued, events, examined, told) => {
    expect(assess(issued, events, examined).caveats.map(({ says }) => says)).toEqual(
      told ? ["dates-as-written"] : [],
    );
  });
});
