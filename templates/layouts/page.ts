import { addresses } from "../../shared/pages/addresses.ts";
import { absoluteAddress } from "../../shared/pages/linked-data.ts";
import { contentSecurityPolicy, referrerPolicy } from "../../shared/pages/security-policy.ts";
import type { Page } from "../../shared/pages/site-pages.ts";
import { preloadedFonts } from "../fonts.ts";
import { type Html, html, markup } from "../html.ts";
import { scriptRunsOn } from "../page-scripts.ts";
import type { PageSite } from "../site.ts";

export interface PageLayout {
  readonly page: Page;
  readonly body: Html;
}

/** What a tab or a list of results shows of a title. */
const longestTitle = 70;

/** JSON inside a script element may not close it. */
const safeJson = (data: unknown): string => JSON.stringify(data).replaceAll("<", "\\u003c");

export function pageLayout({ page, body }: PageLayout, site: PageSite): Html {
  const { settings, words, templates, assets, link } = site;
  const say = words.pages.site;
  const scripts = assets.scripts.filter(({ name }) => scriptRunsOn(name, page));
  const full = `${page.title} · ${settings.title}`;
  const title = page.kind === "home" || full.length > longestTitle ? page.title : full;
  const isPrivate = site.audience === "private";
  return html`<!DOCTYPE html>
<html lang="${settings.language}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${contentSecurityPolicy}">
<meta name="referrer" content="${referrerPolicy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<meta name="description" content="${page.description}">
${isPrivate || page.kind === "missing" ? html`<meta name="robots" content="noindex">` : html`<link rel="canonical" href="${absoluteAddress(settings.url, page.address)}">`}
<meta property="og:type" content="${page.kind === "article" ? "article" : "website"}">
<meta property="og:title" content="${page.title}">
<meta property="og:description" content="${page.description}">
${templates["parts/preview-head"](page, site)}
<meta name="color-scheme" content="light dark">
${preloadedFonts.map((address) => html`<link rel="preload" as="font" type="font/woff2" href="${link(address)}" crossorigin>`)}
<link rel="stylesheet" href="${link(assets.style)}">
<link rel="alternate" type="application/atom+xml" title="${say.feed}" href="${link(addresses.feed)}">
${[...new Set(scripts.flatMap(({ imports }) => imports))].map((address) => html`<link rel="modulepreload" href="${link(address)}">`)}
${scripts.map(({ address }) => html`<script type="module" src="${link(address)}"></script>`)}
${page.linkedData && html`<script type="application/ld+json">${markup(safeJson(page.linkedData))}</script>`}
</head>
<body class="page-${page.kind}">
<a class="skip" href="#text">${say.skip}</a>
${templates["parts/running-head"](page, site)}
<main id="text">
${body}
</main>
${templates["parts/colophon"](page, site)}
</body>
</html>
`;
}
