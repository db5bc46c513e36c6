import { describe, expect, it } from "vitest";
import { german } from "../../shared/words/de/german.ts";
import { english } from "../../shared/words/en/english.ts";

// CSL 1.0.2, `page` and `label`: the plural where there is more than one number. Folios, numbers and plates are
// cited by names of their own: common practice, no source. DIN 5008, from memory: an abbreviation stays with its number.
describe("a place in a source", () => {
  it.each([
    ["31", "p. 31", "S.\u00a031"],
    ["A12", "p. A12", "S.\u00a0A12"],
    ["12r", "p. 12r", "S.\u00a012r"],
    ["xii", "p. xii", "S.\u00a0xii"],
    ["31-33", "pp. 31-33", "S.\u00a031-33"],
    ["xii–xv", "pp. xii–xv", "S.\u00a0xii–xv"],
    ["31, 40", "pp. 31, 40", "S.\u00a031, 40"],
    ["31 and 40", "pp. 31 and 40", "S.\u00a031 and 40"],
    ["31f.", "pp. 31f.", "S.\u00a031f."],
    ["31 ff.", "pp. 31 ff.", "S.\u00a031 ff."],
    ["31, pl. 3", "p. 31, pl. 3", "S.\u00a031, pl. 3"],
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
