import { expect, it } from "vitest";
import { type Cited, citeView } from "../../shared/pages/cite-view.ts";
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
