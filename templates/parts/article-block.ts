import type { ArticleBlock } from "../../shared/pages/prose/article-blocks.ts";
import { type Html, html, markup } from "../html.ts";
import type { PageSite } from "../site.ts";

/** A stretch of an article: its own words, or a table or drawing that the data put between them. */
export function articleBlock(block: ArticleBlock, site: PageSite): Html {
  const { templates, link } = site;
  switch (block.kind) {
    case "prose":
      return html`<div class="prose">${markup(block.html)}</div>
`;
    case "variants":
      return html`<figure class="inset">${templates["parts/comparison"](block, site)}<figcaption><a href="${link(block.caption.address)}">${block.caption.name}</a></figcaption></figure>
`;
    case "items":
      return html`<figure class="inset">${block.rows.length > 0 && templates["parts/item-table"](block, site)}<figcaption>${site.words.pages.articles.outfits(block.rows.length)}</figcaption></figure>
`;
    case "plot":
      return html`<figure class="inset">${templates["parts/drawing"]({ kind: block.drawing, svg: block.svg }, site)}<figcaption><a href="${link(block.caption.address)}">${block.caption.name}</a></figcaption></figure>
`;
  }
}
