/**
 * What a masked serial has in place of its last digits. From a file that imports nothing, since a browser searches for
 * masked serials as well.
 */
export const maskSign = "\u2022";

/** Where a masked serial lies among others is nobody's to know, nor is it to be given out as a whole one. */
export const isMasked = (serial: string): boolean => serial.includes(maskSign);
