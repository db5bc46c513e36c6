import { absoluteAddress } from "../../shared/pages/citation/linked-data.ts";
import type { PageHead } from "../../shared/pages/page.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

/** What other sites show of a page that they link to, beside its title and description. Addresses are whole. */
export function previewHead({ address, preview }: PageHead, { settings }: PageSite): Html {
  const whole = (of: string) => absoluteAddress(settings.url, of);
  return html`<meta property="og:url" content="${whole(address)}">
<meta property="og:site_name" content="${settings.title}">
${
  preview &&
  html`<meta property="og:image" content="${whole(preview.address)}">
<meta property="og:image:type" content="image/jpeg">
<meta property="og:image:width" content="${preview.width}">
<meta property="og:image:height" content="${preview.height}">
<meta property="og:image:alt" content="${preview.alt}">
`
}<meta name="twitter:card" content="${preview ? "summary_large_image" : "summary"}">`;
}
