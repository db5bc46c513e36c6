import { expect, it } from "vitest";
import { type Cited, citeView } from "../../shared/pages/citation/cite-view.ts";
import { sourceEntry } from "../../shared/pages/citation/source-reference.ts";
import { german } from "../../shared/words/de/german.ts";
import { english } from "../../shared/words/en/english.ts";
import {
  catalogueOf,
  type Files,
  publishedIn,
  smallCollection,
  writeCollection,
} from "../collections/collection.ts";

const citedWith = (some: Partial<Cited>, files: Files = {}) => {
  const page: Cited = {
    id: "one",
    title: "One",
    authors: [],
    updated: null,
    revisions: [],
    address: "/items/one/",
    data: [{ address: "/data/items/one.json", name: "" }],
    ...some,
  };
  const root = writeCollection(smallCollection("parts: { p: {} }\n", files));
  return citeView(page, catalogueOf(publishedIn(root)));
};
const cited = (publisher: string) =>
  citedWith(
    {},
    {
      "content/collection.yaml": `title: Kastenhaus Öller\nurl: https://example.org/\npublisher: ${publisher}\n`,
    },
  );

it("a citation names a publisher who is the collection once, and programs are told both", () => {
  const { text, bibtex, csl } = cited("Kastenhaus Öller");
  expect(text).toBe("One. Kastenhaus Öller. https://example.org/items/one/");
  expect(bibtex).toContain("howpublished = {Kastenhaus Öller, Kastenhaus Öller}");
  expect(JSON.parse(csl)).toMatchObject([
    { "container-title": "Kastenhaus Öller", publisher: "Kastenhaus Öller" },
  ]);
  expect(cited("Verein Ostmark").text).toBe(
    "One. Kastenhaus Öller. Verein Ostmark. https://example.org/items/one/",
  );
});

// CSL 1.0.2, csl-data.json: a date variable has one or two lists of numbers, and `circa` where it is about that time.
it.each([
  ["2021-06", { "date-parts": [[2021, 6]] }, "year = {2021},\n  month = jun"],
  ["2021-06~", { "date-parts": [[2021, 6]], circa: true }, "year = {2021},\n  month = jun"],
  ["2019?", { "date-parts": [[2019]], circa: true }, "year = {2019}"],
  [
    "2025-06-17/2025-07-02",
    {
      "date-parts": [
        [2025, 6, 17],
        [2025, 7, 2],
      ],
    },
    "year = {2025},\n  month = jul",
  ],
  ["202X", { literal: "2020s" }, undefined],
  // A season is no month of any bibliography: CSL has it apart, from 1 for spring, and BibTeX has the year alone.
  ["2025-21", { "date-parts": [[2025]], season: 1 }, "year = {2025},\n  url"],
  ["2025-24~", { "date-parts": [[2025]], circa: true, season: 4 }, "year = {2025},\n  url"],
  ["2025-21/2025-23", { literal: "spring 2025 to autumn 2025" }, undefined],
])("a page revised on %s is of that time for programs, too", (updated, issued, bibtex) => {
  const view = citedWith({ updated });
  expect(JSON.parse(view.csl)[0].issued).toEqual(issued);
  if (bibtex === undefined) expect(view.bibtex).not.toContain("year");
  else expect(view.bibtex).toContain(bibtex);
});

// BibTeX, from memory: an "and" outside of braces ends a name, and a comma ends a part of one.
it.each<[Cited["authors"][number], string]>([
  [{ family: "Marks and Spencer", given: "J." }, "{Marks and Spencer}, J."],
  [{ family: "Ost", given: "R. AND I." }, "Ost, {R. AND I.}"],
  [{ family: "Ost, junior", given: "R." }, "{Ost, junior}, R."],
  [{ literal: "River and Canal Office", given: "R." }, "{River and Canal Office}"],
  [{ family: "van der Berg", given: "Ida" }, "van der Berg, Ida"],
])("%o is one author in BibTeX", (author, bibtex) => {
  expect(citedWith({ authors: [author] }).bibtex).toContain(`author = {${bibtex}}`);
});

// By hand: one point ends each part, and none follows a point, a question or a call.
it("a citation doubles no point", () => {
  const { text } = citedWith(
    {
      title: 'Lamp case no. 3, the "barge" lamp.',
      authors: ["R. Ost Jr.", "Ferry House Ltd."],
      updated: "2025-05-03",
    },
    {
      "content/collection.yaml":
        "title: What is a case?\nurl: https://example.org/\npublisher: Ferry House Ltd.\n",
    },
  );
  expect(text).toBe(
    'R. Ost Jr. and Ferry House Ltd. Lamp case no. 3, the "barge" lamp. What is a case? Ferry House Ltd. 3 May 2025. https://example.org/items/one/',
  );
});

const entry = (yaml: string) => {
  const files = { "content/sources.yaml": `- { id: one, ${yaml} }\n` };
  const published = publishedIn(writeCollection(smallCollection("parts: { p: {} }\n", files)));
  const source = published.sources.find(({ id }) => id === "one");
  if (!source) throw new Error("There is one source.");
  return sourceEntry(source, catalogueOf(published));
};

it.each([
  ["title: A lamp", "", "."],
  ["title: What is a lamp?", "", ""],
  ["title: A lamp, publisher: Ferry House Ltd.", "Ferry House Ltd.", ""],
  ['title: A lamp, page: "31"', "p. 31", "."],
  ["title: A lamp, page: xii", "p. xii", "."],
  ['title: A lamp, page: "31-33"', "pp. 31–33", "."],
  ['title: A lamp, page: "31, 40"', "pp. 31, 40", "."],
])("a source with %s has %j and then %j", (yaml, details, end) => {
  expect(entry(yaml)).toMatchObject({ details, end });
});

it("a title within another has the point that ends it, or its own end", () => {
  expect(english.pages.sources.inQuotes("What is a lamp?")).toBe("“What is a lamp?”");
  // Duden, rules of quotation marks, from memory: the point of the whole stands behind the closing mark.
  expect(german.pages.sources.inQuotes("Die Lampe")).toBe("„Die Lampe“.");
  expect(german.pages.sources.inQuotes("Was ist eine Lampe?")).toBe("„Was ist eine Lampe?“");
  expect(entry('title: A lamp, author: [{ literal: "Ostrey Co." }]').authors).toBe("Ostrey Co.");
  expect(entry("title: A lamp, author: [{ literal: Ostrey }]").authors).toBe("Ostrey.");
});
