import type { PublishedPart } from "../publication/published.ts";
import type { PlotOptions, YearsOf } from "./plot-words.ts";
import { element, escapeXml } from "./svg-markup.ts";

export interface IntervalBounds {
  readonly low: number;
  readonly high: number;
}
/** The interval as a mark for lists, silent beside its text. */
export function completenessMark(bounds: IntervalBounds): string {
  return element(
    "svg",
    { class: "completeness-mark", "aria-hidden": "true", viewBox: "0 0 96 8" },
    String(bounds.low),
  );
}

export function completenessInterval(bounds: IntervalBounds, options: PlotOptions): string {
  return element(
    "svg",
    { role: "img", "aria-label": options.label, viewBox: "0 0 288 40" },
    element("title", {}, escapeXml(options.label)),
  );
}
