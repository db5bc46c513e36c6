import { describe, expect, it } from "vitest";
import { saysNothing } from "../../shared/commands/import/readings.ts";
import { locusBetween } from "../../shared/diagnostics/place.ts";
import { itemWords } from "../../shared/pages/search/item-words.ts";
import { slipAt } from "../../shared/prose/slip.ts";
import type { PublishedItem } from "../../shared/publication/published.ts";
import { bareDoi } from "../../shared/records/doi.ts";
import { serialOf } from "../../shared/site/groups/written-record.ts";
import { readCsv } from "../../shared/source/csv.ts";
import { readDate } from "../../shared/validation/written/read-date.ts";

const many = 150_000;

/** With nothing else to say. */
const outfit = (description: string) =>
  ({
    title: "",
    description,
    features: [],
    provenance: { events: [] },
    labels: [],
    completeness: { extras: [] },
    parts: [],
    photos: [],
  }) as unknown as PublishedItem;
const blanks = " ".repeat(many);
const rules = { order: undefined, twoDigitYearsFrom: undefined };

/**
 * Somebody else's file may be made so that a reader looks at each letter of it from each other letter, or from each two
 * (CWE-1333). Each of these took from half a minute to days.
 */
describe("a text that is long and almost what is looked for is read in one go", () => {
  it.each([
    [
      "a date of two ends",
      () => readDate(`B${blanks}to${blanks}b\nto`, rules),
      { reason: /^Found 300007 letters/ },
    ],
    ["a date between two", () => readDate(`between ${"a and ".repeat(many)}\n`, rules), { reason: /^Found/ }],
    ["a date in doubt", () => readDate(`1${blanks}(x`, rules), { reason: /^Found/ }],
    ["a DOI", () => bareDoi(`doi${blanks}x`), /^doi/],
    ["a cell that says nothing", () => saysNothing(`n.${blanks}g`), false],
    [
      "a serial",
      () =>
        serialOf({
          kind: "item",
          file: "content/items/one.md",
          id: "one",
          hash: "",
          text: `---\nserial:  0${blanks}!\n---\n`,
        }),
      /!$/,
    ],
    ["the words of a text", () => itemWords(outfit("](<".repeat(many) + " case")), ["case"]],
    ["a citation", () => slipAt(`[see ${"@x".repeat(many)}]`)?.kind, "citation"],
  ] as const)("%s", (_, read, expected) => {
    const found = read();
    if (expected instanceof RegExp) expect(found).toMatch(expected);
    else if (typeof expected === "object" && "reason" in expected)
      expect((found as { readonly reason: string }).reason).toMatch(expected.reason);
    else expect(found).toEqual(expected);
  });

  it("a header of very many columns, each of which is asked for", () => {
    const names = Array.from({ length: 40_000 }, (_, at) => `c${at}`);
    const { columns, locateColumn } = readCsv("log.csv", `${names.join(",")}\n`);
    expect(columns.map((column) => locateColumn(column).place.column).at(-1)).toBe(
      names.slice(0, -1).join(",").length + 2,
    );
  });

  it("a stretch of very many lines, once for each mistake in it", () => {
    const text = "  part: present\n".repeat(many);
    const lines = new Set<number>();
    for (let at = 0; at < 5_000; at++)
      lines.add(locusBetween("one.md", text, 2 + at, text.length - 1).place.endLine);
    expect([...lines]).toEqual([many]);
  });
});
