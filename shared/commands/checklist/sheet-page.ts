import { xmlText } from "../../pages/data/xml.ts";
import { checklistStyle } from "./checklist-style.ts";

/** What is written on by hand, with what is known already. */
export const blank = (label: string, value: string | undefined, width: "short" | "long"): string =>
  `<span class="field">${xmlText(label)} <span class="line ${width}">${value === undefined ? "" : xmlText(value)}</span></span>`;

export const emptyLines = (count: number): string => `<div class="blank"></div>`.repeat(count);

/** A sheet for the bench, whole in one file. */
export const sheetPage = (title: string, body: string): string => `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<title>${xmlText(`Checklist: ${title}`)}</title>
<style>
${checklistStyle}</style>
</head>
<body>
<h1>${xmlText(title)}</h1>
${body}
</body>
</html>
`;
