import { xmlText } from "../../pages/data/xml.ts";
import { plain } from "../../pages/views/item-parts.ts";
import type { Family, Feature } from "../../records/family.ts";
import type { Variant } from "../../records/variant.ts";
import { rangeWords } from "../new/range-words.ts";
import { beforeYouBegin, type Caution } from "../words/cautions.ts";
import { blank, emptyLines, sheetPage } from "./sheet-page.ts";

const efforts = ["a glance", "handling", "dismantling"];

/** A line for each value, with a box and the variants that are found with it; what is said of none speaks against none. */
function featureRows({ id, name, look, effort, values }: Feature, variants: readonly Variant[]): string {
  const silent = variants.filter(({ features }) => !features.has(id));
  return values
    .map((value, at) => {
      const having = variants.filter(({ features }) => features.get(id)?.includes(value));
      const means = [
        having.map((variant) => variant.name).join("; ") || "none of those known",
        ...(silent.length > 0
          ? [`or ${silent.map((variant) => variant.name).join("; ")} (not recorded)`]
          : []),
      ].join(", ");
      const heading =
        at > 0
          ? ""
          : `<th scope="rowgroup" rowspan="${values.length}">${xmlText(name)}<br><small>${efforts[effort - 1] ?? ""}</small></th><td rowspan="${values.length}">${xmlText(look ?? "")}</td>`;
      return `<tr>${heading}<td><span class="choice"><span class="box"></span>${xmlText(plain(value))}</span></td><td>${xmlText(means)}</td></tr>`;
    })
    .join("");
}

/** A sheet for a case of which only the family is known: what to look at, and which variant each finding means. */
export function familySheet(
  family: Family,
  variants: readonly Variant[],
  cautions: ReadonlyMap<string, Caution>,
): string {
  const features = [...family.features.values()].sort((a, b) => a.effort - b.effort);
  const serials = variants.map(
    (variant) =>
      `<tr><td class="ticks"><span class="box"></span></td><th scope="row">${xmlText(variant.name)}<br><small>${xmlText(variant.id)}</small></th><td>${variant.serials.length > 0 ? xmlText(rangeWords(variant.serials)) : "not known"}</td></tr>`,
  );
  const table = `<table class="features"><thead><tr><th scope="col">Feature</th><th scope="col">Where and how to look</th><th scope="col">Seen</th><th scope="col">Means</th></tr></thead>${features
    .map((feature) => `<tbody>${featureRows(feature, variants)}</tbody>`)
    .join("")}</table>`;
  return sheetPage(
    family.name,
    `<p>To tell its variants apart</p>
<p>${blank("Set no.", undefined, "short")} ${blank("Serial", undefined, "long")} ${blank("Examined on", undefined, "short")} ${blank("by", undefined, "long")}</p>
${beforeYouBegin(
  cautions,
  variants.flatMap(({ parts }) => [...parts.values()]),
  "this sheet",
)}
<section><h2>How to fill it in</h2><p>Read the serial first, then look from the top down, as far as you need. Tick what you see; leave blank what you did not look at. It can only be a variant that stands beside every tick, and whose serials hold the one that you read.</p></section>
<section><h2>The variants, and their serials</h2><table><thead><tr><th scope="col">It is</th><th scope="col">Variant</th><th scope="col">Known serials</th></tr></thead><tbody>${serials.join("")}</tbody></table></section>
${features.length > 0 ? `<section><h2>What tells them apart</h2>${table}</section>` : ""}
<section><h2>Anything else</h2>${emptyLines(6)}</section>`,
  );
}
