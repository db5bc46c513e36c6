import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decodedText, detectEncoding } from "../../shared/commands/import/decoded-text.ts";
import { columnsOf, findHeadingRows } from "../../shared/commands/import/headings.ts";
import { logText } from "../../shared/commands/import/log-text.ts";
import { readSheet } from "../../shared/commands/import/sheet.ts";
import { csvLine } from "../../shared/pages/data/csv-line.ts";
import { guarded, unguarded } from "../../shared/pages/data/formula-guard.ts";
import { dateEvidence, readDate } from "../../shared/validation/written/read-date.ts";
import { provenDecimals, readAmount } from "../../shared/validation/written/read-number.ts";

const open = { order: undefined, twoDigitYearsFrom: 1930 } as const;
const date = (cell: string, rules: Parameters<typeof readDate>[1] = open) => {
  const read = readDate(cell, rules);
  return "value" in read ? read.value : null;
};

describe("a date in a spreadsheet", () => {
  // Forms of everyday writing and their EDTF: ISO 8601-2:2019 and the Library of Congress's specification of
  // 4 February 2019 (approximate ~, uncertain ?, both %, unspecified digits X, seasons 21 to 24, intervals, [..]).
  it.each([
    ["12.03.1998", "1998-03-12"],
    ["25/3/98", "1998-03-25"],
    ["3/25/98", "1998-03-25"],
    ["3.3.12", "2012-03-03"],
    ["1998", "1998"],
    ["1998-3-2", "1998-03-02"],
    ["1998/03/12", "1998-03-12"],
    ["1998-03-12 00:00:00", "1998-03-12"],
    ["03/1998", "1998-03"],
    ["March 1998", "1998-03"],
    ["12 March 1998", "1998-03-12"],
    ["March 12th, 1998", "1998-03-12"],
    ["12-Mar-98", "1998-03-12"],
    ["12. März 1998", "1998-03-12"],
    ["1er mars 1998", "1998-03-01"],
    ["3 de marzo de 1998", "1998-03-03"],
    ["c. 1931", "1931~"],
    ["ca. March 1931", "1931-03~"],
    ["1931?", "1931?"],
    ["circa 1931 (?)", "1931%"],
    ["the 1930s", "193X"],
    ["c. 1930's", "193X~"],
    ["19th century", "18XX"],
    ["1931-1938", "1931/1938"],
    ["1931\u201338", "1931/1938"],
    ["1931/38", "1931/1938"],
    ["from March 1931 to 1938", "1931-03/1938"],
    ["c. 1931 \u2013 1938", "1931~/1938~"],
    ["before 1931", "[..1930]"],
    ["vor 1931", "[..1930]"],
    ["nach 1931", "[1932..]"],
    ["1980er", "198X"],
    ["1980er Jahre", "198X"],
    ["Herbst 1987", "1987-23"],
    ["after 1931", "[1932..]"],
    ["before 1931?", "[..1930?]"],
    ["after c. 1931", "[1932~..]"],
    ["between 1931 and 1938", "[1931..1938]"],
    ["between c. 1931 and 1938", "[1931~..1938]"],
    ["between March 1931 and May 1931", "[1931-03..1931-05]"],
    // Of two years the second would come before the first, so it is a month.
    ["1998/12", "1998-12"],
    ["1905/04", "1905-04"],
    ["1905/4", "1905-04"],
    ["1905/04 to 1907/03", "1905-04/1907-03"],
    ["1912/13", "1912/1913"],
    // No year of the century that is left ends so.
    ["1999/00", "1999/2000"],
    ["c. 1899\u201300", "1899~/1900~"],
    ["Spring 1998", "1998-21"],
    // The specification's own examples, as they are.
    ["2004-06/2006-08", "2004-06/2006-08"],
    ["1985-04-12/..", "1985-04-12/.."],
    ["156X-12-25", "156X-12-25"],
    ["[1667,1668,1670..1672]", "[1667,1668,1670..1672]"],
  ])("%s is %s", (cell, expected) => {
    expect(date(cell)).toBe(expected);
  });

  it.each([
    ["3/12/98", "day and month"],
    ["30.02.1998", "exists"],
    ["31/4/1998", "exists"],
    ["soon", "a date such as"],
    ["35866", "count of days"],
    ["1931-38", "two years in full"],
    ["1921-24", "two years in full"],
    ["12 Foo 1998", "a date such as"],
    ["1905/06", "1905-06, or 1905/1906"],
    ["1905/6", "1905-06, or 1905/1906"],
    ["1905/06 to 1907/08", "1905-06, or 1905/1906"],
    ["1905/04\u20131907/08", "1907-08, or 1907/1908"],
    ["between 1905/06 and 1907/08", "1905-06, or 1905/1906"],
    ["c. 1905/06", "1905-06, or 1905/1906"],
    ["1999-00", "such as 1999/2000;"],
    ["1909/0", "such as 1909/1910;"],
    // On or before a date, and on or after it: the specification's "[..1760-12-03]" and "[1760-12..]".
    ["before 1 May 1931", 'a year after "before"; for any time up to a certain day, write [..1931-04-30].'],
    ["After the 1930s", 'a year after "after"; for any time from a certain day on, write [1931-05-02..].'],
    ["between 1931 and March 1938", "both years"],
    ["{1931,1938}?", "each of its dates"],
  ])("%s is refused, with what to do", (cell, reason) => {
    const read = readDate(cell, open);
    expect("reason" in read ? read.reason : read.value).toContain(reason);
  });

  it("is read by the order that the map decides, and by no other", () => {
    expect(date("3/12/98", { ...open, order: "day-month" })).toBe("1998-12-03");
    expect(date("3/12/98", { ...open, order: "month-day" })).toBe("1998-03-12");
    expect(date("25/3/98", { ...open, order: "month-day" })).toBeNull();
    expect(date("1921-24", { ...open, order: "edtf" })).toBe("1921-24");
    expect(date("25/3/98", { order: undefined, twoDigitYearsFrom: undefined })).toBeNull();
  });

  it("proves an order by a number that is no month, and tells where two speak against each other", () => {
    expect(dateEvidence(["3/12/98", "25/3/98"])).toEqual({
      proofs: new Map([["day-month", "25/3/98"]]),
      twoDigitYears: true,
    });
    expect(dateEvidence(["3/25/1998", "25/3/1998"]).proofs.size).toBe(2);
    expect(dateEvidence(["3/12/1998"]).proofs.size).toBe(0);
  });
});

