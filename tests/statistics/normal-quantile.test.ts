import { describe, expect, it } from "vitest";
import { twoSidedZ } from "../../shared/statistics/normal-quantile.ts";
import { expectClose } from "./close.ts";
import { reference } from "./reference.ts";

describe("twoSidedZ", () => {
  it.each(reference.normal)("agrees with R's qnorm at $confidence", ({ confidence, z }) => {
    expectClose(twoSidedZ(confidence), z, 1e-13);
  });

  it("is not the rounded 1.96", () => {
    // Handbook value z = 1.959963984540054 [R] [S].
    expectClose(twoSidedZ(0.95), 1.959963984540054, 1e-15);
  });

  it("has nine digits left at 0.999999", () => {
    expectClose(twoSidedZ(0.999999), 4.89163847569957, 1e-9); // R 4.2.2: qnorm(5e-7, lower.tail = FALSE) [R]
  });

  it("refuses what is no confidence", () => {
    expect(() => twoSidedZ(1)).toThrow(RangeError);
    expect(() => twoSidedZ(0)).toThrow(RangeError);
  });
});
