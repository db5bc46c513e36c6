import type { Collection } from "../records/collection.ts";
import type { Family } from "../records/family.ts";
import type { Variant } from "../records/variant.ts";
import type { Redact } from "./masking.ts";

/** The same map where nothing in it changes: what is known of its values is kept by which they are. */
function eachFreed<Value>(
  values: ReadonlyMap<string, Value>,
  freed: (value: Value) => Value,
): ReadonlyMap<string, Value> {
  const now = new Map([...values].map(([id, value]) => [id, freed(value)]));
  return [...values].every(([id, value]) => now.get(id) === value) ? values : now;
}

/**
 * References whose names tell no serial that its item does not show. A name is printed on many pages, and not all of
 * them are about that item.
 */
export function withNamesFreed(collection: Collection, redact: Redact): Collection {
  const named = <Entry extends { readonly name: string }>(entry: Entry): Entry => {
    const name = redact(entry.name);
    return name === entry.name ? entry : { ...entry, name };
  };
  const variant = (each: Variant): Variant => {
    const parts = eachFreed(each.parts, (part) => {
      const marks = part.marks.map(redact);
      return named(marks.every((mark, at) => mark === part.marks[at]) ? part : { ...part, marks });
    });
    const levels = each.levels.map(named);
    const isSame = parts === each.parts && levels.every((level, at) => level === each.levels[at]);
    return named(isSame ? each : { ...each, parts, levels });
  };
  const family = (each: Family): Family => {
    const features = eachFreed(each.features, named);
    const groups = eachFreed(each.groups, redact);
    const maker = each.maker === undefined ? undefined : redact(each.maker);
    const isSame = features === each.features && groups === each.groups && maker === each.maker;
    return named(isSame ? each : { ...each, features, groups, maker });
  };
  return {
    ...collection,
    variants: eachFreed(collection.variants, variant),
    families: eachFreed(collection.families, family),
  };
}
