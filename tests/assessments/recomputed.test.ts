import chiSquareQuantile from "@stdlib/stats-base-dists-chisquare-quantile";
import { beforeAll, describe, expect, it } from "vitest";
import { publishCollection } from "../../shared/publication/publish-collection.ts";
import type { PublishedFigure } from "../../shared/publication/published.ts";
import { checkCollection } from "../../shared/site/checks/check-collection.ts";
import { english } from "../../shared/words/en/english.ts";
import { dataFilesOf } from "../collections/collection.ts";
import { repository } from "../commands/run.ts";

/** The two-sided 95 % quantile of the normal distribution, as any table has it. */
const z = 1.959963984540054;

interface Recomputed {
  readonly value: number;
  readonly low?: number | null;
  readonly high?: number | null;
}

type Inputs = Readonly<
  Record<
    | "low"
    | "high"
    | "sightings"
    | "distinct"
    | "once"
    | "twice"
    | "firstList"
    | "secondList"
    | "both"
    | "destroyed"
    | "offers"
    | "years",
    number
  >
>;

/**
 * Each method once more, from its published formula (the sources stand on the site's page of methods) and from
 * nothing but the inputs that the data file gives: written apart from the code under test.
 */
const methods: Readonly<Record<string, (inputs: Inputs) => Recomputed>> = {
  documented: ({ low, high }) => ({ value: low, low, high }),
  coverage: ({ sightings: n, once: f1, twice: f2 }) => {
    if (f1 === 0) return { value: 1, low: null, high: null };
    const share =
      f2 > 0 ? ((n - 1) * f1) / ((n - 1) * f1 + 2 * f2) : ((n - 1) * (f1 - 1)) / ((n - 1) * (f1 - 1) + 2);
    return { value: 1 - (f1 / n) * share, low: null, high: null };
  },
  chao1: ({ distinct: d, once: f1, twice: f2, sightings: n }) => {
    const unseen = (f1 * (f1 - 1)) / (2 * (f2 + 1));
    const value = d + unseen;
    if (unseen === 0) {
      const p = Math.exp(-n / d);
      return { value, low: d, high: (d + z * Math.sqrt(d * p * (1 - p))) / (1 - p) };
    }
    const variance =
      f2 > 0
        ? unseen +
          (f1 * (2 * f1 - 1) ** 2) / (4 * (f2 + 1) ** 2) +
          (f1 ** 2 * f2 * (f1 - 1) ** 2) / (4 * (f2 + 1) ** 4)
        : (f1 * (f1 - 1)) / 2 + (f1 * (2 * f1 - 1) ** 2) / 4 - f1 ** 4 / (4 * value);
    const k = Math.exp(z * Math.sqrt(Math.log(1 + variance / unseen ** 2)));
    return { value, low: d + unseen / k, high: d + unseen * k };
  },
  chapman: ({ firstList: a, secondList: b, both: m }) => {
    const value = ((a + 1) * (b + 1)) / (m + 1) - 1;
    const seen = a + b - m;
    if (value <= seen) return { value, low: seen, high: seen };
    const variance = ((a + 1) * (b + 1) * (a - m) * (b - m)) / ((m + 1) ** 2 * (m + 2));
    const k = Math.exp(z * Math.sqrt(Math.log(1 + variance / (value - seen) ** 2)));
    return { value, low: seen + (value - seen) / k, high: seen + (value - seen) * k };
  },
  wilson: (inputs) => {
    const [x, n] = Object.values(inputs);
    const [count, of] = [x ?? 0, n ?? 0];
    const p = count / of;
    const middle = (p + z ** 2 / (2 * of)) / (1 + z ** 2 / of);
    const spread = (z / (1 + z ** 2 / of)) * Math.sqrt((p * (1 - p)) / of + z ** 2 / (4 * of ** 2));
    return { value: p, low: middle - spread, high: middle + spread };
  },
  garwood: ({ offers: k, years: t }) => ({
    value: k / t,
    low: k === 0 ? 0 : chiSquareQuantile(0.025, 2 * k) / (2 * t),
    high: chiSquareQuantile(0.975, 2 * k + 2) / (2 * t),
  }),
  "gamma-poisson": ({ offers: k, years: t }) => {
    const at = (p: number) => t * ((1 - p) ** (-1 / (k + 0.5)) - 1);
    return { value: at(0.5), low: at(0.025), high: at(0.975) };
  },
};

/** Of all that were there to be seen, without those that are known to be no longer. */
function lessDestroyed({ value, low, high }: Recomputed, { destroyed = 0 }: Partial<Inputs>): Recomputed {
  const less = (count: number | null | undefined) => Math.max(0, Number(count) - destroyed);
  return destroyed === 0 ? { value, low, high } : { value: less(value), low: less(low), high: less(high) };
}

/** C(m, k)/C(N, k) or, of a range without either end, P(span <= w), as (numerator, denominator). */
function tail(k: number, seen: number, total: number, hasEnd: boolean): [bigint, bigint] {
  let [above, below] = [1n, 1n];
  for (let at = 0; at < k; at++) {
    above *= BigInt(seen - at);
    below *= BigInt(total - at);
  }
  return hasEnd ? [above, below] : [above * BigInt(seen + k * (total - seen)), below * BigInt(seen)];
}

interface Range {
  readonly from: number | null;
  readonly to: number | null;
  readonly after?: number;
  readonly before?: number;
  readonly distinct?: number;
  readonly largest?: number;
  readonly fromEnd?: number;
  readonly span?: number;
}

