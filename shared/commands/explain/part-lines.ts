import { stateInWords } from "../../pages/views/item-parts.ts";
import type { PublishedItemPart } from "../../publication/published.ts";
import { wrappedLines } from "../terminal/wrapped-lines.ts";
import { lineRemarks } from "../words/line-remarks.ts";
import type { Setting } from "./figure-lines.ts";

/** Before the state of a part; how wide the column of states is at least and at most, and what stands after it. */
const indent = 4;
const narrowest = 10;
const widest = 28;
const gap = 2;

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
  const stateOf = (part: PublishedItemPart) =>
    [
      stateInWords(part, setting.words),
      ...(part.units.surplus > 0 ? [`${part.units.surplus} over`] : []),
    ].join(", ");
  const longest = Math.max(narrowest, ...groups.flat().map((part) => stateOf(part).length));
  const column = Math.min(longest, widest);
  return groups.flatMap((parts) => {
    const name = parts[0]?.groupName ?? (groups.length > 1 ? "Other parts" : null);
    return [
      ...(name === null ? [] : [`  ${setting.paint("underline", name)}`]),
      ...parts.flatMap((part) => besideEachOther(part, stateOf(part), column, setting)),
    ];
  });
}

/** The state in its column, as many lines as it takes, and beside it the part with what is noted of it. */
function besideEachOther(
  part: PublishedItemPart,
  state: string,
  column: number,
  setting: Setting,
): readonly string[] {
  const { paint, width } = setting;
  // Broken where one state ends and the next begins.
  const states = wrappedLines(state.replace(/(?<!,) /g, "\u00a0"), column).map((line) =>
    line.replaceAll("\u00a0", " "),
  );
  const told = [
    `${part.quantity > 1 ? `${part.name}, ${part.quantity}` : part.name} ${paint("dim", `(${asideOf(part, setting)})`)}`,
    ...notesOf(part, setting).flatMap((note) => wrappedLines(note, width - indent - column - gap)),
  ];
  return Array.from({ length: Math.max(states.length, told.length) }, (_, at) => {
    const line = states[at] ?? "";
    const rest = " ".repeat(column - line.length + gap);
    return `${" ".repeat(indent)}${line && paint(colours[part.summary], line)}${rest}${told[at] ?? ""}`.trimEnd();
  });
}

function asideOf({ standing, rate }: PublishedItemPart, { words }: Setting): string {
  const having =
    rate.value === null
      ? "no recorded example tells of it"
      : `had by ${words.phrase(rate)}: ${rate.inputs.having} of ${rate.inputs.recorded} recorded`;
  return `${words.pages.standings[standing]}; ${having}`;
}

function notesOf({ lines, matching, assembled }: PublishedItemPart, { words }: Setting): readonly string[] {
  return [
    ...lines.map((line) => lineRemarks(line).join("; ")),
    matching ? words.pages.item.matching[matching.verdict](matching.otherSet ?? "") : "",
    assembled ? "came from another case" : "",
  ].filter((note) => note !== "");
}
