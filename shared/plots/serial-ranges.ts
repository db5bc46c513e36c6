import type { PublishedSerialRange } from "../publication/published.ts";
import type { PlotOptions, YearsOf } from "./plot-words.ts";
import { element, escapeXml } from "./svg-markup.ts";

export interface SerialRangesOptions extends PlotOptions {
  /** Serials of the sightings. */
  readonly seen: readonly string[];
  /** The serial of this example, where it is shown. */
  readonly own?: string | null;
}

export function serialRanges(ranges: readonly PublishedSerialRange[], options: SerialRangesOptions): string {
  return element(
    "svg",
    { role: "img", "aria-label": options.label, viewBox: "0 0 288 40" },
    element("title", {}, escapeXml(options.label)),
  );
}
