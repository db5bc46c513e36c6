import type { Input, PublishedFigure, Said, Unit } from "../../publication/published.ts";
import { citedPages } from "../../words/cited-pages.ts";
import { addresses } from "../addresses/addresses.ts";
import { sourceLink } from "../citation/source-reference.ts";
import type { CollectionIndex } from "../collection-index.ts";
import type { Link } from "../page.ts";

/** A figure as a page prints it: the phrase first, and what it rests on for whoever opens it. */
export interface FigureView {
  readonly phrase: string;
  /** Whether the phrase says something: a number, or the ends of a range that was written down without one. */
  readonly isKnown: boolean;
  /** Why there is no number. */
  readonly withheld: string | null;
  /** Why the number, though the formula gives it, is not to be taken as it stands: said beside it, on paper too. */
  readonly doubt: string | null;
  readonly method: Link;
  /** "95%" or "at least 90%", where the figure has an interval. */
  readonly confidence: string | null;
  readonly inputs: readonly { readonly name: string; readonly value: string }[];
  readonly sources: readonly Link[];
  readonly caveats: readonly string[];
  /** What would change it. */
  readonly changes?: string;
}

/** The inputs that are figures themselves, by name. */
const unitOf: Readonly<Record<string, Unit>> = { share: "share", survivors: "examples", made: "examples" };

/** What is taken for granted can wait to be asked for; that a number contradicts what is known cannot. */
const doubts: ReadonlySet<Said["says"]> = new Set([
  "coverage-of-none-again",
  "known-exceed-made",
  "estimate-exceeds-made",
  "at-least-known",
  "no-offer-seen",
  "many-nameless-rows",
  "many-offers-undecided",
]);

export function figureView(figure: PublishedFigure, index: CollectionIndex): FigureView {
  const { words } = index;
  const method = words.methods[figure.method];
  const isDoubt = ({ says }: Said) => doubts.has(says);
  const doubt = figure.caveats.filter(isDoubt).map(({ text }) => text);
  const hasEnds = figure.low !== null && figure.high !== null;
  return {
    phrase: words.phrase(figure),
    isKnown: figure.value !== null || hasEnds,
    withheld: figure.insufficient,
    doubt: doubt.length === 0 ? null : doubt.join(" "),
    method: { name: method.name, address: addresses.method(figure.method) },
    confidence: confidenceOf(figure, index),
    inputs: figureInputs(figure, index),
    sources: figure.sources.map((id) => sourceLink(id, index)),
    caveats: figure.caveats.filter((caveat) => !isDoubt(caveat)).map(({ text }) => text),
    changes: method.changes,
  };
}

/**
 * How sure its interval is; null where it has none: a range that was written down, with no number in it, is not an
 * estimate.
 */
export function confidenceOf(
  { value, low, high, confidence, caveats }: PublishedFigure,
  { words }: Pick<CollectionIndex, "words">,
): string | null {
  if (value === null || low === null || high === null || low === high) return null;
  const written = words.numbers.exactShare(confidence);
  const isLeast = caveats.some(({ says }) => says === "joint-confidence");
  return isLeast ? words.pages.figure.atLeast(written) : written;
}

/** What went into a figure, named and written for reading. */
export function figureInputs(
  figure: PublishedFigure,
  { words }: Pick<CollectionIndex, "words">,
): FigureView["inputs"] {
  const say = words.pages.inputs;
  const nameOf = (key: string) => (Object.hasOwn(say.names, key) ? say.names[key] : undefined) ?? key;
  const write = (key: string, input: Input): string => {
    if (input === null) return say.unknown;
    if (typeof input === "string") return input;
    if (typeof input === "number") return writeNumber(key, input);
    if (Array.isArray(input)) return input.map((each: Input) => write(key, each)).join("; ");
    const fields = Object.entries(input as Readonly<Record<string, Input>>);
    const unit = Object.hasOwn(unitOf, key) ? unitOf[key] : undefined;
    if (unit !== undefined) return words.phrase({ ...numbersOf(fields), unit });
    if (key === "ranges") return say.range(rangeOf(fields));
    return fields.map(([name, value]) => `${nameOf(name)} ${write(name, value)}`).join(", ");
  };
  const writeNumber = (key: string, value: number): string => {
    // These count nothing: they are names of a year, and of a page.
    if (key === "firstYear" || key === "lastYear" || key === "page") return String(value);
    if (key === "certain") return words.numbers.exactShare(value);
    return words.numbers.quantity(value);
  };
  // A number that stands in a source went into no figure but itself.
  const isItself = (key: string, value: Input) => (key === "low" || key === "high") && value === figure.value;
  return Object.entries(figure.inputs)
    .filter(([key, value]) => value !== null && !isItself(key, value))
    .filter(([, value]) => !(Array.isArray(value) && value.length === 0))
    .map(([key, value]) => ({
      // A folio or a plate is no page.
      name: nameOf(key === "page" && citedPages(String(value)) === null ? "place" : key),
      value: write(key, value),
    }));
}

const numbersOf = (fields: readonly (readonly [string, Input])[]) => {
  const number = (name: string): number | null => {
    const value = fields.find(([key]) => key === name)?.[1];
    return typeof value === "number" ? value : null;
  };
  return { value: number("value"), low: number("low"), high: number("high") };
};

const rangeOf = (fields: readonly (readonly [string, Input])[]) => {
  const text = (name: string): string | null => {
    const value = fields.find(([key]) => key === name)?.[1];
    return value === null || value === undefined ? null : String(value);
  };
  return {
    prefix: text("prefix") ?? "",
    from: text("from"),
    to: text("to"),
    after: text("after"),
    before: text("before"),
    distinct: text("distinct"),
    largest: text("largest"),
    fromEnd: text("fromEnd"),
    span: text("span"),
  };
};
