import type { HomePage } from "../../shared/pages/collection/home-page.ts";
import { type Html, html, markup } from "../html.ts";
import { isSquare, isTall, tallSizes } from "../parts/picture.ts";
import type { PageSite } from "../site.ts";

export function homeTemplate(page: HomePage, site: PageSite): Html {
  const { words, link, templates } = site;
  const say = words.pages.home;
  const chapter = templates["parts/chapter"];
  const { opened } = page;
  const plan =
    opened &&
    html`<figure class="frontispiece">${templates["parts/drawing"]({ kind: "plan", svg: opened.plan }, site)}<figcaption><a href="${link(opened.item.address)}">${opened.note}</a></figcaption></figure>`;
  return html`<header class="title-page">
${templates["parts/logo"]({ height: 96 }, site)}<h1>${page.title}</h1>
${page.publisher !== null && html`<p class="publisher">${page.publisher}</p>`}
${site.settings.notice && html`<p class="notice">${site.settings.notice}</p>`}
</header>
${opened?.photo ? html`<figure class="${["frontispiece", isTall(opened.photo.image) && "frontispiece-tall", isSquare(opened.photo.image) && "frontispiece-square"].filter(Boolean).join(" ")}">${templates["parts/picture"]({ image: opened.photo.image, alt: opened.photo.alt, sizes: isTall(opened.photo.image) ? tallSizes : "(min-width: 72rem) 66rem, 91vw", first: true }, site)}<figcaption><a href="${link(opened.item.address)}">${opened.item.name}</a></figcaption></figure>` : plan}
<div class="prose preface">${markup(page.text)}</div>
${opened?.photo && plan}
${
  page.entries.length > 0 &&
  chapter(
    {
      id: "outfits",
      title: say.outfits,
      note: templates["parts/links"]([page.all], site),
      matter: html`<p class="contents-head">${say.completeByWeight}</p><ul class="contents">${page.entries.map(
        ({ item, variant, verdict, verdictWord, complete, isAssembled }) =>
          html`<li><span class="contents-name"><a href="${link(item.address)}">${item.name}</a> <small>${variant.name}${verdict === "contradicted" && html`, <em>${verdictWord}</em>`}${isAssembled && html`, <em>${words.pages.assembled}</em>`}</small></span> <span class="leader"></span> <span class="contents-figure">${complete}</span></li>`,
      )}</ul>`,
    },
    site,
  )
}
${
  page.families.length > 0 &&
  chapter(
    {
      id: "families",
      title: say.families,
      matter: html`${page.families.map(
        ({ family, variants }) =>
          html`<h3><a href="${link(family.address)}">${family.name}</a></h3><ul class="contents">${variants.map(
            ({ variant, issued, survive }) =>
              html`<li><span class="contents-name"><a href="${link(variant.address)}">${variant.name}</a> <small>${issued}</small></span> <span class="leader"></span> <span class="contents-figure">${survive}</span></li>`,
          )}</ul>`,
      )}`,
    },
    site,
  )
}
${page.articles.length > 0 && chapter({ id: "articles", title: say.articles, matter: templates["parts/article-list"](page.articles, site) }, site)}
${chapter({ id: "basis", title: say.basis, matter: html`<p class="lead">${page.counts}</p><p>${templates["parts/links"](page.basis, site)}</p>` }, site)}
`;
}
