import { readFileSync } from "node:fs";
import { inflateSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { textWidth } from "../../shared/plots/drawing/text-width.ts";

/**
 * Advance widths from outside: the hmtx and cmap tables of the fonts that the site ships.
 * Source  W3C, WOFF File Format 1.0, section 4 (table directory); ISO/IEC 14496-22 (OpenType), hmtx, hhea, head and
 *         cmap format 4
 */
function advancesOf(file: string): (letter: string) => number {
  const folder = new URL("../../node_modules/@fontsource/", import.meta.url);
  const woff = readFileSync(new URL(file, folder));
  const tables = new Map<string, Buffer>();
  for (let at = 0; at < woff.readUInt16BE(12); at++) {
    const entry = 44 + 20 * at;
    const [offset, packed, full] = [4, 8, 12].map((field) => woff.readUInt32BE(entry + field));
    const bytes = woff.subarray(offset, (offset ?? 0) + (packed ?? 0));
    tables.set(woff.toString("latin1", entry, entry + 4), packed === full ? bytes : inflateSync(bytes));
  }
  const table = (name: string) => tables.get(name) ?? Buffer.alloc(0);
  const unitsPerEm = table("head").readUInt16BE(18);
  const long = table("hhea").readUInt16BE(34);
  const cmap = table("cmap");
  const subtables = Array.from({ length: cmap.readUInt16BE(2) }, (_, at) => cmap.readUInt32BE(8 + 8 * at));
  const start = subtables.find((offset) => cmap.readUInt16BE(offset) === 4) ?? 0;
  const segments = cmap.readUInt16BE(start + 6) / 2;
  const glyphOf = (code: number): number => {
    for (let at = 0; at < segments; at++) {
      const end = start + 14 + 2 * at;
      if (cmap.readUInt16BE(end) < code) continue;
      const first = end + 2 * segments + 2;
      const delta = first + 2 * segments;
      const range = delta + 2 * segments;
      if (cmap.readUInt16BE(first) > code) return 0;
      const shift = cmap.readUInt16BE(range);
      const glyph =
        shift === 0 ? code : cmap.readUInt16BE(range + shift + 2 * (code - cmap.readUInt16BE(first)));
      return (glyph + cmap.readInt16BE(delta)) & 0xffff;
    }
    return 0;
  };
  return (letter) => {
    const glyph = Math.min(glyphOf(letter.codePointAt(0) ?? 0), long - 1);
    return (table("hmtx").readUInt16BE(4 * glyph) / unitsPerEm) * 1000;
  };
}

const printable = Array.from({ length: 95 }, (_, at) => String.fromCharCode(32 + at));
const latin = [..."äöüÄÖÜßéèçøØåæ×–—…’“”·•"];
const sans = "ibm-plex-sans-condensed/files/ibm-plex-sans-condensed-latin";

describe("textWidth", () => {
  it.each([`${sans}-400-normal.woff`, `${sans}-500-normal.woff`])(
    "is safe for every letter of %s, and not far off",
    (file) => {
      const advance = advancesOf(file);
      for (const letter of [...printable, ...latin]) {
        const width = textWidth(letter, 1000);
        expect(width, letter).toBeGreaterThanOrEqual(advance(letter));
        expect(width, letter).toBeLessThanOrEqual(advance(letter) * 1.15 + 20);
      }
    },
  );

  it("is safe for words in the italics of the reading face", () => {
    const advance = advancesOf("alegreya/files/alegreya-latin-400-italic.woff");
    for (const word of [
      "present",
      "absent",
      "unverified",
      "unexamined",
      "substitute",
      "incomplete",
      "not issued",
      "no custody recorded for 34 to 35 years",
      "each mark stands for up to 20 sightings",
      "offers watched for, 1998 to 2026",
    ]) {
      const width = [...word].reduce((sum, letter) => sum + advance(letter), 0);
      expect(textWidth(word, 1000), word).toBeGreaterThanOrEqual(width);
    }
  });

  it("takes no room for marks above a letter, and a square for each of an East Asian script", () => {
    expect(textWidth("é", 10)).toBe(textWidth("e", 10));
    expect(textWidth("六分儀", 10)).toBeGreaterThanOrEqual(30);
  });
});
