import yaml from "js-yaml";
import {
  type Alias,
  type Document,
  isAlias,
  isCollection,
  isMap,
  isNode,
  isSeq,
  type Node,
  parseDocument,
  visit,
  type YAMLMap,
} from "yaml";
import { type Diagnostic, diagnose } from "../diagnostics/diagnostic.ts";
import { type Locus, locusBetween } from "../diagnostics/place.ts";
import type { Path } from "./document.ts";
import { yamlFaults } from "./yaml-faults.ts";

/**
 * A whole number is only what reads back as it was typed: a serial `0118`, a date `1931-03` or `12E4` stays text, and so
 * does an integer too large for a double. A decimal may end in noughts, since prices do: `1.50` is the number 1.5, and
 * where it is a serial it is put in quotes.
 */
const faithfulInteger = new yaml.Type("tag:yaml.org,2002:int", {
  kind: "scalar",
  resolve: (text: unknown) =>
    typeof text === "string" && /^(?:0|-?[1-9]\d{0,15})$/.test(text) && Number.isSafeInteger(Number(text)),
  construct: Number,
  predicate: Number.isInteger,
});
const plainDecimal = new yaml.Type("tag:yaml.org,2002:float", {
  kind: "scalar",
  resolve: (text: unknown) => typeof text === "string" && /^-?(?:0|[1-9]\d{0,15})\.\d{1,17}$/.test(text),
  construct: Number,
  predicate: (value: unknown) => typeof value === "number",
});
const jsonNull = new yaml.Type("tag:yaml.org,2002:null", {
  kind: "scalar",
  resolve: (text: unknown) => text === null || text === "" || text === "null" || text === "~",
  construct: () => null,
});
const jsonBoolean = new yaml.Type("tag:yaml.org,2002:bool", {
  kind: "scalar",
  resolve: (text: unknown) => text === "true" || text === "false",
  construct: (text: string) => text === "true",
});
const asTyped = yaml.FAILSAFE_SCHEMA.extend({
  implicit: [jsonNull, jsonBoolean, faithfulInteger, plainDecimal],
});

/** Aliases are shared, not copied, while reading; it is walking them that explodes. */
const mostNodes = 200_000;

function unfoldsTooFar(data: unknown): boolean {
  let nodes = 0;
  const walk = (value: unknown): boolean => {
    if (++nodes > mostNodes) return true;
    return typeof value === "object" && value !== null && Object.values(value).some(walk);
  };
  try {
    return walk(data);
  } catch (problem) {
    // A value that contains itself runs out of stack before it runs out of nodes.
    if (problem instanceof RangeError) return true;
    throw problem;
  }
}

