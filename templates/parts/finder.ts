import type { FinderView } from "../../shared/pages/collection/finder-view.ts";
import type { Numbered } from "../../shared/pages/search/asked-numbers.ts";
import type { Named } from "../../shared/pages/search/search-index.ts";
import type { Field } from "../../shared/pages/search/view-state.ts";
import { type Html, type HtmlValue, html } from "../html.ts";
import type { PageSite } from "../site.ts";

const choices = (list: readonly Named[]): HtmlValue =>
  list.map(({ id, name }) => html`<option value="${id}">${name}</option>`);

/**
 * What may be asked of the catalogue: words, and below them one long sentence with blanks, as a printed form has.
 * It is there for the script, and is shown when that is.
 */
export function finder(view: FinderView, site: PageSite): Html {
  const { words, assets, link, templates } = site;
  const say = words.pages.finder;
  const phrase = (name: keyof typeof say.phrases, blank: Html, after = "") =>
    html`<label class="phrase">${say.phrases[name]} ${blank}${after}</label> `;
  const choose = (name: Field & keyof typeof say.phrases, options: HtmlValue) =>
    phrase(name, html`<select name="${name}"><option value="">${say.any}</option>${options}</select>`);
  /** What cannot be read stays as it was typed; beside it stands what is expected, once there is something to say. */
  const number = (name: Numbered, width: number, placeholder: string, expected: string, after = "") =>
    html`${phrase(
      name,
      html`<input name="${name}" type="text" inputmode="numeric" autocomplete="off" maxlength="20" size="${width}" placeholder="${placeholder}" aria-describedby="finder-${name}-unread">`,
      after,
    )}<output class="unread" id="finder-${name}-unread" data-expected="${expected}"></output> `;
  const offered = (list: readonly unknown[], blank: () => Html) => list.length > 0 && blank();
  return html`<search>${templates["parts/no-answer"](say.noAnswer)}<form class="finder" hidden action="./" aria-label="${say.label}" data-index="${link(assets.search ?? "")}">
<p class="finder-words"><label for="finder-q">${say.q}</label><input id="finder-q" name="q" type="search" autocomplete="off" spellcheck="false" aria-describedby="finder-hint"> <button type="submit">${say.find}</button></p>
<p class="small" id="finder-hint">${say.hint}</p>
<details class="finder-more"><summary>${say.narrow}</summary>
<p class="phrases">${say.outfits} ${offered(view.families, () => choose("family", choices(view.families)))}${choose(
    "variant",
    view.variants.map(
      ({ id, name, choices: of }) =>
        html`<optgroup label="${name}" data-family="${id}">${choices(of)}</optgroup>`,
    ),
  )}${number("from", 4, say.year, say.noYear)}${number("to", 4, say.year, say.noYear)}${phrase(
    "place",
    html`<input name="place" type="text" autocomplete="off" list="finder-places" size="12" placeholder="${say.any}">`,
  )}${offered(view.levels, () => choose("level", choices(view.levels)))}${number("least", 3, "0", say.noPercent, ` ${say.percent}`)}${number("most", 3, "100", say.noPercent, ` ${say.percent}`)}${choose("evidence", choices(view.evidence))}${offered(
    view.classes,
    () => choose("class", choices(view.classes)),
  )}${offered(view.hazards, () => choose("hazard", choices(view.hazards)))}${choose("missing", false)}${choose(
    "status",
    choices(view.statuses),
  )}${phrase("sort", html`<select name="sort">${choices(view.orders)}</select>`)}</p>
<datalist id="finder-places"></datalist>
</details>
<p class="finder-told"><output class="told-found"></output> <a class="show-all" href="./" hidden>${say.all}</a></p>
</form></search>`;
}
