import type { Unit } from "../assessments/figure.ts";
import type { NumberWords } from "./numbers.ts";
import type { FigurePhrase } from "./words.ts";

/** What a language says around the numbers of a figure. */
interface PhraseWords {
  readonly about: (value: string) => string;
  readonly interval: (low: string, high: string) => string;
  readonly years: (numbers: string) => string;
  readonly aYear: (numbers: string) => string;
  readonly unknown: string;
}

/** The same figure has the same wording wherever it stands. */
export function figurePhrase({ count, share, estimate, wait }: NumberWords, say: PhraseWords) {
  const shown: Record<Unit, (value: number) => string> = {
    examples: count,
    share,
    years: wait,
    "offers a year": estimate,
  };
  const measured: Record<Unit, (numbers: string) => string> = {
    examples: (numbers) => numbers,
    share: (numbers) => numbers,
    years: say.years,
    "offers a year": say.aYear,
  };
  return ({ value, low, high, unit }: FigurePhrase): string => {
    const [show, measure] = [shown[unit], measured[unit]];
    const interval = low === null || high === null ? null : say.interval(show(low), show(high));
    if (value === null) return interval === null ? say.unknown : measure(interval);
    const written = show(value);
    const phrase = measure(written);
    if (interval === null || low === high) return phrase;
    // "under 1%" and "over 100 years" are about nothing, and no other number is near to 0.
    if (value !== 0 && /^\p{Nd}/u.test(written)) return `${say.about(phrase)}, ${interval}`;
    return interval === written ? phrase : `${phrase}, ${interval}`;
  };
}
