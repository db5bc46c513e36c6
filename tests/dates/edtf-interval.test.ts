import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type DayBound, type EdtfDate, parseEdtf } from "../../shared/dates/edtf-interval.ts";

const DAYS_IN_400_YEARS = 146_097;
const OPEN = Infinity;
const EVER = -Infinity;

/** A day by the platform's calendar, moved by whole cycles of 400 years for years that it does not reach. */
function day(iso: string, cycles = 0): number {
  const [year, month, dayOfMonth] = [iso.slice(0, -6), iso.slice(-5, -3), iso.slice(-2)].map(Number) as [
    number,
    number,
    number,
  ];
  const date = new Date(0);
  date.setUTCFullYear(year, month - 1, dayOfMonth);
  return date.getTime() / 86_400_000 + cycles * DAYS_IN_400_YEARS;
}

type Ends = readonly [earliest: DayBound, latestStart: DayBound, earliestEnd: DayBound, latest: DayBound];

/** One event between two days: it begins when it ends. */
const one = (first: string | number, last: string | number = first): Ends => {
  const [earliest, latest] = [first, last].map((bound) =>
    typeof bound === "string" ? day(bound) : bound,
  ) as [number, number];
  return [earliest, latest, earliest, latest];
};

/** A beginning between two days and an end between two others. */
const span = (
  ...bounds: [string | DayBound, string | DayBound, string | DayBound, string | DayBound]
): Ends => bounds.map((bound) => (typeof bound === "string" ? day(bound) : bound)) as unknown as Ends;

const endsOf = (date: EdtfDate | null): Ends | null =>
  date && [date.earliest, date.latestStart, date.earliestEnd, date.latest];

type Row = [text: string, ends: Ends, flags?: string];

/**
 * Every string of the official page, with its bounds derived by hand from what the page says of it.
 * Source: Library of Congress, Extended Date/Time Format (EDTF) Specification, 4 February 2019 [P].
 */
