import type { MethodsPage, MethodView } from "../../shared/pages/collection/methods-page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export function methodsTemplate(page: MethodsPage, site: PageSite): Html {
  const { templates, words } = site;
  const say = words.pages.methods;
  const contents = (title: string, methods: readonly MethodView[]) =>
    html`<p><b>${title}</b> ${templates["parts/links"](
      methods.map(({ id, name }) => ({ address: `#${id}`, name })),
      site,
    )}</p>`;
  return html`${templates["parts/opening"](
    {
      page,
      below: html`<p class="lead">${say.lead}</p>
<nav class="method-contents" aria-label="${say.contents}">${contents(say.counts, page.counted)}${contents(say.estimates, page.estimated)}</nav>
<p class="small">${say.symbols} ${say.rounding}</p>`,
    },
    site,
  )}
${[...page.counted, ...page.estimated].map((method) => templates["parts/method"](method, site))}
`;
}
