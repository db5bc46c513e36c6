import type { PublishedItemPart } from "../../publication/published.ts";
import { wrappedLines } from "../terminal/wrapped-lines.ts";
import { lineRemarks } from "../words/line-remarks.ts";
import { unitWords } from "../words/unit-words.ts";
import type { Setting } from "./figure-lines.ts";

/** Where the names of the parts begin. */
const column = 29;

const colours = {
  present: "green",
  incomplete: "yellow",
  substitute: "yellow",
  unverified: "yellow",
  "partly-examined": "dim",
  unexamined: "dim",
  absent: "red",
  "not-issued": "dim",
} as const;

/** Every part of the reference, group by group in the order of unpacking, with what was found of it. */
export function partLines(
  groups: readonly (readonly PublishedItemPart[])[],
  setting: Setting,
): readonly string[] {
  const { words, paint, width } = setting;
  return groups.flatMap((parts) => [
    `  ${paint("underline", parts[0]?.groupName ?? "Other parts")}`,
    ...parts.flatMap((part) => {
      const quantity = part.quantity > 1 ? `${part.name}, ${part.quantity}` : part.name;
      const counted =
        part.quantity > 1 || part.units.surplus > 0 ? unitWords(part.units) : part.summary.replace("-", " ");
      const rate =
        part.rate.value === null
          ? "no recorded example mentions it"
          : `had by ${words.phrase(part.rate)}: ${part.rate.inputs.having} of ${part.rate.inputs.recorded} recorded`;
      const { matching } = part;
      const notes = [
        ...part.lines.map((line) => lineRemarks(line).join("; ")),
        matching ? words.pages.item.matching[matching.verdict](matching.otherSet ?? "") : "",
        part.assembled ? "came from another case" : "",
      ]
        .filter((each) => each !== "")
        .flatMap((each) => wrappedLines(each, width - column))
        .map((line) => `${" ".repeat(column)}${line}`);
      return [
        `    ${paint(colours[part.summary], counted.padEnd(column - 5))} ${quantity} ${paint("dim", `(${part.standing}; ${rate})`)}`,
        ...notes,
      ];
    }),
  ]);
}
