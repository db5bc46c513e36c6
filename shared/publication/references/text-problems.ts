import { nearestName, suggestion } from "../../diagnostics/nearest-name.ts";
import type { Cite } from "../../prose/citation.ts";
import { type Mention, mentionsIn, type Stretch } from "../../prose/mentions.ts";
import { type DataReference, schemes } from "../../prose/reference.ts";
import { expectFence, type Slip } from "../../prose/slip.ts";
import type { Lookup } from "../lookup.ts";
import { plotAt } from "./plot-at.ts";
import type { Reading } from "./reading.ts";
import { readingAt } from "./reading-at.ts";
import type { Problem } from "./resolved.ts";
import { tableAt } from "./table-at.ts";
import { unmet } from "./unmet.ts";

export type TextProblem = Stretch & Problem;

export interface Known {
  /** Asked for only where a text takes something from the data; null where there are none yet. */
  readonly lookup: () => Lookup | null;
  readonly hasSource: (id: string) => boolean;
  readonly sources: () => Iterable<string>;
}

/** What a text has room for: a title has it for words alone, and only an article for tables and drawings. */
export type Room = "article" | "text" | "words";

/** What a text refers to and is not there, and what it takes for granted and is no longer so. */
export function textProblems(text: string, room: Room, known: Known): TextProblem[] {
  return mentionsIn(text).flatMap((mention) => {
    const problem = problemOf(mention, room, known);
    return problem ? [{ ...problem, start: mention.start, end: mention.end }] : [];
  });
}

function problemOf(mention: Mention, room: Room, known: Known): Problem | null {
  if (mention.kind === "slip") return mistaken(mention.slip, known);
  if (room === "words") return wordless(mention, known);
  if (mention.kind === "citation") return miscited(mention.cite, known);
  const lookup = known.lookup();
  if (!lookup) return null;
  return mention.kind === "expectation"
    ? unmet(mention.line, lookup)
    : misreferred(mention.reference, mention.alone && room === "article", lookup);
}

/** Where words are printed as they stand, a figure or a citation would be, too. */
function wordless(mention: Mention, known: Known): Problem | null {
  const isCited = mention.kind === "citation" && known.hasSource(mention.cite.source);
  if (mention.kind !== "reference" && !isCited) return null;
  return {
    code: "misplaced-reference",
    finding: {
      found: mention.kind === "reference" ? `"${mention.reference.raw}"` : `"${mention.cite.text}"`,
      expected: "words only, since they are printed here as they stand",
      remedy: "Put it into the text below.",
    },
  };
}

function mistaken({ kind, raw, meant, sources }: Slip, known: Known): Problem | null {
  // Otherwise it is a text in brackets. Where the sources cannot be read, nobody can say that it is more.
  if (kind === "citation" && !sources.some((id) => nearestName(id, known.sources()) !== undefined))
    return null;
  const expected = {
    reference: 'a kind, a colon and a path, without spaces, between "<" and ">"',
    citation:
      'a citation that begins with its at sign and ends with its bracket, such as "[@works-ledger, p. 31]"',
    footnote: 'the words themselves, or a citation, such as "[@works-ledger, p. 31]"',
    fence: `"${expectFence}" alone before what is expected`,
  }[kind];
  const remedy =
    kind === "footnote"
      ? "Footnotes are not supported: put the words into the text, or write a backslash before the bracket."
      : meant && `Write "${kind === "citation" ? ofKnownSources(meant, known) : meant}".`;
  return {
    code: kind === "fence" ? "wrong-expectation" : "wrong-reference",
    finding: { found: `"${raw}"`, expected, remedy },
  };
}

/** A citation as it is to be written, each source by the id that was meant. */
const ofKnownSources = (citation: string, known: Known): string =>
  citation.replace(/(?<=@)[^\s,;\]]+/g, (id) => nearestName(id, known.sources()) ?? id);

/** A source, and what is left where the comma after it is forgotten. */
const withoutComma = /^(@[^\s,;]+) (.+)$/;

function miscited({ source, text }: Cite, known: Known): Problem | null {
  if (known.hasSource(source)) return null;
  const expected =
    'an at sign and the id of a source in content/sources.yaml, such as "[@works-ledger, p. 31]"';
  if (source !== "")
    return {
      code: "unknown-source",
      finding: { found: `"${source}"`, expected, remedy: suggestion(source, known.sources()) },
    };
  const [, at, locator] = withoutComma.exec(text) ?? [];
  if (at !== undefined)
    return {
      code: "wrong-reference",
      finding: {
        found: `"${text}"`,
        expected: "a comma after the source",
        remedy: `Write "${ofKnownSources(at, known)}, ${locator}".`,
      },
    };
  return {
    code: "wrong-reference",
    finding: {
      found: text === "" ? "nothing" : `"${text}"`,
      expected,
      remedy: known.hasSource(text) ? `Write "@${text}".` : undefined,
    },
  };
}

function misreferred(reference: DataReference, hasRoom: boolean, lookup: Lookup): Problem | null {
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
function unprintable(reading: Reading, { path, raw }: DataReference): Problem | null {
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
      found: "a figure that is withheld",
      expected: "one for which the evidence is enough",
      remedy: `${reason} Write "${raw.replace(/>$/, "/insufficient>")}" to print the reason.`,
    },
  };
}
