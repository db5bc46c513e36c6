import type { Theme } from "../../records/collection.ts";
import { contrastRatio, mixed } from "./contrast.ts";

export type { Theme, ThemeType } from "../../records/collection.ts";

/** The colours of one scheme, by the names of the custom properties that the style sheets read. */
export interface Palette {
  readonly ink: string;
  readonly "ink-soft": string;
  readonly paper: string;
  readonly "paper-deep": string;
  readonly hairline: string;
  readonly accent: string;
  readonly "accent-soft": string;
}

export type Scheme = "light" | "dark";

/** As templates/styles/20-ink.css has them. */
export const ownPalettes: Readonly<Record<Scheme, Palette>> = {
  light: {
    ink: "#1a2129",
    "ink-soft": "#4f585f",
    paper: "#f6f5f0",
    "paper-deep": "#eae9e1",
    hairline: "#b7b8af",
    accent: "#17594a",
    "accent-soft": "#d3e0d9",
  },
  dark: {
    ink: "#e5e1d6",
    "ink-soft": "#aaada6",
    paper: "#14181a",
    "paper-deep": "#1e2427",
    hairline: "#434b4e",
    accent: "#88c7ad",
    "accent-soft": "#23392f",
  },
};

type Chosen = "paper" | "ink" | "ink-soft" | "accent";

const propertyOf = (name: Chosen, scheme: Scheme) =>
  scheme === "dark" ? (`${name}-dark` as const) : (name as Chosen);

/** The whole palette of a scheme: what is chosen, and what follows from it. */
export function paletteOf(theme: Theme, scheme: Scheme): Palette {
  const own = ownPalettes[scheme];
  const chosen = (name: Chosen) => theme[propertyOf(name, scheme)];
  const [paper, ink, accent] = [chosen("paper"), chosen("ink"), chosen("accent")];
  const onPaper = paper ?? own.paper;
  const inInk = ink ?? own.ink;
  const inAccent = accent ?? own.accent;
  const ground = paper !== undefined || ink !== undefined;
  return {
    paper: onPaper,
    ink: inInk,
    accent: inAccent,
    "ink-soft": chosen("ink-soft") ?? (ground ? mixed(inInk, 0.76, onPaper) : own["ink-soft"]),
    "paper-deep": ground ? mixed(inInk, 0.06, onPaper) : own["paper-deep"],
    hairline: ground ? mixed(inInk, 0.32, onPaper) : own.hairline,
    "accent-soft":
      paper !== undefined || accent !== undefined ? mixed(inAccent, 0.15, onPaper) : own["accent-soft"],
  };
}

/** A pair of text and ground that stands too close together. */
export interface WeakPair {
  readonly scheme: Scheme;
  /** The property that is to blame, where the collection set one; else the nearest that it could set. */
  readonly property: keyof Theme;
  readonly text: string;
  readonly ground: string;
  readonly textName: string;
  readonly groundName: string;
  readonly ratio: number;
}

/** Success criterion 1.4.3 of WCAG 2.2, level AA, for text of any size. */
export const leastContrast = 4.5;

/** Every pair that the style sheets set text in: what is written, and what it is written on. */
const pairs: readonly (readonly [
  text: "ink" | "ink-soft" | "accent",
  ground: (palette: Palette) => string,
  name: string,
])[] = [
  ["ink", ({ paper }) => paper, "paper"],
  ["ink", (palette) => palette["paper-deep"], "the deeper paper"],
  ["ink", (palette) => palette["accent-soft"], "the soft accent"],
  // The surface of a compartment whose part is there.
  ["ink", ({ accent, paper }) => mixed(accent, 0.22, paper), "a filled compartment"],
  ["ink-soft", ({ paper }) => paper, "paper"],
  ["ink-soft", (palette) => palette["paper-deep"], "the deeper paper"],
  ["accent", ({ paper }) => paper, "paper"],
  ["accent", (palette) => palette["paper-deep"], "the deeper paper"],
];

export function weakPairs(theme: Theme): WeakPair[] {
  return (["light", "dark"] as const).flatMap((scheme) => {
    const palette = paletteOf(theme, scheme);
    return pairs.flatMap(([textName, groundOf, groundName]) => {
      const [text, ground] = [palette[textName], groundOf(palette)];
      const ratio = contrastRatio(text, ground);
      if (ratio >= leastContrast) return [];
      const named = [textName, "paper", "accent", "ink"].map((name) => propertyOf(name as Chosen, scheme));
      const property = named.find((name) => theme[name] !== undefined) ?? propertyOf(textName, scheme);
      return [{ scheme, property, text, ground, textName, groundName, ratio }];
    });
  });
}
