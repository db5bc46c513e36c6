import sharp from "sharp";
import { expect } from "vitest";
import type { ImageSet } from "../../shared/images/image-set.ts";
import type { PictureFolder } from "./picture-folder.ts";

export type Colour = readonly [number, number, number];

/** One colour to each quarter of the upright picture. */
export interface Quarters {
  readonly topLeft: Colour;
  readonly topRight: Colour;
  readonly bottomLeft: Colour;
  readonly bottomRight: Colour;
}

export const plain: Quarters = {
  topLeft: [200, 40, 40],
  topRight: [40, 160, 60],
  bottomLeft: [40, 60, 190],
  bottomRight: [230, 220, 190],
};

export const width = 240;
export const height = 160;

export function quarterAt(quarters: Quarters, x: number, y: number, wide = width, high = height): Colour {
  if (y < high / 2) return x < wide / 2 ? quarters.topLeft : quarters.topRight;
  return x < wide / 2 ? quarters.bottomLeft : quarters.bottomRight;
}

/** The picture as a sharp instance, 8-bit sRGB. */
export function quartersPicture(quarters: Quarters = plain, wide = width, high = height) {
  const rgb = Buffer.alloc(wide * high * 3);
  for (let y = 0; y < high; y++) {
    for (let x = 0; x < wide; x++) rgb.set(quarterAt(quarters, x, y, wide, high), (y * wide + x) * 3);
  }
  return sharp(rgb, { raw: { width: wide, height: high, channels: 3 } });
}

/** Looks at the middle of each quarter in every file of a set, which must be upright and of the size that it says. */
export async function expectQuarters(
  folder: PictureFolder,
  set: ImageSet | undefined,
  quarters: Quarters,
  tolerance: number,
): Promise<void> {
  expect(set).toBeDefined();
  if (!set) return;
  const files = [...set.sources.flatMap((source) => source.files), set.fallback];
  expect(files.length).toBeGreaterThanOrEqual(4);
  for (const file of files) {
    const { data, info } = await sharp(await folder.fetch(file.address))
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect([info.width, info.height, info.channels]).toEqual([file.width, file.height, 3]);
    const colourAt = (x: number, y: number) => {
      const at = (Math.floor(y * info.height) * info.width + Math.floor(x * info.width)) * 3;
      return [...data.subarray(at, at + 3)];
    };
    const found = {
      topLeft: colourAt(0.25, 0.25),
      topRight: colourAt(0.75, 0.25),
      bottomLeft: colourAt(0.25, 0.75),
      bottomRight: colourAt(0.75, 0.75),
    };
    for (const quarter of ["topLeft", "topRight", "bottomLeft", "bottomRight"] as const) {
      const off = Math.max(
        ...found[quarter].map((value, n) => Math.abs(value - (quarters[quarter][n] ?? NaN))),
      );
      expect(
        off,
        `${quarter} of ${file.address} is ${found[quarter]}, not ${quarters[quarter]}`,
      ).toBeLessThanOrEqual(tolerance);
    }
  }
}
