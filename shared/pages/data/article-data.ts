import { mentionsIn } from "../../prose/mentions.ts";
import type { Lookup } from "../../publication/lookup.ts";
import type { PublishedArticle } from "../../publication/published.ts";
import { dataOf } from "../../publication/references/reading.ts";
import { readingAt } from "../../publication/references/reading-at.ts";
import { addresses } from "../addresses/addresses.ts";
import { jsonFile, type OutputFile } from "./output-file.ts";

/** `/data/articles/<id>.json`: the text as it was written, and every figure that it carries, to the last digit. */
export function articleData(article: PublishedArticle, lookup: Lookup): OutputFile {
  const figures = new Map<string, unknown>();
  const sources = new Set<string>();
  for (const mention of mentionsIn(article.text)) {
    if (mention.kind === "citation") sources.add(mention.cite.source);
    if (mention.kind !== "reference" || mention.reference.scheme !== "figure") continue;
    const { path } = mention.reference;
    const found = readingAt(path, lookup);
    if ("value" in found) figures.set(path.join("/"), dataOf(found.value.reading));
  }
  return jsonFile(addresses.articleData(article.id), {
    ...article,
    address: addresses.article(article.id),
    figures: Object.fromEntries(figures),
    sources: [...sources].sort(),
  });
}
