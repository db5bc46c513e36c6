import type { PublishedArticle } from "../../publication/published.ts";
import { remarksInARow } from "../../words/ended.ts";
import { addresses } from "../addresses/addresses.ts";
import { authorInLinkedData, authorInWords } from "../citation/author-names.ts";
import { type CiteView, citeView, dataLink } from "../citation/cite-view.ts";
import { linkedData } from "../citation/linked-data.ts";
import { isoDate } from "../citation/plain-date.ts";
import type { SourceEntry } from "../citation/source-reference.ts";
import type { CollectionIndex } from "../collection-index.ts";
import { firstSentence } from "../family/family-page.ts";
import type { Link, PageHead } from "../page.ts";
import { type ArticleBlock, articleBlocks } from "../prose/article-blocks.ts";
import { gatherNotes, type Note } from "../prose/notes.ts";

export interface ArticleSummary {
  readonly article: Link;
  /** By whom, and when it was revised; empty where neither is recorded. */
  readonly byline: string;
  readonly abstract: string | null;
}

export interface ArticlePage extends PageHead {
  readonly kind: "article";
  readonly id: string;
  /** By whom, and when it was revised; empty where neither is recorded. */
  readonly byline: string;
  readonly abstract: string | null;
  readonly blocks: readonly ArticleBlock[];
  /** What each figure of the text rests on. */
  readonly notes: readonly Note[];
  readonly bibliography: readonly SourceEntry[];
  readonly others: readonly Link[];
  readonly cite: CiteView;
}

export interface ArticlesPage extends PageHead {
  readonly kind: "articles";
  readonly articles: readonly ArticleSummary[];
}

export function articleSummary(article: PublishedArticle, { words }: CollectionIndex): ArticleSummary {
  const say = words.pages.articles;
  return {
    article: { address: addresses.article(article.id), name: article.title },
    byline: remarksInARow([
      ...(article.authors.length === 0 ? [] : [say.by(words.pages.list(article.authors.map(authorInWords)))]),
      ...(article.updated ? [say.revised(words.date(article.updated))] : []),
    ]),
    abstract: article.abstract,
  };
}

export function articlePage(article: PublishedArticle, index: CollectionIndex): ArticlePage {
  const { collection, words } = index;
  const say = words.pages.articles;
  const address = addresses.article(article.id);
  const { byline, abstract } = articleSummary(article, index);
  const description = firstSentence(article.abstract ?? article.title);
  const notes = gatherNotes();
  const blocks = articleBlocks(article.text, { page: address, below: 1, index, notes });
  const bibliography = notes.bibliography(index);
  return {
    kind: "article",
    address,
    title: article.title,
    description,
    trail: [
      { address: addresses.home, name: collection.settings.title },
      { address: addresses.articles, name: say.title },
    ],
    linkedData: linkedData(collection, "ScholarlyArticle", address, {
      headline: article.title,
      description,
      author: article.authors.length === 0 ? null : article.authors.map(authorInLinkedData),
      dateModified: isoDate(article.updated),
      citation:
        bibliography.length === 0
          ? null
          : bibliography.map(({ title: name }) => ({ "@type": "CreativeWork", name })),
    }),
    id: article.id,
    byline,
    abstract,
    blocks,
    notes: notes.list(),
    bibliography,
    others: collection.articles
      .filter(({ id }) => id !== article.id)
      .map(({ id, title }) => ({ address: addresses.article(id), name: title })),
    cite: citeView(
      {
        id: article.id,
        title: article.title,
        authors: article.authors,
        updated: article.updated,
        revisions: article.revisions,
        address,
        data: [dataLink(addresses.articleData(article.id))],
      },
      index,
    ),
  };
}

export function articlesPage(index: CollectionIndex): ArticlesPage {
  const { collection, words } = index;
  const say = words.pages.articles;
  return {
    kind: "articles",
    address: addresses.articles,
    title: say.title,
    description: say.description,
    trail: [{ address: addresses.home, name: collection.settings.title }],
    linkedData: linkedData(collection, "CollectionPage", addresses.articles, {
      name: say.title,
      description: say.description,
    }),
    articles: collection.articles.map((article) => articleSummary(article, index)),
  };
}
