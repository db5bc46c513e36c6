import { nearestSuggestion } from "../../diagnostics/nearest-name.ts";
import {
  type Claim,
  claimForms,
  claimSuggestion,
  claimText,
  expectationFrom,
  holds,
  inOrder,
  numbersOf,
  withPercent,
} from "../../prose/expectation.ts";
import { verdicts } from "../../terms/verdicts.ts";
import type { Lookup } from "../lookup.ts";
import type { Reading } from "./reading.ts";
import { type ReadingAt, readingAt } from "./reading-at.ts";
import type { Problem } from "./resolved.ts";

/** A line of which nobody can tell what it expects. */
export const unreadable = (line: string): Problem => ({
  code: "wrong-expectation",
  finding: { found: `"${line}"`, expected: claimForms, remedy: claimSuggestion(line) },
});

/** What is wrong with a line of a text's expectations: it cannot be read, can never be true, or is true no longer. */
export function unmet(line: string, lookup: Lookup): Problem | null {
  const wrong = (found: string, expected: string, remedy?: string): Problem => ({
    code: "wrong-expectation",
    finding: { found: `"${found}"`, expected, remedy },
  });
  const expectation = expectationFrom(line);
  if (!expectation) return unreadable(line);
  const { path, claim } = expectation;
  const found = readingAt(path, lookup);
  if ("problem" in found) return { code: "unknown-figure", finding: found.problem };
  const { reading } = found.value;
  const value = comparable(reading, claim.kind === "withheld");
  if (value === undefined || (value !== null && (claim.kind === "is") !== (typeof value === "string"))) {
    return wrong(
      line,
      claim.kind === "is" ? "a word at the end of the path" : "a number at the end of the path",
      reading.kind === "figure" ? 'Add "/value", "/low" or "/high".' : undefined,
    );
  }
  const ordered = inOrder(claim);
  if (ordered !== claim)
    return wrong(claimText(claim), "the lower number first", `Write "${claimText(ordered)}".`);
  const isShare = reading.kind === "number" && reading.unit === "share";
  if (isShare && numbersOf(claim).some((number) => number.value > 1)) {
    const meant = withPercent(claim);
    const remedy = numbersOf(meant).every((number) => number.value <= 1)
      ? `Write "${claimText(meant)}".`
      : undefined;
    return wrong(claimText(claim), "a share, from 0% to 100%", remedy);
  }
  if (claim.kind === "is") {
    const words = wordsAt(found.value, lookup);
    if (!words.includes(claim.word)) {
      const named = words.map((word) => `"${word}"`).join(" or ");
      return wrong(claim.word, named || "a word that is there", nearestSuggestion(claim.word, words));
    }
  }
  if (holds(value, claim)) return null;
  const { figure } = found.value.whole.kind === "figure" ? found.value.whole : { figure: null };
  const nothing = figure?.insufficient?.replace(/\.$/, "") ?? "nothing";
  return {
    code: "overturned",
    finding: {
      found:
        value === null
          ? `no figure: "${nothing}"`
          : typeof value === "string"
            ? `"${value}"`
            : inFigures(value, isShare, claim),
      expected: claimText(claim),
      remedy: "Rewrite the sentence, or the expectation.",
    },
  };
}

/** What an assertion compares; undefined where there is nothing to compare. */
function comparable(reading: Reading, forPresence: boolean): number | string | null | undefined {
  switch (reading.kind) {
    case "number":
      return reading.value;
    case "word":
      return reading.word;
    case "figure":
      return forPresence ? reading.figure.value : undefined;
    default:
      return undefined;
  }
}

/** The words that can stand at a path. */
function wordsAt({ whole, subject }: ReadingAt, { collection }: Lookup): readonly string[] {
  if (whole.kind === "class") return collection.scale?.classes.map(({ id }) => id) ?? [];
  if (whole.kind === "level") return subject.kind === "item" ? subject.item.levels.map(({ id }) => id) : [];
  return verdicts;
}

const mostDecimals = 12;

/** Of two figures less than a twentieth is lost; of a fraction that is rounded to nothing, all of it. */
const isTooCoarse = (rounded: number, value: number): boolean =>
  Math.abs(rounded - value) > Math.abs(value) / 20;

/** A number with no more decimals than it takes to see what it is, and that it is not what was claimed. */
function inFigures(value: number, isShare: boolean, claim: Claim): string {
  for (let decimals = 0; decimals < mostDecimals; decimals++) {
    const rounded = Number(value.toFixed(decimals + (isShare ? 2 : 0)));
    if (isTooCoarse(rounded, value) || holds(rounded, claim)) continue;
    return isShare ? `${(rounded * 100).toFixed(decimals)}%` : String(rounded);
  }
  return String(value);
}
