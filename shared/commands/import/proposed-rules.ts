import { dateEvidence } from "../../validation/written/read-date.ts";
import { provenDecimals, speaksAgainst } from "../../validation/written/read-number.ts";
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
            `Nothing in your file proves which comes first in 3/12/1998. ${habits.name} puts the ${word(habits.order)} first: check whether your file does too.`,
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
      ? [comment(`Two-digit years are read as ${from} to ${thisYear}.`), `two-digit-years-from: ${from}`]
      : []),
  ];
}

/** How the numbers of a sheet are read, by the same rule, and only where no other number of it speaks against that. */
export function decimalLines(cells: readonly string[], { name, decimal: habit }: Habits): string[] {
  if (!cells.some((cell) => /[.,]/.test(cell))) return [];
  const proven = provenDecimals(new Set(cells));
  const [decimal] = proven.size === 0 ? [habit] : proven;
  if (decimal === undefined || proven.size > 1) return [];
  const against = cells.find((cell) => speaksAgainst(cell, decimal));
  if (proven.size === 1 && against !== undefined) {
    return [
      comment(
        `Other numbers show "${decimal}" before the decimals, and "${against}" would have three of them.`,
      ),
      `# decimal: ${yamlLine(decimal)}`,
    ];
  }
  if (against !== undefined) return [];
  const reason =
    proven.size === 1
      ? "The decimal sign, as your numbers show."
      : `Nothing in your numbers proves the decimal sign. ${name} writes "${decimal}": check whether your file does too.`;
  return [comment(reason), `decimal: ${yamlLine(decimal)}`];
}
