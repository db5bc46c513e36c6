import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { metadataTool } from "./metadata-tool.ts";
import { pictureFolder } from "./picture-folder.ts";
import { expectQuarters, height, plain, quarterAt, width } from "./quarters.ts";

const exiftool = metadataTool();

/**
 * Where the first row and the first column of the stored picture lie in the upright one.
 * Source  TIFF 6.0 (Adobe 1992), section 8, Orientation (tag 274), taken over word for word by Exif
 *         (CIPA DC-008): "6 = The 0th row represents the visual right-hand side of the image, and the
 *         0th column represents the visual top."
 */
const orientations = [
  { orientation: 1, row: "top", column: "left" },
  { orientation: 2, row: "top", column: "right" },
  { orientation: 3, row: "bottom", column: "right" },
  { orientation: 4, row: "bottom", column: "left" },
  { orientation: 5, row: "left", column: "top" },
  { orientation: 6, row: "right", column: "top" },
  { orientation: 7, row: "right", column: "bottom" },
  { orientation: 8, row: "left", column: "bottom" },
] as const;

type Side = (typeof orientations)[number]["row" | "column"];

/** Distance from a side of the upright picture -> its x or its y. */
function place(side: Side, distance: number): { x?: number; y?: number } {
  if (side === "left") return { x: distance };
  if (side === "right") return { x: width - 1 - distance };
  if (side === "top") return { y: distance };
  return { y: height - 1 - distance };
}

/** The upright picture as a camera held so would store it. */
function stored(row: Side, column: Side) {
  const turned = row === "left" || row === "right";
  const [wide, high] = turned ? [height, width] : [width, height];
  const rgb = Buffer.alloc(wide * high * 3);
  for (let r = 0; r < high; r++) {
    for (let c = 0; c < wide; c++) {
      const { x = NaN, y = NaN } = { ...place(row, r), ...place(column, c) };
      rgb.set(quarterAt(plain, x, y), (r * wide + c) * 3);
    }
  }
  return sharp(rgb, { raw: { width: wide, height: high, channels: 3 } });
}

describe("the orientation that the camera noted", () => {
  it.each(orientations)("$orientation: first row at the $row, first column at the $column", async (it) => {
    const folder = await pictureFolder();
    const picture = stored(it.row, it.column);
    const files = { "a.jpg": picture.clone().jpeg({ quality: 95 }), "b.tif": picture.clone().tiff() };
    for (const [file, made] of Object.entries(files)) {
      const full = await folder.put(file, await made.toBuffer());
      await exiftool.write(full, { Orientation: it.orientation });
      expect(await exiftool.read(full)).toMatchObject({ "IFD0:Orientation": String(it.orientation) });
    }
    const { images, refused } = await folder.render(...Object.keys(files));
    expect(refused).toEqual([]);
    for (const file of Object.keys(files)) {
      expect(images.get(file)).toMatchObject({ width, height });
      await expectQuarters(folder, images.get(file), plain, 8);
    }
  });

  it("turns a large picture as it shrinks it", async () => {
    const folder = await pictureFolder();
    const full = await folder.put(
      "tall.jpg",
      await sharp({ create: { width: 2400, height: 1200, channels: 3, background: "#888" } })
        .jpeg()
        .toBuffer(),
    );
    await exiftool.write(full, { Orientation: 6 });
    const { images } = await folder.render("tall.jpg");
    expect(images.get("tall.jpg")).toMatchObject({ width: 1200, height: 2400 });
  });
});
