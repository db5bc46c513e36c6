import { describe, expect, it } from "vitest";
import { latestSeen } from "../../../shared/assessments/rarity/latest-seen.ts";
import { date, sighting } from "../properties/given.ts";
import { item } from "../properties/given-collection.ts";

const last = (seen: readonly string[], ...examined: string[]) =>
  latestSeen(
    seen.map((text) => sighting({ seen: date(text) })),
    examined.map((text, at) => item(`item-${at}`, { examined: date(text) })),
  )?.text ?? null;

// The last days by hand: of "1998" it is 31 December 1998, of "1998-05" 31 May, of a span the last day of its end.
describe("what is counted was seen last", () => {
  it.each<[string, string | null, string[], string[]]>([
    ["never, where nothing is dated", null, [], []],
    ["in the log", "2004-05-01", ["1998", "2004-05-01", "2001/2003"], []],
    ["on examination", "2005", ["1998", "2004-05-01"], ["1999-01", "2005"]],
    ["by the last day that a date may mean", "1998", ["1998-05-01", "1998"], []],
    ["by the end of a span", "1990/2001", ["2000-12-31", "1990/2001"], []],
    ["by the beginning where the end is open or not known", "2001", ["2001", "1990/..", "1995/"], []],
  ])("%s", (_, expected, seen, examined) => {
    expect(last(seen, ...examined)).toBe(expected);
  });

  it("whatever the order", () => {
    expect(last(["2004", "1998"])).toBe("2004");
    expect(last(["1998", "2004"])).toBe("2004");
  });
});
