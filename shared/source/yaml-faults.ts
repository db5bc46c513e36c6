import { type Document, isNode, isScalar, visit, type YAMLError } from "yaml";
import type { Finding } from "../diagnostics/diagnostic.ts";

/** What is wrong, from one offset of the block to another, in a writer's words. */
export interface YamlFault extends Finding {
  readonly start: number;
  readonly end: number;
}

/** What most often lies behind a mistake that the reader names in words of its own. */
const remedies: Partial<Record<YAMLError["code"], string>> = {
  TAB_AS_INDENT: "Indent with spaces.",
  BLOCK_AS_IMPLICIT_KEY: "A value that holds a colon and a space stands in quotation marks.",
  BLOCK_IN_FLOW: "Before it a comma, a bracket or a brace is missing.",
  MULTILINE_IMPLICIT_KEY: "The name of a field is followed by a colon and a space.",
  DUPLICATE_KEY: "Each field is given once.",
  BAD_SCALAR_START: "A value that begins with a sign stands in quotation marks.",
};

/** The same key twice: from where the second begins, its end, its name, and where the first begins. */
interface Twice {
  readonly end: number;
  readonly name: string;
  readonly first: number;
}

interface Pieces {
  /** Where a text in quotation marks begins, by where it ends. */
  readonly quoted: ReadonlyMap<number, number>;
  readonly twice: ReadonlyMap<number, Twice>;
}

/** Found in one walk: a damaged file has as many mistakes as lines. */
function piecesOf(document: Document): Pieces {
  const quoted = new Map<number, number>();
  const twice = new Map<number, Twice>();
  visit(document, {
    Scalar: (_, { type, range }) => {
      if (range && (type === "QUOTE_DOUBLE" || type === "QUOTE_SINGLE")) quoted.set(range[1], range[0]);
    },
    Map: (_, { items }) => {
      const firsts = new Map<unknown, number>();
      for (const { key } of items) {
        if (!isNode(key) || !isScalar(key) || !key.range) continue;
        const [start, end] = key.range;
        const first = firsts.get(key.value);
        if (first === undefined) firsts.set(key.value, start);
        else twice.set(start, { end, name: String(key.value), first });
      }
    },
  });
  return { quoted, twice };
}

/**
 * The faults of a block that the reader went on after, each at the place where a writer mends it: a quotation mark that
 * is not closed where it was opened, and not at the end of all that it took in. `lineOf` is the line of an offset.
 */
export function* yamlFaults(
  block: string,
  document: Document,
  lineOf: (offset: number) => number,
): Generator<YamlFault> {
  let pieces: Pieces | undefined;
  for (const { code, pos, message } of document.errors) {
    const [start, end] = pos;
    pieces ??= piecesOf(document);
    const opened = code === "MISSING_CHAR" ? pieces.quoted.get(start) : undefined;
    if (opened !== undefined && message.startsWith("Missing closing ")) {
      const endOfLine = /\r?\n|$/.exec(block.slice(opened))?.index ?? 1;
      yield {
        start: opened,
        end: Math.max(opened + 1, Math.min(start, opened + endOfLine)),
        found: "a quotation mark that is not closed",
        expected: "another where the text ends",
      };
      continue;
    }
    const twice = code === "DUPLICATE_KEY" ? pieces.twice.get(start) : undefined;
    yield twice
      ? {
          start,
          end: twice.end,
          found: `"${twice.name}" again`,
          expected: "each field once",
          remedy: `It is given on line ${lineOf(twice.first)} already.`,
        }
      : {
          start,
          end,
          found: `"${message.replace(/[.:]$/, "")}"`,
          expected: "YAML 1.2",
          remedy: remedies[code],
        };
  }
}
