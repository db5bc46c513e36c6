import type { Unit } from "../assessments/figure.ts";
import type { NumberWords } from "./numbers.ts";
import type { FigurePhrase } from "./words.ts";

type Measure = (numbers: string) => string;

/** What a language says around the numbers of a figure. */
interface PhraseWords {
  readonly about: (value: string) => string;
  readonly interval: (low: string, high: string) => string;
  readonly years: Measure;
  readonly months: Measure;
  readonly aYear: Measure;
  readonly unknown: string;
}

interface Measured {
  readonly written: string;
  readonly measure: Measure;
}

/** In years, of which the only figures are waits: nobody has an idea of a fifth of a year. */
const longestInMonths = 2;

/** The same figure has the same wording wherever it stands. */
export function figurePhrase({ count, share, estimate, wait }: NumberWords, say: PhraseWords) {
  const itself: Measure = (numbers) => numbers;
  const measured: Record<Unit, (value: number) => Measured> = {
    examples: (value) => ({ written: count(value), measure: itself }),
    share: (value) => ({ written: share(value), measure: itself }),
    years: (value) =>
      value < longestInMonths
        ? { written: count(value * 12), measure: say.months }
        : { written: wait(value), measure: say.years },
    "offers a year": (value) => ({ written: estimate(value), measure: say.aYear }),
  };
  const inItsMeasure = ({ written, measure }: Measured): string => measure(written);

  return ({ value, low, high, unit }: FigurePhrase): string => {
    const show = measured[unit];
    const [from, to] = [low === null ? null : show(low), high === null ? null : show(high)];
    if (value === null) {
      if (!from || !to) return say.unknown;
      return from.measure === to.measure
        ? from.measure(say.interval(from.written, to.written))
        : say.interval(inItsMeasure(from), inItsMeasure(to));
    }
    const shown = show(value);
    const phrase = inItsMeasure(shown);
    if (!from || !to || low === high) return phrase;
    // A measure is said once where the ends have that of the value, and with each of them where one has another.
    const isOfOne = from.measure === shown.measure && to.measure === shown.measure;
    const interval = isOfOne
      ? say.interval(from.written, to.written)
      : say.interval(inItsMeasure(from), inItsMeasure(to));
    // "under 1%" and "over 100 years" are about nothing, and no other number is near to 0.
    if (value !== 0 && /^\p{Nd}/u.test(shown.written)) return `${say.about(phrase)}, ${interval}`;
    return interval === shown.written ? phrase : `${phrase}, ${interval}`;
  };
}