const OFFICIAL: readonly Row[] = [
  // Level 0: date
  ["1985-04-12", one("1985-04-12")],
  ["1985-04", one("1985-04-01", "1985-04-30")],
  ["1985", one("1985-01-01", "1985-12-31")],
  // Level 0: date and time; the day is the one written, whatever the shift
  ["1985-04-12T23:20:30", one("1985-04-12")],
  ["1985-04-12T23:20:30Z", one("1985-04-12")],
  ["1985-04-12T23:20:30-04", one("1985-04-12")],
  ["1985-04-12T23:20:30+04:30", one("1985-04-12")],
  // Level 0: time interval
  ["1964/2008", span("1964-01-01", "1964-12-31", "2008-01-01", "2008-12-31")],
  ["2004-06/2006-08", span("2004-06-01", "2004-06-30", "2006-08-01", "2006-08-31")],
  ["2004-02-01/2005-02-08", span("2004-02-01", "2004-02-01", "2005-02-08", "2005-02-08")],
  ["2004-02-01/2005-02", span("2004-02-01", "2004-02-01", "2005-02-01", "2005-02-28")],
  ["2004-02-01/2005", span("2004-02-01", "2004-02-01", "2005-01-01", "2005-12-31")],
  ["2005/2006-02", span("2005-01-01", "2005-12-31", "2006-02-01", "2006-02-28")],
  // Level 1: letter-prefixed year. 170000002 = 2002 + 400·424995 and -170000002 = 1998 - 400·425005.
  ["Y170000002", one(day("2002-01-01", 424_995), day("2002-12-31", 424_995))],
  ["Y-170000002", one(day("1998-01-01", -425_005), day("1998-12-31", -425_005))],
  // Level 1: season, of no stated hemisphere: somewhere in the year
  ["2001-21", one("2001-01-01", "2001-12-31")],
  // Level 1: qualification of a complete date
  ["1984?", one("1984-01-01", "1984-12-31"), "?"],
  ["2004-06~", one("2004-06-01", "2004-06-30"), "~"],
  ["2004-06-11%", one("2004-06-11"), "?~"],
  // Level 1: unspecified digits from the right
  ["201X", one("2010-01-01", "2019-12-31")],
  ["20XX", one("2000-01-01", "2099-12-31")],
  ["2004-XX", one("2004-01-01", "2004-12-31")],
  ["1985-04-XX", one("1985-04-01", "1985-04-30")],
  ["1985-XX-XX", one("1985-01-01", "1985-12-31")],
  // Level 1: open end, open start
  ["1985-04-12/..", span("1985-04-12", "1985-04-12", OPEN, OPEN)],
  ["1985-04/..", span("1985-04-01", "1985-04-30", OPEN, OPEN)],
  ["1985/..", span("1985-01-01", "1985-12-31", OPEN, OPEN)],
  ["../1985-04-12", span(EVER, EVER, "1985-04-12", "1985-04-12")],
  ["../1985-04", span(EVER, EVER, "1985-04-01", "1985-04-30")],
  ["../1985", span(EVER, EVER, "1985-01-01", "1985-12-31")],
  // Level 1: unknown end, unknown start
  ["1985-04-12/", span("1985-04-12", "1985-04-12", null, null)],
  ["1985-04/", span("1985-04-01", "1985-04-30", null, null)],
  ["1985/", span("1985-01-01", "1985-12-31", null, null)],
  ["/1985-04-12", span(null, null, "1985-04-12", "1985-04-12")],
  ["/1985-04", span(null, null, "1985-04-01", "1985-04-30")],
  ["/1985", span(null, null, "1985-01-01", "1985-12-31")],
  // Level 1: negative year
  ["-1985", one("-1985-01-01", "-1985-12-31")],
  // Level 2: exponential year, -170000000 = 2000 - 400·425005
  ["Y-17E7", one(day("2000-01-01", -425_005), day("2000-12-31", -425_005))],
  // Level 2: significant digits: 1900 to 1999; 171000000 to 171999999; 338000 to 338999
  ["1950S2", one("1900-01-01", "1999-12-31")],
  ["Y171010000S3", one(day("2000-01-01", 427_495), day("1999-12-31", 429_995))],
  ["Y3388E2S3", one(day("2000-01-01", 840), day("2199-12-31", 842))],
  // Level 2: sub-year grouping, the second quarter
  ["2001-34", one("2001-04-01", "2001-06-30")],
  // Level 2: one of a set
  ["[1667,1668,1670..1672]", one("1667-01-01", "1672-12-31")],
  ["[..1760-12-03]", one(EVER, "1760-12-03")],
  ["[1760-12..]", one("1760-12-01", OPEN)],
  ["[1760-01,1760-02,1760-12..]", one("1760-01-01", OPEN)],
  ["[1667,1760-12]", one("1667-01-01", "1760-12-31")],
  ["[..1984]", one(EVER, "1984-12-31")],
  // Level 2: all members
  ["{1667,1668,1670..1672}", span("1667-01-01", "1667-12-31", "1672-01-01", "1672-12-31")],
  ["{1960,1961-12}", span("1960-01-01", "1960-12-31", "1961-12-01", "1961-12-31")],
  ["{..1984}", span(EVER, EVER, "1984-01-01", "1984-12-31")],
  // Level 2: qualification of groups and components
  ["2004-06~-11", one("2004-06-11"), "~"],
  ["2004?-06-11", one("2004-06-11"), "?"],
  ["?2004-06-~11", one("2004-06-11"), "?~"],
  ["2004-%06-11", one("2004-06-11"), "?~"],
  // Level 2: unspecified digits anywhere
  ["156X-12-25", one("1560-12-25", "1569-12-25")],
  ["15XX-12-25", one("1500-12-25", "1599-12-25")],
  ["XXXX-12-XX", one("0000-12-01", "9999-12-31")],
  ["1XXX-XX", one("1000-01-01", "1999-12-31")],
  ["1XXX-12", one("1000-12-01", "1999-12-31")],
  ["1984-1X", one("1984-10-01", "1984-12-31")],
  // Level 2: interval
  ["2004-06-~01/2004-06-~20", span("2004-06-01", "2004-06-01", "2004-06-20", "2004-06-20"), "~"],
  ["2004-06-XX/2004-07-03", span("2004-06-01", "2004-06-30", "2004-07-03", "2004-07-03")],
];

