/** What the tests of a room describe, kept to be run one at a time in one process; `expect` is vitest's own. */
export { expect } from "vitest";

export interface DescribedTest {
  readonly name: string;
  readonly run: () => unknown;
}

export const described: DescribedTest[] = [];

const around: string[] = [];

export function describe(name: string, body: () => void): void {
  around.push(name);
  body();
  around.pop();
}

const known = new Map<string, number>();

/** Tests of one name, such as those of a table, are told apart by a number. */
export function it(name: string, run: () => unknown): void {
  const title = [...around, name].join(" ");
  const count = (known.get(title) ?? 0) + 1;
  known.set(title, count);
  described.push({ name: count === 1 ? title : `${title} (${count})`, run });
}

it.each =
  <Row>(rows: readonly Row[]) =>
  (name: string, run: (...values: unknown[]) => unknown): void => {
    for (const row of rows) it(name, () => run(...(Array.isArray(row) ? row : [row])));
  };
