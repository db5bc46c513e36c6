import type { RecordingView } from "../../shared/pages/item/item-recording.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/**
 * What is said, with its times. No browser shows captions over sound, so that there it stands open (WCAG 2.2, 1.2.1); a
 * film has it for those who would rather read.
 */
function transcript({ kind, said }: RecordingView, { link, words }: PageSite): Html {
  const title = words.pages.photographs.recording.said;
  const list = html`<ol class="said">${said.map(
    ({ words: line, seconds, time, address }) =>
      html`<li><a class="moment" href="${link(address)}" data-seconds="${seconds}">${time}</a> <span>${line}</span></li>`,
  )}</ol>`;
  return kind === "video"
    ? html`<details class="transcript"><summary>${title}</summary>${list}</details>`
    : html`<h3 id="said">${title}</h3>
${list}`;
}

/**
 * A film or a sound recording with its chapters, captions and what is said. Each moment is a link to the file from that second
 * on, which a script turns into a jump within the player above.
 */
export function recording(view: RecordingView, site: PageSite): Html {
  const { link, words, settings } = site;
  const say = words.pages.photographs.recording;
  const { kind, type, address, captions, chapters, caption, moments, said } = view;
  const tracks = html`${captions !== null && html`<track kind="captions" src="${link(captions)}" srclang="${settings.language}" label="${say.captions}" default>`}${chapters !== null && html`<track kind="chapters" src="${link(chapters)}" srclang="${settings.language}" label="${say.chapters}">`}`;
  const inside = html`<source src="${link(address)}" type="${type}">${tracks}<a href="${link(address)}">${say.download}</a>`;
  const label = kind === "video" ? say.video : say.sound;
  return html`<figure class="recording">
${
  kind === "video"
    ? html`<video controls preload="metadata" playsinline aria-label="${label}">${inside}</video>`
    : html`<audio controls preload="metadata" aria-label="${label}">${inside}</audio>`
}
${caption !== null && html`<figcaption>${caption}</figcaption>`}
</figure>
${
  moments.length > 0 &&
  html`<h3 id="moments">${say.moments}</h3>
<ol class="moments">${moments.map(
    ({ part, partId, seconds, time, address: moment }) =>
      html`<li data-part="${partId}"><a class="moment" href="${link(moment)}" data-seconds="${seconds}">${time}<span class="unseen">: ${part.name}</span></a> <a href="${part.address}">${part.name}</a></li>`,
  )}</ol>`
}
${said.length > 0 && transcript(view, site)}
`;
}
