import { nearestName, suggestion } from "../../diagnostics/nearest-name.ts";
import type { Cite } from "../../prose/citation.ts";
import { type Mention, mentionsIn, type Stretch } from "../../prose/mentions.ts";
import type { DataReference } from "../../prose/reference.ts";
import { expectFence, type Slip } from "../../prose/slip.ts";
import type { Lookup } from "../lookup.ts";
import type { Foreseen } from "./foreseen.ts";
import { misnamed, unknownScheme, withoutRoom, wordInSentence } from "./misnamed.ts";
import { plotAt } from "./plot-at.ts";
import type { Reading } from "./reading.ts";
import { readingAt } from "./reading-at.ts";
import type { Problem } from "./resolved.ts";
import { tableAt } from "./table-at.ts";
import { unmet } from "./unmet.ts";

export type TextProblem = Stretch & Problem;

export interface Known {
  /** Asked for only where a text takes something from the data; where there are no figures yet, the names of them. */
  readonly lookup: () => { readonly published: Lookup } | { readonly foreseen: Foreseen };
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
  const hasRoom = mention.kind === "reference" && mention.alone && room === "article";
  if ("foreseen" in lookup) return misnamed(mention, hasRoom, lookup.foreseen);
  return mention.kind === "expectation"
    ? unmet(mention.line, lookup.published)
    : misreferred(mention.reference, hasRoom, lookup.published);
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
  if (scheme !== "table" && scheme !== "plot") return unknownScheme(scheme);
  const found = scheme === "table" ? tableAt(reference, lookup) : plotAt(path, lookup);
  if ("problem" in found) {
    return { code: scheme === "table" ? "unknown-table" : "unknown-plot", finding: found.problem };
  }
  return hasRoom ? null : withoutRoom(scheme);
}

/** A sentence prints figures and numbers; and where there is none, it can print the reason. */
function unprintable(reading: Reading, reference: DataReference): Problem | null {
  const word = wordInSentence(reading, reference);
  if (word) return word;
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
      remedy: `${reason} Write "${reference.raw.replace(/>$/, "/insufficient>")}" to print the reason.`,
    },
  };
}
