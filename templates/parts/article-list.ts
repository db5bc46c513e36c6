import type { ArticleSummary } from "../../shared/pages/article/article-page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export function articleList(articles: readonly ArticleSummary[], { link }: PageSite): Html {
  return html`<ul class="articles">${articles.map(
    ({
      article,
      byline,
      abstract,
    }) => html`<li><p class="article-title"><a href="${link(article.address)}">${article.name}</a></p>
${byline && html`<p class="small">${byline}</p>`}
${abstract && html`<p>${abstract}</p>`}</li>`,
  )}</ul>`;
}
