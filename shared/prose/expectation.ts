import { nearestName } from "../diagnostics/nearest-name.ts";

/** What a writer takes for granted about a figure. */
export interface Expectation {
  readonly path: readonly string[];
  readonly claim: Claim;
}

export type Claim =
  | { readonly kind: "at least" | "at most" | "equals"; readonly number: Written }
  | { readonly kind: "between"; readonly low: Written; readonly high: Written }
  | { readonly kind: "is"; readonly word: string }
  | { readonly kind: "withheld" };

/** A number as it was written: 64% is 0.64, given to two decimals. */
export interface Written {
  readonly text: string;
  readonly value: number;
  readonly decimals: number;
}

const number = /^(-?\d+)(?:\.(\d+))?(%?)$/;

function numberFrom(text: string | undefined): Written | null {
  const match = text === undefined ? null : number.exec(text);
  if (!match || text === undefined) return null;
  const [, whole, fraction = "", percent] = match;
  // Moving the point in the exponent, and not by a division, keeps 64% the very number that 0.64 is.
  const shift = percent === "%" ? "e-2" : "";
  return {
    text,
    value: Number(`${whole}${fraction === "" ? "" : `.${fraction}`}${shift}`),
    decimals: fraction.length + (percent === "%" ? 2 : 0),
  };
}

export const claimForms =
  '"at least 20", "at most 40", "between 20 and 40", "equals 21", "is confirmed" or "withheld" after the path';

/** The words of a line; a sign of per cent belongs to its number, with or without a space before it. */
const wordsIn = (line: string): string[] =>
  line
    .trim()
    .replace(/(?<=\d)\s+%/g, "%")
    .split(/\s+/);

/** One line of a block of assertions; null where it cannot be read as one. */
export function expectationFrom(line: string): Expectation | null {
  const [target = "", ...rest] = wordsIn(line);
  const claim = claimFrom(rest);
  return claim && { path: target.split("/"), claim };
}

function claimFrom(words: readonly string[]): Claim | null {
  const [first, second, third, fourth, ...more] = words;
  if (more.length > 0) return null;
  if (first === "between" && third === "and") {
    const [low, high] = [numberFrom(second), numberFrom(fourth)];
    return low && high && { kind: "between", low, high };
  }
  if (fourth !== undefined) return null;
  const bound = `${first} ${second}`;
  if (bound === "at least" || bound === "at most") {
    const bounded = numberFrom(third);
    return bounded && { kind: bound, number: bounded };
  }
  if (third !== undefined) return null;
  if (first === "equals") {
    const equal = numberFrom(second);
    return equal && { kind: "equals", number: equal };
  }
  if (first === "is" && second !== undefined) return { kind: "is", word: second.replace(/^"(.+)"$/, "$1") };
  return first === "withheld" && second === undefined ? { kind: "withheld" } : null;
}

export const claimText = (claim: Claim): string => {
  switch (claim.kind) {
    case "between":
      return `between ${claim.low.text} and ${claim.high.text}`;
    case "is":
      return `"${claim.word}"`;
    case "withheld":
      return "the figure to be withheld";
    case "equals":
      return claim.number.text;
    default:
      return `${claim.kind} ${claim.number.text}`;
  }
};

export const numbersOf = (claim: Claim): readonly Written[] =>
  claim.kind === "between" ? [claim.low, claim.high] : "number" in claim ? [claim.number] : [];

/** The claim itself, unless its ends stand the wrong way round. */
export const inOrder = (claim: Claim): Claim =>
  claim.kind === "between" && claim.low.value > claim.high.value
    ? { ...claim, low: claim.high, high: claim.low }
    : claim;

const asPercent = (number: Written): Written =>
  number.value > 1 ? (numberFrom(`${number.text.replace("%", "")}%`) ?? number) : number;

/** The claim with a sign of per cent at every number that is too large for a share. */
export const withPercent = (claim: Claim): Claim =>
  claim.kind === "between"
    ? { ...claim, low: asPercent(claim.low), high: asPercent(claim.high) }
    : "number" in claim
      ? { ...claim, number: asPercent(claim.number) }
      : claim;

/** As many decimals as were written decide what is equal: 26.14 equals 26, and 0.638 equals 64%. */
const rounds = (value: number, { value: claimed, decimals }: Written): boolean =>
  value.toFixed(decimals) === claimed.toFixed(decimals);

/** Whether a value, null where the evidence carries none, is as a writer took it to be. */
export function holds(value: number | string | null, claim: Claim): boolean {
  if (claim.kind === "withheld") return value === null;
  if (claim.kind === "is") return value === claim.word;
  if (typeof value !== "number") return false;
  switch (claim.kind) {
    case "at least":
      return value >= claim.number.value;
    case "at most":
      return value <= claim.number.value;
    case "between":
      return value >= claim.low.value && value <= claim.high.value;
    default:
      return rounds(value, claim.number);
  }
}

/** The nearest words to what stands where a claim should be. */
export function claimSuggestion(line: string): string | undefined {
  const [, ...words] = wordsIn(line);
  const written = words.filter((word) => numberFrom(word) === null).join(" ");
  const nearest = nearestName(written.replace(/[-_]/g, " "), [
    "at least",
    "at most",
    "between and",
    "equals",
    "withheld",
  ]);
  return nearest === undefined
    ? undefined
    : `Did you mean "${nearest.replace("between and", "between … and …")}"?`;
}
