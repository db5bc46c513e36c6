import { yamlLine } from "../writing/yaml-line.ts";
import { explanation, offer } from "./comment-lines.ts";

/** Ids of the collection, for examples that work where they are copied to. */
export interface ArticleExamples {
  readonly family: string | undefined;
  readonly variant: string | undefined;
  readonly source: string | undefined;
}

export function articleScaffold(title: string, today: string, examples: ArticleExamples): string {
  const { family = "FAMILY", variant = "VARIANT", source = "SOURCE" } = examples;
  return [
    "---",
    `title: ${yamlLine(title)}`,
    offer("authors: [{ family: Author, given: First }, { literal: An Office }]"),
    `updated: ${today}`,
    ...explanation("What the article says, in a few sentences."),
    offer("abstract: …"),
    ...explanation("The text below can carry what the data say; check says where it no longer does:"),
    `##   <figure:variants/${variant}/survivors>   a figure in a sentence`,
    `##   <table:variants/${family}>   <plot:variants/${variant}/sightings>   each in a paragraph of its own`,
    `##   [@${source}, p. 31]   a citation`,
    "##   a block that begins with ```expect and says on each line what a sentence takes for granted, such as",
    `##   variants/${variant}/distinct at least 20`,
    "---",
    "",
    "Begin here. The text is Markdown: a blank line separates two paragraphs, `## ` begins a heading.",
    "",
  ].join("\n");
}
