import { expect, it } from "vitest";
import type { Page } from "../../shared/pages/site-pages.ts";
import { everyFile } from "../../shared/site/every-file.ts";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";

const root = writeCollection(
  smallCollection("parts: { p: { name: Peg } }\n", {
    "content/items/one.md": item("parts: { p: present }"),
    "content/articles/pegs.md": "---\ntitle: Pegs\nauthors: [A. Author]\nupdated: 2026-01-01\n---\nText.\n",
  }),
);

async function pagesOf(): Promise<Page[]> {
  const site = await everyFile(root, "public");
  if ("problems" in site) throw new Error(JSON.stringify(site.problems));
  return site.parts.flatMap(({ files }) =>
    [...files].flatMap((file) => (file.kind === "page" ? [file.make()] : [])),
  );
}

type Fields = Readonly<Record<string, unknown>>;

// As schema.org defines its terms, from memory: contentUrl belongs to MediaObject, of which DataDownload is one, and a
// Dataset has it by way of distribution; inLanguage belongs to CreativeWork, Event and a few more, and to no Product;
// isVariantOf of a Product expects a ProductGroup or ProductModel.
const products = ["IndividualProduct", "ProductGroup", "ProductModel"];

it("what pages tell programs uses each term of schema.org on what has it", async () => {
  const told = (await pagesOf()).flatMap(({ linkedData }): Fields[] =>
    linkedData ? [linkedData as Fields] : [],
  );
  expect(new Set(told.map((each) => each["@type"]))).toEqual(
    new Set([...products, "WebSite", "CollectionPage", "TechArticle", "ScholarlyArticle"]),
  );
  for (const each of told) {
    const isProduct = products.includes(String(each["@type"]));
    expect(each.inLanguage, String(each["@id"])).toBe(isProduct ? undefined : "en");
  }
  const family = {
    "@type": "ProductGroup",
    "@id": "https://example.org/families/chest/",
    url: "https://example.org/families/chest/",
    name: "Chests",
    productGroupID: "chest",
  };
  const ofType = (type: string) => told.find((each) => each["@type"] === type);
  expect(ofType("ProductGroup")).toMatchObject({ "@id": family["@id"] });
  expect(ofType("ProductModel")).toMatchObject({ isVariantOf: family });
  const outfit = ofType("IndividualProduct");
  expect(outfit).toMatchObject({
    isVariantOf: family,
    subjectOf: {
      "@type": "Dataset",
      distribution: {
        "@type": "DataDownload",
        contentUrl: "https://example.org/data/items/one.json",
        encodingFormat: "application/json",
      },
    },
  });
  expect(outfit?.subjectOf).not.toHaveProperty("contentUrl");
});
