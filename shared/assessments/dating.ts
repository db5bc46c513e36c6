import type { EdtfDate } from "../dates/edtf-interval.ts";
import type { PartLine } from "../records/item.ts";
import { rangeOf } from "../records/serial.ts";
import type { Variant } from "../records/variant.ts";
import { datesAsWritten, type Statement } from "./statement.ts";

export type DatingVerdict = "fits" | "earlier" | "later" | "undated";

export interface PartDating {
  readonly serial: string;
  readonly made: string | null;
  readonly verdict: DatingVerdict;
}

export interface Dating {
  readonly issued: string | null;
  readonly serial: { readonly made: string | null };
  /** One entry for each part that bears a serial; several where several units do. */
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
    for (const { serial, state } of lines) {
      // What is not there belongs to no time.
      if (serial === undefined || state === "absent" || state === "not-issued") continue;
      const made = rangeOf(ranges, serial)?.made;
      if (made && issued) compared.push(made, issued);
      parts.set(id, [
        ...(parts.get(id) ?? []),
        { serial, made: made?.text ?? null, verdict: compareDates(made, issued) },
      ]);
    }
  }
  return {
    issued: issued?.text ?? null,
    serial: { made: ofSerial?.text ?? null },
    parts,
    caveats: datesAsWritten(compared),
  };
}
