import type { FieldsPage } from "../../shared/pages/collection/fields-page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** What the schemas and the catalogue of problems say is written in English, whatever the site's language. */
export function fieldsTemplate(page: FieldsPage, site: PageSite): Html {
  const { templates, words } = site;
  const say = words.pages.fields;
  const field = ({
    path,
    takes,
    required,
    meaning,
    example,
  }: FieldsPage["records"][number]["fields"][number]) =>
    html`<div><dt><code>${path}</code> <span class="takes">${takes}${required && html`; ${say.required}`}</span></dt>
<dd lang="en">${meaning}${example !== null && html` <code class="example">${example}</code>`}</dd></div>`;
  const contents = [
    ...page.records.map(({ id, name }) => ({ address: `#${id}`, name })),
    { address: "#problems", name: say.problems },
  ];
  return html`${templates["parts/opening"](
    {
      page,
      below: html`<p class="lead">${say.lead}</p>
<nav aria-label="${say.contents}"><p>${templates["parts/links"](contents, site)}</p></nav>`,
    },
    site,
  )}
${page.records.map(({ id, name, description, fields }) =>
  templates["parts/chapter"](
    {
      id,
      title: name,
      note: html`<p lang="en">${description}</p>`,
      matter: html`<dl class="fields">${fields.map(field)}</dl>`,
    },
    site,
  ),
)}
${templates["parts/chapter"](
  {
    id: "problems",
    title: say.problems,
    note: html`<p>${say.problemsNote}</p>`,
    matter: html`<dl class="fields">${page.problems.map(
      ({ code, severity, meaning }) =>
        html`<div id="problem-${code}"><dt><code>${code}</code> <span class="takes">${say[severity]}</span></dt><dd lang="en">${meaning}</dd></div>`,
    )}</dl>`,
  },
  site,
)}`;
}
