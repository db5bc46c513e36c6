/** Adds to the list of a key, which begins with the first. */
export function addUnder<Key, Value>(lists: Map<Key, Value[]>, key: Key, value: Value): void {
  const list = lists.get(key);
  if (list) list.push(value);
  else lists.set(key, [value]);
}

/** Values by a key, in their order; the keys in the order in which they are met. */
export function grouping<Key, Value>(
  values: Iterable<Value>,
  keyOf: (value: Value) => Key,
): Map<Key, Value[]> {
  const groups = new Map<Key, Value[]>();
  for (const value of values) addUnder(groups, keyOf(value), value);
  return groups;
}
