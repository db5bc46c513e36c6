import { grouping } from "../lists/grouping.ts";

/** Cuts names into sets, so that whatever was named together is of one set. In the order of the names. */
export function joinedSets(names: readonly string[], together: readonly (readonly string[])[]): string[][] {
  const leader = new Map<string, string>();
  const find = (name: string): string => {
    let at = name;
    for (let next = leader.get(at); next !== undefined; next = leader.get(at)) at = next;
    return at;
  };
  for (const [first, ...others] of together) {
    if (first === undefined) continue;
    for (const other of others) {
      const [a, b] = [find(first), find(other)];
      if (a !== b) leader.set(b, a);
    }
  }
  return [...grouping(names, find).values()];
}
