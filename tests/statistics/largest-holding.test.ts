import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fallingFactorial } from "../../shared/statistics/falling-factorial.ts";
import { largestHolding } from "../../shared/statistics/largest-holding.ts";

describe("largestHolding", () => {
  it("finds the last number that holds", () => {
    fc.assert(
      fc.property(fc.bigInt({ min: -50n, max: 50n }), fc.bigInt({ min: 0n, max: 5000n }), (least, above) => {
        expect(largestHolding(least, (n) => n <= least + above)).toBe(least + above);
      }),
    );
  });

  it.each([0n, 1n, 2n, 3n, 4n, 5n, 6n, 7n, 8n, 9n])("finds it %s above the least", (above) => {
    expect(largestHolding(10n, (n) => n <= 10n + above)).toBe(10n + above);
  });

  it("asks in proportion to the logarithm of the distance", () => {
    let asked = 0;
    const last = largestHolding(1n, (n) => {
      asked += 1;
      return n <= 10n ** 12n;
    });
    expect(last).toBe(10n ** 12n);
    // log2 of a million millions is 40.
    expect(asked).toBeLessThanOrEqual(82);
  });
});

describe("fallingFactorial", () => {
  it("is the product downwards", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 200 }),
        fc.bigInt({ min: 200n, max: 10n ** 6n }),
        (count, top) => {
          let product = 1n;
          for (let index = 0n; index < BigInt(count); index++) product *= top - index;
          expect(fallingFactorial(top, count)).toBe(product);
        },
      ),
    );
  });

  it("counts permutations: 20!/16! = 116280", () => {
    expect(fallingFactorial(20n, 4)).toBe(116280n);
    expect(fallingFactorial(7n, 1)).toBe(7n);
    expect(fallingFactorial(7n, 0)).toBe(1n);
  });
});
