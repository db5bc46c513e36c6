/** The part of the `edtf` package that this room uses; the package brings no types. */
declare module "edtf" {
  /** The parse tree of a text; throws where the text is no EDTF of level 0 to 2. */
  export function parse(text: string): { readonly type: string; readonly level: number };
}
