import { type Document, isNode, isScalar, visit, type YAMLError } from "yaml";
import type { Finding } from "../diagnostics/diagnostic.ts";

/** What is wrong, from one offset of the block to another, in a writer's words. */
export interface YamlFault extends Finding {
  readonly start: number;
  readonly end: number;
}

interface Plain extends Finding {
  readonly code: YAMLError["code"];
  /** Of the reader's own message, where one code has several. */
  readonly says?: RegExp;
}

/** The commonest mistakes as a writer would name them; the reader's own words are for those who write readers. */
const plain: readonly Plain[] = [
  {
    code: "TAB_AS_INDENT",
    found: "a tab before a field",
    expected: "spaces",
    remedy: "Indent with spaces.",
  },
  {
    code: "BAD_INDENT",
    says: /end with a }/,
    found: "a brace that is not closed",
    expected: '"}" before this',
  },
  {
    code: "BAD_INDENT",
    says: /end with a ]/,
    found: "a bracket that is not closed",
    expected: '"]" before this',
  },
  {
    code: "BAD_INDENT",
    says: /^All mapping items must start at the same column/,
    found: "a field that begins further to the left or right than those it stands among",
    expected: "all of them at the same column",
    remedy: "Give each the same number of spaces.",
  },
  {
    code: "BLOCK_IN_FLOW",
    found: "two fields in braces with nothing between them",
    expected: "a comma",
    remedy: "A comma, a bracket or a brace is missing before the second.",
  },
  {
    code: "MISSING_CHAR",
    says: /^Missing , or :/,
    found: "two values with nothing between them",
    expected: "a comma",
  },
  {
    code: "BLOCK_AS_IMPLICIT_KEY",
    found: "a colon and a space within a value",
    expected: "one field a line",
    remedy: "Put a value that contains a colon and a space in quotation marks.",
  },
  {
    code: "MULTILINE_IMPLICIT_KEY",
    found: "a line that is not a field",
    expected: "a name, a colon and a value",
    remedy: "Write a colon and a space after the name of a field.",
  },
  {
    code: "BAD_SCALAR_START",
    found: "a value that begins with a character that YAML reserves",
    expected: "a word, or quotation marks around the value",
    remedy: "Put a value that begins with such a character in quotation marks.",
  },
  {
    code: "UNEXPECTED_TOKEN",
    says: /at node end/,
    found: "text after the end of a value",
    expected: "the end of the line",
    remedy:
      "Inside single quotation marks, write the same mark twice; inside double ones, write a backslash before it.",
  },
  {
    code: "RESOURCE_EXHAUSTION",
    found: "values within values, too deep to be read",
    expected: "no more brackets, hyphens or braces than a field needs",
  },
  {
    code: "MULTIPLE_DOCS",
    found: "a line of three hyphens",
    expected: "one record in a file",
  },
];

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
  const tab = document.errors.find(({ code }) => code === "TAB_AS_INDENT")?.pos[0];
  for (const { code, pos, message } of document.errors) {
    const [start, end] = pos;
    // Behind a tab the reader no longer knows how far anything is indented.
    if (tab !== undefined && start > tab && code !== "TAB_AS_INDENT") continue;
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
          remedy: `It is already given on line ${lineOf(twice.first)}.`,
        }
      : { start, end, ...inPlainWords(code, message) };
  }
}

function inPlainWords(code: YAMLError["code"], message: string): Finding {
  const known = plain.find((each) => each.code === code && (each.says?.test(message) ?? true));
  if (!known) return { found: `"${message.replace(/[.:]$/, "")}"`, expected: "YAML 1.2" };
  const { found, expected, remedy } = known;
  return { found, expected, ...(remedy === undefined ? {} : { remedy }) };
}
