import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** The frame in which a script shows one photograph as large as the window and larger; shut without one. */
export function closerLook(count: number, site: PageSite): Html {
  const { closer: say } = site.words.pages.photographs;
  const button = (does: string, name: string) =>
    html`<button type="button" data-does="${does}">${name}</button>`;
  return html`<dialog class="closer" aria-label="${say.title}">
<div class="closer-bar"><p class="closer-place" role="status"></p>
<div class="closer-buttons">${count > 1 && html`${button("previous", say.previous)}${button("next", say.next)}`}${button("nearer", say.nearer)}${button("farther", say.farther)}${button("whole", say.whole)}<button type="button" data-does="numbers" aria-pressed="true">${say.numbers}</button></div>${button("close", say.close)}</div>
<div class="closer-stage" tabindex="0" autofocus role="group" aria-label="${say.stage}"><div class="closer-sheet"></div></div>
<p class="closer-caption"></p>
</dialog>`;
}
