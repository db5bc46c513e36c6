import { dateEvidence } from "../../validation/written/read-date.ts";
import { provenDecimals } from "../../validation/written/read-number.ts";
import { yamlLine } from "../writing/yaml-line.ts";
import type { Habits } from "./language-habits.ts";

/** A line of a map that explains. */
export const comment = (text: string, indent = "") => `${indent}## ${text}`;

/** How the dates of a sheet are read: what its cells show goes before what the collection's language does. */
export function dateLines(cells: readonly string[], habits: Habits, thisYear: number): string[] {
  const { proofs, twoDigitYears } = dateEvidence(new Set(cells));
  const [proof] = proofs.size === 1 ? [...proofs] : [];
  const from = thisYear - 99;
  const word = (order: string) => (order === "day-month" ? "day" : "month");
  const order = proof
    ? [comment(`${proof[1]} in your file shows the order: ${word(proof[0])} first.`), `dates: ${proof[0]}`]
    : proofs.size === 0 && habits.order
      ? [
          comment(
            `Nothing in your file proves which comes first in 3/12/1998. ${habits.name} puts the ${word(habits.order)} first: look whether your file does.`,
          ),
          `dates: ${habits.order}`,
        ]
      : [
          comment("Which comes first in 3/12/1998: day-month or month-day? Nothing in your file proves it."),
          "# dates: day-month",
        ];
  return [
    ...order,
    ...(twoDigitYears
      ? [comment(`Years of two digits are taken as ${from} to ${thisYear}.`), `two-digit-years-from: ${from}`]
      : []),
  ];
}

/** How the numbers of a sheet are read, by the same rule. */
export function decimalLines(cells: readonly string[], { name, decimal }: Habits): string[] {
  if (!cells.some((cell) => /[.,]/.test(cell))) return [];
  const proven = provenDecimals(new Set(cells));
  const [shown] = proven;
  if (proven.size === 1 && shown)
    return [comment("The sign before the decimals, as your numbers show."), `decimal: ${yamlLine(shown)}`];
  // No price has three decimals: where the language's sign would make such ones, the sheet was written in another.
  if (
    proven.size > 0 ||
    !decimal ||
    cells.some((cell) => new RegExp(`\\d\\${decimal}\\d{3}(?!\\d)`).test(cell))
  ) {
    return [];
  }
  return [
    comment(
      `Nothing in your numbers proves the sign before the decimals. ${name} writes "${decimal}": look whether your file does.`,
    ),
    `decimal: ${yamlLine(decimal)}`,
  ];
}
