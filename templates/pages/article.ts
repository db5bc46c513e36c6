import type { ArticlePage } from "../../shared/pages/article-page.ts";
import { type Html, html, markup } from "../html.ts";
import type { PageSite } from "../site.ts";

export function articleTemplate(page: ArticlePage, site: PageSite): Html {
  const { templates, words } = site;
  const byline = [page.byline, page.revised].filter((text) => text !== null).join(". ");
  return html`<article class="essay">
${templates["parts/opening"](
  {
    page,
    below: html`${byline !== "" && html`<p class="byline">${byline}</p>`}${page.abstract && html`<p class="abstract">${page.abstract}</p>`}`,
  },
  site,
)}
<div class="prose">${markup(page.text)}</div>
${page.others.length > 0 && html`<p class="small">${words.pages.articles.others}: ${templates["parts/links"](page.others, site)}</p>`}
</article>
`;
}