/** What the page allows without giving an example, by hand in the same way. */
const FURTHER: readonly Row[] = [
  ["0000", one("0000-01-01", "0000-12-31")],
  ["-0001-02-28", one("-0001-02-28")],
  ["1984-02-29", one("1984-02-29")],
  ["2000-02-XX", one("2000-02-01", "2000-02-29")],
  ["1900-02-XX", one("1900-02-01", "1900-02-28")],
  ["1985-04-12T00:00:00", one("1985-04-12")],
  ["-1985-04-12T23:59:59Z", one("-1985-04-12")],
  [
    "Y10000",
    one("9999-12-31").map(
      (bound, index) => (bound as number) + (index % 2 === 0 ? 1 : 366),
    ) as unknown as Ends,
  ],
  // The qualifiers of any other date beside an unspecified digit, a season or a member of a set
  ["192X~", one("1920-01-01", "1929-12-31"), "~"],
  ["156X-12-25?", one("1560-12-25", "1569-12-25"), "?"],
  ["2001-21%", one("2001-01-01", "2001-12-31"), "?~"],
  ["[1931?,1932]", one("1931-01-01", "1932-12-31"), "?"],
  ["{1931,1932~}", span("1931-01-01", "1931-12-31", "1932-01-01", "1932-12-31"), "~"],
  ["1984?/2004", span("1984-01-01", "1984-12-31", "2004-01-01", "2004-12-31"), "?"],
  ["1984/2004~", span("1984-01-01", "1984-12-31", "2004-01-01", "2004-12-31"), "~"],
  ["1984/2004?", span("1984-01-01", "1984-12-31", "2004-01-01", "2004-12-31"), "?"],
  ["1984~/2004", span("1984-01-01", "1984-12-31", "2004-01-01", "2004-12-31"), "~"],
  // Digits unspecified in odd places: only days that exist count
  ["-156X-12-25", one("-1569-12-25", "-1560-12-25")],
  ["-000X", one("-0009-01-01", "-0001-12-31")],
  ["1985-X2-30", one("1985-12-30")],
  ["1985-XX-31", one("1985-01-31", "1985-12-31")],
  ["1985-0X-31", one("1985-01-31", "1985-08-31")],
  ["19XX-02-29", one("1904-02-29", "1996-02-29")],
  ["2004-06-1X", one("2004-06-10", "2004-06-19")],
  ["2004-06-3X", one("2004-06-30")],
  ["2004-06-0X", one("2004-06-01", "2004-06-09")],
  ["1984-X5", one("1984-05-01", "1984-05-31")],
  ["1984-0X", one("1984-01-01", "1984-09-30")],
  // Significant digits of a negative year, of fewer digits than stated, of leading zeros
  ["-1950S2", one("-1999-01-01", "-1900-12-31")],
  ["1950S2~", one("1900-01-01", "1999-12-31"), "~"],
  ["Y12345?", one(day("2345-01-01", 25), day("2345-12-31", 25)), "?"],
  ["Y24000000000000", one(day("2000-01-01", 59_999_999_995), day("2000-12-31", 59_999_999_995))],
  ["1950S4", one("1950-01-01", "1950-12-31")],
  ["1950S5", one("1950-01-01", "1950-12-31")],
  ["1950S1", one("1000-01-01", "1999-12-31")],
  ["0050S1", one("0050-01-01", "0059-12-31")],
  // Seasons where a hemisphere is stated; quarters, quadrimesters, semesters
  ["2001-22", one("2001-01-01", "2001-12-31")],
  ["2001-24", one("2001-01-01", "2001-12-31")],
  ["2001-25", one("2001-03-01", "2001-06-30")],
  ["2001-26", one("2001-06-01", "2001-09-30")],
  ["2001-27", one("2001-09-01", "2001-12-31")],
  ["2001-28", one("2001-01-01", "2001-12-31")],
  ["2001-29", one("2001-09-01", "2001-12-31")],
  ["2001-30", one("2001-01-01", "2001-12-31")],
  ["2001-31", one("2001-03-01", "2001-06-30")],
  ["2001-32", one("2001-06-01", "2001-09-30")],
  ["2001-33", one("2001-01-01", "2001-03-31")],
  ["2001-35", one("2001-07-01", "2001-09-30")],
  ["2001-36", one("2001-10-01", "2001-12-31")],
  ["2001-37", one("2001-01-01", "2001-04-30")],
  ["2001-38", one("2001-05-01", "2001-08-31")],
  ["2001-39", one("2001-09-01", "2001-12-31")],
  ["2001-40", one("2001-01-01", "2001-06-30")],
  ["2001-41", one("2001-07-01", "2001-12-31")],
  ["2001-34/2002-33", span("2001-04-01", "2001-06-30", "2002-01-01", "2002-03-31")],
  // An interval whose ends overlap begins before its end and ends after its beginning
  ["1985-04-10/1985-04", span("1985-04-10", "1985-04-10", "1985-04-10", "1985-04-30")],
  ["1985/1985-04", span("1985-01-01", "1985-04-30", "1985-04-01", "1985-04-30")],
  ["1984/1984", span("1984-01-01", "1984-12-31", "1984-01-01", "1984-12-31")],
  ["1985-04-12/1985-04-12", span("1985-04-12", "1985-04-12", "1985-04-12", "1985-04-12")],
  ["1970-01-01/1970-01-01", span(0, 0, 0, 0)],
  ["../1970-01-01", span(EVER, EVER, 0, 0)],
  ["1970-01-01/", span(0, 0, null, null)],
  // Unknown on one side, open on the other side of a date
  ["Y-17E7/..", span(day("2000-01-01", -425_005), day("2000-12-31", -425_005), OPEN, OPEN)],
  // Sets in no order, with runs of months and of days
  ["[1760-12,1667]", one("1667-01-01", "1760-12-31")],
  ["{1961-12,1960}", span("1960-01-01", "1960-12-31", "1961-12-01", "1961-12-31")],
  ["{2001-03..2001-09}", span("2001-03-01", "2001-03-31", "2001-09-01", "2001-09-30")],
  ["[1985-04-10..1985-04-12]", one("1985-04-10", "1985-04-12")],
  ["[1984..1984]", one("1984-01-01", "1984-12-31")],
  ["[9998..Y10000]", one(day("9998-01-01"), day("2000-12-31", 20))],
  ["[2001-01..2001-34]", one("2001-01-01", "2001-06-30")],
  ["{1984..}", span("1984-01-01", "1984-12-31", OPEN, OPEN)],
  ["[..1670,1680..]", one(EVER, OPEN)],
  ["[201X]", one("2010-01-01", "2019-12-31")],
];

