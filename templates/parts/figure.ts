import type { LabelledFigure } from "../../shared/pages/variant-rarity.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** A figure: readable first, and opening in place to what it rests on. */
export function figure(
  { label, figure: view }: Pick<LabelledFigure, "label" | "figure">,
  site: PageSite,
): Html {
  const say = site.words.pages.figure;
  return html`<details class="figure${view.withheld !== null && " withheld"}">
<summary><span class="phrase">${view.withheld === null ? view.phrase : say.notKnown}</span> <span class="basis">${say.basis}<span class="unseen"> ${say.basisOf(label)}</span></span>${view.withheld !== null && html`<span class="reason">${view.withheld}</span>`}</summary>
${site.templates["parts/evidence"](view, site)}
</details>`;
}
