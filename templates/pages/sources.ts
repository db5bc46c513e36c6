import type { SourcesPage } from "../../shared/pages/sources-page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export function sourcesTemplate(page: SourcesPage, site: PageSite): Html {
  const { templates, words } = site;
  const say = words.pages.sources;
  return html`${templates["parts/opening"]({ page, below: html`<p class="lead">${page.sources.length === 0 ? say.none : say.lead}</p>` }, site)}
<ol class="bibliography">${page.sources.map(
    ({ id, authors, title, within, details, url, note, cited }) => html`<li id="${id}">
<p>${authors !== "" && `${authors}. `}${within === null ? html`<cite>${title}</cite>` : html`“${title}.” ${say.inside} <cite>${within}</cite>`}${details !== "" && `, ${details}`}.${url !== null && html` <a href="${url}">${url}</a>`}</p>
${note !== null && html`<p class="small">${note}</p>`}
<p class="small cited">${cited.length === 0 ? say.notCited : html`${say.cited}: ${templates["parts/links"](cited, site)}`}</p>
</li>`,
  )}</ol>
`;
}
