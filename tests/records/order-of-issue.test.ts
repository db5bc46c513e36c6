import { describe, expect, it } from "vitest";
import { parseEdtf } from "../../shared/dates/edtf-interval.ts";
import { inOrderOfIssue } from "../../shared/records/intake/order-of-issue.ts";

const variant = (id: string, family: string, issued?: string) => ({
  id,
  family,
  issued: issued === undefined ? undefined : (parseEdtf(issued) ?? undefined),
});

// By hand: the order of the calendar.
describe("variants in the order of their issue", () => {
  it("go by family first, then by first year, last year and id", () => {
    const given = [
      variant("late", "b", "1931/1938"),
      variant("undated", "b"),
      variant("zebra", "b", "1899"),
      variant("apple", "b", "1899"),
      variant("short", "b", "1931/1933"),
      variant("of-another", "a", "1850"),
      variant("open", "b", "../1950"),
      variant("on", "b", "1899/.."),
    ];
    expect(inOrderOfIssue(given).map(({ id }) => id)).toEqual([
      "open",
      "apple",
      "zebra",
      "on",
      "short",
      "late",
      "undated",
      "of-another",
    ]);
  });
});
