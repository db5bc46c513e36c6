import { addBit, type BitSet, bitSet, countCommon, hasBit } from "./bit-set.ts";
import { type Attribute, type AttributeValue, closeness, type Likeness, requireRange } from "./gower.ts";

/** A row made ready: most values are compared by what bits two rows share. */
interface ReadyRow {
  readonly values: readonly AttributeValue[];
  /** Attributes that are known. */
  readonly known: BitSet;
  /** The names, and the ends of a range, that its values are. */
  readonly points: BitSet;
  /** Numbers within a range, which may agree in part. */
  readonly within: readonly number[];
}

/**
 * Likeness of a row and each row of a table, by Gower's formula: `gower`, for a table that is asked
 * again and again.
 * Formula  that of `gower`, and the same number to the last bit; names and ends of ranges are compared as bit sets
 * Units    a share, 0 to 1
 * Assumes  ranges of the whole table, with the row that is compared to it
 * Edges    those of `gower`
 * Source   Gower (1971), Biometrics 27: 857-871
 * Checks   gowerTable([["1", 10], [null, 40]], [{ kind: "nominal" }, { kind: "numeric", range: 40 }])(["1", 20])[0] => { likeness: 0.875, compared: 2 }
 *          gowerTable([["1", 10], [null, 40]], [{ kind: "nominal" }, { kind: "numeric", range: 40 }])(["1", 0])[1] => { likeness: 0, compared: 1 }
 * Throws   RangeError where a row has not one value an attribute, a range is negative or not finite, a numeric
 *          value is no finite number, or two values lie further apart than the range
 */
export function gowerTable(
  rows: readonly (readonly AttributeValue[])[],
  attributes: readonly Attribute[],
): (row: readonly AttributeValue[]) => Likeness[] {
  for (const attribute of attributes) if (attribute.kind === "numeric") requireRange(attribute.range);
  const places = pointsOf(rows, attributes);
  const count = places.reduce((sum, { size }) => sum + size, 0);
  const ready = (values: readonly AttributeValue[]) => readyRow(values, attributes, places, count);
  const table = rows.map(ready);
  return (values) => {
    const row = ready(values);
    return table.map((other) => likenessOf(row, other, attributes));
  };
}

/** For each attribute a bit for every value that either agrees in full or not at all. */
function pointsOf(
  rows: readonly (readonly AttributeValue[])[],
  attributes: readonly Attribute[],
): readonly ReadonlyMap<AttributeValue, number>[] {
  let next = 0;
  return attributes.map((attribute, index) => {
    const points = new Map<AttributeValue, number>();
    const values =
      attribute.kind === "nominal" ? rows.map((row) => row[index] ?? null) : [0, attribute.range];
    for (const value of values) if (value !== null && !points.has(value)) points.set(value, next++);
    return points;
  });
}

function readyRow(
  values: readonly AttributeValue[],
  attributes: readonly Attribute[],
  places: readonly ReadonlyMap<AttributeValue, number>[],
  count: number,
): ReadyRow {
  if (values.length !== attributes.length) {
    throw new RangeError(
      `Found ${values.length} values; expected one for each of ${attributes.length} attributes.`,
    );
  }
  const known = bitSet(attributes.length);
  const points = bitSet(count);
  const within: number[] = [];
  values.forEach((value, index) => {
    if (value === null) return;
    addBit(known, index);
    const point = places[index]?.get(value);
    if (point !== undefined) addBit(points, point);
    else if (attributes[index]?.kind === "numeric") within.push(index);
  });
  return { values, known, points, within };
}

function likenessOf(one: ReadyRow, other: ReadyRow, attributes: readonly Attribute[]): Likeness {
  const compared = countCommon(one.known, other.known);
  if (compared === 0) return { likeness: null, compared };
  let agreeing = countCommon(one.points, other.points);
  let partial = 0;
  // In the order of the attributes, each once: both lists are in order.
  for (let a = 0, b = 0; a < one.within.length || b < other.within.length; ) {
    const ofOne = one.within[a] ?? Number.POSITIVE_INFINITY;
    const ofOther = other.within[b] ?? Number.POSITIVE_INFINITY;
    const index = Math.min(ofOne, ofOther);
    if (ofOne === index) a++;
    if (ofOther === index) b++;
    const attribute = attributes[index];
    if (attribute?.kind !== "numeric" || !hasBit(one.known, index) || !hasBit(other.known, index)) continue;
    const close = closeness(one.values[index] ?? null, other.values[index] ?? null, attribute.range);
    if (close === 1) agreeing += 1;
    else partial += close;
  }
  return { likeness: (agreeing + partial) / compared, compared };
}
