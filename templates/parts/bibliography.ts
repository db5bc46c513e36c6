import type { SourceEntry } from "../../shared/pages/citation/source-reference.ts";
import type { Link } from "../../shared/pages/page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export interface Bibliography {
  readonly sources: readonly (SourceEntry & { readonly cited?: readonly Link[] })[];
  /** What stands before an id: a page may have other things of the same name. */
  readonly idPrefix: string;
}

/** Sources as a bibliography sets them: titles in italics, what stands within something in quotation marks. */
export function bibliography({ sources, idPrefix }: Bibliography, site: PageSite): Html {
  const { templates, words } = site;
  const say = words.pages.sources;
  return html`<ol class="bibliography">${sources.map(
    ({
      id,
      authors,
      title,
      within,
      details,
      end,
      url,
      accessed,
      note,
      cited,
    }) => html`<li id="${idPrefix}${id}">
<p>${authors !== "" && `${authors} `}${within === null ? html`<cite>${title}</cite>` : html`${say.inQuotes(title)} ${say.inside} <cite>${within}</cite>`}${details !== "" && `, ${details}`}${end}${url !== null && html` <a href="${url}">${url}</a>`}${accessed !== null && ` (${accessed})`}</p>
${note !== null && html`<p class="small">${note}</p>`}
${cited && html`<p class="small cited">${cited.length === 0 ? say.notCited : html`${say.cited}: ${templates["parts/links"](cited, site)}`}</p>`}
</li>`,
  )}</ol>
`;
}
