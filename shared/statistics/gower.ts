/** One attribute of a table: named values, or numbers with the range that the whole table has. */
export type Attribute = { readonly kind: "nominal" } | { readonly kind: "numeric"; readonly range: number };

/** A value of an attribute; null where it is not known. */
export type AttributeValue = string | number | boolean | null;

export interface Likeness {
  /** 0 to 1; null where nothing could be compared. */
  readonly likeness: number | null;
  /** How many attributes were known on both sides. */
  readonly compared: number;
}

/**
 * Likeness of two things by the attributes known of both.
 * Formula  the mean of s over the attributes known of both; s = 1 or 0 for nominal ones that agree or differ,
 *          s = 1 - |x - y|/range for numeric ones
 * Units    a share, 0 to 1
 * Assumes  ranges of the whole table, not of the two compared; even weights
 * Edges    nothing compared: likeness null. Range 0: every value of the table is the same, s = 1.
 * Source   Gower (1971), Biometrics 27: 857-871
 * Checks   gower(["1", "red", 10], ["0", "red", 20], [{ kind: "nominal" }, { kind: "nominal" }, { kind: "numeric", range: 40 }]) => { likeness: 0.583333, compared: 3 }
 *          gower([null], ["red"], [{ kind: "nominal" }]) => { likeness: null, compared: 0 }
 * Throws   RangeError where a row has not one value an attribute, a range is negative or not finite, a numeric
 *          value is no finite number, or two values lie further apart than the range
 */
export function gower(
  first: readonly AttributeValue[],
  second: readonly AttributeValue[],
  attributes: readonly Attribute[],
): Likeness {
  for (const row of [first, second]) {
    if (row.length !== attributes.length) {
      throw new RangeError(
        `Found ${row.length} values; expected one for each of ${attributes.length} attributes.`,
      );
    }
  }
  let agreeing = 0;
  let partial = 0;
  let compared = 0;
  for (let index = 0; index < attributes.length; index++) {
    const attribute = attributes[index] as Attribute;
    const x = first[index] ?? null;
    const y = second[index] ?? null;
    if (x === null || y === null) continue;
    const close = attribute.kind === "nominal" ? Number(x === y) : closeness(x, y, attribute.range);
    // Apart, so that whole agreements add up to the same number in any order.
    if (close === 1) agreeing += 1;
    else partial += close;
    compared += 1;
  }
  return { likeness: compared === 0 ? null : (agreeing + partial) / compared, compared };
}

/** 1 for two numbers that are the same, 0 for two as far apart as the range. */
export function closeness(x: AttributeValue, y: AttributeValue, range: number): number {
  requireRange(range);
  const distance = Math.abs(requireFinite(x) - requireFinite(y));
  if (distance > range) {
    throw new RangeError(
      `Found values ${x} and ${y}; expected them no further apart than the range ${range}.`,
    );
  }
  return distance === 0 ? 1 : 1 - distance / range;
}

export function requireRange(range: number): void {
  if (Number.isFinite(range) && range >= 0) return;
  throw new RangeError(`Found range = ${range}; expected a finite number of at least 0.`);
}

function requireFinite(value: AttributeValue): number {
  if (typeof value === "number" && Number.isFinite(value)) return value;
  throw new RangeError(`Found ${JSON.stringify(value)} in a numeric attribute; expected a finite number.`);
}
