import { isDeepStrictEqual } from "node:util";
import {
  isAlias,
  isCollection,
  isMap,
  isScalar,
  isSeq,
  Lexer,
  type Node,
  type Pair,
  parseDocument,
  stringify,
  type YAMLMap,
  type YAMLSeq,
} from "yaml";
import { yamlLine } from "../../writing/yaml-line.ts";

/** One value to be put at a path of a YAML mapping, or taken away from it where it is undefined. */
export interface Change {
  readonly path: readonly (string | number)[];
  readonly value: unknown;
  /** The keys beside it, in the order in which they should stand. */
  readonly order?: readonly string[];
}

const keyOf = (pair: Pair): string => String((pair.key as { value?: unknown } | null)?.value ?? pair.key);
const keyRange = (pair: Pair): [number, number] => {
  const range = (pair.key as Node | null)?.range;
  return range ? [range[0], range[1]] : [0, 0];
};

/** A word that begins with # is a remark: a text that does stands in quotation marks. */
const hasRemarks = (text: string): boolean => [...new Lexer().lex(text)].some((word) => word.startsWith("#"));

/** A value as it stands inside brackets, where a comma or a brace would end it. */
const inFlow = (value: unknown): string =>
  stringify([value], { collectionStyle: "flow", lineWidth: 0, version: "1.2" })
    .trim()
    .replace(/^\[\s*|\s*\]$/g, "");

/** Where the text of a node ends, without comments and empty lines that the reader counts with it. */
function endOf(block: string, node: Node): number {
  if (isCollection(node) && !node.flow) {
    const last = node.items.at(-1);
    const inner = isMap(node)
      ? ((last as Pair | undefined)?.value as Node | null)
      : (last as Node | undefined);
    if (inner?.range && inner.range[1] > inner.range[0]) return endOf(block, inner);
    if (isMap(node) && last) return block.indexOf(":", keyRange(last as Pair)[1]) + 1;
  }
  const [start, end] = node.range ?? [0, 0];
  return start + block.slice(start, end).trimEnd().length;
}

const lineStart = (block: string, at: number): number => block.lastIndexOf("\n", at - 1) + 1;
const nextLine = (block: string, at: number): number => {
  const end = block.indexOf("\n", at);
  return end < 0 ? block.length : end + 1;
};
const isEmpty = (node: unknown): boolean =>
  node === null ||
  node === undefined ||
  (isScalar(node) && node.value === null && node.range?.[0] === node.range?.[1]);

/** Edits of one text, with what they share. An edit that cannot be made precisely is null. */
class Edits {
  readonly block: string;
  readonly eol: string;

  constructor(block: string) {
    this.block = block;
    this.eol = block.includes("\r\n") ? "\r\n" : "\n";
  }

  spliced(start: number, end: number, text: string): string {
    return this.block.slice(0, start) + text + this.block.slice(end);
  }

  /** Puts another value after a key. */
  replaced(pair: Pair, value: unknown, flow: boolean): string | null {
    const written = flow ? inFlow(value) : yamlLine(value);
    const node = pair.value as Node | null;
    const colon = this.block.indexOf(":", keyRange(pair)[1]);
    if (colon < 0) return null;
    if (isEmpty(node) || !node?.range) return this.spliced(colon + 1, colon + 1, ` ${written}`);
    if (!isAlias(node) && (node as { anchor?: string }).anchor) return null;
    if (/[&!]/.test(this.block.slice(colon + 1, node.range[0]))) return null;
    if (isCollection(node) && hasRemarks(this.block.slice(node.range[0], endOf(this.block, node))))
      return null;
    const isBlock = isCollection(node) && !node.flow;
    return isBlock
      ? this.spliced(colon + 1, endOf(this.block, node), ` ${written}`)
      : this.spliced(node.range[0], endOf(this.block, node), written);
  }

