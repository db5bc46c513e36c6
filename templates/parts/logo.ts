import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** The sign of the collection, beside its title, which says the same in words. */
export function logo({ height }: { readonly height: number }, { logo: sign, link }: PageSite): Html {
  if (sign === null) return html``;
  const { light, dark } = sign;
  const width = Math.round((light.width * height) / light.height);
  return html`<picture class="logo">${dark && html`<source media="(prefers-color-scheme: dark)" srcset="${link(dark.address)}">`}<img src="${link(light.address)}" width="${width}" height="${height}" alt=""></picture>`;
}
