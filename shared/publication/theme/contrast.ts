/** Red, green and blue of "#rrggbb", each 0 to 1 as encoded. */
function channels(hex: string): [number, number, number] {
  const value = Number.parseInt(hex.slice(1), 16);
  return [(value >> 16) / 255, ((value >> 8) & 255) / 255, (value & 255) / 255];
}

/** sRGB's transfer function and its inverse, IEC 61966-2-1. */
const linear = (encoded: number): number =>
  encoded <= 0.04045 ? encoded / 12.92 : ((encoded + 0.055) / 1.055) ** 2.4;
const encoded = (light: number): number =>
  light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055;

/** Relative luminance: WCAG 2.2, with the constant of IEC 61966-2-1, which no 8-bit colour can tell from WCAG's. */
function luminance(hex: string): number {
  const [red, green, blue] = channels(hex).map(linear) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/**
 * How far apart two colours are, 1 to 21, whichever is the ground.
 * Formula  (L1 + 0.05) / (L2 + 0.05), the lighter above
 * Source   WCAG 2.2, "contrast ratio"
 */
export function contrastRatio(one: string, other: string): number {
  const [lighter = 0, darker = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (lighter + 0.05) / (darker + 0.05);
}

/** Lightness, and the two axes of hue: Ottosson (2020), as CSS Color 4 has it. */
export function oklab(hex: string): [number, number, number] {
  const [r, g, b] = channels(hex).map(linear) as [number, number, number];
  const l = Math.cbrt(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
  const m = Math.cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
  const s = Math.cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
  return [
    0.2104542553 * l + 0.793617785 * m - 0.0040720468 * s,
    1.9779984951 * l - 2.428592205 * m + 0.4505937099 * s,
    0.0259040371 * l + 0.7827717662 * m - 0.808675766 * s,
  ];
}

function fromOklab([lightness, a, b]: readonly [number, number, number]): string {
  const l = (lightness + 0.3963377774 * a + 0.2158037573 * b) ** 3;
  const m = (lightness - 0.1055613458 * a - 0.0638541728 * b) ** 3;
  const s = (lightness - 0.0894841775 * a - 1.291485548 * b) ** 3;
  const light = [
    4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s,
    -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s,
    -0.0041960863 * l - 0.7034186147 * m + 1.707614701 * s,
  ];
  const byte = (value: number) => Math.round(Math.min(1, Math.max(0, encoded(value))) * 255);
  return `#${light.map((value) => byte(value).toString(16).padStart(2, "0")).join("")}`;
}

/** As `color-mix(in oklab, one share, other)` mixes them. */
export function mixed(one: string, share: number, other: string): string {
  const [a, b] = [oklab(one), oklab(other)];
  const between = (at: 0 | 1 | 2) => share * a[at] + (1 - share) * b[at];
  return fromOklab([between(0), between(1), between(2)]);
}
