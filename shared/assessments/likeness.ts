import type { Attribute, AttributeValue } from "../statistics/gower.ts";
import { gowerTable } from "../statistics/gower-table.ts";
import { nearerFirst, thinAmong } from "../statistics/nearer-first.ts";
import type { Example } from "./rarity/examples.ts";

/** One example as a row of attributes: features as seen, and the shares of parts that are known exactly. */
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

/** A share between two bounds is not known: its lower end would be taken for what was found. */
function knownShare({ shares }: Example, part: string): number | null {
  const share = shares.get(part);
  return share === undefined || share === "not-issued" || share.low !== share.high ? null : share.low;
}

export const likenessRow = (example: Example, { features, parts }: Compared): LikenessRow => ({
  example,
  values: [
    ...features.map((feature) => example.features.get(feature) ?? null),
    ...parts.map((part) => knownShare(example, part)),
  ],
});

/** What answers how like a row each of the other recorded examples is: Gower (1971), unknowns left out of both sums. */
export function likenessesIn(
  rows: readonly LikenessRow[],
  attributes: readonly Attribute[],
): (row: LikenessRow) => readonly Likeness[] {
  const likenesses = gowerTable(
    rows.map(({ values }) => values),
    attributes,
  );
  const byKey = new Map(rows.flatMap(({ example }) => [...example.keys].map((key) => [key, example])));
  return (row) => {
    // An item left out of the census may be in the log all the same.
    const itself = new Set([row.example, ...[...row.example.keys].flatMap((key) => byKey.get(key) ?? [])]);
    return likenesses(row.values).flatMap(({ likeness, compared }, at) => {
      const example = rows[at]?.example;
      return likeness === null || !example || itself.has(example) ? [] : [{ example, likeness, compared }];
    });
  };
}

/** Those that are most like it, the nearest first. */
export function nearestOf(found: readonly Likeness[], most = 5): readonly Likeness[] {
  const order = nearerFirst(found);
  const isNearer = (one: Likeness, other: Likeness | undefined) =>
    other === undefined || order(one, other) < 0;
  const nearest: Likeness[] = [];
  for (const near of found) {
    if (nearest.length >= most && !isNearer(near, nearest.at(-1))) continue;
    // Of those that are equally near the first stays before.
    const before = nearest.findIndex((other) => isNearer(near, other));
    nearest.splice(before < 0 ? nearest.length : before, 0, near);
    nearest.length = Math.min(nearest.length, most);
  }
  return nearest;
}

/** How like it the others are, all of them: what a drawing shows. */
export interface LikenessSpread {
  /** How many stand at each whole percent, the least alike first. At 0 and 100 stand only those that are wholly so. */
  readonly counts: readonly (readonly [percent: number, examples: number])[];
  /** Compared on less than half as much as the best compared, and not among them. */
  readonly thin: number;
}

export function likenessSpread(found: readonly Likeness[]): LikenessSpread {
  const isThin = thinAmong(found);
  const counts = new Map<number, number>();
  let thin = 0;
  for (const each of found) {
    if (isThin(each)) {
      thin++;
      continue;
    }
    const { likeness } = each;
    const percent =
      likeness === 0 || likeness === 1
        ? 100 * likeness
        : Math.min(99, Math.max(1, Math.round(100 * likeness)));
    counts.set(percent, (counts.get(percent) ?? 0) + 1);
  }
  return { counts: [...counts].sort(([a], [b]) => a - b), thin };
}
