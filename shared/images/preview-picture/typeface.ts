import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import opentype, { type Font, type PathCommand } from "opentype.js";

/** A typeface whose letters are spread over several files, by script. */
export interface Typeface {
  /** Whether it has every letter of a text. */
  readonly covers: (text: string) => boolean;
  readonly width: (text: string, size: number) => number;
  /** The data of an SVG path: text as outlines looks the same on machines without the font. */
  readonly outline: (text: string, x: number, baseline: number, size: number) => string;
}

const require = createRequire(import.meta.url);

function openFont(file: string): Font {
  const bytes = readFileSync(require.resolve(`@fontsource/${file}`));
  return opentype.parse(new Uint8Array(bytes).buffer);
}

/** Files are opened when a letter is met that those before them lack: most texts need the first alone. */
function typeface(files: readonly string[]): Typeface {
  const opened: Font[] = [];
  const fontFor = (letter: string): Font | null => {
    for (const [at, file] of files.entries()) {
      opened[at] ??= openFont(file);
      const font = opened[at];
      if (font && font.charToGlyphIndex(letter) > 0) return font;
    }
    return null;
  };
  /** Neighbouring letters of one file together, so that they are kerned; what no file has is left out. */
  const runs = (text: string): { readonly font: Font; readonly text: string }[] => {
    const found: { font: Font; text: string }[] = [];
    for (const letter of text.normalize("NFC")) {
      const font = fontFor(letter);
      const last = found.at(-1);
      if (font && last?.font === font) last.text += letter;
      else if (font) found.push({ font, text: letter });
    }
    return found;
  };
  const width = (text: string, size: number) =>
    runs(text).reduce((total, run) => total + run.font.getAdvanceWidth(run.text, size), 0);
  return {
    covers: (text) => [...text.normalize("NFC")].every((letter) => fontFor(letter) !== null),
    width,
    outline(text, x, baseline, size) {
      let at = x;
      return runs(text)
        .map((run) => {
          const { commands } = run.font.getPath(run.text, at, baseline, size);
          at += run.font.getAdvanceWidth(run.text, size);
          return commands.map(written).join("");
        })
        .join("");
    },
  };
}

/** In hundredths. The library's own writing makes no number of a fraction that rounding left very small. */
const written = ({ type, x1, y1, x2, y2, x, y }: PathCommand): string =>
  type +
  [x1, y1, x2, y2, x, y]
    .flatMap((value) => (value === undefined ? [] : [String(Math.round(value * 100) / 100)]))
    .join(" ");

const scripts = (family: string, style: string, names: readonly string[]) =>
  names.map((name) => `${family}/files/${family}-${name}-${style}.woff`);

const ofAlegreya = ["latin", "latin-ext", "greek", "greek-ext", "cyrillic", "cyrillic-ext", "vietnamese"];

/** The faces of the pages themselves. */
export const typefaces = {
  serif: typeface(scripts("alegreya", "400-normal", ofAlegreya)),
  italic: typeface(scripts("alegreya", "400-italic", ofAlegreya)),
  sans: typeface(scripts("ibm-plex-sans-condensed", "400-normal", ["latin", "latin-ext", "vietnamese"])),
} as const;