describe("a number in a spreadsheet", () => {
  it.each([
    ["1.250,50 \u20ac", { number: 1250.5, currency: "EUR" }],
    ["\u00a31,250.50", { number: 1250.5, currency: "GBP" }],
    ["1\u202f250", { number: 1250 }],
    ["1'250.50", { number: 1250.5 }],
    ["1400 Euro", { number: 1400, currency: "EUR" }],
    ["DM 800", { number: 800, currency: "DEM" }],
    ["800,- DM", { number: 800, currency: "DEM" }],
    ["1.250,- €", { number: 1250, currency: "EUR" }],
    ["CHF 420.-", { number: 420, currency: "CHF" }],
    ["1.234.567", { number: 1234567 }],
    ["0.125", { number: 0.125 }],
    ["$420", { number: 420, sign: "$" }],
  ])("%s", (cell, expected) => {
    const read = readAmount(cell, undefined);
    expect("value" in read && read.value).toMatchObject(expected);
  });

  it("is not guessed where a point may part thousands or decimals", () => {
    expect(readAmount("1.250", undefined)).toHaveProperty("reason");
    expect(readAmount("1.250", ",")).toMatchObject({ value: { number: 1250 } });
    expect(readAmount("1.25", ".")).toMatchObject({ value: { number: 1.25 } });
    expect([...provenDecimals(["1.250", "1.250,50"])]).toEqual([","]);
    expect(provenDecimals(["1.250", "12,50", "12.5"]).size).toBe(2);
  });

  it.each([
    ["1.250", "."],
    ["£ 1,200", ","],
    ["-1,200", ","],
  ] as const)("%s never becomes a thousandth of itself by %s before the decimals", (cell, decimal) => {
    const read = readAmount(cell, decimal);
    expect("reason" in read && read.reason).toBe(
      `Found "${cell}"; expected an amount that can be read in one way only: "${decimal}" stands before the decimals, and no price has three of them.`,
    );
    expect(readAmount(cell, decimal === "." ? "," : ".")).toHaveProperty("value");
  });

  it.each(["abc", "12.34.56", "1,25,000", "--5", ""])("%j is none", (cell) => {
    expect(readAmount(cell, undefined)).toHaveProperty("reason");
  });
});

