import { describe, expect, it } from "vitest";
import { german } from "../../shared/words/de/german.ts";
import { english } from "../../shared/words/en/english.ts";

// CSL 1.0.2, `page` and `label`: the plural where there is more than one number. Folios, numbers and plates are
// cited by names of their own: common practice, no source.
describe("a place in a source", () => {
  it.each([
    ["31", "p. 31", "S. 31"],
    ["A12", "p. A12", "S. A12"],
    ["12r", "p. 12r", "S. 12r"],
    ["xii", "p. xii", "S. xii"],
    ["31-33", "pp. 31-33", "S. 31-33"],
    ["xii–xv", "pp. xii–xv", "S. xii–xv"],
    ["31, 40", "pp. 31, 40", "S. 31, 40"],
    ["31 and 40", "pp. 31 and 40", "S. 31 and 40"],
    ["31f.", "pp. 31f.", "S. 31f."],
    ["31 ff.", "pp. 31 ff.", "S. 31 ff."],
    ["31, pl. 3", "p. 31, pl. 3", "S. 31, pl. 3"],
    ["fol. 1", "fol. 1", "fol. 1"],
    ["f. 12r", "f. 12r", "f. 12r"],
    ["no. 141", "no. 141", "no. 141"],
    ["pl. 3", "pl. 3", "pl. 3"],
    ["c. 4", "c. 4", "c. 4"],
    ["lvs 3-4", "lvs 3-4", "lvs 3-4"],
    ["p. 31", "p. 31", "p. 31"],
    ["Lage 4", "Lage 4", "Lage 4"],
    ["title page", "title page", "title page"],
  ])("%s is %s and %s", (place, inEnglish, inGerman) => {
    expect(english.pages.variant.page(place)).toBe(inEnglish);
    expect(german.pages.variant.page(place)).toBe(inGerman);
  });
});
