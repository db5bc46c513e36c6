/** As much of opentype.js as is used here; the package ships no types of its own. */
declare module "opentype.js" {
  export interface PathCommand {
    readonly type: "M" | "L" | "Q" | "C" | "Z";
    readonly x1?: number;
    readonly y1?: number;
    readonly x2?: number;
    readonly y2?: number;
    readonly x?: number;
    readonly y?: number;
  }
  interface Path {
    readonly commands: readonly PathCommand[];
  }
  export interface Font {
    readonly unitsPerEm: number;
    /** 0 where the font has no glyph for it. */
    charToGlyphIndex(character: string): number;
    getAdvanceWidth(text: string, fontSize: number): number;
    getPath(text: string, x: number, y: number, fontSize: number): Path;
  }
  const opentype: { parse(bytes: ArrayBuffer): Font };
  export default opentype;
}
