import type { ArticlePage } from "../../shared/pages/article-page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** At the end of an article: each of its figures, numbered as in the text, with what it rests on. */
export function notes({ notes: list }: Pick<ArticlePage, "notes">, site: PageSite): Html {
  const { words, link, templates } = site;
  const say = words.pages.articles;
  return html`<ol class="notes">${list.map(
    ({ number, label, subject, figure, places }) => html`<li id="basis-${number}">
<p class="note-head"><a href="${link(subject.address)}">${subject.name}</a>. ${label}: <b>${figure.withheld === null ? figure.phrase : words.pages.figure.notKnown.toLowerCase()}</b>${places.map(
      (place, at) => html` <a class="back" href="#${place}" aria-label="${say.back(number, at + 1)}">↑</a>`,
    )}${figure.withheld !== null && html` <span class="reason">${figure.withheld}</span>`}</p>
${templates["parts/evidence"](figure, site)}
</li>`,
  )}</ol>`;
}
