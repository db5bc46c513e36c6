import { expect, it } from "vitest";
import { keptNumbers } from "../../shared/pages/views/kept-numbers.ts";

// Common practice, no source: an abbreviation, or letters, and their number stand on one line.
it("no line ends between 'no.' or a few capitals and their number", () => {
  expect(keptNumbers("Outfit no. 352, beside nos. 3 and 4")).toBe(
    "Outfit no.\u00a0352, beside nos.\u00a03 and 4",
  );
  expect(keptNumbers("Kasten Nr. 12")).toBe("Kasten Nr.\u00a012");
  expect(keptNumbers("Gauging Outfit TY 1, of 1909, beside Set B 61")).toBe(
    "Gauging Outfit TY\u00a01, of 1909, beside Set B\u00a061",
  );
  expect(keptNumbers("They said no. Two casino. 3 were left")).toBe("They said no. Two casino. 3 were left");
});
