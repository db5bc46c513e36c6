import { describe, expect, it } from "vitest";
import { byteRange } from "../../shared/commands/serve/byte-range.ts";

// RFC 9110, 14.1.2: "the first 500 bytes", "the final 500 bytes" and so on, of a representation of 10000 bytes.
describe("what a player asks for of a file", () => {
  it.each([
    ["bytes=0-499", { start: 0, end: 499 }],
    ["bytes=500-999", { start: 500, end: 999 }],
    ["bytes=-500", { start: 9500, end: 9999 }],
    ["bytes=9500-", { start: 9500, end: 9999 }],
    ["bytes=0-0", { start: 0, end: 0 }],
    // 14.1.2: more than there is means as much as there is.
    ["bytes=9000-20000", { start: 9000, end: 9999 }],
    ["bytes=-20000", { start: 0, end: 9999 }],
    // 14.1.2: unsatisfiable.
    ["bytes=10000-", "none"],
    ["bytes=-0", "none"],
    // 14.2: a server may ignore the header; one that is invalid it must.
    ["bytes=0-0,-1", null],
    ["bytes=5-4", null],
    ["bytes=-", null],
    ["lines=1-2", null],
    [undefined, null],
  ])("%s", (header, expected) => {
    expect(byteRange(header, 10_000)).toEqual(expected);
  });
});
