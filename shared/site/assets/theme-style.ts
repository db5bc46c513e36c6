import type { TypefaceFile } from "../../../templates/typefaces.ts";
import { type Palette, paletteOf, type Scheme, type Theme } from "../../publication/theme/palette.ts";

/** A family in the place of one of ours. */
export interface ChosenTypeface {
  readonly role: "reading" | "data";
  readonly name: string;
  readonly files: readonly TypefaceFile[];
}

const variables = (palette: Palette): string =>
  Object.entries(palette)
    .map(([name, colour]) => `--${name}: ${colour};`)
    .join(" ");

const changes = (theme: Theme, scheme: Scheme): boolean =>
  (["paper", "ink", "ink-soft", "accent"] as const).some(
    (name) => theme[scheme === "dark" ? (`${name}-dark` as const) : name] !== undefined,
  );

const stack = {
  reading: '"Iowan Old Style", "Times New Roman", serif',
  data: '"Arial Narrow", Arial, sans-serif',
} as const;

/** Where a file is late, the page stays as it is: nothing moves. */
const face = (name: string, { address, weight, style, range }: TypefaceFile): string =>
  `@font-face { font-family: "${name}"; font-style: ${style}; font-weight: ${weight}; font-display: optional; src: url("${address.replace("/assets/", "")}") format("woff2");${range === null ? "" : ` unicode-range: ${range};`} }`;

/**
 * A collection's own choices, as the custom properties that the style sheets read. Paper and the colours that a
 * reader has forced keep theirs.
 */
export function themeStyle(theme: Theme, chosen: readonly ChosenTypeface[]): string {
  const colours = (["light", "dark"] as const).flatMap((scheme) =>
    changes(theme, scheme)
      ? [
          `@media screen and (forced-colors: none) and (prefers-color-scheme: ${scheme}) { :root { ${variables(paletteOf(theme, scheme))} } }`,
        ]
      : [],
  );
  const type = chosen.flatMap(({ role, name, files }) => [
    ...files.map((file) => face(name, file)),
    `:root { --font-${role === "reading" ? "serif" : "sans"}: "${name}", ${stack[role]}; }`,
  ]);
  return [...colours, ...type].map((line) => `${line}\n`).join("");
}
