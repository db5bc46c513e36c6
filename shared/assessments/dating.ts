import type { EdtfDate } from "../dates/edtf-interval.ts";
import { addUnder } from "../lists/grouping.ts";
import type { PartLine } from "../records/item.ts";
import { isLegible, rangeOf } from "../records/serial.ts";
import type { Variant } from "../records/variant.ts";
import { datesAsWritten, type Statement } from "./statement.ts";

export type DatingVerdict = "fits" | "earlier" | "later" | "undated";

/** `outside`: the serial can be read, and lies in none of the ranges known for the part. */
export type SerialVerdict = DatingVerdict | "outside";

export interface PartDating {
  /** Which of the lines of its part bears the serial. */
  readonly line: number;
  readonly serial: string;
  readonly made: string | null;
  readonly verdict: SerialVerdict;
}

export interface Dating {
  readonly issued: string | null;
  readonly serial: { readonly made: string | null };
  /** Each part that bears a serial, with what every one of its serials says. */
  readonly parts: ReadonlyMap<string, readonly PartDating[]>;
  readonly caveats: readonly Statement[];
}

/** An end that is open or unknown never lets one date lie wholly before another. */
export function compareDates(made: EdtfDate | undefined, issued: EdtfDate | undefined): DatingVerdict {
  if (!made || !issued) return "undated";
  if (made.earliest !== null && issued.latest !== null && made.earliest > issued.latest) return "later";
  if (made.latest !== null && issued.earliest !== null && made.latest < issued.earliest) return "earlier";
  return "fits";
}

/**
 * Does every part belong to the time of issue? The years in which its serial was given out, against those in which the
 * variant was issued, or else those of the outfit's own serial.
 */
export function assessDating(
  variant: Variant,
  item: { readonly serial: string | undefined; readonly parts: ReadonlyMap<string, readonly PartLine[]> },
): Dating {
  const ofSerial = item.serial === undefined ? undefined : rangeOf(variant.serials, item.serial)?.made;
  const issued = variant.issued ?? ofSerial;
  const parts = new Map<string, PartDating[]>();
  const compared: EdtfDate[] = [];
  for (const [id, lines] of item.parts) {
    const ranges = variant.parts.get(id)?.serials ?? [];
    if (ranges.length === 0) continue;
    for (const [line, { serial, state }] of lines.entries()) {
      // What is not there belongs to no time.
      if (serial === undefined || state === "absent" || state === "not-issued") continue;
      const range = rangeOf(ranges, serial);
      const made = range?.made;
      if (made && issued) compared.push(made, issued);
      // What only stands in has the numbers of another model.
      const isOutside = !range && state !== "substitute" && isLegible(serial);
      const verdict = isOutside ? "outside" : compareDates(made, issued);
      addUnder(parts, id, { line, serial, made: made?.text ?? null, verdict });
    }
  }
  return {
    issued: issued?.text ?? null,
    serial: { made: ofSerial?.text ?? null },
    parts,
    caveats: datesAsWritten(compared),
  };
}
