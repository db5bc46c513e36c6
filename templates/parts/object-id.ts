import { type ObjectIdRecord, objectIdFields } from "../../shared/pages/item/object-id.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** Only in the owner's own build. */
export function objectId({ answers, lacks }: ObjectIdRecord, site: PageSite): Html {
  const { words, templates } = site;
  const say = words.pages.item;
  const missing = lacks.map((field) => say.objectIdFields[field]);
  return templates["parts/chapter"](
    {
      id: "object-id",
      title: say.objectId,
      note: say.objectIdNote,
      matter: html`<p class="lead">${missing.length === 0 ? say.objectIdWhole : say.objectIdLacks(missing.join(", "))}</p>
<dl class="figures plain">${objectIdFields.map(
        (field) =>
          html`<div><dt>${say.objectIdFields[field]}</dt><dd>${
            answers[field].length === 0
              ? "—"
              : answers[field].map((line, at) => html`${at > 0 && html`<br>`}${line}`)
          }</dd></div>`,
      )}</dl>`,
    },
    site,
  );
}
