import { expect, it } from "vitest";
import type { Page } from "../../shared/pages/site-pages.ts";
import { everyFile } from "../../shared/site/eleventy/every-file.ts";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";

const root = writeCollection(
  smallCollection("parts: { p: { name: Peg } }\n", {
    "content/items/one.md": item("parts: { p: present }"),
    "content/articles/pegs.md": "---\ntitle: Pegs\nauthors: [A. Author]\nupdated: 2026-01-01\n---\nText.\n",
    "content/articles/unsigned.md": "---\ntitle: Unsigned\nupdated: 2026-01-01\n---\nText.\n",
  }),
);

async function pagesOf(of = root): Promise<Page[]> {
  const site = await everyFile(of, "public");
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
    // Nothing to say is left unsaid.
    expect(JSON.stringify(each)).not.toMatch(/\[\]|null/);
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

// schema.org, from memory: an Offer has price and priceCurrency (ISO 4217), and its availability is an ItemAvailability.
it.each([
  ["offered", "shown", { price: 1800, priceCurrency: "EUR", availability: "https://schema.org/InStock" }],
  ["offered", "hidden", undefined],
  ["sold", "shown", undefined],
])("an outfit that is %s, its price %s, is an offer to programs, or none", async (status, shown, offer) => {
  const priced = `status: ${status}\nprice: { amount: 1800, currency: EUR }\npublish: { price: ${shown} }`;
  const of = writeCollection(
    smallCollection("parts: { p: { name: Peg } }\n", {
      "content/items/one.md": item(`${priced}\nparts: { p: present }`),
    }),
  );
  const told = (await pagesOf(of)).map(({ linkedData }) => linkedData as Fields | null);
  const outfit = told.find((each) => each?.["@type"] === "IndividualProduct");
  if (offer === undefined) expect(outfit).not.toHaveProperty("offers");
  else expect(outfit?.offers).toEqual({ "@type": "Offer", url: "https://example.org/items/one/", ...offer });
});
