import type { Estimate } from "../statistics/interval.ts";
import type { Statement } from "./statement.ts";

export type Unit = "examples" | "share" | "offers a year" | "years";

export type Method =
  | "documented"
  | "serial-ranges"
  | "chao1"
  | "chapman"
  | "coverage"
  | "survival-ratio"
  | "wilson"
  | "share-of-survivors"
  | "garwood"
  | "gamma-poisson";

export type Input = string | number | null | readonly Input[] | { readonly [name: string]: Input };

/**
 * An estimate with everything that it rests on. It is the same object on a page, in the data files and in a
 * sentence. Where the evidence does not carry it, `value` is null and `insufficient` says why.
 */
export interface Figure {
  readonly value: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly unit: Unit;
  /** Of an interval made from two that are estimated: at least so much. */
  readonly confidence: number;
  readonly method: Method;
  readonly inputs: Readonly<Record<string, Input>>;
  /** Ids of the bibliography. */
  readonly sources: readonly string[];
  readonly caveats: readonly Statement[];
  readonly insufficient: Statement | null;
}

export interface Basis {
  readonly unit: Unit;
  readonly confidence: number;
  readonly method: Method;
  readonly inputs: Figure["inputs"];
  readonly sources?: Iterable<string | undefined>;
  readonly caveats?: readonly Statement[];
}

const sorted = (sources: Basis["sources"]): string[] =>
  [...new Set(sources ?? [])].filter((id) => id !== undefined).sort();

const rest = ({ unit, confidence, method, inputs, sources, caveats }: Basis) => ({
  unit,
  confidence,
  method,
  inputs,
  sources: sorted(sources),
  caveats: caveats ?? [],
});

export const figure = (estimate: Estimate, basis: Basis): Figure => ({
  value: estimate.value,
  low: estimate.low,
  high: estimate.high,
  ...rest(basis),
  insufficient: null,
});

/** A figure that is a number without an interval of its own. */
export const pointFigure = (value: number, basis: Basis): Figure => ({
  value,
  low: null,
  high: null,
  ...rest(basis),
  insufficient: null,
});

export const withheld = (why: Statement, basis: Basis): Figure => ({
  value: null,
  low: null,
  high: null,
  ...rest(basis),
  insufficient: why,
});

/**
 * The confidence of an interval made from the ends of two that are estimated: both hold with at least the sum of their
 * confidences less 1, however they depend on one another (Bonferroni's inequality). Its digits are those of what is summed.
 */
export const jointConfidence = (one: number, other: number): number =>
  Math.max(0, Number((one + other - 1).toFixed(12)));
