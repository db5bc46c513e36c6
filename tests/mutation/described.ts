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

/** Two tests of one name are told apart by their number. */
export function it(name: string, run: () => unknown): void {
  described.push({ name: [...around, name, `#${described.length}`].join(" "), run });
}

it.each =
  <Row>(rows: readonly Row[]) =>
  (name: string, run: (...values: unknown[]) => unknown): void => {
    for (const row of rows) it(name, () => run(...(Array.isArray(row) ? row : [row])));
  };
