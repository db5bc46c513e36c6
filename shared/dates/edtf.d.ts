/** The part of the `edtf` package that this room uses; the package brings no types. */
declare module "edtf" {
  /** The parse tree of a text; throws where the text is no EDTF of level 0 to 2. */
  export function parse(text: string): {
    readonly type: "Date" | "Year" | "Season" | "Decade" | "Century" | "Interval" | "Set" | "List";
    /** Numbers for a single date: the year, then its season, or its month counted from 0, and so on. */
    readonly values: readonly unknown[];
    /** Of a year, how many of its digits are significant. */
    readonly significant?: number;
  };
}