function rangeTotal(range: Range): Required<Recomputed> {
  const { from, to, after = 0, before = Number.POSITIVE_INFINITY } = range;
  const { distinct: k = 0, largest, fromEnd, span } = range;
  if (from !== null && to !== null) return { value: to - from + 1, low: to - from + 1, high: to - from + 1 };
  const seen = largest ?? fromEnd ?? span ?? 0;
  const hasEnd = from !== null || to !== null;
  const value = hasEnd ? seen + seen / k - 1 : ((seen - 1) * (k + 1)) / (k - 1) - 1;
  // Upwards one by one, until the chance falls below 1/20.
  let high = seen;
  // They are no more than the numbers before the next range or, counted backwards, after the one before, or from 1.
  const most = from !== null ? before - from : to !== null ? to - after : Number.POSITIVE_INFINITY;
  for (;;) {
    const [above, below] = tail(k, seen, high + 1, hasEnd);
    if (20n * above < below || high === most) return { value: Math.min(value, most), low: seen, high };
    high += 1;
  }
}

interface Ends {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** The methods whose inputs are other figures, or ranges. */
const composed: Readonly<Record<string, (inputs: never) => Recomputed>> = {
  "serial-ranges": ({ ranges }: { readonly ranges: readonly Range[] }) => {
    const totals = ranges.map(rangeTotal);
    const sum = (end: "value" | "low" | "high") =>
      totals.reduce((total, each) => total + Number(each[end]), 0);
    return { value: sum("value"), low: sum("low"), high: sum("high") };
  },
  "survival-ratio": ({ survivors, made }: { readonly survivors: Ends; readonly made: Ends }) => ({
    value: survivors.value / made.value,
    low: survivors.low / made.high,
    high: Math.min(1, survivors.high / made.low),
  }),
  "share-of-survivors": ({ share, survivors }: { readonly share: Ends; readonly survivors: Ends }) => ({
    value: share.value * survivors.value,
    low: share.low * survivors.low,
    high: share.high * survivors.high,
  }),
};

/** Every figure anywhere in a data file, with the way to it. */
function figuresIn(data: unknown, path: string): [string, PublishedFigure][] {
  if (typeof data !== "object" || data === null) return [];
  if ("method" in data && "inputs" in data && "insufficient" in data)
    return [[path, data as PublishedFigure]];
  return Object.entries(data).flatMap(([key, value]) => figuresIn(value, `${path}.${key}`));
}

describe("a scholar with nothing but the data files", () => {
  let figures: [string, PublishedFigure][] = [];

  beforeAll(() => {
    const { sound } = checkCollection(repository);
    if (!sound) throw new Error("The demonstration has errors.");
    const published = publishCollection(sound.collection, sound.assessments, "public", english);
    figures = dataFilesOf(published)
      .filter(({ address }) => address.endsWith(".json"))
      .flatMap(({ address, text }) => figuresIn(JSON.parse(text), address));
  });

  it.each([...Object.keys(methods), ...Object.keys(composed)])(
    "comes to the same figures by %s",
    (method) => {
      const found = figures.filter(([, figure]) => figure.method === method && figure.value !== null);
      expect(found.length).toBeGreaterThan(0);
      for (const [path, figure] of found) {
        const inputs = figure.inputs as unknown as Inputs;
        const all = methods[method]?.(inputs) ?? composed[method]?.(figure.inputs as never);
        const again = all && lessDestroyed(all, inputs);
        for (const end of ["value", "low", "high"] as const) {
          const expected = again?.[end];
          if (expected === null) expect(figure[end], `${path}.${end}`).toBeNull();
          else expect(figure[end], `${path}.${end}`).toBeCloseTo(expected ?? Number.NaN, 8);
        }
      }
    },
  );

  it("knows every method by which the site comes to a figure", () => {
    expect(Object.keys(english.methods).sort()).toEqual(
      [...Object.keys(methods), ...Object.keys(composed)].sort(),
    );
  });

  it("finds what a figure takes for granted in sentences", () => {
    for (const [path, { caveats }] of figures)
      for (const caveat of caveats)
        expect(caveat, path).toEqual(expect.stringMatching(/^[\p{Lu}\p{Nd}].+\.$/u));
  });

  it("finds a reason wherever there is no figure, and bounds around every value that has them", () => {
    for (const [path, { value, low, high, insufficient }] of figures) {
      expect(value === null, path).toBe(insufficient !== null);
      if (value === null || low === null || high === null) continue;
      expect(low <= value + 1e-9 && value <= high + 1e-9, path).toBe(true);
    }
  });

  // The list of the design: too few sightings, seen once, skipped serials, lists not two, estimate above production.
  it.each([
    /No sighting is recorded/,
    /seen only once/,
    /left unused/,
    /exactly two/,
    /More are estimated to survive/,
    /of an open range/,
    /No record of the number made/,
    /gives a range and no number/,
    /No sighting says whether/,
    /For no example are all the parts recorded/,
    /A single sighting does not tell/,
    /allow for no more than/,
    /For the one offer it is not recorded/,
    /For none of the 2 offers/,
    /Nobody has looked for any/,
    /No other is recorded part by part/,
  ])("meets the refusal %s in the demonstration", (reason) => {
    expect(figures.some(([, { insufficient }]) => insufficient !== null && reason.test(insufficient))).toBe(
      true,
    );
  });
});
