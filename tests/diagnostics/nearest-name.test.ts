import { describe, expect, it } from "vitest";
import { nearestName } from "../../shared/diagnostics/nearest-name.ts";

describe("the nearest name", () => {
  it.each([
    ["frok", "fork"],
    ["bwo", "bow"],
    ["mercury-cap", "mercury-cup"],
    ["Iorn", "iron"],
  ])("is found for %s: %s", (name, nearest) => {
    expect(nearestName(name, ["fork", "bow", "from", "mercury-cup", "iron", "lid"])).toBe(nearest);
  });

  it("is none where another word is meant", () => {
    expect(nearestName("tub", ["bow", "fork", "lid"])).toBeUndefined();
    expect(nearestName("kfro", ["fork"])).toBeUndefined();
  });
});
