import { type Html, type HtmlValue, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export interface Chapter {
  readonly id: string;
  readonly title: string;
  /** In the margin, below the title. */
  readonly note?: HtmlValue;
  readonly matter: HtmlValue;
}

/**
 * A division of a page: its title in the margin, its matter beside it. Some are named after a record, and no id of a
 * record has a low line.
 */
export function chapter({ id, title, note, matter }: Chapter, _site: PageSite): Html {
  return html`<section class="chapter chapter-${id}" id="${id}" aria-labelledby="${id}_title">
<div class="side"><h2 id="${id}_title">${title}</h2>${note && html`<div class="side-note">${note}</div>`}</div>
<div class="matter">${matter}</div>
</section>
`;
}