  /**
   * Takes a key and its value away. A line that had been offered in a comment becomes an offer again; so does one with a
   * remark at its end, which is its writer's.
   */
  removed(map: YAMLMap, pair: Pair): string | null {
    const at = map.items.indexOf(pair);
    const [start, keyEnd] = keyRange(pair);
    const value = pair.value as Node | null;
    const end = isEmpty(value) || !value ? this.block.indexOf(":", keyEnd) + 1 : endOf(this.block, value);
    if (map.flow) {
      const [before, after] = [map.items[at - 1], map.items[at + 1]];
      if (after) return this.spliced(start, keyRange(after as Pair)[0], "");
      if (!before) return this.spliced((map.range?.[0] ?? start) + 1, (map.range?.[1] ?? end) - 1, "");
      const beforeValue = (before as Pair).value as Node | null;
      const from = beforeValue?.range ? endOf(this.block, beforeValue) : keyRange(before as Pair)[1];
      return this.spliced(from, end, "");
    }
    const first = lineStart(this.block, start);
    const indent = this.block.slice(first, start);
    if (indent.trim() !== "") return null;
    const above = this.block.slice(lineStart(this.block, Math.max(0, first - 1)), first);
    const below = this.block.slice(nextLine(this.block, end)).split("\n")[0] ?? "";
    const isOffered =
      new RegExp(`^${indent}##`).test(above) ||
      [above, below].some((line) => this.#offers(line, indent, keyOf(pair)));
    const hasRemark = /^[ \t]+#/.test(this.block.slice(end, nextLine(this.block, end)));
    if ((isOffered || hasRemark) && !this.block.slice(start, end).includes("\n"))
      return this.spliced(start, start, "# ");
    const lines = this.block.slice(start, end);
    if (hasRemarks(lines))
      return this.spliced(start, end, `# ${lines.replaceAll(`\n${indent}`, `\n${indent}# `)}`);
    return this.spliced(first, nextLine(this.block, end), "");
  }

  #offers(line: string, indent: string, key: string): boolean {
    return line.startsWith(`${indent}# ${key}:`);
  }

  /** Takes one entry of a list away, and keeps the remarks of the others; its own, at its end, is its writer's. */
  takenOut(list: YAMLSeq, at: number): string | null {
    const item = list.items[at] as Node;
    const [start, end] = [item.range?.[0] ?? 0, endOf(this.block, item)];
    const [before, after] = [list.items[at - 1] as Node | undefined, list.items[at + 1] as Node | undefined];
    if (!before && !after) return null;
    if (list.flow) {
      const [from, to] = after?.range
        ? [start, after.range[0]]
        : [before ? endOf(this.block, before) : start, end];
      return this.block.slice(from, to).includes("#") ? null : this.spliced(from, to, "");
    }
    const first = lineStart(this.block, start);
    const hyphen = /^( *)-[ \t]+$/.exec(this.block.slice(first, start));
    if (!hyphen) return null;
    const next = nextLine(this.block, end);
    const isOneLine = !this.block.slice(start, end).includes("\n");
    if (isOneLine && /^[ \t]+#/.test(this.block.slice(end, next)))
      return this.spliced(first + (hyphen[1]?.length ?? 0), start, `# ${this.block.slice(start - 2, start)}`);
    return this.spliced(first, next, "");
  }

  /** Puts an entry at the end of a list. */
  appended(list: YAMLSeq, value: unknown): string | null {
    const item = list.items.at(-1) as Node | undefined;
    if (!item?.range) return null;
    const end = endOf(this.block, item);
    if (list.flow) return this.spliced(end, end, `, ${inFlow(value)}`);
    const lead = /^ *-[ \t]+$/.exec(this.block.slice(lineStart(this.block, item.range[0]), item.range[0]));
    return lead ? this.#line(nextLine(this.block, end), `${lead[0]}${yamlLine(value)}${this.eol}`) : null;
  }

  /** The lines in which a mapping offers a key in a comment, from a place to the next line that is less indented. */
  offersFrom(
    start: number,
    indent: string,
    key: string,
  ): { readonly start: number; readonly line: string }[] {
    const found: { start: number; line: string }[] = [];
    for (let at = start; at < this.block.length; at = nextLine(this.block, at)) {
      const line = this.block.slice(at, nextLine(this.block, at));
      const lead = /^[ ]*/.exec(line)?.[0] ?? "";
      const isText = !/^\s*(?:#|$)/.test(line);
      if (isText && lead.length < indent.length) break;
      if (this.#offers(line, indent, key)) found.push({ start: at, line });
    }
    return found;
  }

  /** Puts a new key into a mapping, in its order. */
  inserted(map: YAMLMap, key: string, value: unknown, order: readonly string[]): string | null {
    const place = order.indexOf(key);
    const before = map.items.findLast((pair) => {
      const at = order.indexOf(keyOf(pair));
      return at >= 0 && at < place;
    });
    const first = map.items[0];
    if (map.flow) {
      const text = `${inFlow(key)}: ${inFlow(value)}`;
      if (!first) return this.spliced((map.range?.[0] ?? 0) + 1, (map.range?.[1] ?? 0) - 1, ` ${text} `);
      const after = before ?? (place < 0 ? map.items.at(-1) : undefined);
      if (!after) return this.spliced(keyRange(first)[0], keyRange(first)[0], `${text}, `);
      const node = after.value as Node | null;
      const end = node?.range ? endOf(this.block, node) : keyRange(after)[1];
      return this.spliced(end, end, `, ${text}`);
    }
    if (!first) return null;
    const firstKey = keyRange(first)[0];
    const column = firstKey - lineStart(this.block, firstKey);
    const text = `${" ".repeat(column)}${yamlLine(key)}: ${yamlLine(value)}${this.eol}`;
    const isOwnLine = this.block.slice(lineStart(this.block, firstKey), firstKey).trim() === "";
    const after = before ?? (isOwnLine && place >= 0 ? undefined : map.items.at(-1));
    if (after) {
      const node = after.value as Node | null;
      const end =
        !isEmpty(node) && node ? endOf(this.block, node) : this.block.indexOf(":", keyRange(after)[1]) + 1;
      return this.#line(nextLine(this.block, end), text);
    }
    // What is said right above the first key is said of that one.
    let start = lineStart(this.block, firstKey);
    for (;;) {
      const above = lineStart(this.block, Math.max(0, start - 1));
      if (above === start || !/^\s*#/.test(this.block.slice(above, start))) break;
      start = above;
    }
    return this.#line(start, text);
  }

  #line(at: number, text: string): string {
    const needsEnd = at > 0 && this.block[at - 1] !== "\n";
    return this.spliced(at, at, (needsEnd ? this.eol : "") + text);
  }

  /** Puts a first key below one that has nothing but comments, or a whole new mapping at the end. */
  begun(pair: Pair | undefined, parent: string, key: string, value: unknown): string {
    const line = `  ${yamlLine(key)}: ${yamlLine(value)}${this.eol}`;
    if (!pair) return this.#line(this.block.length, `${parent}:${this.eol}${line}`);
    const [, end] = keyRange(pair);
    return this.#line(nextLine(this.block, end), line);
  }
}

/** The offer that is nearest to what is to be written: the same value, else the first. */
const bestOffer = (offers: readonly { start: number; line: string }[], value: unknown) =>
  offers.find(({ line }) => line.trimEnd().endsWith(`: ${yamlLine(value)}`)) ?? offers[0];

/**
 * A block of YAML with one value changed, and every other byte as it was: comments, order, quotation marks and line
 * ends. A line that a comment offers is brought in where it stands. Null where the block has no form in which that
 * can be done (anchors, tags, a key that shares its line with a hyphen).
 */
export function editedYaml(block: string, { path, value, order = [] }: Change): string | null {
  const document = parseDocument(block, { version: "1.2", logLevel: "silent", uniqueKeys: false });
  if (document.errors.length > 0) return null;
  const edits = new Edits(block);
  let node: unknown = document.contents;
  let above: { pair: Pair | undefined; key: string; isRoot: boolean } | undefined;
  for (const [depth, step] of path.entries()) {
    const isLast = depth === path.length - 1;
    if (isSeq(node)) {
      if (node.anchor) return null;
      if (isLast && step === node.items.length) return edits.appended(node, value);
      const item = node.items[Number(step)] as Node | undefined;
      if (!item?.range || isAlias(item) || (item as { anchor?: string }).anchor) return null;
      if (!isLast) {
        node = item;
        continue;
      }
      if (value === undefined) return edits.takenOut(node, Number(step));
      if (isCollection(item) && !item.flow) return null;
      return edits.spliced(item.range[0], endOf(block, item), node.flow ? inFlow(value) : yamlLine(value));
    }
    const key = String(step);
    if (isMap(node)) {
      const map = node as YAMLMap;
      if ((map as { anchor?: string }).anchor) return null;
      const pair = map.items.find((each) => keyOf(each) === key);
      if (!isLast) {
        above = { pair, key, isRoot: depth === 0 };
        node = pair?.value;
        continue;
      }
      if (pair) {
        if (value === undefined) return edits.removed(map, pair);
        return edits.replaced(pair, value, map.flow === true);
      }
      if (value === undefined) return block;
      if (!map.flow && map.items[0]) {
        const firstKey = keyRange(map.items[0])[0];
        const indent = " ".repeat(firstKey - lineStart(block, firstKey));
        const from = above?.pair ? nextLine(block, keyRange(above.pair)[1]) : 0;
        const brought = broughtIn(edits, from, indent, path, value);
        if (brought !== null) return brought;
      }
      return edits.inserted(map, key, value, order);
    }
    // A key with nothing but comments below it, or none at all.
    if (!isLast || !above?.isRoot || !isEmpty(node)) return null;
    if (value === undefined) return block;
    const brought = above.pair
      ? broughtIn(edits, nextLine(block, keyRange(above.pair)[1]), "  ", path, value)
      : null;
    return brought ?? edits.begun(above.pair, above.key, key, value);
  }
  return null;
}

/** What was read on a thing once, and is offered by now, is not to be had again: it stays where it is. */
function saysMore(offered: unknown, value: unknown): boolean {
  const own = typeof value === "object" && value !== null ? (value as Readonly<Record<string, unknown>>) : {};
  return (
    typeof offered === "object" &&
    offered !== null &&
    Object.entries(offered).some(
      ([field, said]) => field !== "state" && field !== "quantity" && !isDeepStrictEqual(said, own[field]),
    )
  );
}

/** The block with an offered line brought in, and its value made what it is to be. */
function broughtIn(
  edits: Edits,
  from: number,
  indent: string,
  path: Change["path"],
  value: unknown,
): string | null {
  const offer = bestOffer(edits.offersFrom(from, indent, String(path.at(-1))), value);
  if (!offer) return null;
  const hash = offer.start + indent.length;
  const open = edits.spliced(hash, hash + 2, "");
  const document = parseDocument(open, { version: "1.2", logLevel: "silent", uniqueKeys: false });
  if (document.errors.length > 0 || !document.hasIn([...path])) return null;
  if (saysMore((document.getIn([...path], true) as Node | undefined)?.toJS(document), value)) return null;
  return editedYaml(open, { path, value });
}
