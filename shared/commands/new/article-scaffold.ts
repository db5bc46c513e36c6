import { yamlLine } from "../yaml-line.ts";
import { explanation, offer } from "./comment-lines.ts";

export const articleScaffold = (title: string, today: string): string =>
  [
    "---",
    `title: ${yamlLine(title)}`,
    offer("authors: [First Author, Second Author]"),
    `updated: ${today}`,
    ...explanation("What the article says, in a few sentences."),
    offer("abstract: …"),
    "---",
    "",
    "Begin here. The text is Markdown: a blank line parts two paragraphs, `## ` begins a heading.",
    "",
  ].join("\n");
