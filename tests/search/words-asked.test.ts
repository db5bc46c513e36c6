import { beforeAll, describe, expect, it } from "vitest";
import { type Files, publishedIn, smallCollection, writeCollection } from "../collections/collection.ts";
import { type OpenSearch, openSearch } from "./open-search.ts";

const entry = (title: string, more: string, text: string): string =>
  `---\ntitle: ${title}\nvariant: chest-a\n${more}\n---\n${text}\n`;

const files: Files = smallCollection(
  "serials: [{ prefix: S, from: 1001, to: 2000, made: 1905/1912 }]\nparts:\n  lamp: { name: Lamp for oil, standing: core }\n",
  {
    "content/items/a-thwale.md": entry(
      "Survey chest no. 352, from Thwale",
      'serial: S1241\nset: "352"\npublish: { serial: shown }',
      "A stencil of the assay office, in a hand like [the other's](../b-orm/).",
    ),
    "content/items/b-orm.md": entry(
      "Šťastný's chest, Ørm Head",
      'serial: S1377\nset: "118"\npublish: { serial: masked }',
      "The mouthpiece is worn to a waist. Rindfleischetikettierungsgesetz.",
    ),
    "content/items/c-plain.md": entry(
      "Plain chest",
      'serial: "S 1498"\nset: "B14"\npublish: { serial: shown }\nprovenance: [{ date: 1950, event: dispersed, holder: Marchby Society, place: Hale Ferrin }]\nlabels: [{ kind: plate, where: lid, text: [QUERNBY & LISK] }]\nextras: [{ name: Leather strap }]',
      "Nothing to tell.",
    ),
    "content/items/d-hidden.md": entry(
      "Hidden chest",
      "serial: S1555\npublish: { serial: hidden }",
      "Stencilled inside.",
    ),
  },
);

let search: OpenSearch;
beforeAll(() => {
  search = openSearch(publishedIn(writeCollection(files)));
});

const all = ["a-thwale", "b-orm", "c-plain", "d-hidden"];

describe("words", () => {
  it.each<[string, string, string[]]>([
    ["a word of the title", "thwale", ["a-thwale"]],
    ["in capitals", "THWALE", ["a-thwale"]],
    ["the beginning of a word", "thw", ["a-thwale"]],
    ["the middle of a word of the title", "hwal", ["a-thwale"]],
    ["one letter that begins a word", "t", ["a-thwale"]],
    ["without the marks on the letters", "stastny", ["b-orm"]],
    ["with the marks on the letters", "šťastný", ["b-orm"]],
    ["without a letter that the keyboard has not got", "orm", ["b-orm"]],
    ["a word of the text", "stencil", ["a-thwale", "d-hidden"]],
    ["the beginning of a word of the text", "mouthp", ["b-orm"]],
    ["two words, in any order", "chest survey", ["a-thwale"]],
    ["one word of the title and one of the text", "orm waist", ["b-orm"]],
    ["words of which no entry has both", "thwale waist", []],
    ["a word that is longer than any is kept", "rindfleischetikettierungsgesetz", ["b-orm"]],
    ["a holder", "marchby", ["c-plain"]],
    ["a place", "hale ferrin", ["c-plain"]],
    ["a label", "quernby", ["c-plain"]],
    ["a thing that the reference does not list", "strap", ["c-plain"]],
    ["the name of the variant", "chest a", all],
    ["a set number", "352", ["a-thwale"]],
    ["a set number with letters", "b14", ["c-plain"]],
    ["punctuation alone", ".,-", all],
  ])("%s: %s", (_, q, expected) =>
    expect(search.ask(`?${new URLSearchParams({ q })}`).sort()).toEqual([...expected].sort()),
  );

  it("where links lead to are no words", () => expect(search.ask("?q=orm")).toEqual(["b-orm"]));
});

describe("serials", () => {
  it.each<[string, string, string[]]>([
    ["as published", "S1241", ["a-thwale"]],
    ["in small letters", "s1241", ["a-thwale"]],
    ["without the prefix", "1241", ["a-thwale"]],
    ["with a space", "S 1241", ["a-thwale"]],
    ["with a hyphen", "S-1241", ["a-thwale"]],
    ["without the space that it is published with", "S1498", ["c-plain"]],
    ["masked, as published", "S13\u2022\u2022", ["b-orm"]],
    ["in full, where the masked one may be it", "S1377", ["b-orm"]],
    ["in full and without the prefix", "1377", ["b-orm"]],
    ["another in full that the masked one may be as well", "S1300", ["b-orm"]],
    ["another in full", "S1999", []],
    ["a hidden one", "S1555", []],
    ["a hidden one without the prefix", "1555", []],
  ])("%s: %s", (_, q, expected) => expect(search.ask(`?${new URLSearchParams({ q })}`)).toEqual(expected));
});