describe.each([
  { name: "the strings of the official page", table: OFFICIAL },
  { name: "what the page allows without an example", table: FURTHER },
])("parseEdtf: $name", ({ table }) => {
  it.each(table)("%s", (text, ends, flags = "") => {
    const date = parseEdtf(text);
    expect(endsOf(date)).toEqual(ends);
    expect(date).toMatchObject({ text, uncertain: flags.includes("?"), approximate: flags.includes("~") });
  });
});

describe("parseEdtf refuses", () => {
  it("has every string of the official page in its table", () => {
    expect(OFFICIAL).toHaveLength(63);
    expect(new Set(OFFICIAL.map(([text]) => text)).size).toBe(63);
  });

  it.each([
    // To be rejected, after the specification [R].
    "1985-13",
    "1985-02-30",
    "2004-06-uu",
    "unknown/2006",
    "1984?~",
    "1985/1984",
    // Days that do not exist
    "1985-02-29",
    "1900-02-29",
    "1985-04-31",
    "1985-00",
    "1985-04-00",
    "19X5-02-29",
    "XXXX-02-30",
    "-0000",
    "-0000-01-01",
    // Not of the Library's profile: centuries, decades, basic format, other shapes
    "19",
    "193",
    "193?",
    "19850412",
    "1985-4-12",
    "12345",
    "+1985",
    "85",
    "1985-102",
    "1985-W15",
    "",
    " ",
    "1985 ",
    " 1985",
    "1985\n",
    "circa 1985",
    "198x",
    "1985-04-12-01",
    // Times: complete, without fractions, in extended format, not in intervals
    "1985-04-12T23:20",
    "1985-04-12T24:00:00",
    "1985-04-12T23:60:00",
    "1985-04-12T23:20:60",
    "1985-04-12T23:20:30.5Z",
    "1985-04-12T23:20:30-0400",
    "1985-04-12T232030",
    "1985-04T23:20:30",
    "1985-02-29T23:20:30",
    "1985-04-12T23:20:30?",
    "1985-04-12T10:00:00/1986",
    // Long years: letter for more than four digits only, positive exponents and digits, exact day numbers
    "Y1985",
    "Y9999",
    "Y01985",
    "Y0E5",
    "Y9999E0",
    "Y1E3",
    "1950S0",
    "Y12345S0",
    "Y17E300",
    "Y24000000000001",
    "Y-24000000000001",
    "Y23E12S1",
    "y170000002",
    "Y-17e7",
    "Y12345-01",
    "-0000S1",
    "1985-04S2",
    // Seasons that there are not
    "2001-20",
    "2001-42",
    "200X-21", // of level 3, by the package's reading
    "2001-21-01",
    // Intervals
    "/",
    "../..",
    "../",
    "/..",
    "..",
    "1985/1986/1987",
    "1986-02/1986-01-31",
    "201X/2009",
    "1985/open",
    "1985/[1986]",
    "1985/...",
    "1985/1986-13",
    "1985-13/1986",
    // Sets
    "[]",
    "{}",
    "[..]",
    "[1667, 1668]",
    "[1667,]",
    "[,1667]",
    "[1667;1668]",
    "[1667",
    "1667]",
    "[1667}",
    "{1667]",
    "[1672..1670]",
    "[1670..1672-05]",
    "[1670-01..1672-05-01]",
    "[1760-12..,1800]",
    "[1700,..1760]",
    "[1670..1671..1672]",
    "[1985/1986]",
    "[[1985]]",
    // Qualifiers out of place
    "1984??",
    "??1984",
    "?",
    "1984-?",
    "198?4",
    "1984?-",
    "1984(?)",
  ])("%j", (text) => {
    expect(parseEdtf(text)).toBeNull();
    expect(parseEdtf(text)).toBeNull();
  });

  it("a very long text, without asking a grammar", () => {
    expect(parseEdtf("1".repeat(1_000_000))).toBeNull();
    expect(parseEdtf(`[${"?".repeat(100_000)}]`)).toBeNull();
    expect(parseEdtf(`Y${"9".repeat(100_000)}`)).toBeNull();
  });
});

