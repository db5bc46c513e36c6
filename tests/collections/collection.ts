import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { noMedia } from "../../shared/images/media.ts";
import { indexCollection } from "../../shared/pages/collection-index.ts";
import { articleData } from "../../shared/pages/data/article-data.ts";
import { dataFiles } from "../../shared/pages/data/data-files.ts";
import { familyData } from "../../shared/pages/data/family-data.ts";
import { itemData } from "../../shared/pages/data/item-data.ts";
import type { OutputFile } from "../../shared/pages/data/output-file.ts";
import { variantData } from "../../shared/pages/data/variant-data.ts";
import type { CatalogueIndex } from "../../shared/pages/listed/catalogue-index.ts";
import { listFamilies } from "../../shared/pages/listed/list-families.ts";
import { publishCollection } from "../../shared/publication/publish-collection.ts";
import type { Audience, PublishedCollection } from "../../shared/publication/published.ts";
import { checkCollection } from "../../shared/site/checks/check-collection.ts";
import { english } from "../../shared/words/en/english.ts";

/** Paths relative to the collection's folder, with what stands in them. */
export type Files = Readonly<Record<string, string | Uint8Array>>;

export function writeFiles(root: string, files: Files): void {
  for (const [file, text] of Object.entries(files)) {
    const full = path.join(root, file);
    mkdirSync(path.dirname(full), { recursive: true });
    writeFileSync(full, text);
  }
}

/** A collection in a new folder of its own. */
export function writeCollection(files: Files): string {
  const root = mkdtempSync(path.join(tmpdir(), "fittedcase-"));
  writeFiles(root, files);
  return root;
}

/** What may be shown of a collection in a folder; a problem is a failed test. */
export function publishedIn(root: string, audience: Audience = "public"): PublishedCollection {
  const loaded = checkCollection(root);
  const errors = loaded.diagnostics.filter(({ severity }) => severity === "error");
  if (!loaded.sound) throw new Error(`The collection has errors: ${JSON.stringify(errors, null, 2)}`);
  return publishCollection(loaded.sound.collection, loaded.sound.assessments, audience, english);
}

/** What the pages of the whole collection are made from, without pictures. */
export function catalogueOf(published: PublishedCollection): CatalogueIndex {
  const index = indexCollection(published, english, noMedia, new Map());
  return { ...index, listed: listFamilies(index) };
}

/** The data files of a collection, by address, as a reader of the site gets them. */
export function dataOf(files: Files, audience: Audience = "public"): Map<string, unknown> {
  return new Map(
    dataFilesOf(publishedIn(writeCollection(files), audience)).map(({ address, text }) => [
      address,
      address.endsWith(".json") ? JSON.parse(text) : text,
    ]),
  );
}

export function dataFilesOf(published: PublishedCollection): OutputFile[] {
  const index = catalogueOf(published);
  return [
    ...dataFiles(index, []),
    ...published.items.map((item) => itemData(item, index)),
    ...published.variants.map(variantData),
    ...published.families.map((family) => familyData(family, index)),
    ...published.articles.map((article) => articleData(article, index)),
  ];
}

/** The least that a collection needs: one family, one variant with the given YAML, and nothing else. */
export const smallCollection = (variant: string, more: Files = {}): Files => ({
  "content/collection.yaml": "title: A test collection\nurl: https://example.org/\n",
  "schemas/reference/chest/family.yaml":
    "name: Chests\nfeatures:\n  lock: { name: Lock, values: [iron, brass, steel] }\n  lid: { name: Lid, values: [flat, domed] }\n",
  "schemas/reference/chest/chest-a.yaml": `name: Chest A\n${variant}`,
  ...more,
});

export const item = (frontMatter: string): string =>
  `---\ntitle: A chest\nvariant: chest-a\n${frontMatter}\n---\nText.\n`;
