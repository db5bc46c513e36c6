import { xmlText } from "../../pages/data/xml.ts";
import type { BenchWords } from "../../words/en/bench.ts";
import type { Words } from "../../words/words.ts";
import { checklistFonts } from "./checklist-fonts.ts";
import { checklistStyle } from "./checklist-style.ts";

/** What is written on by hand, with what is known already. */
export const blank = (label: string, value: string | undefined, width: "short" | "long"): string =>
  `<span class="field">${xmlText(label)} <span class="line ${width}">${value === undefined ? "" : xmlText(value)}</span></span>`;

export const emptyLines = (count: number): string => `<div class="blank"></div>`.repeat(count);

/** In the language of the collection, like its pages. */
export interface SheetWords {
  readonly say: BenchWords;
  readonly words: Words;
}

/** A sheet for the bench, whole in one file. */
export const sheetPage = (title: string, { say, words }: SheetWords, body: string): string => `<!DOCTYPE html>
<html lang="${words.language}">
<head>
<meta charset="utf-8">
<title>${xmlText(say.sheet.title(title))}</title>
<style>
${checklistFonts()}${checklistStyle}</style>
</head>
<body>
<h1>${xmlText(title)}</h1>
${body}
</body>
</html>
`;
