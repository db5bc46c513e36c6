import { describe, expect, it } from "vitest";
import { assessMarks } from "../../shared/assessments/matching-numbers.ts";
import type { PartLine } from "../../shared/records/item.ts";
import { line, part } from "./properties/given.ts";

const assess = (templates: string[], set: string | undefined, ...lines: PartLine[]) =>
  assessMarks([part("tray", { marks: templates })], { set, parts: new Map([["tray", lines]]) }).get("tray");
const marked = (templates: string[], set: string | undefined, ...marks: string[]) =>
  assess(templates, set, line("present", { marks }));

// Common practice, no source: the parts of an outfit bear its number, and a stranger bears another's.
describe("a mark where the set's number should be", () => {
  it.each<[string, string, string, string, string | null]>([
    ["the set's own", "No. {set}", "118", "No. 118", null],
    ["another's", "No. {set}", "118", "No. 97", "97"],
    ["another's, as it was stamped", "No. {set}", "118", "  no.   97 ", "97"],
    ["another's, in wide figures", "No. {set}", "118", "Ｎｏ． ９７", "97"],
    ["another's that stands alone", "{set}", "118", "97", "97"],
    ["another's between words", "SET {set} CASE", "118", "Set 97 case", "97"],
    ["another's, given twice", "{set}/{set}", "118", "97/97", "97"],
    ["a set's of letters and figures", "No. {set}", "a-12", "No. B-7", "B-7"],
    ["a set's that begins with figures", "No. {set}", "12A", "No. B7", "B7"],
    ["a set's that ends with figures", "No. {set}", "A12", "No. B7", "B7"],
    ["a set's beyond the Latin alphabet", "No. {set}", "Ж1", "No. Я2", "Я2"],
    ["the set's own, in capitals", "No. {set}", "a-12", "No. A-12", null],
  ])("is %s", (_, template, set, mark, otherSet) => {
    const found = marked([template], set, mark);
    expect(found?.otherSet).toBe(otherSet);
    expect(found?.verdict).toBe(otherSet === null ? "matching" : "other-set");
  });

  it.each<[string, string, string]>([
    ["No. {set}", "118", "A. Smith"],
    ["No. {set}", "118", "No. 97a"],
    ["No. {set}", "118", "No. "],
    ["No. {set}", "118", "Nox 97"],
    ["No. {set}", "118", "Case No. 97"],
    ["No. {set}", "118", "No. 97 of 200"],
    ["No.{set}", "118", "No. 97"],
    ["{set} A", "118", "97A"],
    ["[{set}] (a+b)", "118", "97 (aab)"],
    ["OAK", "118", "OAK97"],
    ["No. {set}", "a-12", "No. B/7"],
    ["No. {set}", "a-12", "No. 5 7"],
  ])("that should read %s of set %s is none where it reads %j", (template, set, mark) => {
    expect(marked([template], set, mark)).toEqual({
      expected: [template.replace("{set}", set)],
      found: [mark],
      verdict: "partial",
      otherSet: null,
    });
  });

  it("takes the signs of a template for what they are", () => {
    expect(marked(["[{set}] (a+b)"], "118", "[118] (A+B)")?.verdict).toBe("matching");
    expect(marked(["[{set}] (a+b)"], "118", "[97] (a+b)")?.otherSet).toBe("97");
  });

  it("of an item without a number is nobody's", () => {
    expect(marked(["No. {set}", "OAK"], undefined, "No. 97", "oak")).toEqual({
      expected: ["No. {set}", "OAK"],
      found: ["No. 97", "oak"],
      verdict: "partial",
      otherSet: null,
    });
    expect(marked(["OAK"], undefined, "oak")?.verdict).toBe("matching");
  });
});

describe("the marks of a part", () => {
  it("match where each that is expected is there, whatever else is", () => {
    expect(marked(["{set}", "OAK"], "118", "A. Smith", "oak", "118")?.verdict).toBe("matching");
    expect(marked(["{set}", "OAK"], "118", "118")?.verdict).toBe("partial");
    expect(marked(["{set}", "OAK"], "118", "oak")?.verdict).toBe("partial");
    expect(marked(["{set}", "OAK"], "118", "oak", "97")).toEqual({
      expected: ["118", "OAK"],
      found: ["oak", "97"],
      verdict: "other-set",
      otherSet: "97",
    });
  });

  it("are another set's where one of them is, even beside the set's own", () => {
    expect(marked(["{set}"], "118", "118", "97")).toMatchObject({ verdict: "other-set", otherSet: "97" });
  });

  // Small parts bear the last figures only. Common practice, no source.
  it("are the set's own where they are the last figures of its number", () => {
    expect(marked(["{set}"], "E 90", "90")).toMatchObject({ verdict: "matching", otherSet: null });
    expect(marked(["{set}"], "E 90", "90", "E 90")).toMatchObject({ verdict: "matching", otherSet: null });
    expect(marked(["No {set}"], "O-17", "No 17")).toMatchObject({ verdict: "matching", otherSet: null });
    expect(marked(["{set}"], "E 90", "91")).toMatchObject({ verdict: "other-set", otherSet: "91" });
    expect(marked(["{set}"], "E 90", "0")).toMatchObject({ verdict: "other-set", otherSet: "0" });
    expect(marked(["{set}"], "1190", "90")).toMatchObject({ verdict: "other-set", otherSet: "90" });
    expect(marked(["{set}", "RB"], "E 90", "90")).toMatchObject({ verdict: "partial", otherSet: null });
  });

  it("are unread where none was noted", () => {
    expect(marked(["{set}"], "118")).toEqual({
      expected: ["118"],
      found: [],
      verdict: "unread",
      otherSet: null,
    });
  });

  it("are read of units that are there, established or not, and of no others", () => {
    const marks = ["118"];
    expect(assess(["{set}"], "118", line("present"), line("unverified", { marks }))?.verdict).toBe(
      "matching",
    );
    expect(
      assess(["{set}"], "118", line("absent", { marks }), line("substitute", { marks })),
    ).toBeUndefined();
    expect(assess(["{set}"], "118", line("present"), line("substitute", { marks }))?.verdict).toBe("unread");
    expect(assess(["{set}"], "118")).toBeUndefined();
  });

  it("are not asked for where none is expected, or where nothing is written of the part", () => {
    expect(marked([], "118", "118")).toBeUndefined();
    expect([
      ...assessMarks([part("tray", { marks: ["{set}"] }), part("lens", { marks: ["{set}"] })], {
        set: "118",
        parts: new Map([["lens", [line("present")]]]),
      }).keys(),
    ]).toEqual(["lens"]);
  });
});
