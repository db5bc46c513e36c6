import { wrappedLines } from "../terminal/wrapped-lines.ts";

/**
 * An explanation inside a scaffold. It begins with `##`, and what is to be
 * brought in with one: whoever uncomments a whole block leaves the explanations standing as comments.
 */
export const explanation = (text: string, indent = 0): string[] =>
  wrappedLines(text, 100 - indent).map((line) => `${" ".repeat(indent)}## ${line}`);

/** A line to be brought in by taking the `# ` away. */
export const offer = (line: string, indent = 0): string => `${" ".repeat(indent)}# ${line}`;
