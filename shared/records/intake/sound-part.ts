import type { Collection } from "../collection.ts";
import type { Variant } from "../variant.ts";

/** The records of a collection of which nothing is wrong, by themselves and in what they rest on. */
export function soundPart(collection: Collection, unsound: ReadonlySet<object>): Collection {
  if (unsound.size === 0) return collection;
  const sound = <Value extends object>(records: ReadonlyMap<string, Value>, rests = (_: Value) => true) =>
    new Map([...records].filter(([, record]) => !unsound.has(record) && rests(record)));
  const families = sound(collection.families);
  // A family that is not there at all is told of, and its variants are as good as others.
  const isOfSound = ({ family }: Variant) => families.has(family) || !collection.families.has(family);
  const restsOnSound = (variant: Variant): boolean => {
    const base = variant.extends === undefined ? undefined : collection.variants.get(variant.extends);
    return isOfSound(variant) && (base === undefined || (!unsound.has(base) && restsOnSound(base)));
  };
  const variants = sound(collection.variants, restsOnSound);
  const hasVariant = ({ variant }: { readonly variant: string }) => variants.has(variant);
  return {
    ...collection,
    families,
    variants,
    items: sound(collection.items, hasVariant),
    sightings: collection.sightings.filter((row) => !unsound.has(row) && hasVariant(row)),
    articles: sound(collection.articles),
    hazards: sound(collection.hazards),
    scales: sound(collection.scales),
  };
}
