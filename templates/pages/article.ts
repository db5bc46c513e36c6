import type { ArticlePage } from "../../shared/pages/article/article-page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export function articleTemplate(page: ArticlePage, site: PageSite): Html {
  const { templates, words } = site;
  const say = words.pages.articles;
  const chapter = templates["parts/chapter"];
  return html`<article class="essay">
${templates["parts/opening"](
  {
    page,
    below: html`${page.byline && html`<p class="byline">${page.byline}</p>`}${page.abstract && html`<p class="abstract">${page.abstract}</p>`}`,
  },
  site,
)}
${page.blocks.map((block) => templates["parts/article-block"](block, site))}
${page.notes.length > 0 && chapter({ id: "notes", title: say.notes, note: say.notesLead, matter: templates["parts/notes"](page, site) }, site)}
${page.bibliography.length > 0 && chapter({ id: "bibliography", title: say.bibliography, matter: templates["parts/bibliography"]({ sources: page.bibliography, idPrefix: "source-" }, site) }, site)}
${chapter(
  {
    id: "cite",
    title: say.about,
    matter: html`<dl class="closing">${templates["parts/cite"](page, site)}
${page.others.length > 0 && html`<div><dt>${say.others}</dt><dd>${templates["parts/links"](page.others, site)}</dd></div>`}</dl>`,
  },
  site,
)}
</article>
`;
}
