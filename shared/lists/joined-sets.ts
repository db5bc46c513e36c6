/**
 * What tells of a name which set it is in, where whatever was named together is of one set: two names are in one set
 * when it gives the same of both, and a name that was named with no other is in a set of its own.
 */
export function joinedSets(together: Iterable<readonly string[]>): (name: string) => string {
  const leader = new Map<string, string>();
  const find = (name: string): string => {
    let at = name;
    for (let next = leader.get(at); next !== undefined; next = leader.get(at)) at = next;
    // Whoever asks again has one step to go.
    if (at !== name) leader.set(name, at);
    return at;
  };
  for (const [first, ...others] of together) {
    if (first === undefined) continue;
    for (const other of others) {
      const [a, b] = [find(first), find(other)];
      if (a !== b) leader.set(b, a);
    }
  }
  return find;
}
