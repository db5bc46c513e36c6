import type { SourcesPage } from "../../shared/pages/collection/sources-page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export function sourcesTemplate(page: SourcesPage, site: PageSite): Html {
  const { templates, words } = site;
  const say = words.pages.sources;
  return html`${templates["parts/opening"]({ page, below: html`<p class="lead">${page.sources.length === 0 ? say.none : say.lead}</p>` }, site)}
${templates["parts/bibliography"]({ sources: page.sources, idPrefix: "" }, site)}`;
}
