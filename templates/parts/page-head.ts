import { addresses } from "../../shared/pages/addresses/addresses.ts";
import { absoluteAddress } from "../../shared/pages/citation/linked-data.ts";
import type { Page } from "../../shared/pages/site-pages.ts";
import { type Html, html, markup } from "../html.ts";
import { scriptRunsFirst, scriptRunsOn, scriptSpeaks } from "../page-scripts.ts";
import type { PageSite, SealedScript } from "../site.ts";

/** JSON inside a script element may not close it. */
const safeJson = (data: unknown): string => JSON.stringify(data).replaceAll("<", "\\u003c");

/**
 * What a page needs in its head to be found, to look and to work as it does, in our own layout or in somebody else's. The style
 * sheet is not sealed as the scripts are: browsers refuse a sealed one in a page that is opened from disk.
 */
export function pageHead(page: Page, { words, assets, link, settings, audience }: PageSite): Html {
  const scripts = assets.scripts.filter(({ name }) => scriptRunsOn(name, page));
  const imports = new Map(scripts.flatMap((script) => script.imports.map((each) => [each.address, each])));
  const speaks = scripts.some(({ name }) => scriptSpeaks(name));
  const spoken = [assets.words, ...assets.words.imports].filter(({ address }) => !imports.has(address));
  const preloaded = (scripts: readonly SealedScript[]) =>
    scripts.map(
      ({ address, integrity }) =>
        html`<link rel="modulepreload" href="${link(address)}" integrity="${integrity}">`,
    );
  const isFound = audience === "public" && page.kind !== "missing" && page.kind !== "card";
  return html`${isFound ? html`<link rel="canonical" href="${absoluteAddress(settings.url, page.address)}">` : html`<meta name="robots" content="noindex">`}
<link rel="stylesheet" href="${link(assets.style)}">
${assets.preload.map((address) => html`<link rel="preload" as="font" type="font/woff2" href="${link(address)}" crossorigin>`)}
<link rel="stylesheet" href="${link(assets.printStyle)}" media="print">
<link rel="alternate" type="application/atom+xml" title="${words.pages.site.feed}" href="${link(addresses.feed)}">
${preloaded([...imports.values()])}
${speaks && html`<template class="site-words" data-module="${link(assets.words.address)}">${preloaded(spoken)}</template>`}
${scripts.map(({ name, address, integrity }) => html`<script type="module"${scriptRunsFirst(name) && html` async blocking="render"`} src="${link(address)}" integrity="${integrity}"></script>`)}
${page.linkedData && html`<script type="application/ld+json">${markup(safeJson(page.linkedData))}</script>`}`;
}
