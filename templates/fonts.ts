/**
 * Two open families (SIL Open Font License 1.1): Alegreya for reading, whose figures are old-style, and Plex
 * Sans Condensed for data, whose figures are all of one width. Where each is needed, as the path within its
 * package and the address on the site; styles/10-fonts.css names the same files. Italics are of the first, and what
 * is heavy is of the second: every face on a page is there when its first line is painted.
 */
export const fonts: readonly (readonly [packagePath: string, address: string])[] = [
  "alegreya/files/alegreya-latin-400-normal.woff2",
  "alegreya/files/alegreya-latin-ext-400-normal.woff2",
  "alegreya/files/alegreya-greek-400-normal.woff2",
  "alegreya/files/alegreya-latin-400-italic.woff2",
  "alegreya/files/alegreya-latin-ext-400-italic.woff2",
  "ibm-plex-sans-condensed/files/ibm-plex-sans-condensed-latin-400-normal.woff2",
  "ibm-plex-sans-condensed/files/ibm-plex-sans-condensed-latin-ext-400-normal.woff2",
  "ibm-plex-sans-condensed/files/ibm-plex-sans-condensed-latin-600-normal.woff2",
  "ibm-plex-sans-condensed/files/ibm-plex-sans-condensed-latin-ext-600-normal.woff2",
].map((file) => [`@fontsource/${file}`, `/assets/fonts/${file.split("/").at(-1) ?? file}`] as const);

/** Needed by the first lines of every page: what comes later than these is shown on the next page only. */
export const preloadedFonts = {
  reading: ["/assets/fonts/alegreya-latin-400-normal.woff2", "/assets/fonts/alegreya-latin-400-italic.woff2"],
  data: [
    "/assets/fonts/ibm-plex-sans-condensed-latin-400-normal.woff2",
    "/assets/fonts/ibm-plex-sans-condensed-latin-600-normal.woff2",
  ],
  drawing: "/assets/fonts/ibm-plex-sans-condensed-latin-400-normal.woff2",
} as const;
