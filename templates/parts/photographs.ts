import type { PhotoView } from "../../shared/pages/item-page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** The photographs, large; what is numbered in one is named beneath it. */
export function photographs(photos: readonly PhotoView[], site: PageSite): Html {
  const say = site.words.pages.item;
  return html`<section class="plates" aria-label="${say.photographs}">${photos.map(
    ({ image, alt, caption, legend }, at) => html`<figure class="plate">
${site.templates["parts/picture"]({ image, alt, sizes: "(min-width: 90rem) 84rem, 100vw", first: at === 0 }, site)}
${
  (caption !== null || legend.length > 0) &&
  html`<figcaption>${caption}${
    legend.length > 0 &&
    html`<span class="unseen">${say.legend}: </span><ol class="legend">${legend.map(
      ({ part }) => html`<li><a href="${part.address}">${part.name}</a></li>`,
    )}</ol>`
  }</figcaption>`
}
</figure>`,
  )}</section>
`;
}
