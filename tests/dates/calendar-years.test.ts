import { describe, expect, it } from "vitest";
import { calendarYears } from "../../shared/dates/calendar-years.ts";
import { type EdtfDate, parseEdtf } from "../../shared/dates/edtf-interval.ts";

describe("calendarYears", () => {
  it.each([
    ["1931/1938", 1931, 1938],
    ["1931-12-31", 1931, 1931],
    ["1931-12-31/1932-01-01", 1931, 1932],
    ["193X", 1930, 1939],
    ["[1667,1668,1670..1672]", 1667, 1672],
    ["1931/..", 1931, Infinity],
    ["../1931", -Infinity, 1931],
    ["1931/", 1931, null],
    ["/1931", null, 1931],
    ["-0044-03-15", -44, -44],
    ["0000", 0, 0],
    ["1970-01-01", 1970, 1970],
    ["Y-17E7", -170_000_000, -170_000_000],
  ])("of %s are %s to %s", (text, first, last) => {
    expect(calendarYears(parseEdtf(text) as EdtfDate)).toMatchObject({ first, last });
  });

  it.each([
    ["1931/1938", 1931, 1938],
    ["1931-12-31", 1931, 1931],
    ["193X/1945", 1939, 1945],
    ["1931/194X", 1931, 1940],
    ["1931/..", 1931, Infinity],
    ["1931/", 1931, 1931],
    ["/1931", 1931, 1931],
    ["../1931", 1931, 1931],
  ])("certainly goes through, of %s, %s to %s", (text, first, last) => {
    expect(calendarYears(parseEdtf(text) as EdtfDate).through).toEqual({ first, last });
  });

  it.each(["193X", "19XX", "[1931,1935]", "193X/193X"])("of %s are none for certain", (text) => {
    expect(calendarYears(parseEdtf(text) as EdtfDate).through).toBeNull();
  });
});
