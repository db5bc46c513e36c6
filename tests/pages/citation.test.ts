import { expect, it } from "vitest";
import { type Cited, citeView } from "../../shared/pages/cite-view.ts";
import { catalogueOf, publishedIn, smallCollection, writeCollection } from "../collections/collection.ts";

const cited = (publisher: string) => {
  const root = writeCollection(
    smallCollection("parts: { p: {} }\n", {
      "content/collection.yaml": `title: Kastenhaus Öller\nurl: https://example.org/\npublisher: ${publisher}\n`,
    }),
  );
  const page: Cited = {
    id: "one",
    title: "One",
    authors: [],
    updated: null,
    revisions: [],
    address: "/items/one/",
    data: [{ address: "/data/items/one.json", name: "" }],
  };
  return citeView(page, catalogueOf(publishedIn(root)));
};

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
])("a page revised on %s is of that time for programs, too", (updated, issued, bibtex) => {
  const root = writeCollection(smallCollection("parts: { p: {} }\n"));
  const page: Cited = {
    id: "one",
    title: "One",
    authors: [],
    updated,
    revisions: [],
    address: "/items/one/",
    data: [{ address: "/data/items/one.json", name: "" }],
  };
  const view = citeView(page, catalogueOf(publishedIn(root)));
  expect(JSON.parse(view.csl)).toMatchObject([{ issued }]);
  if (bibtex === undefined) expect(view.bibtex).not.toContain("year");
  else expect(view.bibtex).toContain(bibtex);
});
