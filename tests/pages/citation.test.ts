import { expect, it } from "vitest";
import { citeView } from "../../shared/pages/cite-view.ts";
import { catalogueOf, publishedIn, smallCollection, writeCollection } from "../collections/collection.ts";

const cited = (publisher: string) => {
  const root = writeCollection(
    smallCollection("parts: { p: {} }\n", {
      "content/collection.yaml": `title: Kastenhaus Öller\nurl: https://example.org/\npublisher: ${publisher}\n`,
    }),
  );
  const page = {
    id: "one",
    title: "One",
    authors: [],
    updated: null,
    address: "/items/one/",
    data: { address: "/data/items/one.json", name: "" },
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
