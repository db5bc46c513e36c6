import { type Statement, statement } from "../statement.ts";
import type { Example } from "./examples.ts";

/** A row of the log that gives neither serial nor name is an example of its own, though it may be of one seen before. */
export const isNameless = ({ keys, items }: Example): boolean => keys.size === 0 && items.length === 0;

export const countNameless = (examples: readonly Example[]): number => examples.filter(isNameless).length;

/** How many there are for certain: those that serial or name tells apart or, where there are only others, one. */
export function countKnown(examples: readonly Example[]): number {
  return examples.length - countNameless(examples) || Math.min(examples.length, 1);
}

/** How many of the rows behind a figure are such. */
export interface Nameless {
  readonly nameless: number;
  readonly rows: number;
}

export const namelessOf = (examples: readonly Example[]): Nameless => ({
  nameless: countNameless(examples),
  rows: examples.reduce((sum, { rows }) => sum + rows.length, 0),
});

export const namelessInput = ({ nameless }: Nameless): { readonly nameless?: number } =>
  nameless === 0 ? {} : { nameless };

export const namingNameless = ({ nameless, rows }: Nameless): Statement[] =>
  nameless === 0 ? [] : [statement("nameless-rows", { nameless, rows })];

/** A figure made from who was seen again is another where they are many, and nobody should read past that. */
export function namingNamelessAmong({ nameless, rows }: Nameless, distinct: number): Statement[] {
  const areMany = nameless > 0 && 4 * nameless >= distinct;
  return areMany ? [statement("many-nameless-rows", { nameless, rows })] : namingNameless({ nameless, rows });
}
