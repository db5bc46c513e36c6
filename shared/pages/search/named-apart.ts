import type { Named } from "./search-index.ts";

/** A name with the variant that gives it. */
interface OfVariant {
  readonly named: Named;
  readonly variant: string;
}

/**
 * Ids of levels and parts are a variant's own, and two variants may mean different things by one. In an address each
 * meaning then stands apart, by the id and the first variant that means it: "lens/outfit-b".
 */
export function namedApart(found: Iterable<OfVariant>): (named: Named) => Named {
  const meanings = new Map<string, Map<string, string>>();
  for (const { named, variant } of found) {
    const of = meanings.get(named.id) ?? new Map<string, string>();
    if (!of.has(named.name)) of.set(named.name, variant);
    meanings.set(named.id, of);
  }
  return ({ id, name }) => {
    const of = meanings.get(id);
    return { id: of && of.size > 1 ? `${id}/${of.get(name)}` : id, name };
  };
}

/** The id alone, as addresses have it that were written while it had one meaning, asks for all that it means. */
export const meansAsked = (asked: string, id: string): boolean => id === asked || id.startsWith(`${asked}/`);
