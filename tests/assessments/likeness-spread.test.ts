import { describe, expect, it } from "vitest";
import { type Likeness, likenessSpread } from "../../shared/assessments/likeness.ts";

const near = (likeness: number, compared = 4) => ({ likeness, compared }) as Likeness;

describe("how like it the others are", () => {
  it("is counted by whole percent, and only what is wholly so stands at an end", () => {
    expect(likenessSpread([near(0.5), near(1), near(0.496), near(0.997), near(0.002), near(0)])).toEqual({
      counts: [
        [0, 1],
        [1, 1],
        [50, 2],
        [99, 1],
        [100, 1],
      ],
      thin: 0,
    });
  });

  // Less than half of the 5 that the best compared was compared on: 2, and not 3.
  it("leaves out what was compared on little, and says how many", () => {
    expect(likenessSpread([near(0.6, 5), near(0.8, 3), near(1, 2)])).toEqual({
      counts: [
        [60, 1],
        [80, 1],
      ],
      thin: 1,
    });
  });

  it("is nothing where there is nobody to compare", () => {
    expect(likenessSpread([])).toEqual({ counts: [], thin: 0 });
  });
});
