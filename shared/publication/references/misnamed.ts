import type { Finding } from "../../diagnostics/diagnostic.ts";
import { nearestName } from "../../diagnostics/nearest-name.ts";
import { expectationFrom } from "../../prose/expectation.ts";
import type { Mention } from "../../prose/mentions.ts";
import { type DataReference, schemes } from "../../prose/reference.ts";
import type { Foreseen } from "./foreseen.ts";
import { unknownCondition } from "./items-at.ts";
import { unknownPlot } from "./plot-at.ts";
import type { Reading } from "./reading.ts";
import { readingIn, unknownSubject } from "./reading-at.ts";
import { type Problem, unknownAmong } from "./resolved.ts";
import { unknownChoice, unknownFamily } from "./table-at.ts";
import { unreadable } from "./unmet.ts";

/** What is wrong with the names in a mention of the data, whatever the figures there will be. */
export function misnamed(
  mention: Extract<Mention, { kind: "expectation" | "reference" }>,
  hasRoom: boolean,
  foreseen: Foreseen,
): Problem | null {
  if (mention.kind === "expectation") {
    const expectation = expectationFrom(mention.line);
    if (!expectation) return unreadable(mention.line);
    const found = foreseenAt(expectation.path, foreseen);
    return found && "finding" in found ? found : null;
  }
  const { scheme, path } = mention.reference;
  if (scheme === "figure") {
    const found = foreseenAt(path, foreseen);
    return found && ("finding" in found ? found : wordInSentence(found, mention.reference));
  }
  if (scheme !== "table" && scheme !== "plot") return unknownScheme(scheme);
  const finding =
    scheme === "table"
      ? unknownInTable(mention.reference, foreseen)
      : (unknownSubject(path, foreseen) ?? unknownPlot(path));
  if (finding) return { code: scheme === "table" ? "unknown-table" : "unknown-plot", finding };
  return hasRoom ? null : withoutRoom(scheme);
}

/** Null where not all is known of what the path begins with. */
function foreseenAt(path: readonly string[], foreseen: Foreseen): Reading | Problem | null {
  const finding = unknownSubject(path, foreseen);
  if (finding) return { code: "unknown-figure", finding };
  const [root, id = "", ...names] = path;
  const top = foreseen.readingOf(root === "variants", id);
  if (!top) return null;
  const found = readingIn(top, id, names);
  return "problem" in found ? { code: "unknown-figure", finding: found.problem } : found.value.reading;
}

function unknownInTable(
  { path, query }: DataReference,
  { families, variants, items }: Foreseen,
): Finding | null {
  const ids = new Map([
    ["variant", variants],
    ["family", families],
    ["item", items],
  ]);
  const isOfItems = path[0] === "items" && path.length === 1;
  const wrongPath = isOfItems ? null : unknownFamily(path, families);
  if (wrongPath) return wrongPath;
  for (const [name, values] of query) {
    const known = ids.get(name);
    const problem =
      (isOfItems ? unknownCondition(name) : unknownChoice(name)) ??
      (known &&
        unknownAmong(values, [...known.values()], `the id of ${name === "item" ? "an" : "a"} ${name}`));
    if (problem) return problem;
  }
  return null;
}

/** A kind of reference that there is not. */
export function unknownScheme(scheme: string): Problem {
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

/** A table or a drawing inside a sentence, or in a text that is no article. */
export const withoutRoom = (scheme: "table" | "plot"): Problem => ({
  code: "misplaced-reference",
  finding: {
    found: `a ${scheme === "table" ? "table" : "drawing"} where there is no room for one`,
    expected: "it in a paragraph of its own, in an article",
    remedy: "Put an empty line before and after it.",
  },
});

/** A sentence is written by its writer, and takes no words from the data. */
export const wordInSentence = ({ kind }: Reading, { path }: DataReference): Problem | null =>
  kind === "word"
    ? {
        code: "unknown-figure",
        finding: { found: `"${path.at(-1)}", which is a word`, expected: "a figure or a number" },
      }
    : null;
