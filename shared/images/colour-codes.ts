import { pngChunks } from "./png-chunks.ts";
import type { RasterFormat } from "./raster-format.ts";

/** Colours told by code points instead of a profile, which the decoder here passes over. */
interface ColourCodes {
  readonly primaries: number;
  readonly transfer: number;
}

/**
 * Of a picture without a profile; null where it declares none.
 * Sources  the `nclx` form of the `colr` box, ISO/IEC 14496-12, 12.1.5; cICP, PNG third edition, 11.3.2.6
 */
export function colourCodes(format: RasterFormat, bytes: Buffer): ColourCodes | null {
  if (format === "png") {
    const codes = pngChunks(bytes).get("cICP");
    const [primaries, transfer] = codes ?? [];
    return primaries === undefined || transfer === undefined ? null : { primaries, transfer };
  }
  if (format !== "avif") return null;
  const pixels = bytes.indexOf("mdat", 0, "latin1");
  const header = pixels < 0 ? bytes : bytes.subarray(0, pixels);
  const at = header.indexOf("colrnclx", 0, "latin1");
  return at < 0 || at + 12 > header.length
    ? null
    : { primaries: header.readUInt16BE(at + 8), transfer: header.readUInt16BE(at + 10) };
}

/**
 * Near enough to sRGB to be taken as it: the same primaries or those of standard-definition television, or
 * unstated; and a curve for ordinary screens.
 * Source  Rec. ITU-T H.273, tables 2 and 3: BT.709 is 1, sRGB's curve 13, BT.2020 9, P3 11 and 12, PQ 16, HLG 18.
 */
export function isNearSrgb({ primaries, transfer }: ColourCodes): boolean {
  return [1, 2, 5, 6].includes(primaries) && [1, 2, 6, 13, 14, 15].includes(transfer);
}

/** Brighter than any print or ordinary screen: PQ and HLG. */
export function isHighDynamicRange({ transfer }: ColourCodes): boolean {
  return transfer === 16 || transfer === 18;
}