describe("the bytes of a spreadsheet", () => {
  it("are decoded from Windows-1252 as other programs do", () => {
    // From Python 3.11: bytes(range(0x80, 0xa0)).decode("cp1252"), without the five bytes that are unassigned.
    const python = "€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ";
    const unassigned = [0x81, 0x8d, 0x8f, 0x90, 0x9d];
    const bytes = Uint8Array.from({ length: 32 }, (_, at) => 0x80 + at).filter(
      (byte) => !unassigned.includes(byte),
    );
    expect(detectEncoding(bytes)).toBe("windows-1252");
    expect(decodedText(bytes, "windows-1252")).toBe(python);
  });

  it.each([
    ["utf-8", Buffer.from("café")],
    ["utf-8", Buffer.from("\uFEFFcafé")],
    ["utf-8", Buffer.from("plain")],
    ["utf-16le", Buffer.from("\uFEFFcafé", "utf16le")],
    ["utf-16le", Buffer.from("seen;variant;kind", "utf16le")],
    ["utf-16be", Buffer.from("\uFEFFcafé", "utf16le").swap16()],
  ])("are known as %s", (encoding, bytes) => {
    expect(detectEncoding(bytes)).toBe(encoding);
  });
});

describe("the cells of a spreadsheet", () => {
  it.each([
    ["a,b;c,d\n1,2;3,4\n", ","],
    ["a;b\n1,5;2,5\n", ";"],
    ["a\tb\n1,5\t2;5\n", "\t"],
    ['a;b\n"x, y, z, and more, and more";2\n', ";"],
    ['a;"b, c, d"\n1;"two\nlines, with, commas"\n', ";"],
  ])("of %j are parted by %j", (text, separator) => {
    expect(readSheet(text).separator).toBe(separator);
  });

  it("have the headings of merged and repeated columns told apart", () => {
    const rows = [
      ["My list", "", "", "", "", ""],
      ["", "Sale", "", "Outfit", "", ""],
      ["No", "Date", "Note", "Type", "Note", "Note"],
      ["1", "1999", "", "A", "", ""],
    ];
    const found = findHeadingRows(rows, (heading) => ["Date", "Type", "Note"].includes(heading));
    expect(found).toEqual([2, 3]);
    expect(columnsOf(rows, found).map(({ heading }) => heading)).toEqual([
      "No",
      "Date",
      "Sale: Note",
      "Type",
      "Outfit: Note",
      "Outfit: Note (2)",
    ]);
  });

  it("come back from a written line as they were", () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: "grapheme" }), { minLength: 1, maxLength: 6 }), (cells) => {
        const trimmed = cells.map((cell) => cell.replace(/\r/g, "").trim());
        expect(readSheet(`${csvLine(trimmed)}\n`, ",").rows[0]).toEqual(trimmed);
      }),
    );
  });

  // RFC 4180, section 2, rules 5 to 7.
  it("are quoted as RFC 4180 has it", () => {
    expect(csvLine(["aaa", "b \n bb", "ccc"])).toBe('aaa,"b \n bb",ccc');
    expect(csvLine(["aaa", 'b"bb', "c,c"])).toBe('aaa,"b""bb","c,c"');
  });

  it("lose and take on nothing under the guard against formulas", () => {
    fc.assert(
      fc.property(fc.stringMatching(/^['=+\-@\t\r\n＝＋－＠ a]{0,6}$/), (cell) => {
        expect(unguarded(guarded(cell))).toBe(cell);
        expect(guarded(cell)).not.toMatch(/^[=+\-@\t\r\n＝＋－＠]/);
      }),
    );
  });
});

describe("the text of a log", () => {
  const row = (cells: Record<string, string>) => new Map(Object.entries(cells));

  it("has the contract's columns in their order, and no others", () => {
    expect(logText(null, [row({ note: "x", seen: "1999", kind: "offer", variant: "a" })])).toBe(
      "seen,variant,kind,note\n1999,a,offer,x\n",
    );
  });

  it("keeps what is there, and takes a new column where one is needed", () => {
    const before = "kind,seen,variant\noffer,1999,a\n";
    expect(logText(before, [row({ seen: "2000", variant: "b", kind: "record" })])).toBe(
      `${before}record,2000,b\n`,
    );
    expect(logText(before, [row({ seen: "2000", variant: "b", kind: "record", note: "x, y" })])).toBe(
      'kind,seen,variant,note\noffer,1999,a,\nrecord,2000,b,"x, y"\n',
    );
  });
});
