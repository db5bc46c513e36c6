import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

const require = createRequire(import.meta.url);

/** The two faces of the site, as far as a sheet needs them. */
const faces = [
  ["Alegreya", 400, "normal", "alegreya/files/alegreya-latin-400-normal.woff2"],
  ["Alegreya", 400, "italic", "alegreya/files/alegreya-latin-400-italic.woff2"],
  [
    "IBM Plex Sans Condensed",
    400,
    "normal",
    "ibm-plex-sans-condensed/files/ibm-plex-sans-condensed-latin-400-normal.woff2",
  ],
  [
    "IBM Plex Sans Condensed",
    600,
    "normal",
    "ibm-plex-sans-condensed/files/ibm-plex-sans-condensed-latin-600-normal.woff2",
  ],
] as const;

/** Within the sheet, so that it stays whole in one file wherever it is carried. */
export const checklistFonts = (): string =>
  faces
    .map(([family, weight, style, file]) => {
      const bytes = readFileSync(require.resolve(`@fontsource/${file}`)).toString("base64");
      return `@font-face { font-family: "${family}"; font-weight: ${weight}; font-style: ${style}; src: url("data:font/woff2;base64,${bytes}") format("woff2") }\n`;
    })
    .join("");