export interface YamlText {
  readonly file: string;
  /** The whole file; the YAML is the stretch from `start` to `end`. */
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

export function readYaml(source: YamlText): { data: unknown; diagnostics: Diagnostic[] } {
  const block = source.text.slice(source.start, source.end);
  let data: unknown;
  try {
    data = yaml.load(block, { schema: asTyped });
  } catch (problem) {
    if (!(problem instanceof Error)) throw problem;
    return { data: undefined, diagnostics: syntaxProblems(source, block, problem) };
  }
  if (block.includes("*") && block.includes("&") && unfoldsTooFar(data)) {
    const at = source.start + block.indexOf("*");
    const locus = locusBetween(source.file, source.text, at, at + 1);
    return {
      data: undefined,
      diagnostics: [
        diagnose("yaml-aliases", locus, {
          found: `aliases that expand to more than ${mostNodes} values`,
          expected: "a record that can be written out",
          remedy: "Write the values where they belong.",
        }),
      ],
    };
  }
  const diagnostics = [
    ...(hasMapForKey(data) ? keyProblems(source, block) : []),
    ...halfLetters(source, block, data),
  ];
  return { data: diagnostics.length > 0 ? undefined : data, diagnostics };
}

/** A pair of escapes that make one letter (UTF-16); or, in the group, half of one. */
const surrogates =
  /\\u[dD][89abAB][\da-fA-F]{2}\\u[dD][c-fC-F][\da-fA-F]{2}|(\\(?:u|U0000)[dD][89a-fA-F][\da-fA-F]{2})/g;

const holdsHalf = (data: unknown): boolean => {
  if (typeof data === "string") return /\p{Cs}/u.test(data);
  if (typeof data !== "object" || data === null) return false;
  return Object.entries(data).some(([key, value]) => holdsHalf(key) || holdsHalf(value));
};

/** No file in UTF-8 can hold half a letter (RFC 3629, 3): a page could not show what the record says. */
function halfLetters(source: YamlText, block: string, data: unknown): Diagnostic[] {
  if (!/\\[uU]/.test(block) || !holdsHalf(data)) return [];
  const at = [...block.matchAll(surrogates)].find(({ 1: half }) => half !== undefined);
  const start = source.start + (at?.index ?? 0);
  const locus = locusBetween(source.file, source.text, start, start + (at?.[1]?.length ?? 1));
  const found = `half of a character${at?.[1] === undefined ? "" : `, ${at[1]}`}`;
  return [diagnose("not-text", locus, { found, expected: "a whole one" })];
}

/**
 * What the slow reader makes of a block, each piece with its place; null where that is nested deeper than it can go. A
 * damaged file has hundreds of thousands of mistakes: neither the line of each is copied into its message, nor is it
 * asked where in the reader it was noticed. A carriage return alone ends a line (YAML 1.2, 5.4), which it does not know.
 */
function slowlyRead(block: string, uniqueKeys: boolean): ReturnType<typeof parseDocument> | null {
  const { stackTraceLimit } = Error;
  Error.stackTraceLimit = 0;
  try {
    return parseDocument(block.replace(/\r(?!\n)/g, "\n"), {
      version: "1.2",
      logLevel: "silent",
      prettyErrors: false,
      uniqueKeys,
    });
  } catch (problem) {
    if (problem instanceof RangeError) return null;
    throw problem;
  } finally {
    Error.stackTraceLimit = stackTraceLimit;
  }
}

/** What js-yaml makes of a map in a key, as in `{{ name }}`; somebody may also have written it in quotation marks. */
const mapAsKey = "[object Object]";

function hasMapForKey(data: unknown): boolean {
  if (typeof data !== "object" || data === null) return false;
  if (Array.isArray(data)) return data.some(hasMapForKey);
  for (const [key, value] of Object.entries(data)) {
    if (key.includes(mapAsKey) || hasMapForKey(value)) return true;
  }
  return false;
}

/** A map, a list, or an alias of one. */
const isStructure = (key: Node, document: Document): boolean =>
  isCollection(isAlias(key) ? key.resolve(document) : key);

function keyProblems(source: YamlText, block: string): Diagnostic[] {
  const document = slowlyRead(block, false);
  const remedy = "Put text that contains braces in quotation marks.";
  const found = (what: string) => ({ found: `a ${what} as a key`, expected: "text", remedy });
  if (!document) {
    const locus = locusBetween(source.file, source.text, source.start, source.start + 1);
    return [diagnose("yaml-syntax", locus, found("map"))];
  }
  const diagnostics: Diagnostic[] = [];
  visit(document, {
    Pair: (_, { key }) => {
      if (!isNode(key) || !key.range || !isStructure(key, document)) return;
      const [start, end] = key.range;
      const locus = locusBetween(source.file, source.text, source.start + start, source.start + end);
      diagnostics.push(diagnose("yaml-syntax", locus, found(isSeq(key) ? "list" : "map")));
    },
  });
  return diagnostics;
}

/**
 * The slow reader goes on after a mistake and so finds them all; the fast one stops at the first. Of one line the first
 * is told of: what follows it there is most often its doing.
 */
function syntaxProblems(source: YamlText, block: string, first: Error): Diagnostic[] {
  const lines = new Set<number>();
  const diagnostics: Diagnostic[] = [];
  const locusOf = (start: number, end: number) =>
    locusBetween(source.file, source.text, source.start + start, source.start + end);
  const document = slowlyRead(block, true);
  const lineOf = (offset: number) => locusOf(offset, offset + 1).place.line;
  for (const { start, end, ...finding } of document ? yamlFaults(block, document, lineOf) : []) {
    const locus = locusOf(start, end);
    if (lines.has(locus.place.line)) continue;
    lines.add(locus.place.line);
    diagnostics.push(diagnose("yaml-syntax", locus, finding));
  }
  if (diagnostics.length > 0) return diagnostics;
  const mark = first instanceof yaml.YAMLException ? first.mark : undefined;
  const at = source.start + Math.min(mark?.position ?? 0, block.length);
  const said = first instanceof yaml.YAMLException ? first.reason : "a value nested too deeply";
  return [
    diagnose("yaml-syntax", locusBetween(source.file, source.text, at, at + 1), {
      found: said,
      expected: "YAML 1.2",
    }),
  ];
}

type Pairs = ReadonlyMap<string, YAMLMap["items"][number]>;
const knownPairs = new WeakMap<YAMLMap, Pairs>();

/** By key, the first of each: a damaged file asks for a hundred thousand fields of one mapping. */
function pairsOf(map: YAMLMap): Pairs {
  const known = knownPairs.get(map);
  if (known) return known;
  const pairs = new Map<string, YAMLMap["items"][number]>();
  for (const pair of map.items) {
    const key = String((pair.key as { value?: unknown } | null)?.value ?? pair.key ?? "null");
    if (!pairs.has(key)) pairs.set(key, pair);
  }
  knownPairs.set(map, pairs);
  return pairs;
}

/** Reads the YAML a second time, keeping positions: ten times slower, so only for a file with a problem. */
export function yamlLocator(source: YamlText): (path: Path, at: "key" | "value") => Locus {
  const block = source.text.slice(source.start, source.end);
  const document = slowlyRead(block, false);
  const between = (start: number, end: number) => {
    const trimmed = block.slice(start, end).trimEnd().length;
    return locusBetween(source.file, source.text, source.start + start, source.start + start + trimmed);
  };
  return (path, at) => {
    let node: unknown = document?.contents;
    let here = between(0, Math.max(1, block.indexOf("\n")));
    for (const [depth, segment] of path.entries()) {
      const resolved: Node | undefined =
        document && isAlias(node) ? (node as Alias).resolve(document) : (node as Node);
      const last = depth === path.length - 1;
      if (isMap(resolved)) {
        const pair = pairsOf(resolved).get(String(segment));
        const key = pair?.key as Node | null | undefined;
        if (!pair || !key?.range) return here;
        here = between(key.range[0], key.range[1]);
        const value = pair.value as Node | null;
        // A value that spans lines is shown by its key: carets under half a file help nobody.
        if (value?.range && !(last && at === "key")) {
          const stretch = between(value.range[0], value.range[1]);
          const oneLine = stretch.place.endLine === stretch.place.line && value.range[1] > value.range[0];
          if (oneLine) here = stretch;
        }
        node = value;
      } else if (isSeq(resolved)) {
        const item = resolved.items[Number(segment)] as Node | undefined;
        if (!item?.range) return here;
        const stretch = between(item.range[0], item.range[1]);
        const firstLine = block.slice(item.range[0]).indexOf("\n");
        here =
          stretch.place.endLine === stretch.place.line
            ? stretch
            : between(item.range[0], firstLine < 0 ? item.range[1] : item.range[0] + firstLine);
        node = item;
      } else return here;
    }
    return here;
  };
}
