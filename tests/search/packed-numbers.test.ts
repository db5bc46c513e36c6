import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  packNumbers,
  packRising,
  someRising,
  unpackNumbers,
  unpackRising,
} from "../../shared/pages/search/packed-numbers.ts";

const numbers = fc.array(fc.oneof(fc.nat(100), fc.nat(2000), fc.nat(60_000), fc.nat(1_000_000)));

describe("packed numbers", () => {
  it("come back as they were", () =>
    fc.assert(
      fc.property(numbers, (some) => {
        expect(unpackNumbers(packNumbers(some))).toEqual(some);
      }),
    ));

  it("come back by way of a file in UTF-8 and JSON, with no escape", () =>
    fc.assert(
      fc.property(numbers, (some) => {
        const text = packNumbers(some);
        expect(JSON.stringify(text)).toBe(`"${text}"`);
        expect(unpackNumbers(Buffer.from(text, "utf8").toString("utf8"))).toEqual(some);
      }),
    ));

  it("take one byte each below 91, two below 1900", () => {
    const bytes = (from: number, to: number) =>
      Buffer.byteLength(packNumbers(Array.from({ length: to - from }, (_, at) => from + at)));
    expect(bytes(0, 91)).toBe(91);
    expect(bytes(91, 1900)).toBe(2 * (1900 - 91));
  });

  it("hold no line break, by which lists of them are parted", () => {
    const all = packNumbers(Array.from({ length: 60_000 }, (_, at) => at));
    // As a truth, since the text itself would fill the report.
    expect(/[\n\r"\\]/.test(all)).toBe(false);
  });

  it("that rise come back from their gaps", () =>
    fc.assert(
      fc.property(fc.uniqueArray(fc.nat(200_000)), (some) => {
        const rising = some.sort((a, b) => a - b);
        expect(unpackRising(packRising(rising))).toEqual(rising);
        for (const wanted of [...rising, 5, 60_000])
          expect(someRising(packRising(rising), (number) => number === wanted)).toBe(rising.includes(wanted));
      }),
    ));

  it("are whole and not below nought", () => {
    expect(() => packNumbers([-1])).toThrow(RangeError);
    expect(() => packNumbers([1.5])).toThrow(RangeError);
  });
});
