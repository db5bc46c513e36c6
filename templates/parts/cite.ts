import type { CiteView } from "../../shared/pages/citation/cite-view.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export interface Cite {
  readonly cite: CiteView;
}

/** How this page is cited, what of it was changed, and where its figures are with all their digits. */
export function cite({ cite: view }: Cite, site: PageSite): Html {
  const { words, templates } = site;
  const { cite: say, item } = words.pages;
  return html`<div><dt>${say.title}</dt><dd>${view.text}
<details class="cite"><summary>${say.forPrograms}</summary>
<h3>${say.bibtex}</h3>
<pre tabindex="0"><code>${view.bibtex}</code></pre>
<h3>${say.csl}</h3>
<pre tabindex="0"><code>${view.csl}</code></pre>
${view.version !== null && html`<p class="small">${say.versionNote}</p>`}
</details></dd></div>
${
  view.revisions.length > 0 &&
  html`<div><dt>${say.revisions}</dt><dd><ol class="revisions">${view.revisions.map(
    ({ date, note }) => html`<li><span class="when">${date}:</span> ${note}</li>`,
  )}</ol></dd></div>`
}
<div><dt>${item.data}</dt><dd>${item.dataNote} ${templates["parts/links"](view.data, site)}</dd></div>`;
}
