/** No record has as many fields. */
const mostFields = 60;
const counted = new WeakMap<object, readonly [string, unknown][]>();

/** Of a damaged mapping with thousands of fields none: to go through them for each of them would take long. */
export function fieldsOf(mapping: object): readonly [string, unknown][] {
  const known = counted.get(mapping);
  if (known) return known;
  const all = Object.entries(mapping);
  const fields = all.length > mostFields ? [] : all;
  counted.set(mapping, fields);
  return fields;
}
