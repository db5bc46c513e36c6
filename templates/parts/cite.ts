import type { CiteView } from "../../shared/pages/cite-view.ts";
import type { Link } from "../../shared/pages/page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export interface Cite {
  readonly cite: CiteView;
  readonly data: Link;
}

/** How this page is cited, and where its figures are with all their digits. */
export function cite({ cite: view, data }: Cite, { words, link }: PageSite): Html {
  const { cite: say, item } = words.pages;
  return html`<div><dt>${say.title}</dt><dd>${view.text}
<details class="cite"><summary>${say.forPrograms}</summary>
<h3>${say.bibtex}</h3>
<pre tabindex="0"><code>${view.bibtex}</code></pre>
<h3>${say.csl}</h3>
<pre tabindex="0"><code>${view.csl}</code></pre>
${view.version !== null && html`<p class="small">${say.versionNote}</p>`}
</details></dd></div>
<div><dt>${item.data}</dt><dd>${item.dataNote} <a href="${link(data.address)}">${data.name}</a></dd></div>`;
}
