import type { MethodView } from "../../shared/pages/collection/methods-page.ts";
import { type Html, html, markup } from "../html.ts";
import type { PageSite } from "../site.ts";

const subscripts = "₀₁₂₃₄₅₆₇₈₉";

/** Subscript digits as the font can set them. */
const formulaText = (formula: string): Html[] =>
  formula
    .split(/([₀-₉]+)/)
    .map((piece, at) =>
      at % 2 === 0
        ? html`${piece}`
        : html`<sub>${[...piece].map((digit) => subscripts.indexOf(digit)).join("")}</sub>`,
    );

/** One method: the question it answers, and an example from the catalogue itself. */
export function method(view: MethodView, site: PageSite): Html {
  const { words, templates } = site;
  const say = words.pages.methods;
  const { example } = view;
  // What is taken from a source, and from no formula, is shown by the source.
  const sources = example && view.mathematics.length === 0 ? example.figure.sources : [];
  const given = [
    ...sources.map(({ name }) => name),
    ...(example?.figure.inputs ?? []).map(({ name, value }) => `${name} ${value}`),
  ];
  return templates["parts/chapter"](
    {
      id: view.id,
      title: view.name,
      note: html`<p class="asks">${view.asks}</p>`,
      matter: html`<p class="formula">${formulaText(view.formula)}</p>
${view.mathematics.map((formula) => html`<div class="mathematics" role="group" aria-label="${view.name}" tabindex="0">${markup(formula)}</div>`)}
<dl class="figures plain">
<div><dt>${say.source}</dt><dd>${view.source}</dd></div>
<div><dt>${say.assumes}</dt><dd>${view.assumes}</dd></div>
${view.changes !== null && html`<div><dt>${words.pages.figure.changes}</dt><dd>${view.changes}</dd></div>`}
${view.worked !== null && html`<div><dt>${say.worked}</dt><dd>${formulaText(view.worked)}</dd></div>`}
${
  example &&
  html`<div><dt>${say.example}</dt><dd>${templates["parts/links"]([example.at], site)}. ${say.exampleOf(example.label)} ${given.join(", ")} ${say.gives} <b>${example.figure.phrase}</b>.</dd></div>`
}
</dl>`,
    },
    site,
  );
}
