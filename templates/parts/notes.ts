import type { ArticlePage } from "../../shared/pages/article/article-page.ts";
import { type Html, html, joined } from "../html.ts";
import type { PageSite } from "../site.ts";

/** At the end of an article: each of its figures, numbered as in the text, with what it rests on, run in. */
export function notes({ notes: list }: Pick<ArticlePage, "notes">, site: PageSite): Html {
  const { words, link, templates } = site;
  const { articles: say, figure: ofFigure } = words.pages;
  return html`<ol class="notes">${list.map(({ number, label, subject, figure, places }) => {
    const { phrase, withheld, doubt, method, inputs, confidence, sources, caveats } = figure;
    const given = inputs
      .filter(({ value }) => value !== "")
      .map(({ name, value }) => html`${name} <b>${value}</b>`);
    return html`<li id="basis-${number}"><p><b>${words.pages.capital(phrase)}</b>${confidence !== null && ` (${ofFigure.intervalAside(confidence)})`}. ${label}, <a href="${link(subject.address)}">${subject.name}</a>.${withheld !== null && ` ${withheld}`}
${ofFigure.method}: <a href="${link(method.address)}">${method.name}</a>${given.length > 0 && html`; ${words.pages.inText(ofFigure.from)}: ${joined(given, ", ")}`}.
${sources.length > 0 && html`${ofFigure.sources}: ${templates["parts/links"](sources, site)}.`}
${(doubt !== null || caveats.length > 0) && html`<i>${[doubt, ...caveats].filter((text) => text !== null).join(" ")}</i>`}${places.map(
  (place, at) =>
    html` <a class="back" role="doc-backlink" href="#${place}" aria-label="${say.back(number, at + 1)}">↑</a>`,
)}</p></li>
`;
  })}</ol>`;
}
