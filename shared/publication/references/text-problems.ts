import type { DiagnosticCode } from "../../diagnostics/catalogue.ts";
import type { Finding } from "../../diagnostics/diagnostic.ts";
import { nearestName, suggestion } from "../../diagnostics/nearest-name.ts";
import { claimForms, claimSuggestion, claimText, expectationFrom, holds } from "../../prose/expectation.ts";
import { type Mention, mentionsIn, type Stretch } from "../../prose/mentions.ts";
import { type Reference, schemes } from "../../prose/reference.ts";
import type { Lookup } from "../lookup.ts";
import { plotAt } from "./plot-at.ts";
import type { Reading } from "./reading.ts";
import { readingAt } from "./reading-at.ts";
import { tableAt } from "./table-at.ts";

export interface TextProblem extends Stretch {
  readonly code: DiagnosticCode;
  readonly finding: Finding;
}

export interface Known {
  /** Asked for only where a text takes something from the data; null where there are none yet. */
  readonly lookup: () => Lookup | null;
  readonly hasSource: (id: string) => boolean;
  readonly sources: () => Iterable<string>;
}

type Problem = Omit<TextProblem, keyof Stretch>;

/** What a text refers to and is not there, and what it takes for granted and is no longer so. */
export function textProblems(text: string, isArticle: boolean, known: Known): TextProblem[] {
  return mentionsIn(text).flatMap((mention) => {
    const problem = problemOf(mention, isArticle, known);
    return problem ? [{ ...problem, start: mention.start, end: mention.end }] : [];
  });
}

function problemOf(mention: Mention, isArticle: boolean, known: Known): Problem | null {
  if (mention.kind === "citation") {
    const { source } = mention.cite;
    if (known.hasSource(source)) return null;
    return {
      code: "unknown-source",
      finding: {
        found: source === "" ? "no source after the bracket" : `"${source}"`,
        expected:
          'an at sign and the id of a source in content/sources.yaml, such as "[@works-ledger, p. 31]"',
        remedy: source === "" ? undefined : suggestion(source, known.sources()),
      },
    };
  }
  const lookup = known.lookup();
  if (!lookup) return null;
  return mention.kind === "expectation"
    ? overturned(mention.line, lookup)
    : misreferred(mention.reference, mention.alone && isArticle, lookup);
}

function misreferred(reference: Reference, hasRoom: boolean, lookup: Lookup): Problem | null {
  const { scheme, path } = reference;
  if (scheme === "figure") {
    const found = readingAt(path, lookup);
    return "problem" in found
      ? { code: "unknown-figure", finding: found.problem }
      : unprintable(found.value.reading, reference);
  }
  if (scheme !== "table" && scheme !== "plot") {
    const nearest = nearestName(scheme, schemes);
    return {
      code: "unknown-figure",
      finding: {
        found: `"${scheme}:"`,
        expected: '"figure:", "table:" or "plot:"',
        remedy: nearest && `Did you mean "${nearest}:"?`,
      },
    };
  }
  const found = scheme === "table" ? tableAt(reference, lookup) : plotAt(path, lookup);
  if ("problem" in found) {
    return { code: scheme === "table" ? "unknown-table" : "unknown-plot", finding: found.problem };
  }
  if (hasRoom) return null;
  return {
    code: "misplaced-reference",
    finding: {
      found: `a ${scheme === "table" ? "table" : "drawing"} where there is no room for one`,
      expected: "it in a paragraph of its own, in an article",
      remedy: "Put an empty line before and after it.",
    },
  };
}

/** A sentence prints figures and numbers; and where there is none, it can print the reason. */
function unprintable(reading: Reading, { path, raw }: Reference): Problem | null {
  if (reading.kind === "word") {
    return {
      code: "unknown-figure",
      finding: { found: `"${path.at(-1)}", which is a word`, expected: "a figure or a number" },
    };
  }
  if (reading.kind === "reason" && reading.text === null) {
    return {
      code: "overturned",
      finding: {
        found: "a figure",
        expected: "it to be withheld, as this sentence says",
        remedy: "Rewrite the sentence.",
      },
    };
  }
  const reason =
    reading.kind === "figure" && reading.figure.value === null && reading.figure.low === null
      ? reading.figure.insufficient
      : null;
  if (reason === null) return null;
  return {
    code: "figure-withheld",
    finding: {
      found: `a figure that is withheld. ${reason.replace(/\.$/, "")}`,
      expected: "one that a sentence can carry",
      remedy: `Write "${raw.replace(/>$/, "/insufficient>")}" to print the reason.`,
    },
  };
}

function overturned(line: string, lookup: Lookup): Problem | null {
  const expectation = expectationFrom(line);
  if (!expectation) {
    return {
      code: "wrong-expectation",
      finding: { found: `"${line}"`, expected: claimForms, remedy: claimSuggestion(line) },
    };
  }
  const { path, claim } = expectation;
  const found = readingAt(path, lookup);
  if ("problem" in found) return { code: "unknown-figure", finding: found.problem };
  const { reading } = found.value;
  const value = comparable(reading, claim.kind === "withheld");
  if (value === undefined || (value !== null && (claim.kind === "is") !== (typeof value === "string"))) {
    return {
      code: "wrong-expectation",
      finding: {
        found: `"${line}"`,
        expected: claim.kind === "is" ? "a word at the end of the path" : "a number at the end of the path",
        remedy: reading.kind === "figure" ? 'Add "/value", "/low" or "/high".' : undefined,
      },
    };
  }
  if (holds(value, claim)) return null;
  const { figure } = found.value.whole.kind === "figure" ? found.value.whole : { figure: null };
  const nothing = figure?.insufficient?.replace(/\.$/, "") ?? "nothing";
  return {
    code: "overturned",
    finding: {
      found:
        value === null ? `no figure: "${nothing}"` : typeof value === "string" ? `"${value}"` : String(value),
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
