import { type Attribute, type AttributeValue, gower } from "../statistics/gower.ts";
import { type Example, recordedShare } from "./rarity/examples.ts";

/** One example as a row of attributes: features as seen, parts as far as they are recorded. */
export interface LikenessRow {
  readonly example: Example;
  readonly values: readonly AttributeValue[];
}

export interface Likeness {
  readonly example: Example;
  readonly likeness: number;
  /** How many features and parts are known of both. */
  readonly compared: number;
}

interface Compared {
  readonly features: readonly string[];
  readonly parts: readonly string[];
}

export const attributesOf = ({ features, parts }: Compared): Attribute[] => [
  ...features.map((): Attribute => ({ kind: "nominal" })),
  ...parts.map((): Attribute => ({ kind: "numeric", range: 1 })),
];

export function likenessRow(
  example: Example,
  { features, parts }: Compared,
  observed: ReadonlyMap<string, string> | undefined,
): LikenessRow {
  return {
    example,
    values: [
      ...features.map((feature) => observed?.get(feature) ?? null),
      ...parts.map((part) => recordedShare(example, part)?.low ?? null),
    ],
  };
}

/** The recorded examples most like this one: Gower (1971), unknowns left out of both sums. */
export function nearestTo(
  row: LikenessRow,
  others: readonly LikenessRow[],
  attributes: readonly Attribute[],
  most = 5,
): readonly Likeness[] {
  const nearest: Likeness[] = [];
  for (const { example, values } of others) {
    if (example === row.example) continue;
    const { likeness, compared } = gower(row.values, values, attributes);
    if (likeness === null) continue;
    // Of those that are equally near the first stays before.
    const at = nearest.findIndex((other) => isNearer({ likeness, compared }, other));
    nearest.splice(at < 0 ? nearest.length : at, 0, { example, likeness, compared });
    nearest.length = Math.min(nearest.length, most);
  }
  return nearest;
}

type Near = Pick<Likeness, "likeness" | "compared">;

const isNearer = (one: Near, other: Near): boolean =>
  one.likeness > other.likeness || (one.likeness === other.likeness && one.compared > other.compared);
