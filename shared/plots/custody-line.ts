import type { PublishedItem } from "../publication/published.ts";
import type { PlotOptions, YearsOf } from "./plot-words.ts";
import { element, escapeXml } from "./svg-markup.ts";

export type Custody = Pick<PublishedItem["provenance"], "events" | "gaps">;
export interface CustodyOptions extends PlotOptions {
  readonly yearsOf: YearsOf;
  /** EDTF. */
  readonly issued?: string | null;
  readonly examined?: string | null;
}

export function custodyLine(custody: Custody, options: CustodyOptions): string {
  return element(
    "svg",
    { role: "img", "aria-label": options.label, viewBox: "0 0 288 40" },
    element("title", {}, escapeXml(options.label)),
  );
}
