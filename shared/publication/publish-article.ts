import type { Article } from "../records/article.ts";
import { lastChanged } from "../records/revision.ts";
import type { Redact } from "./masking.ts";
import { publishRevisions } from "./publish-revisions.ts";
import { freeOf } from "./publish-source.ts";
import type { Shown } from "./publish-variant.ts";
import type { PublishedArticle } from "./published.ts";

export const publishArticle = (article: Article, shown: Shown, free: Redact): PublishedArticle => ({
  id: article.id,
  title: free(article.title),
  authors: freeOf(article.authors, free),
  updated: lastChanged(article.updated, article.revisions)?.text ?? null,
  revisions: publishRevisions(article.revisions, free),
  abstract: shown(article.abstract),
  formerly: article.formerly,
  text: free(article.text),
});
