import { contentSecurityPolicy, referrerPolicy } from "../../shared/pages/security-policy.ts";
import type { Page } from "../../shared/pages/site-pages.ts";
import { type Html, html } from "../html.ts";
import type { PageSite } from "../site.ts";

export interface PageLayout {
  readonly page: Page;
  readonly body: Html;
}

/** What a tab or a list of results shows of a title. */
const longestTitle = 70;

export function pageLayout({ page, body }: PageLayout, site: PageSite): Html {
  const { settings, words, templates } = site;
  const say = words.pages.site;
  const full = `${page.title} · ${settings.title}`;
  const title = page.kind === "home" || full.length > longestTitle ? page.title : full;
  // A sheet by itself: no head and no foot, and nothing to be found by searching.
  const isCard = page.kind === "card";
  // Sources and families stand on their pages under their own ids, of which none has a low line.
  return html`<!DOCTYPE html>
<html lang="${settings.language}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${contentSecurityPolicy}">
<meta name="referrer" content="${referrerPolicy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<meta name="description" content="${page.description}">
<meta property="og:type" content="${page.kind === "article" ? "article" : "website"}">
<meta property="og:title" content="${page.title}">
<meta property="og:description" content="${page.description}">
${templates["parts/preview-head"](page, site)}
<meta name="color-scheme" content="light dark">
${templates["parts/page-head"](page, site)}
</head>
<body class="page-${page.kind}">
<a class="skip" href="#main_text">${say.skip}</a>
${!isCard && templates["parts/running-head"](page, site)}
<main id="main_text">
${body}
</main>
${!isCard && templates["parts/colophon"](page, site)}
</body>
</html>
`;
}
