import { yamlLine } from "../writing/yaml-line.ts";
import { explanation, offer } from "./comment-lines.ts";

export const familyScaffold = (id: string, name: string, maker: string | undefined): string =>
  [
    ...explanation(
      "A line that begins with one # is not in use yet: remove the # and the space to use it. A line that begins with ## explains.",
    ),
    `id: ${id}`,
    `name: ${yamlLine(name)}`,
    maker === undefined ? offer("maker: …") : `maker: ${yamlLine(maker)}`,
    ...explanation("What these outfits were, in a paragraph or two."),
    offer("description: …"),
    "",
    ...explanation("The groups of parts, in the order of unpacking."),
    "groups:",
    "  case: The case",
    offer("upper-tray: Upper tray", 2),
    offer("papers: Papers", 2),
    "",
    ...explanation(
      "The features that tell the variants apart, each declared once: its values, where and how to look, and the effort: " +
        "1 a glance, 2 handling, 3 dismantling.",
    ),
    "features:",
    offer("lock:", 2),
    offer("  name: Lock", 2),
    offer("  values: [round, square]", 2),
    offer("  look: The plate round the keyhole.", 2),
    offer("  effort: 1", 2),
    "",
  ].join("\n");
