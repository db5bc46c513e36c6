import type { PageHead } from "../../shared/pages/page.ts";
import { keptNumbers } from "../../shared/pages/views/kept-numbers.ts";
import { type Html, type HtmlValue, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export interface Opening {
  readonly page: PageHead;
  /** Above the title. */
  readonly above?: HtmlValue;
  /** Below the title. */
  readonly below?: HtmlValue;
}

/** How a page begins: where it stands, its title, and what must be known at once. */
export function opening({ page, above, below }: Opening, site: PageSite): Html {
  return html`<header class="opening">
${site.templates["parts/trail"](page, site)}
${above}
<h1>${keptNumbers(page.title)}</h1>
${below}
</header>`;
}
