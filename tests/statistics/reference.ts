import { readFileSync } from "node:fs";

type Row<Keys extends string> = Readonly<Record<Keys, number>>;

/** What tests/reference/statistics.R printed: values of R and its packages, see `made` for their versions. */
export interface Reference {
  readonly made: Readonly<Record<"R" | "vegan" | "cluster" | "gmp", string>>;
  readonly normal: readonly Row<"confidence" | "z">[];
  readonly wilson: readonly Row<"successes" | "trials" | "confidence" | "value" | "low" | "high">[];
  readonly poisson: readonly Row<"events" | "exposure" | "confidence" | "value" | "low" | "high">[];
  readonly waiting: readonly Row<"events" | "exposure" | "confidence" | "value" | "low" | "high">[];
  readonly serial: readonly Row<"distinct" | "largest" | "confidence" | "value" | "low" | "high">[];
  readonly unknownStart: readonly Row<"distinct" | "span" | "confidence" | "value" | "low" | "high">[];
  readonly chao1: readonly (Row<"distinct" | "once" | "twice" | "sightings" | "value"> & {
    readonly se: number;
  })[];
  readonly gower: {
    readonly flower: {
      readonly nominal: readonly (readonly string[])[];
      readonly numeric: readonly (readonly number[])[];
      readonly ranges: readonly number[];
      readonly likeness: readonly (readonly number[])[];
    };
    readonly gaps: { readonly likeness: readonly (readonly number[])[] };
  };
  readonly entropies: readonly {
    readonly candidates: readonly (readonly string[] | null)[];
    readonly entropy: number;
  }[];
  readonly days: readonly { readonly date: string; readonly day: number }[];
}

export const reference: Reference = JSON.parse(
  readFileSync(new URL("../reference/statistics.json", import.meta.url), "utf8"),
);
