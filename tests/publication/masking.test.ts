import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { hiddenSerials, maskSerial, redactorFor, redactorOf } from "../../shared/publication/masking.ts";
import type { Item } from "../../shared/records/item.ts";
import { line } from "../assessments/properties/given.ts";
import { item } from "../assessments/properties/given-collection.ts";
import { dataOf, item as itemText, smallCollection } from "../collections/collection.ts";

// From what the README promises: serials are masked in their last digits, in whatever text names them, a number alone only
// in the texts of its own item.
const masked = (serial: string, more: Partial<Item> = {}): Item =>
  item("own", { serial, publish: { serial: "masked", price: "hidden" }, ...more });

describe("a masked serial", () => {
  it.each([
    ["H2118", "H21••"],
    ["H 2118", "H 21••"],
    ["271828", "2718••"],
    ["M 12/34", "M 12/••"],
    ["X1Y2Z", "X•Y•Z"],
    ["A-7", "A-•"],
    ["12", "••"],
    ["ABC", "•••"],
    ["AB-C", "••-•"],
    ["\u0661\u0662\u0663", "\u0661••"],
    // Letters and digits beyond U+FFFF, which are two of UTF-16.
    ["\u{1d407}2118", "\u{1d407}21••"],
    ["H\u{1d7d0}\u{1d7cf}\u{1d7cf}\u{1d7d6}", "H\u{1d7d0}\u{1d7cf}••"],
  ])("%s is shown as %s", (serial, shown) => {
    expect(maskSerial(serial)).toBe(shown);
  });
});

describe("a text about something else", () => {
  const redact = redactorOf(hiddenSerials([masked("H2118")]));

  it.each([
    ["It lay beside H2118.", "It lay beside H21••."],
    ["h2118, H 2118, H-2118, H.2118 and H/2118", "H21••, H21••, H21••, H21•• and H21••"],
    ["Its tag H2118a", "Its tag H21••a"],
    ["(H2118)", "(H21••)"],
    ["H02118 and H-0 2118", "H21•• and H-0 2118"],
  ])("%j reads %j", (text, shown) => {
    expect(redact(text)).toBe(shown);
  });

  it.each(["2118 were made.", "H21189 is another.", "GH2118 is another.", "H211 8"])("%j stays", (text) => {
    expect(redact(text)).toBe(text);
  });

  it("keeps the serial that its own record bears", () => {
    expect(redact("H 2118, as its neighbour", "H2118")).toBe("H 2118, as its neighbour");
  });

  it("is not searched for numbers that may count anything", () => {
    expect(
      hiddenSerials([masked("118"), masked("000118"), masked("271828")]).map(({ serial }) => serial),
    ).toEqual(["271828"]);
  });

  it("never holds all digits of a hidden serial, whatever stands between its letters and its number", () => {
    const letters = fc.stringMatching(/^[A-Z]{1,3}$/);
    const number = fc.integer({ min: 100, max: 99_999_999 });
    const between = fc.constantFrom("", " ", "-", ".", "/", "\u2013", " - ");
    fc.assert(
      fc.property(letters, number, between, (prefix, digits, sign) => {
        const told = redactorOf(hiddenSerials([masked(`${prefix}${digits}`)]))(
          `see ${prefix}${sign}${digits}, p. 3`,
        );
        expect(told).not.toContain(String(digits));
        expect(told).toMatch(/^see .*, p\. 3$/);
      }),
    );
  });
});

