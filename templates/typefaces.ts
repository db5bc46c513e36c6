/** A family that comes with the tool, or files of a collection's own, as a style sheet needs it. */
export interface TypefaceFile {
  readonly address: string;
  readonly weight: 400 | 600;
  readonly style: "normal" | "italic";
  /** The letters that the file has, where they are spread over several. */
  readonly range: string | null;
  /** Whether the first lines of every page need it. */
  readonly first: boolean;
}

export interface ShippedTypeface {
  readonly role: "reading" | "data";
  readonly name: string;
  /** Path within the packages, and the rest. */
  readonly files: readonly (TypefaceFile & { readonly from: string })[];
}

/** As the packages have cut them. */
const ranges = {
  latin:
    "U+0000-00FF, U+0131, U+0152-0153, U+02BB-02BC, U+02C6, U+02DA, U+02DC, U+0304, U+0308, U+0329, U+2000-206F, U+20AC, U+2122, U+2191, U+2193, U+2212, U+2215, U+FEFF, U+FFFD",
  "latin-ext":
    "U+0100-02BA, U+02BD-02C5, U+02C7-02CC, U+02CE-02D7, U+02DD-02FF, U+0304, U+0308, U+0329, U+1D00-1DBF, U+1E00-1E9F, U+1EF2-1EFF, U+2020, U+20A0-20AB, U+20AD-20C0, U+2113, U+2C60-2C7F, U+A720-A7FF",
} as const;

function filesOf(packageName: string, styles: readonly (readonly [400 | 600, "normal" | "italic"])[]) {
  return styles.flatMap(([weight, style]) =>
    (["latin", "latin-ext"] as const).map((subset) => {
      const name = `${packageName}-${subset}-${weight}-${style}.woff2`;
      return {
        from: `@fontsource/${packageName}/files/${name}`,
        address: `/assets/fonts/${name}`,
        weight,
        style,
        range: ranges[subset],
        first: subset === "latin",
      };
    }),
  );
}

/**
 * The families that a theme may name beside the two that every site has, which templates/fonts.ts lists. All are
 * under the SIL Open Font License 1.1.
 */
export const typefaces: Readonly<Record<string, ShippedTypeface>> = {
  "source-serif": {
    role: "reading",
    name: "Source Serif 4",
    files: filesOf("source-serif-4", [
      [400, "normal"],
      [400, "italic"],
    ]),
  },
  "source-sans": {
    role: "data",
    name: "Source Sans 3",
    files: filesOf("source-sans-3", [
      [400, "normal"],
      [600, "normal"],
    ]),
  },
};
