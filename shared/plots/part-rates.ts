import type { PartSummary, PublishedPart } from "../publication/published.ts";
import type { PlotOptions, YearsOf } from "./plot-words.ts";
import { element, escapeXml } from "./svg-markup.ts";

export interface RatedPart extends Pick<PublishedPart, "id" | "name" | "quantity" | "rate"> {
  readonly summary?: PartSummary;
}
export interface PartRatesOptions extends PlotOptions {
  readonly stateWord: (summary: PartSummary) => string;
}

export function partRates(parts: readonly RatedPart[], options: PartRatesOptions): string {
  return element(
    "svg",
    { role: "img", "aria-label": options.label, viewBox: "0 0 288 40" },
    element("title", {}, escapeXml(options.label)),
  );
}
