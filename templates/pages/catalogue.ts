import { addresses } from "../../shared/pages/addresses/addresses.ts";
import type { CataloguePage } from "../../shared/pages/collection/catalogue-page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export function catalogueTemplate(page: CataloguePage, site: PageSite): Html {
  const { words, templates, link } = site;
  const { catalogue: say, compare } = words.pages;
  return html`${templates["parts/opening"]({ page, below: html`<p class="lead">${page.lead}</p>` }, site)}
${page.finder && templates["parts/finder"](page.finder, site)}
${page.groups.length > 0 && html`<fieldset class="arrangement"><legend>${say.arrangement}</legend><label><input type="radio" name="arrangement" id="as-list" checked> ${say.asList}</label> <label><input type="radio" name="arrangement" id="as-plates"> ${say.asPlates}</label></fieldset>`}
${page.finder && templates["parts/found"]({}, site)}
${
  page.groups.length > 0 &&
  html`<div class="listed">
${templates["parts/entries"]({ groups: page.groups }, site)}
${page.pager && templates["parts/pager"](page.pager, site)}
</div>
<p class="small rank-note">${say.rankNote}</p>
${templates["parts/ticked"]({}, site)}`
}
${
  page.lists.length > 0 &&
  templates["parts/chapter"](
    {
      id: "lists",
      title: words.pages.finder.lists,
      note: html`<a href="${link(addresses.comparisons)}">${compare.title}</a>`,
      matter: html`${page.lists.map(
        ({ name, lists }) =>
          html`<h3>${name}</h3><ul class="contents">${lists.map(
            (list) =>
              html`<li><span class="contents-name"><a href="${link(list.address)}">${list.name}</a></span> <span class="leader"></span> <span class="contents-figure">${list.count}</span></li>`,
          )}</ul>`,
      )}`,
    },
    site,
  )
}
${page.files.length > 0 && html`<p class="small">${words.pages.site.data}: ${templates["parts/links"](page.files, site)}</p>`}
`;
}
