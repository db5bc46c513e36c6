import type { ItemPage } from "../../shared/pages/item/item-page.ts";
import { type Html, html, joined } from "../html.ts";
import type { PageSite } from "../site.ts";

/** Each label as it reads, line for line. */
export function labels(list: ItemPage["labels"], { words }: PageSite): Html {
  return html`<div class="labels">${list.map(
    ({ kind, where, text, part, note }) => html`<figure>
<blockquote>${joined(text, html`<br>`)}</blockquote>
<figcaption>${words.pages.capital(kind)}${where !== null && `, ${where}`}${
      part && html` (<a href="${part.address}">${part.name}</a>)`
    }${note !== null && html`. ${note}`}</figcaption>
</figure>`,
  )}</div>`;
}