describe("the name of a part that no entry speaks of", () => {
  it("finds what was issued with one, and says so", () => {
    for (const typed of ["lamp", "amp"]) {
      expect(search.ask(`?q=${typed}`)).toEqual(all);
      expect(search.ofParts(`?q=${typed}`)).toEqual([{ typed, taken: ["Lamp for oil"] }]);
    }
    expect(search.ask("?q=lamp+thwale")).toEqual(["a-thwale"]);
    expect(search.instead("?q=lamp")).toEqual([]);
  });

  it("is not asked for where an entry says the word, nor of two letters", () => {
    expect(search.ofParts("?q=stencil")).toEqual([]);
    expect(search.ofParts("?q=oi")).toEqual([]);
  });
});

describe("slips of the finger", () => {
  it.each([
    ["two letters changed about", "thwael", "thwale"],
    ["a letter left out", "stastn", "stastny"],
    ["two letters changed about, in a word of the text", "stencli", "stencil"],
    ["another letter", "mouthpeice", "mouthpiece"],
  ])("%s: %s is taken for %s", (_, q, taken) => {
    if (search.ask(`?q=${taken}`).length === 0) throw new Error("Found no entry with the right word.");
    expect(search.ask(`?q=${q}`)).toEqual(search.ask(`?q=${taken}`));
  });

  it("are told", () => expect(search.instead("?q=thwael")).toEqual([{ typed: "thwael", taken: ["thwale"] }]));

  it("are mended in no word that is there, and in no number", () => {
    expect(search.instead("?q=thw")).toEqual([]);
    expect(search.ask("?q=353")).toEqual([]);
  });

  it("leave a word that is like nothing alone", () => expect(search.ask("?q=xyzzyxyzzy")).toEqual([]));
});

// DIN 5007-1 has ö as o, and DIN 5007-2, as in telephone books, as oe: both from memory.
describe("an umlaut, where the collection is in German", () => {
  const inLanguage = (language: string) =>
    openSearch(
      publishedIn(
        writeCollection(
          smallCollection("parts:\n  lamp: { standing: core }\n", {
            "content/collection.yaml": `title: T\nlanguage: ${language}\n`,
            "content/items/a-titel.md": entry("Öllampe aus Mölln", "status: sold", "Neue Queräxte."),
            "content/items/b-text.md": entry("Leuchte", "status: sold", "Mit Ölkännchen. OEL steht darauf."),
          }),
        ),
      ),
    );

  it.each([
    ["as it is written", "öl", ["a-titel", "b-text"]],
    ["without its dots", "ol", ["a-titel", "b-text"]],
    ["as two letters, beside what is written so", "oel", ["a-titel", "b-text"]],
    ["as two letters within a word", "moelln", ["a-titel"]],
    ["as two letters in a text", "Oelkaennchen", ["b-text"]],
    ["and no other e is taken away", "neue queraexte", ["a-titel"]],
  ])("is found %s", (_, asked, found) => {
    expect(inLanguage("de").ask(`?q=${asked}`)).toEqual(found);
  });

  it("is one letter elsewhere", () => {
    expect(inLanguage("en").ask("?q=oel")).toEqual(["b-text"]);
  });
});

describe("the order of the answers", () => {
  it("has a whole word of the title before its beginning, and the title before the text", () => {
    const root = writeCollection(
      smallCollection("parts:\n  lamp: { standing: core }\n", {
        "content/items/a-text.md": entry("First", "status: sold", "With a lamp."),
        "content/items/b-begins.md": entry("The lampholder", "status: sold", "Nothing."),
        "content/items/c-whole.md": entry("The lamp", "status: sold", "Nothing."),
        "content/items/d-within.md": entry("The spiritlamps", "status: sold", "Nothing."),
      }),
    );
    expect(openSearch(publishedIn(root)).ask("?q=lamp")).toEqual([
      "c-whole",
      "b-begins",
      "d-within",
      "a-text",
    ]);
  });
});
