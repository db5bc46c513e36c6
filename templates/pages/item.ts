import { addresses } from "../../shared/pages/addresses/addresses.ts";
import type { ItemPage } from "../../shared/pages/item/item-page.ts";
import { type Html, html, markup } from "../html.ts";
import type { PageSite } from "../site.ts";

export function itemTemplate(page: ItemPage, site: PageSite): Html {
  const { words, link, templates } = site;
  const { item: say, completeness: ofCompleteness, variant: ofVariant } = words.pages;
  const chapter = templates["parts/chapter"];
  const drawing = (kind: string, svg: string | null) => templates["parts/drawing"]({ kind, svg }, site);
  const links = (list: ItemPage["sources"]) => templates["parts/links"](list, site);
  const { completeness, rarity } = page;
  const reserved = (matter: Html): Html =>
    page.identity.reservation === null
      ? matter
      : html`<p class="reservation">${page.identity.reservation}</p>${matter}`;

  return html`<article class="entry-page">
${templates["parts/item-opening"](page, site)}
${page.photos.length > 0 && templates["parts/photographs"](page.photos, site)}
${page.recording && chapter({ id: "recording", title: words.pages.photographs.recording[page.recording.kind], note: page.recording.moments.length + page.recording.said.length > 0 && words.pages.photographs.recording.note, matter: templates["parts/recording"](page.recording, site) }, site)}
${chapter({ id: "plan", title: say.plan, note: page.planNote, matter: drawing("plan", page.plan) }, site)}
${chapter(
  {
    id: "completeness",
    title: ofCompleteness.title,
    note: html`<a href="${link(addresses.method("completeness"))}">${ofCompleteness.method}</a>`,
    matter: reserved(templates["parts/completeness"](completeness, site)),
  },
  site,
)}
${chapter({ id: "missing", title: say.missing, matter: reserved(page.noPartIssued === null ? templates["parts/findings"](page.findings, site) : html`<p class="lead">${page.noPartIssued}</p>`) }, site)}
${chapter(
  {
    id: "rarity",
    title: say.rarity,
    note: html`${say.figuresNote} ${rarity.counted} <a href="${link(rarity.sightings.address)}">${rarity.sightings.name}</a>`,
    matter: reserved(html`<h3>${say.rarityHere}</h3>
${rarity.rank !== null && html`<p class="lead">${words.pages.capital(rarity.rank)}.</p>`}
${templates["parts/figures"]({ figures: rarity.here }, site)}
<h3><a href="${link(page.variant.address)}">${say.rarityVariant(page.variant.name)}</a></h3>
${templates["parts/figures"]({ figures: rarity.variant, class: rarity.class }, site)}`),
  },
  site,
)}
${page.text !== "" && chapter({ id: "description", title: say.notes, matter: html`<div class="prose">${markup(page.text)}</div>` }, site)}
${page.hazards.length > 0 && chapter({ id: "cautions", title: say.cautions, matter: templates["parts/cautions"](page.hazards, site) }, site)}
${chapter({ id: "parts", title: say.parts, matter: templates["parts/parts-table"](page, site) }, site)}
${templates["parts/item-evidence"](page, site)}
${page.labels.length > 0 && chapter({ id: "labels", title: say.papers, matter: templates["parts/labels"](page.labels, site) }, site)}
${chapter({ id: "dating", title: say.dating, note: html`<a href="${link(addresses.method("dating"))}">${words.pages.methods.title}</a>`, matter: reserved(templates["parts/dating"](page.dating, site)) }, site)}
${chapter({ id: "custody", title: say.custody, note: html`<a href="${link(addresses.method("custody"))}">${words.pages.methods.title}</a>`, matter: templates["parts/custody"](page.custody, site) }, site)}
${
  (page.completing.wants.length > 0 || page.completing.spares.length > 0) &&
  chapter(
    {
      id: "completing",
      title: say.wants,
      note: html`${say.wantsNote} <a href="${link(addresses.wants)}">${words.pages.wants.title}</a>`,
      matter: reserved(templates["parts/completing"](page.completing, site)),
    },
    site,
  )
}
${
  (page.siblings.length > 0 || page.nearest.length > 0) &&
  chapter(
    {
      id: "others",
      title: say.comparison,
      matter: html`${
        page.siblings.length > 0 &&
        html`<ul class="contents">${page.siblings.map(
          ({ outfit, verdict, beside }) =>
            html`<li><span class="contents-name"><a href="${link(outfit.address)}">${outfit.name}</a>${verdict !== null && html` <small><em>${verdict}</em></small>`}</span> <span class="leader"></span> <span class="contents-figure"><a href="${link(beside.address)}">${beside.name}<span class="unseen">: ${outfit.name}</span></a></span></li>`,
        )}</ul>`
      }<p>${links([page.allSiblings, page.variant, page.family])}</p>
${page.nearest.length > 0 && templates["parts/nearest"](page.nearest, site)}`,
    },
    site,
  )
}
${page.confidential && templates["parts/confidential"](page.confidential, site)}
${chapter(
  {
    id: "sources",
    title: say.sources,
    matter: html`<p>${page.sources.length > 0 ? links(page.sources) : ofVariant.none}</p>
<dl class="closing">${templates["parts/cite"](page, site)}${page.displayCard && html`<div class="to-card"><dt>${words.pages.displayCard.term}</dt><dd><a href="${link(page.displayCard.address)}">${page.displayCard.name}</a></dd></div>`}${
      page.manifest &&
      html`<div><dt>${say.photographs}</dt><dd><a href="${link(page.manifest.address)}">${page.manifest.name}</a></dd></div>`
    }</dl>${page.offSheet !== null && html`<p class="off-sheet">${page.offSheet}</p>`}`,
  },
  site,
)}
</article>
`;
}
