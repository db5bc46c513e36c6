import type { ConfidentialView } from "../../shared/pages/item/item-confidential.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** Only in the owner's own build. */
export function confidential({ storage, paid, fields, objectId }: ConfidentialView, site: PageSite): Html {
  const { words, templates } = site;
  const say = words.pages.item;
  const row = (label: string, value: string) => html`<div><dt>${label}</dt><dd>${value}</dd></div>`;
  return html`${templates["parts/chapter"](
    {
      id: "confidential",
      title: say.confidential,
      matter: html`<dl class="figures plain">
${storage !== null && row(say.storage, storage)}
${paid && row(say.paid, words.numbers.money(paid.amount, paid.currency))}
${Object.entries(fields).map(([name, value]) => row(words.pages.capital(name), typeof value === "string" ? value : JSON.stringify(value)))}
</dl>`,
    },
    site,
  )}
${templates["parts/object-id"](objectId, site)}`;
}
