import type { ArticlesPage } from "../../shared/pages/article/article-page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export function articlesTemplate(page: ArticlesPage, site: PageSite): Html {
  const { templates, words } = site;
  return html`${templates["parts/opening"]({ page }, site)}
${
  page.articles.length === 0
    ? html`<p class="lead">${words.pages.articles.none}</p>`
    : templates["parts/article-list"](page.articles, site)
}
`;
}
