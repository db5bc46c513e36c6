import { describe, expect, it } from "vitest";
import { type Basis, figure, pointFigure, withheld } from "../../shared/assessments/figure.ts";
import { statement } from "../../shared/assessments/statement.ts";

// The form is the contract's; the order of the sources is that of their ids, each named once.
describe("a figure", () => {
  const basis: Basis = {
    unit: "years",
    confidence: 0.9,
    method: "garwood",
    inputs: { offers: 3 },
    sources: ["b", undefined, "c", "a", "b"],
    caveats: [statement("assumes-constant-rate")],
  };
  const shared = {
    unit: "years",
    confidence: 0.9,
    method: "garwood",
    inputs: { offers: 3 },
    sources: ["a", "b", "c"],
    caveats: [{ says: "assumes-constant-rate", values: {} }],
  };

  it("is an estimate, a number, or withheld with its reason; each with what it rests on", () => {
    expect(figure({ value: 2, low: 1, high: 3 }, basis)).toEqual({
      ...shared,
      value: 2,
      low: 1,
      high: 3,
      insufficient: null,
    });
    expect(pointFigure(2, basis)).toEqual({ ...shared, value: 2, low: null, high: null, insufficient: null });
    const why = statement("too-few-serials", { distinct: 1, needed: 2 });
    expect(why).toEqual({ says: "too-few-serials", values: { distinct: 1, needed: 2 } });
    expect(withheld(why, basis)).toEqual({
      ...shared,
      value: null,
      low: null,
      high: null,
      insufficient: why,
    });
  });

  it("may rest on no source and take nothing for granted", () => {
    const { unit, confidence, method, inputs } = basis;
    expect(pointFigure(2, { unit, confidence, method, inputs })).toMatchObject({ sources: [], caveats: [] });
  });
});
