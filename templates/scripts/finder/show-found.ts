import { entriesOnPage, pagesToName } from "../../../shared/pages/addresses/pager.ts";
import type { Found } from "../../../shared/pages/search/find-entries.ts";
import type { OpenCatalogue } from "../../../shared/pages/search/open-catalogue.ts";
import type { IndexedVariant } from "../../../shared/pages/search/search-index.ts";
import { type ViewState, writeState } from "../../../shared/pages/search/view-state.ts";
import type { Words } from "../../../shared/words/words.ts";
import { showTicks } from "../ticks/ticked.ts";
import { foundRow } from "./found-rows.ts";

/** As many as a window shows; the others come after these have been painted. */
const atOnce = 12;
const afterPaint = 60;

export interface Places {
  readonly found: HTMLElement;
  readonly listed: HTMLElement | null;
  readonly row: HTMLTemplateElement;
}

/** Rows that the page has already, pictures and all: where it lists the whole catalogue, they are shown again. */
function builtRows(listed: HTMLElement | null, count: number): Map<string, HTMLElement> | null {
  const rows = [...(listed?.querySelectorAll<HTMLElement>("tr.entry") ?? [])];
  return rows.length < count ? null : new Map(rows.map((row) => [row.dataset.entry ?? "", row]));
}

function groupRow({ name, id, survive }: IndexedVariant, columns: number): HTMLElement {
  const row = document.createElement("tr");
  row.className = "group";
  row.setAttribute("role", "row");
  const head = document.createElement("th");
  head.scope = "rowgroup";
  head.setAttribute("role", "rowheader");
  head.colSpan = columns;
  const link = document.createElement("a");
  link.href = `../variants/${encodeURIComponent(id)}/`;
  link.textContent = name;
  const rarity = document.createElement("small");
  rarity.textContent = survive;
  head.append(link, " ", rarity);
  row.append(head);
  return row;
}

let later = 0;

export function showFound(
  { entries }: Found,
  state: ViewState,
  catalogue: OpenCatalogue,
  { found, listed, row: template }: Places,
  words: Words,
): void {
  const { index, columns, ids } = catalogue;
  const built = builtRows(listed, index.count);
  const table = found.querySelector("table");
  if (!table) return;
  const head = built && listed?.querySelector("thead");
  if (head) table.tHead?.replaceWith(head.cloneNode(true));
  const width = [...(table.tHead?.rows[0]?.cells ?? [])].reduce((sum, { colSpan }) => sum + colSpan, 0);

  const pages = Math.max(1, Math.ceil(entries.length / entriesOnPage));
  const page = Math.min(state.page, pages);
  const isGrouped = state.sort === "" && state.q === "";
  const bodies: HTMLTableSectionElement[] = [];
  let variant = -1;
  const add = (entry: number) => {
    const of = columns.variant[entry] ?? 0;
    if (bodies.length === 0 || (isGrouped && of !== variant)) {
      const body = document.createElement("tbody");
      // As in what the build wrote: small screens do not lay it out as a table.
      body.setAttribute("role", "rowgroup");
      const named = index.variants[of];
      if (isGrouped && named) body.append(groupRow(named, width));
      bodies.push(body);
      table.append(body);
      variant = of;
    }
    const known = built?.get(ids[entry] ?? "")?.cloneNode(true) as HTMLElement | undefined;
    const row = known ?? foundRow(template, catalogue, entry, words);
    const ofVariant = row.querySelector(".of-variant");
    const { name, survive } = index.variants[of] ?? { name: "", survive: "" };
    if (ofVariant) ofVariant.textContent = `${name}: ${survive}`;
    bodies.at(-1)?.append(row);
  };
  for (const body of [...table.tBodies]) body.remove();
  const shown = entries.slice((page - 1) * entriesOnPage, page * entriesOnPage);
  shown.slice(0, atOnce).forEach(add);
  clearTimeout(later);
  later = window.setTimeout(() => {
    shown.slice(atOnce).forEach(add);
    showTicks(table);
  }, afterPaint);
  table.classList.toggle("ungrouped", !isGrouped);
  table.hidden = entries.length === 0;
  showPager(found, state, page, pages, words);
  showTicks(table);
  found.hidden = false;
  if (listed) listed.hidden = true;
}

function showPager(found: HTMLElement, state: ViewState, page: number, pages: number, words: Words): void {
  const pager = found.querySelector<HTMLElement>(".pager");
  if (!pager) return;
  const say = words.pages.finder;
  const link = (to: number, text: string, rel = "") => {
    const made = document.createElement("a");
    made.href = writeState({ ...state, page: to }) || "./";
    made.textContent = text;
    if (rel !== "") made.rel = rel;
    if (to === page) made.setAttribute("aria-current", "page");
    return made;
  };
  const list = document.createElement("ol");
  for (const number of pagesToName(page, pages)) {
    const item = document.createElement("li");
    if (number === null) {
      item.textContent = "…";
      item.setAttribute("aria-hidden", "true");
    } else item.append(link(number, String(number)));
    list.append(item);
  }
  pager.replaceChildren(
    ...(page > 1 ? [link(page - 1, say.previous, "prev")] : []),
    list,
    ...(page < pages ? [link(page + 1, say.next, "next")] : []),
  );
  pager.hidden = pages < 2;
}
