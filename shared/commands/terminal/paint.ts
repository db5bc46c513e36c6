import { styleText } from "node:util";

type Style = "bold" | "dim" | "red" | "green" | "yellow" | "cyan" | "underline";

/** Dresses a stretch of text for a terminal, or leaves it as it is. */
export type Paint = (style: Style, text: string) => string;

export const paintFor = (colour: boolean | undefined): Paint =>
  colour ? (style, text) => styleText(style, text) : (_, text) => text;