describe("parseEdtf", () => {
  it("gives the same frozen date for the same text", () => {
    const date = parseEdtf("1931-05-17/..");
    expect(parseEdtf("1931-05-17/..")).toBe(date);
    expect(Object.isFrozen(date)).toBe(true);
  });

  it("takes every day of the calendar, and only those", () => {
    const parts = fc.tuple(
      fc.integer({ min: 0, max: 9999 }),
      fc.integer({ min: 0, max: 13 }),
      fc.integer({ min: 0, max: 32 }),
    );
    const padded = (number: number, size: number) => String(number).padStart(size, "0");
    fc.assert(
      fc.property(parts, ([year, month, dayOfMonth]) => {
        const text = `${padded(year, 4)}-${padded(month, 2)}-${padded(dayOfMonth, 2)}`;
        const date = new Date(0);
        date.setUTCFullYear(year, month - 1, dayOfMonth);
        const exists = date.getUTCMonth() === month - 1 && date.getUTCDate() === dayOfMonth;
        expect(parseEdtf(text)?.earliest).toBe(exists ? date.getTime() / 86_400_000 : undefined);
      }),
      { numRuns: 3000 },
    );
  });

  it("spans exactly the days that its unspecified digits may stand for", () => {
    const digit = (choices: string) => fc.constantFrom(...choices, "X");
    const text = fc
      .tuple(
        digit("12"),
        digit("089"),
        digit("059"),
        digit("0345"),
        digit("01"),
        digit("0129"),
        digit("0123"),
        digit("01289"),
      )
      .map(([a, b, c, d, e, f, g, h]) => `${a}${b}${c}${d}-${e}${f}-${g}${h}`)
      .filter((candidate) => /^[^X]{2}/.test(candidate) || candidate.split("X").length < 4);
    fc.assert(
      fc.property(text, (pattern) => {
        const found = parseEdtf(pattern);
        if (found === null) return;
        const mask = new RegExp(`^${pattern.replaceAll("X", "\\d")}$`);
        const isoOf = (bound: number) => new Date(bound * 86_400_000).toISOString().slice(0, 10);
        const [earliest, latest] = [found.earliest as number, found.latest as number];
        expect(isoOf(earliest)).toMatch(mask);
        expect(isoOf(latest)).toMatch(mask);
        // No day of the hundred years before and after fits as well.
        for (let step = 1; step < 36_525; step++) {
          if (mask.test(isoOf(earliest - step)) || mask.test(isoOf(latest + step)))
            expect.unreachable(pattern);
        }
      }),
      { numRuns: 25 },
    );
  });

  it("keeps its ends in order, and an interval within the span of its ends", () => {
    const year = fc.integer({ min: 1000, max: 2100 });
    const month = fc.integer({ min: 1, max: 12 }).map((number) => String(number).padStart(2, "0"));
    const date = fc.oneof(
      year.map(String),
      fc.tuple(year, month).map((parts) => parts.join("-")),
      fc.tuple(year, month).map((parts) => `${parts.join("-")}-17`),
      year.map((number) => `${Math.floor(number / 10)}X`),
    );
    fc.assert(
      fc.property(date, date, (start, end) => {
        const found = parseEdtf(`${start}/${end}`);
        const [first, last] = [parseEdtf(start), parseEdtf(end)] as [EdtfDate, EdtfDate];
        if (found === null) {
          expect(first.earliest as number).toBeGreaterThan(last.latest as number);
          return;
        }
        expect(found.earliest).toBe(first.earliest);
        expect(found.latest).toBe(last.latest);
        expect(found.latestStart as number).toBeGreaterThanOrEqual(found.earliest as number);
        expect(found.earliestEnd as number).toBeLessThanOrEqual(found.latest as number);
        expect(found.latestStart as number).toBeLessThanOrEqual(found.latest as number);
        expect(found.earliestEnd as number).toBeGreaterThanOrEqual(found.earliest as number);
      }),
      { numRuns: 500 },
    );
  });
});
