import { xmlText } from "../../pages/data/xml.ts";
import { plain } from "../../pages/views/item-parts.ts";
import type { Family, Feature } from "../../records/family.ts";
import type { Variant } from "../../records/variant.ts";
import type { BenchWords } from "../../words/en/bench.ts";
import { rangeWords } from "../new/range-words.ts";
import { beforeYouBegin, type Caution } from "../words/cautions.ts";
import { blank, emptyLines, type SheetWords, sheetPage } from "./sheet-page.ts";

/** A line for each value, with a box and the variants that are found with it; what is said of none speaks against none. */
function featureRows(
  { id, name, look, effort, values }: Feature,
  variants: readonly Variant[],
  { familySheet: say }: BenchWords,
): string {
  const silent = variants.filter(({ features }) => !features.has(id));
  return values
    .map((value, at) => {
      const having = variants.filter(({ features }) => features.get(id)?.includes(value));
      const means = [
        having.map((variant) => variant.name).join("; ") || say.noVariant,
        ...(silent.length > 0 ? [say.orSilent(silent.map((variant) => variant.name).join("; "))] : []),
      ].join(", ");
      const heading =
        at > 0
          ? ""
          : `<th scope="rowgroup" rowspan="${values.length}">${xmlText(name)}<br><small>${say.efforts[effort - 1] ?? ""}</small></th><td rowspan="${values.length}">${xmlText(look ?? "")}</td>`;
      return `<tr>${heading}<td><span class="choice"><span class="box"></span>${xmlText(plain(value))}</span></td><td>${xmlText(means)}</td></tr>`;
    })
    .join("");
}

/** A sheet for a case of which only the family is known: what to look at, and which variant each finding means. */
export function familySheet(
  family: Family,
  variants: readonly Variant[],
  cautions: ReadonlyMap<string, Caution>,
  sheetWords: SheetWords,
): string {
  const { say, words } = sheetWords;
  const { sheet, familySheet: own } = say;
  const features = [...family.features.values()].sort((a, b) => a.effort - b.effort);
  const serials = variants.map(
    (variant) =>
      `<tr><td class="ticks"><span class="box"></span></td><th scope="row">${xmlText(variant.name)}<br><small>${xmlText(variant.id)}</small></th><td>${variant.serials.length > 0 ? xmlText(rangeWords(variant.serials, words)) : own.unknown}</td></tr>`,
  );
  const table = `<table class="features"><thead><tr><th scope="col">${sheet.feature}</th><th scope="col">${sheet.look}</th><th scope="col">${sheet.seen}</th><th scope="col">${own.means}</th></tr></thead>${features
    .map((feature) => `<tbody>${featureRows(feature, variants, say)}</tbody>`)
    .join("")}</table>`;
  return sheetPage(
    family.name,
    sheetWords,
    `<p>${own.lead}</p>
<p>${blank(say.set, undefined, "short")} ${blank(say.serial, undefined, "long")} ${blank(sheet.examinedOn, undefined, "short")} ${blank(sheet.by, undefined, "long")}</p>
${beforeYouBegin(
  cautions,
  variants.flatMap(({ parts }) => [...parts.values()]),
  say,
  "sheet",
)}
<section><h2>${sheet.how}</h2><p>${own.howText}</p></section>
<section><h2>${own.variants}</h2><table><thead><tr><th scope="col">${own.itIs}</th><th scope="col">${own.variant}</th><th scope="col">${own.knownSerials}</th></tr></thead><tbody>${serials.join("")}</tbody></table></section>
${features.length > 0 ? `<section><h2>${own.apart}</h2>${table}</section>` : ""}
<section><h2>${own.else}</h2>${emptyLines(6)}</section>`,
  );
}