describe("a text of its own item", () => {
  it("does not tell the number without its letters either", () => {
    expect(redactorFor(masked("H2118"))("No. 2118, in 4 trays")).toBe("No. 21••, in 4 trays");
    expect(redactorFor(masked("H271828"))("No. 271 828 or 271,828")).toBe("No. 2718•• or 2718••");
  });

  // The number made and the examples counted take G94 and G0094 for one serial.
  it.each([
    ["G94", "No. G 0094, G-094 and 0094, in 94 cells of 4", "No. G••, G•• and ••, in 94 cells of 4"],
    ["G0094", "No. G 94, G-94 and 0094, in 94 cells of 4", "No. G00••, G00•• and 00••, in 94 cells of 4"],
    ["H214", "H0214 or 0214 or 214", "H2•• or 2•• or 2••"],
  ])("%s is masked with and without zeros before its number", (serial, text, shown) => {
    expect(redactorFor(masked(serial))(text)).toBe(shown);
  });

  // CommonMark: emphasis within a word, and letters by their number, are not seen where they are printed.
  it.each([
    ["Its plate: H*2*14.", "Its plate: H2••."],
    ["**H**214 and __H__ 214", "H2•• and H2••"],
    ["H&#50;14, H&#x32;14 and H&nbsp;214", "H2••, H2•• and H2••"],
    ["H\u00ad214 and H\u200b214", "H2•• and H2••"],
    ["*H214*, `H214`", "*H2••*, `H2••`"],
    ["**H** 214", "H2••"],
    ["H *214*", "H2••"],
    ["H-`214`", "H2••"],
    ["An *old* plate & a key_of_4 &#38; *more*", "An *old* plate & a key_of_4 &#38; *more*"],
  ])("%j is masked as it will be read: %j", (text, shown) => {
    expect(redactorFor(masked("H214"))(text)).toBe(shown);
    expect(redactorOf(hiddenSerials([masked("H214")]))(text)).toBe(shown);
  });

  // UAX #15: full-width and mathematical letters and digits are the plain ones in another shape.
  it.each([
    ["\uff28\uff13\uff11\uff18 on its lid", "H3•• on its lid"],
    ["\uff48\uff13\uff11\uff18, h\uff13\uff11\uff18", "H3••, H3••"],
    ["\u{1d407}\u{1d7d1}\u{1d7cf}\u{1d7d6}", "H3••"],
    ["&#xff28;&#xff13;18", "H3••"],
    ["Serial No. H 3 1 8.", "Serial No. H3••."],
    ["h 3\u00a01\u20091\u00a08, h 3\u00a01\u20098", "h 3\u00a01\u20091\u00a08, H3••"],
    ["\uff28 \uff13 \uff11 \uff18", "H3••"],
    ["**H** 3 *1* 8", "H3••"],
    ["H-3 1 8", "H3••"],
  ])("%j is masked as well: %j", (text, shown) => {
    expect(redactorFor(masked("H318"))(text)).toBe(shown);
    expect(redactorOf(hiddenSerials([masked("H318")]))(text)).toBe(shown);
  });

  it("may have its number alone with a space between any two digits", () => {
    expect(redactorFor(masked("H318"))("No. 3 1 8")).toBe("No. 3••");
    expect(redactorOf(hiddenSerials([masked("H318")]))("No. 3 1 8")).toBe("No. 3 1 8");
  });

  it.each(["H 3 1 8 4", "H 3 18", "G 3 1 8", "H 13 1 8", "\uff27\uff13\uff11\uff18"])(
    "%j is another",
    (text) => {
      expect(redactorOf(hiddenSerials([masked("H318")]))(text)).toBe(text);
    },
  );

  it("tells no serial of its parts", () => {
    const parts = new Map([["lens", [{ ...line("present"), serial: "K77421" }]]]);
    expect(redactorFor(masked("H2118", { parts }))("The lens, K 77421")).toBe("The lens, K774••");
  });

  it("counts lenses with a number of two figures, though the serial may end in it", () => {
    expect(redactorFor(masked("H21"))("21 lenses")).toBe("21 lenses");
  });

  it("stays as it is where its serial is shown, and tells nothing of one that is hidden", () => {
    const text = "H2118";
    expect(redactorFor(masked(text, { publish: { serial: "shown", price: "hidden" } }))(text)).toBe(text);
    expect(redactorFor(masked(text, { publish: { serial: "hidden", price: "hidden" } }))(text)).toBe("•••");
  });
});

describe("names in a reference", () => {
  const files = smallCollection(
    "levels: [{ id: all, name: As H2118, needs: { standing: [core] } }]\nparts:\n  fork: { name: Fork of H 2118, standing: core, group: tools, marks: [H2118] }\n",
    {
      "schemas/reference/chest/family.yaml":
        "name: Chests like H2118\nmaker: H2118 Works\ngroups: { tools: Tools of H2118 }\nfeatures:\n  lock: { name: Lock of H2118, values: [iron] }\n",
      "schemas/reference/chest/chest-b.yaml": "name: The H2118 chest\nextends: chest-a\n",
      "content/items/one.md": itemText("serial: H2118"),
    },
  );

  it("tell no serial that is masked, and stay as they are where it is shown", () => {
    const texts = (all: Map<string, unknown>) => JSON.stringify([...all.values()]);
    expect(texts(dataOf(files)).match(/.{30}H ?2118/g)).toBe(null);
    expect(texts(dataOf(files))).toContain("The H21\u2022\u2022 chest");
    expect(texts(dataOf(files, "private"))).toContain("The H2118 chest");
  });
});
