import type { Unit } from "../assessments/figure.ts";
import { longestWait, type NumberWords } from "./numbers.ts";
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
  const written: Record<Unit, (value: number) => string> = {
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
    const [show, measure] = [written[unit], measured[unit]];
    const interval = low === null || high === null ? null : say.interval(show(low), show(high));
    if (value === null) return interval === null ? say.unknown : measure(interval);
    const phrase = measure(show(value));
    if (interval === null || low === high) return phrase;
    if (unit !== "years" || value <= longestWait) return `${say.about(phrase)}, ${interval}`;
    return interval === show(value) ? phrase : `${phrase}, ${interval}`;
  };
}
