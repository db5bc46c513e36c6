import type { WantsPage } from "../../shared/pages/collection/wants-page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";
import { withRoles } from "../table-roles.ts";

export function wantsTemplate(page: WantsPage, site: PageSite): Html {
  const { templates, words, link } = site;
  const { wants: say, item: ofItem, variant: ofVariant } = words.pages;
  const chapter = templates["parts/chapter"];
  const row = ({ part, item, variant, doubt, units }: WantsPage["spare"][number], adds?: string) =>
    html`<tr><th scope="row"><a href="${link(part.address)}">${part.name}</a></th><td data-label="${say.outfit}"><a href="${link(item.address)}">${item.name}</a> <small>${variant.name}${doubt !== null && html`, <em>${doubt}</em>`}</small></td><td class="number" data-label="${say.units}">${units}</td>${adds !== undefined && html`<td class="number adds" data-label="${ofItem.wantsAdds}">${adds}</td>`}</tr>`;
  const reservation = (rows: WantsPage["wanted"]) =>
    rows.some(({ doubt }) => doubt !== null) && html`<p class="reservation">${say.doubtNote}</p>`;
  const head = (adds: boolean) =>
    html`<thead><tr><th scope="col">${ofItem.part}</th><th scope="col">${say.outfit}</th><th scope="col" class="number">${say.units}</th>${adds && html`<th scope="col" class="number">${ofItem.wantsAdds}</th>`}</tr></thead>`;
  return html`${templates["parts/opening"]({ page, below: html`<p class="lead">${say.lead}</p>` }, site)}
${chapter(
  {
    id: "wanted",
    title: say.wanted,
    note: ofItem.wantsNote,
    matter:
      page.wanted.length === 0
        ? html`<p>${say.nothingWanted}</p>`
        : html`${withRoles(
            html`<table class="logs">${head(true)}<tbody>${page.wanted.map((want) => row(want, want.adds))}</tbody></table>`,
          )}${page.moreWanted !== null && html`<p class="small">${page.moreWanted}</p>`}${reservation(page.wanted)}`,
  },
  site,
)}
${chapter(
  {
    id: "spare",
    title: say.spare,
    note: say.spareNote,
    matter:
      page.spare.length === 0
        ? html`<p>${say.nothingSpare}</p>`
        : html`${withRoles(
            html`<table class="logs">${head(false)}<tbody>${page.spare.map((spare) => row(spare))}</tbody></table>`,
          )}${page.moreSpare !== null && html`<p class="small">${page.moreSpare}</p>`}${reservation(page.spare)}`,
  },
  site,
)}
${
  page.completed.length > 0 &&
  chapter(
    {
      id: "completed",
      title: ofVariant.reallocation,
      note: ofVariant.reallocationNote,
      matter: html`${page.completed.map(
        ({ variant, view }) =>
          html`<h3><a href="${link(variant.address)}">${variant.name}</a></h3>${templates[
            "parts/reallocation"
          ](
            {
              ...view,
              moves: view.moves.map((move) => ({
                ...move,
                part: { ...move.part, address: link(move.part.address) },
              })),
            },
            site,
          )}`,
      )}`,
    },
    site,
  )
}
`;
}
