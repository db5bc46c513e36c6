import type { PublishedSighting } from "../publication/published.ts";
import type { PlotOptions, YearsOf } from "./plot-words.ts";
import { element, escapeXml } from "./svg-markup.ts";

export type DatedSighting = Pick<PublishedSighting, "seen" | "kind">;
export interface SightingsOptions extends PlotOptions {
  readonly yearsOf: YearsOf;
  /** EDTF interval over which offers were watched for. */
  readonly watching?: string | null;
}

export function sightingsOverYears(sightings: readonly DatedSighting[], options: SightingsOptions): string {
  return element(
    "svg",
    { role: "img", "aria-label": options.label, viewBox: "0 0 288 40" },
    element("title", {}, escapeXml(options.label)),
  );
}
