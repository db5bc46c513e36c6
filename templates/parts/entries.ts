import type { ImageSet } from "../../shared/images/image-set.ts";
import type { Link } from "../../shared/pages/page.ts";
import type { EntryView } from "../../shared/pages/views/entry-view.ts";
import { type Html, html, markup } from "../html.ts";
import type { PageSite } from "../site.ts";
import { withRoles } from "../table-roles.ts";

export interface Entries {
  /** Under the variant's name; null where the page is about one variant. */
  readonly groups: readonly {
    readonly variant: Link | null;
    readonly survive?: string;
    readonly entries: readonly EntryView[];
  }[];
}

const isPictured = ({ photo, plan }: EntryView): boolean => photo !== null || plan !== null;

/** In pixels: narrower than a place may be that a picture has in the list. */
const small = 500;

/** What would lose its head and foot, or be blown up, if it filled a place that is wider than it is high. */
const isShownWhole = ({ width, height }: ImageSet): boolean => width < 1.3 * height || width < small;

/** A browser takes for the picture's own width what is said here. */
const sizesOf = ({ width }: ImageSet): string => (width < small ? `${width}px` : "auto, 7rem");

/** Outfits as a table: what each is, how complete, how it ranks. */
export function entries({ groups }: Entries, site: PageSite): Html {
  const pictured = groups.some(({ entries: rows }) => rows.some(isPictured));
  return withRoles(html`<table class="entries">
${site.templates["parts/entries-head"]({ pictured }, site)}
${groups.map(
  ({ variant, survive, entries: rows }) => html`<tbody>
${variant && html`<tr class="group"><th scope="rowgroup" colspan="${pictured ? 8 : 7}"><a href="${site.link(variant.address)}">${variant.name}</a>${survive !== undefined && html` <small>${survive}</small>`}</th></tr>`}
${rows.map((entry) => site.templates["parts/entry-row"](entry, site))}
</tbody>`,
)}
</table>`);
}

export function entriesHead({ pictured }: { readonly pictured: boolean }, { words }: PageSite): Html {
  const { catalogue: say, finder } = words.pages;
  return html`<thead><tr><th scope="col"${pictured && html` colspan="2"`}>${say.outfit}</th><th scope="col">${say.verdict}</th><th scope="col" class="number">${say.completeness}</th><th scope="col">${say.level}</th><th scope="col" class="number">${say.rank}</th><th scope="col">${say.status}</th><th scope="col" class="tick" hidden>${finder.compare}</th></tr></thead>`;
}

export function entryRow(entry: EntryView, site: PageSite): Html {
  const { catalogue: say, finder } = site.words.pages;
  const { link, templates } = site;
  return html`<tr class="entry" data-entry="${entry.id}">
${
  isPictured(entry) &&
  html`<td class="sight${entry.photo && isShownWhole(entry.photo.image) && " sight-whole"}">${
    entry.photo &&
    templates["parts/picture"](
      { image: entry.photo.image, alt: "", sizes: sizesOf(entry.photo.image), first: false },
      site,
    )
  }${entry.plan && markup(entry.plan)}</td>`
}
<th scope="row"><a href="${link(entry.item.address)}">${entry.item.name}</a>${entry.serial !== null && html` <small>${entry.serial}</small>`}<span class="of-variant">${entry.variant.name}</span></th>
<td class="verdict-${entry.verdict}" data-label="${say.verdict}">${entry.verdictWord}</td>
<td class="number complete" data-label="${say.completeness}">${entry.complete ?? "—"}${markup(entry.mark)}</td>
<td data-label="${say.level}">${entry.level ?? "—"}</td>
<td class="number" data-label="${say.rank}">${entry.rank ?? "—"}</td>
<td data-label="${say.status}">${entry.status}</td>
<td class="tick" hidden data-label="${finder.compare}"><label><input type="checkbox" class="tick-box" value="${entry.id}"><span class="unseen">${finder.tick(entry.item.name)}</span></label></td>
</tr>
`;
}
