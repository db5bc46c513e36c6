/** A first line, below empty ones and comments, that has its key at the very beginning. */
const firstKey = /^(?:[ \t]*(?:#.*)?[\r\n])*(["']?)[\w-]+\1[ \t]*:/;
/** A line on which a key may stand that is not seen at once: below a question mark, a tag or an alias, or by an escape. */
const oddLine = /[\r\n](?:[?&!*]|"[^"\r\n]*\\)/;
/** A value that does not end with the line of its key. */
const goesOn = /\s*[\r\n][ \t]+[^\s#]/y;

/**
 * What follows a key at the top of a YAML mapping on the key's own line: what can be told without reading the YAML.
 * Undefined where there is no such key, null where only reading it can tell: all may be further in, or within braces;
 * the key may be there twice, or written oddly; the value may go on below.
 */
export function topLine(yaml: string, key: string): string | null | undefined {
  if (!yaml.includes(key) && !yaml.includes("\\")) return undefined;
  if (!firstKey.test(yaml) || oddLine.test(yaml)) return null;
  const [line, ...others] = yaml.matchAll(new RegExp(`^["']?${key}["']?[ \\t]*:(.*)$`, "gm"));
  if (line === undefined) return undefined;
  goesOn.lastIndex = line.index + line[0].length;
  return others.length > 0 || goesOn.test(yaml) ? null : (line[1] ?? "");
}

/** The value of a key at the top, where it is one plain word; undefined and null as above. */
export function topWord(yaml: string, key: string): string | null | undefined {
  const line = topLine(yaml, key);
  if (line === undefined || line === null) return line;
  const word = /^[ \t]+(?:"([a-z0-9-]+)"|'([a-z0-9-]+)'|([a-z0-9-]+))[ \t]*(?:[ \t]#.*)?$/.exec(line);
  return word ? (word[1] ?? word[2] ?? word[3] ?? null) : null;
}
