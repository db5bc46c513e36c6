import type { PhotoView } from "../../shared/pages/item/item-photographs.ts";
import { type Html, html, markup } from "../html.ts";
import type { PageSite } from "../site.ts";
import { isBroad, isSquare, isTall, tallSizes } from "./picture.ts";

/**
 * The photographs, large; what is numbered in one is named beneath it. A link leads to each in full, which a
 * script turns into a closer look.
 */
export function photographs(photos: readonly PhotoView[], site: PageSite): Html {
  const { item: say, photographs: ofPhotographs } = site.words.pages;
  const { link, templates } = site;
  return html`<section class="plates" aria-label="${say.photographs}">${photos.map(
    ({
      id,
      place,
      image,
      largest,
      alt,
      caption,
      marks,
      legend,
    }) => html`<figure class="plate${isTall(image) && " plate-tall"}${isSquare(image) && " plate-square"}${isBroad(image) && " plate-broad"}" id="${id}" data-place="${ofPhotographs.ofAll(place, photos.length)}" data-width="${image.width}" data-height="${image.height}">
<div class="plate-picture">${templates["parts/picture"]({ image, alt, sizes: isTall(image) ? tallSizes : sizesOf(place), first: place === 1 }, site)}${marks !== "" && html`<div class="plate-marks">${markup(marks)}</div>`}</div>
<figcaption>${caption !== null && html`<span class="plate-caption">${caption}</span> `}${html`<a class="look-closely" href="${link(largest)}">${ofPhotographs.closer.open}<span class="unseen">: ${ofPhotographs.one(place)}</span></a>`}${
      legend.length > 0 &&
      html`<div role="group" aria-label="${say.legend}"><ol class="legend">${legend.map(
        ({ id: line, number, part, partId }) =>
          html`<li id="${line}" value="${number}" data-part="${partId}"><b>${number}</b> <a href="${part.address}">${part.name}</a></li>`,
      )}</ol></div>`
    }</figcaption>
</figure>`,
  )}</section>
${templates["parts/closer-look"](photos.length, site)}
`;
}

/** The first has the whole width, the others half of it where there is room. */
const sizesOf = (place: number): string =>
  place === 1 ? "(min-width: 90rem) 84rem, 91vw" : "(min-width: 90rem) 41rem, (min-width: 56rem) 44vw, 91vw";
