import { xmlText } from "../../pages/data/xml.ts";
import { plain } from "../../pages/views/item-parts.ts";
import type { Family } from "../../records/family.ts";
import type { Part, Variant } from "../../records/variant.ts";
import { rangeWords } from "../new/range-words.ts";
import { beforeYouBegin, type Caution, cautionHtml } from "../words/cautions.ts";
import { groupName, groupsInOrder } from "../words/groups-in-order.ts";
import { markWords } from "../words/mark-words.ts";
import { blank, emptyLines, sheetPage } from "./sheet-page.ts";

/** What is known of the case on the table, for a sheet of one item. */
export interface ChecklistItem {
  readonly title: string;
  readonly serial: string | undefined;
  readonly set: string | undefined;
  /** What the record says of a part, in a few words; empty where nothing. */
  readonly onRecord: (part: string) => string;
}

/** A box for each unit; where they are too many to tick, a place for the count. */
const boxes = (quantity: number) =>
  quantity > 24
    ? `<span class="line short"></span> of ${quantity}`
    : `<span class="box"></span>`.repeat(quantity);

function features(family: Family | undefined): string {
  const all = [...(family?.features.values() ?? [])].sort((a, b) => a.effort - b.effort);
  if (all.length === 0) return "";
  const rows = all.map(
    ({ name, look, values }) =>
      `<tr><th scope="row">${xmlText(name)}</th><td>${xmlText(look ?? "")}</td><td>${values
        .map((value) => `<span class="choice"><span class="box"></span>${xmlText(plain(value))}</span>`)
        .join(" ")}</td></tr>`,
  );
  return `<section><h2>What tells the variants apart</h2><p>Tick what you see; leave blank what you did not look at.</p><table class="features"><thead><tr><th scope="col">Feature</th><th scope="col">Where and how to look</th><th scope="col">Seen</th></tr></thead><tbody>${rows.join("")}</tbody></table></section>`;
}

function partRow(
  part: Part,
  item: ChecklistItem | undefined,
  cautions: ReadonlyMap<string, Caution>,
): string {
  const marks = part.marks.map((mark) => markWords(mark, item?.set));
  const dangers = part.hazards.flatMap((id) => cautions.get(id) ?? []);
  const recorded = item?.onRecord(part.id) ?? "";
  const details = [
    dangers.length > 0 &&
      `<strong class="danger">Caution: ${dangers.map((each) => cautionHtml(each.nameInText, each)).join(", ")}.</strong>`,
    part.look && xmlText(part.look),
    marks.length > 0 && `Marks: ${xmlText(marks.join("; "))}.`,
    part.serials.length > 0 && `Serials: ${xmlText(rangeWords(part.serials))}.`,
    part.accepts.size > 0 && `Substitutes: ${xmlText([...part.accepts.keys()].join(", "))}.`,
    recorded !== "" && `<em>On record: ${xmlText(recorded)}.</em>`,
  ].filter(Boolean);
  return `<tr><td class="ticks">${boxes(part.quantity)}</td><th scope="row">${xmlText(part.name)}<br><small>${part.standing}${part.quantity > 1 ? `, ${part.quantity}` : ""}</small></th><td class="details">${details.join(" ")}</td><td></td><td></td><td></td></tr>`;
}

/** A sheet to print and tick at the bench: cautions first, then the parts in the order of unpacking. */
export function checklistHtml(
  variant: Variant,
  family: Family | undefined,
  cautions: ReadonlyMap<string, Caution>,
  item?: ChecklistItem,
): string {
  const groups = groupsInOrder(variant.parts.values(), family?.groups.keys() ?? []);
  const tables = groups.map((parts) => {
    return `<section><h2>${xmlText(groupName(parts, family))}</h2><table class="parts"><thead><tr><th scope="col">There</th><th scope="col">Part</th><th scope="col">What to look for</th><th scope="col">Marks read</th><th scope="col">Serial</th><th scope="col">Condition, remarks</th></tr></thead><tbody>${parts.map((part) => partRow(part, item, cautions)).join("")}</tbody></table></section>`;
  });
  const title = item?.title ?? variant.name;
  const serials =
    variant.serials.length > 0 ? `<p>Known serials: ${xmlText(rangeWords(variant.serials))}.</p>` : "";
  return sheetPage(
    title,
    `<p>${xmlText(`${variant.name} (${variant.id})`)}</p>
<p>${blank("Set no.", item?.set, "short")} ${blank("Serial", item?.serial, "long")} ${blank("Examined on", undefined, "short")} ${blank("by", undefined, "long")}</p>
${serials}
${beforeYouBegin(cautions, [...variant.parts.values()], "this sheet")}
<section><h2>How to fill it in</h2><p>Tick a box for each unit that is there; strike through one that is gone. Write ? for one that is there but may not be right, S for another model in its place, N for one that this example never had. Leave blank what was not examined: that is not the same as gone. Write the marks and serials that you read, not those that should be there.</p></section>
${features(family)}
${tables.join("\n")}
<section><h2>Things in the case that are not listed</h2>${emptyLines(4)}</section>
<section><h2>Labels, plates and papers, word for word</h2>${emptyLines(6)}</section>
<section><h2>Photographs taken, and anything else</h2>${emptyLines(4)}</section>`,
  );
}
