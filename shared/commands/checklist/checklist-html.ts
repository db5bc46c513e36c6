import { xmlText } from "../../pages/data/xml.ts";
import { plain } from "../../pages/views/item-parts.ts";
import type { Family } from "../../records/family.ts";
import type { Part, Variant } from "../../records/variant.ts";
import type { BenchWords } from "../../words/en/bench.ts";
import { rangeWords } from "../new/range-words.ts";
import { beforeYouBegin, type Caution, cautionHtml } from "../words/cautions.ts";
import { groupName, groupsInOrder } from "../words/groups-in-order.ts";
import { markWords } from "../words/mark-words.ts";
import { blank, emptyLines, type SheetWords, sheetPage } from "./sheet-page.ts";

/** What is known of the case on the table, for a sheet of one item. */
export interface ChecklistItem {
  readonly title: string;
  readonly serial: string | undefined;
  readonly set: string | undefined;
  /** What the record says of a part, in a few words; empty where nothing. */
  readonly onRecord: (part: string) => string;
}

/** A box for each unit; where they are too many to tick, a place for the count. */
const boxes = (quantity: number, { sheet }: BenchWords) =>
  quantity > 24
    ? `<span class="line short"></span> ${sheet.ofMany(quantity)}`
    : `<span class="box"></span>`.repeat(quantity);

function features(family: Family | undefined, { say }: SheetWords): string {
  const all = [...(family?.features.values() ?? [])].sort((a, b) => a.effort - b.effort);
  if (all.length === 0) return "";
  const rows = all.map(
    ({ name, look, values }) =>
      `<tr><th scope="row">${xmlText(name)}</th><td>${xmlText(look ?? "")}</td><td>${values
        .map((value) => `<span class="choice"><span class="box"></span>${xmlText(plain(value))}</span>`)
        .join(" ")}</td></tr>`,
  );
  return `<section><h2>${say.features}</h2><p>${say.sheet.featuresText}</p><table class="features"><thead><tr><th scope="col">${say.sheet.feature}</th><th scope="col">${say.sheet.look}</th><th scope="col">${say.sheet.seen}</th></tr></thead><tbody>${rows.join("")}</tbody></table></section>`;
}

function partRow(
  part: Part,
  item: ChecklistItem | undefined,
  cautions: ReadonlyMap<string, Caution>,
  { say, words }: SheetWords,
): string {
  const marks = part.marks.map((mark) => markWords(mark, item?.set, say));
  const dangers = part.hazards.flatMap((id) => cautions.get(id) ?? []);
  const recorded = item?.onRecord(part.id) ?? "";
  const details = [
    dangers.length > 0 &&
      `<strong class="danger">${say.caution(dangers.map((each) => cautionHtml(each.nameInText, each)).join(", "))}</strong>`,
    part.look && xmlText(part.look),
    marks.length > 0 && xmlText(say.marks(marks.join("; "))),
    part.serials.length > 0 && xmlText(say.serials(rangeWords(part.serials, words))),
    part.accepts.size > 0 && xmlText(say.sheet.substitutes([...part.accepts.keys()].join(", "))),
    recorded !== "" && `<em>${xmlText(say.sheet.onRecord(recorded))}</em>`,
  ].filter(Boolean);
  return `<tr><td class="ticks">${boxes(part.quantity, say)}</td><th scope="row">${xmlText(part.name)}<br><small>${words.pages.standings[part.standing]}${part.quantity > 1 ? `, ${part.quantity}` : ""}</small></th><td class="details">${details.join(" ")}</td><td></td><td></td><td></td></tr>`;
}

/** A sheet to print and tick at the bench: cautions first, then the parts in the order of unpacking. */
export function checklistHtml(
  variant: Variant,
  family: Family | undefined,
  cautions: ReadonlyMap<string, Caution>,
  sheetWords: SheetWords,
  item?: ChecklistItem,
): string {
  const { say, words } = sheetWords;
  const groups = groupsInOrder(variant.parts.values(), family?.groups.keys() ?? []);
  const tables = groups.map((parts) => {
    return `<section><h2>${xmlText(groupName(parts, family, say))}</h2><table class="parts"><thead><tr>${[say.sheet.there, say.sheet.part, say.sheet.lookFor, say.sheet.marksRead, say.serial, say.sheet.condition].map((heading) => `<th scope="col">${heading}</th>`).join("")}</tr></thead><tbody>${parts.map((part) => partRow(part, item, cautions, sheetWords)).join("")}</tbody></table></section>`;
  });
  const title = item?.title ?? variant.name;
  const serials =
    variant.serials.length > 0
      ? `<p>${xmlText(say.sheet.knownSerials(rangeWords(variant.serials, words)))}</p>`
      : "";
  return sheetPage(
    title,
    sheetWords,
    `<p>${xmlText(`${variant.name} (${variant.id})`)}</p>
<p>${blank(say.set, item?.set, "short")} ${blank(say.serial, item?.serial, "long")} ${blank(say.sheet.examinedOn, undefined, "short")} ${blank(say.sheet.by, undefined, "long")}</p>
${serials}
${beforeYouBegin(cautions, [...variant.parts.values()], say, "sheet")}
<section><h2>${say.sheet.how}</h2><p>${say.sheet.howText}</p></section>
${features(family, sheetWords)}
${tables.join("\n")}
<section><h2>${say.sheet.notListed}</h2>${emptyLines(4)}</section>
<section><h2>${say.sheet.papers}</h2>${emptyLines(6)}</section>
<section><h2>${say.sheet.photographs}</h2>${emptyLines(4)}</section>`,
  );
}
