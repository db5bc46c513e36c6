/**
 * Mean of the sRGB values, channel by channel, as #rrggbb.
 * The values are averaged as they are encoded, which is what the eye takes from a blurred picture of low contrast
 * and what a stand-in needs; light itself would give a paler colour.
 */
export function averageColour(rgb: Uint8Array): string {
  const sums: [number, number, number] = [0, 0, 0];
  for (let at = 0; at + 2 < rgb.length; at += 3) {
    sums[0] += rgb[at] ?? 0;
    sums[1] += rgb[at + 1] ?? 0;
    sums[2] += rgb[at + 2] ?? 0;
  }
  const pixels = Math.max(1, Math.floor(rgb.length / 3));
  return `#${sums
    .map((sum) =>
      Math.round(sum / pixels)
        .toString(16)
        .padStart(2, "0"),
    )
    .join("")}`;
}
