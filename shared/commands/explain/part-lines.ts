import type { PublishedItemPart, PublishedPartLine } from "../../publication/published.ts";
import { wrappedLines } from "../wrapped-lines.ts";
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

/** What one line of the record says beyond its state. */
function remarksOf(line: PublishedPartLine): string {
  return [
    line.model && `model ${line.model}`,
    line.serial && `serial ${line.serial}`,
    line.marks.length > 0 && `marked ${line.marks.join(", ")}`,
    line.condition,
    line.packed && `packed: ${line.packed}`,
    line.repairs.length > 0 && `repairs: ${line.repairs.join(", ")}`,
    line.belongs === "spare" && "spare",
    line.evidence && `by ${line.evidence}`,
    line.note,
  ]
    .filter(Boolean)
    .join("; ");
}

function unitsOf({ units }: PublishedItemPart): string {
  const said = [
    [units.present, "present"],
    [units.substitute, "substitute"],
    [units.unverified, "unverified"],
    [units.absent, "absent"],
    [units.unexamined, "not examined"],
    [units.notIssued, "never issued"],
    [units.surplus, "over"],
  ] as const;
  return said
    .filter(([count]) => count > 0)
    .map(([count, word]) => `${count} ${word}`)
    .join(", ");
}

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
        part.quantity > 1 || part.units.surplus > 0 ? unitsOf(part) : part.summary.replace("-", " ");
      const rate =
        part.rate.value === null
          ? "no recorded example tells of it"
          : `had by ${words.phrase(part.rate)}: ${part.rate.inputs.having} of ${part.rate.inputs.recorded} recorded`;
      const { matching } = part;
      const notes = [
        ...part.lines.map(remarksOf),
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
