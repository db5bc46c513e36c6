/**
 * The value of a key at the top of a YAML mapping, where it is one plain word on the key's own line: what can be told
 * without reading the YAML. Undefined where no such key is seen, null where there is more to it.
 */
export function topWord(yaml: string, key: string): string | null | undefined {
  const [first, ...others] = yaml.matchAll(new RegExp(`^["']?${key}["']?[ \\t]*:(.*)$`, "gm"));
  if (first === undefined) return undefined;
  if (others.length > 0) return null;
  const word = /^[ \t]+(?:"([a-z0-9-]+)"|'([a-z0-9-]+)'|([a-z0-9-]+))[ \t]*(?:[ \t]#.*)?\r?$/.exec(
    first[1] ?? "",
  );
  return word ? (word[1] ?? word[2] ?? word[3] ?? null) : null;
}
