import type { EdtfDate } from "../../dates/edtf-interval.ts";
import { isLeftOut, type Path, type SourceDocument } from "../../source/document.ts";
import type { Report } from "../report.ts";
import { isLegible, isReversed, rangeOf, rangesInWords } from "../serial.ts";
import type { Part, Variant } from "../variant.ts";

/** What an outfit or a part is said to bear, against the numbers that its variant, or that part, is known to have had. */
export function checkSerial(
  report: Report,
  document: SourceDocument,
  reference: Pick<Variant | Part, "id" | "serials"> & Pick<Variant, "leftOut">,
  serial: string | undefined,
  path: Path = ["serial"],
): void {
  const { id, serials } = reference;
  if (serial === undefined || serials.length === 0 || rangeOf(serials, serial)) return;
  // What does not fit, or has its ends the wrong way round, is told of where it stands.
  if (serials.some(isReversed) || isLeftOut(reference, "serials")) return;
  report("serial-out-of-range", document, path, {
    found: `"${serial}"`,
    expected: isLegible(serial)
      ? `a serial within the ranges of "${id}": ${rangesInWords(serials)}`
      : `letters and a number, as in ${rangesInWords(serials)}; a serial that cannot be read in full is compared with no range`,
  });
}

/** Nobody can have seen, held or examined what was not yet made; a date that may lie later passes. */
export function checkNotBefore(
  report: Report,
  document: SourceDocument,
  variant: Variant,
  date: EdtfDate | undefined,
  path: Path,
): void {
  const { issued } = variant;
  const first = issued?.earliest ?? null;
  if (!issued || !date || first === null || date.latest === null || date.latest >= first) return;
  if (isLeftOut(variant, "issued")) return;
  report("sighting-before-made", document, path, {
    found: `"${date.text}"`,
    expected: `a date no earlier than "${issued.text}", when the variant was first issued`,
  });
}
