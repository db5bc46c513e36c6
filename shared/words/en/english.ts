import type { Method } from "../../assessments/figure.ts";
import type { StatementId } from "../../assessments/statement.ts";
import { dateReader } from "../dates.ts";
import { figurePhrase } from "../figure-phrase.ts";
import { numberWords } from "../numbers.ts";
import type { MethodWords, Words } from "../words.ts";
import { englishFigureNames } from "./figure-names.ts";
import { englishPages } from "./pages.ts";
import { englishPlots } from "./plots.ts";
import { plural } from "./plural.ts";

const numbers = numberWords(
  "en",
  (written) => `under ${written}`,
  (written) => `over ${written}`,
);
const { count } = numbers;

type Values = Readonly<Record<string, string | number>>;
const numberOf = (values: Values, name: string): number => Number(values[name] ?? 0);

const atLeastSurvive = (known: number): string => {
  if (known === 0) return "none of those known for certain survives";
  return `at least ${count(known)} ${known === 1 ? "survives" : "survive"}`;
};

const offersUndecided = (values: Values): string => {
  const [all, undecided] = [numberOf(values, "all"), numberOf(values, "undecided")];
  return `For ${count(undecided)} of the ${count(all)} offers it is not recorded whether ${undecided === 1 ? "it was of such an outfit. It is" : "they were of such an outfit. They are"} not counted, so one may be offered more often, and sooner.`;
};

const namelessRows = (values: Values): string => {
  const [nameless, rows] = [numberOf(values, "nameless"), numberOf(values, "rows")];
  const isOne = nameless === 1;
  const which =
    rows === 1
      ? "The one row of the log behind it"
      : `Of the ${count(rows)} rows of the log behind it ${count(nameless)}`;
  return `${which} ${isOne ? "names" : "name"} neither serial nor example: ${isOne ? "it" : "each"} counts as an example of its own, and may be one that was seen before.`;
};

const statements: Record<StatementId, (values: Values) => string> = {
  "no-sighting": () => "No sighting is recorded.",
  "one-sighting": () =>
    "A single sighting does not tell how likely it is that the next one is of a known example.",
  "no-example-recorded": () => "For no example are all the parts recorded that this level needs.",
  "every-example-seen-once": (values) =>
    `Every known example was seen only once, so nothing tells how many have never been seen; ${atLeastSurvive(numberOf(values, "known"))}.`,
  "not-two-lists": (values) =>
    numberOf(values, "lists") === 0
      ? "No sighting names the list that it comes from; the method compares exactly two independent lists."
      : `The sightings come from ${plural(numberOf(values, "lists"), "list")}; the method compares exactly two independent ones.`,
  "lists-below-known": (values) =>
    `The two lists allow for no more than ${count(numberOf(values, "high"))}, and ${plural(numberOf(values, "known"), "different example")} are known: one of the lists is not what the method takes it for.`,
  "nothing-recorded-of-part": () => "No sighting says whether an example has this part.",
  "no-part-in-reference": () => "The reference lists no principal or issued part to compare by.",
  "no-part-issued": () =>
    "It was issued none of the principal or issued parts, so there is nothing to compare.",
  "no-part-examined": () => "Nobody has looked for any of its principal or issued parts.",
  "nobody-to-compare": () => "No other is recorded part by part, to compare its completeness with.",
  "no-year-watched": () => "Nobody has said in which years offers were watched for.",
  "no-offer-seen": (values) =>
    `No such offer is recorded in the ${numberOf(values, "years") === 1 ? "one year" : `${count(numberOf(values, "years"))} years`} watched: the figure rests on ${numberOf(values, "years") === 1 ? "that year" : "those years"} alone.`,
  "no-offer-decided": (values) =>
    numberOf(values, "offers") === 1
      ? "For the one offer it is not recorded whether it was of such an outfit."
      : `For none of the ${count(numberOf(values, "offers"))} offers is it recorded whether it was of such an outfit.`,
  "made-unknown": () => "No record of the number made is known, and no range of serials.",
  "made-only-a-range": (values) =>
    `The record gives a range and no number: ${count(numberOf(values, "low"))} to ${count(numberOf(values, "high"))}.`,
  "serials-skipped": () => "Numbers were left unused, so the serials do not count what was made.",
  "too-few-serials": (values) =>
    `Only ${plural(numberOf(values, "distinct"), "serial")} of an open range ${numberOf(values, "distinct") === 1 ? "is" : "are"} recorded; the method needs ${count(numberOf(values, "needed"))}.`,
  "made-withheld": () => "How many were made is not known well enough.",
  "survivors-withheld": () => "How many survive is not known well enough.",
  "survivors-exceed-made": () =>
    "More are estimated to survive than were made: one of the two figures, or a record behind it, is wrong.",
  "coverage-of-none-again": () =>
    "No example was seen a second time: the formula gives this number, but it says next to nothing.",
  "assumes-even-chance": () =>
    "Taken for granted: whether an example is recorded, and how much of it, has no bearing on what is in its case.",
  "assumes-independent-sightings": () =>
    "Taken for granted: that an example was seen once has no bearing on whether it is seen again.",
  "assumes-independent-lists": () =>
    "Taken for granted: whether an example is on one list has no bearing on whether it is on the other.",
  "assumes-random-serials": () => "Taken for granted: the serials seen are a random sample of those used.",
  "assumes-constant-rate": () =>
    "Taken for granted: offers come at a constant rate, independently of one another.",
  "assumes-share-independent": () =>
    "Taken for granted: examples never seen are as complete as those seen. The ends of both intervals are multiplied, which makes this one wide.",
  "lower-bound-only": () =>
    "An estimate of the least that there can be, provided that every example seen again was recognised: where one was not there may be fewer, and where some are seen much less readily than others there are more. The upper end is no limit.",
  "serials-in-several-blocks": (values) =>
    `The serials run in ${count(numberOf(values, "ranges"))} separate blocks; each is counted or estimated by itself.`,
  "serials-not-shown": (values) => {
    const serials = numberOf(values, "serials");
    return serials === 1
      ? "Without the one serial that is not published in full, since the figure would give it away; where it lies beyond those counted, more may have been made."
      : `Without the ${count(serials)} serials that are not published in full, since the figure would give them away; where one lies beyond those counted, more may have been made.`;
  },
  "serial-not-read": () => "Its serial cannot be read in full, and is compared with no range.",
  "sightings-differ": (values) => {
    const examples = numberOf(values, "examples");
    return examples === 1
      ? "Of one of these examples some sightings say that the part is there, and others that it is not; the last counts."
      : `Of ${count(examples)} of these examples some sightings say that the part is there, and others that it is not; the last counts.`;
  },
  "serial-shared": (values) =>
    `Its serial lies in the ranges of ${count(numberOf(values, "variants"))} variants of the family, and does not alone tell which of them it is.`,
  "serials-misread": (values) => {
    const examples = numberOf(values, "examples");
    const which = "the serial of the outfit at hand counts, or else the last that was read";
    return examples === 1
      ? `The record has several serials of one example: ${which}.`
      : `The record has several serials of each of ${count(examples)} examples: ${which}.`;
  },
  "known-exceed-made": (values) => {
    const made = numberOf(values, "made");
    return `${plural(numberOf(values, "known"), "different example")} are known, and ${count(made)} ${made === 1 ? "is" : "are"} said to have been made: a record is wrong.`;
  },
  "estimate-exceeds-made": (values) =>
    `More are estimated to survive than the ${numberOf(values, "made") === 1 ? "one that was" : `${count(numberOf(values, "made"))} that were`} made: one of the two figures, or a record behind it, is wrong.`,
  "counts-contradicted": (values) => {
    const examples = numberOf(values, "examples");
    return examples === 1
      ? "One of those counted is here under this name against the evidence, and may be no example of it."
      : `${count(examples)} of those counted are here under this name against the evidence, and may be no examples of it.`;
  },
  "counts-assembled": (values) => {
    const examples = numberOf(values, "examples");
    return examples === 1
      ? "One of those counted was made up with parts of another case."
      : `${count(examples)} of those counted were made up with parts of another case.`;
  },
  "less-destroyed": (values) => {
    const examples = numberOf(values, "examples");
    return examples === 1
      ? "Less the one that is known to have been destroyed or broken up since."
      : `Less the ${count(examples)} that are known to have been destroyed or broken up since.`;
  },
  "nameless-rows": namelessRows,
  "many-nameless-rows": namelessRows,
  "left-out-of-level": (values) => {
    const examples = numberOf(values, "examples");
    return examples === 1
      ? "Without one example for which not every needed part is recorded: what is known of it could show that it falls short, but never that it does not."
      : `Without the ${count(examples)} examples for which not every needed part is recorded: what is known of such a one could show that it falls short, but never that it does not.`;
  },
  "joint-confidence": (values) =>
    `Its interval is made from those of two estimates, and holds with a confidence of at least ${numbers.exactShare(numberOf(values, "confidence"))}.`,
  "offers-as-known-now": () =>
    "An offer counts by what is known of the outfit now; when it was made, there may have been less in the case.",
  "offers-undecided": offersUndecided,
  "many-offers-undecided": offersUndecided,
  "counted-in-by-certain-part": () => "This example is counted in, by what is certain of it.",
  "lists-share-nothing": () => "The two lists name no example in common, so the estimate hangs by a thread.",
  "at-least-known": (values) =>
    `At least ${count(numberOf(values, "known"))} ${numberOf(values, "known") === 1 ? "is" : "are"} known, whatever the low end says.`,
  "dates-as-written": () => "Some of the dates are uncertain or approximate, and are taken as written.",
  "years-from-log": () =>
    "Nobody has said in which years offers were watched for: the log stands for them, from the first year to the last that its sightings are dated to.",
};

const interval = (low: string, high: string) => (low === high ? low : `${low} to ${high}`);

const phrase = figurePhrase(numbers, {
  about: (value) => `about ${value}`,
  interval,
  years: (written) => `${written} years`,
  months: (written) => (/(?:^|\s)1$/.test(written) ? `${written} month` : `${written} months`),
  aYear: (written) => `${written} a year`,
  unknown: "not known",
});

const methods: Record<Method, MethodWords> = {
  documented: {
    name: `${englishFigureNames.variant.made}, as documented`,
    asks: "How many were made?",
    formula: "The number in the cited source, as it stands there.",
    source: "The source named beside the figure.",
    assumes: "The record counts what was issued.",
    changes: "Another record with another number.",
  },
  "serial-ranges": {
    name: `${englishFigureNames.variant.made}, from serials`,
    asks: "How many were made, where no record says so?",
    formula:
      "A range with both ends known counts its length. An open one is estimated: N = m + m/k − 1 for k different serials with the largest m, counted from the start, or backwards from the end where only that is known, and no more than there are numbers before the next range of its prefix, of this variant or another of the family, or after the one before; low is m, high the largest N for which C(m, k) / C(N, k) ≥ α. Where neither is known, with the span w: N = (w − 1)(k + 1)/(k − 1) − 1; low is w, high the largest N for which (w + k(N − w))/w · C(w, k) / C(N, k) ≥ α.",
    source:
      "Goodman (1952), Journal of the American Statistical Association 47: 622–634; Ruggles and Brodie (1947), same journal 42: 72–91; without a known start Goodman (1954), same journal 49: 97–112.",
    assumes: "Numbers ran on without gaps, and those seen are a random sample. Several blocks are summed.",
    changes:
      "A serial above the largest seen where the end is not known, or below the smallest where the start is not; a record that numbers were left unused.",
  },
  chao1: {
    name: englishFigureNames.variant.survivors,
    asks: "How many survive, counting those that nobody has recorded?",
    formula:
      "S = D + f₁(f₁ − 1) / (2(f₂ + 1)): D different examples, f₁ of them seen once, f₂ twice; log-normal interval, or where S = D the one below, for n sightings. Those known to be destroyed are taken off all three numbers.",
    source:
      "Chao (1984), Scandinavian Journal of Statistics 11: 265–270; Chao (1987), Biometrics 43: 783–791.",
    assumes:
      "It is a lower bound, provided that every example seen again was recognised; a row with neither serial nor example counts as an example of its own. Every example has some chance of being seen; the chances may differ.",
    changes:
      "Seeing a known example again, which brings it down, or one nobody has seen, which brings it up.",
  },
  chapman: {
    name: englishFigureNames.variant.survivorsTwoList,
    asks: "How many survive, judged by how far two independent lists agree?",
    formula:
      "N = (n₁ + 1)(n₂ + 1) / (m + 1) − 1 for lists of n₁ and n₂ examples with m in common; log-normal interval above the r that the lists name between them, or r alone where N is no more. Those known to be destroyed are taken off all three numbers.",
    source:
      "Chapman (1951), University of California Publications in Statistics 1: 131–160; variance: Seber (1970), Biometrika 57.",
    assumes: "Being on one list has no bearing on being on the other.",
    changes:
      "An example found on both lists, which brings it down, or on one of them only, which brings it up.",
  },
  coverage: {
    name: englishFigureNames.variant.coverage,
    asks: "How much of what could be seen has been seen?",
    formula:
      "C = 1 − (f₁/n) · (n − 1)f₁ / ((n − 1)f₁ + 2f₂) for n sightings, at least two. Where no example was seen a second time it says next to nothing.",
    source: "Good (1953), Biometrika 40: 237–264; Chao and Jost (2012), Ecology 93: 2533–2547.",
    assumes: "The next sighting comes about as the earlier ones did.",
    changes: "Each new sighting: it rises when a known example is seen again.",
  },
  "survival-ratio": {
    name: englishFigureNames.variant.survivalRate,
    asks: "Of those made, what share survives?",
    formula:
      "Survivors / made; low is the low of the one over the high of the other, high the reverse, at most 1. Where both are estimated, the confidence is at least the sum of theirs less 1.",
    source: "Interval arithmetic.",
    assumes: "What its two figures assume.",
    changes: "Whatever changes one of its two figures.",
  },
  wilson: {
    name: "Share of the recorded examples",
    asks: "What share has this part, or is at least as complete?",
    formula: "x / n with the score interval: (2np + z² ± z√(z² + 4npq)) / (2(n + z²)).",
    source: "Wilson (1927), Journal of the American Statistical Association 22: 209–212.",
    assumes: "The recorded examples are like the others.",
    changes: "Each further example for which it is recorded; the interval narrows as their number grows.",
  },
  "share-of-survivors": {
    name: englishFigureNames.item.asCompleteSurvivors,
    asks: "How many survive that are at least as complete?",
    formula: "Survivors × share, end by end; the confidence is at least the sum of theirs less 1.",
    source: "Interval arithmetic.",
    assumes: "Examples never seen are as complete as those seen.",
    changes: "Whatever changes one of its two figures.",
  },
  garwood: {
    name: englishFigureNames.variant.appearance,
    asks: "How often is one offered?",
    formula:
      "k offers in T years: k/T; interval χ²(α/2; 2k)/2T to χ²(1 − α/2; 2k + 2)/2T. The years are those that were watched or, where nobody says which, those from the first to the last of the log; there a mention, or a date of more than a year, tells only where nothing else does.",
    source: "Garwood (1936), Biometrika 28: 437–442.",
    assumes: "Offers come at a constant rate, independently of one another.",
    changes: "Each new offer, and each year of watching without one.",
  },
  "gamma-poisson": {
    name: englishFigureNames.variant.wait,
    asks: "How long until the next is offered?",
    formula:
      "P(W > t) = (T / (T + t))^(k + ½), Jeffreys' prior: the median T(2^(1/(k + ½)) − 1), with the quantiles α/2 and 1 − α/2. Without an offer the median is 3T, which rests on the years watched alone.",
    source:
      "Jeffreys (1946), Proceedings of the Royal Society A 186: 453–461; Lomax (1954), Journal of the American Statistical Association 49: 847–852.",
    assumes: "Offers come at a constant rate, independently of one another.",
    changes: "Each new offer, and each year of watching without one.",
  },
};

const { date, when } = dateReader("en-GB", {
  about: (text) => `about ${text}`,
  uncertain: (text) => `${text} (uncertain)`,
  span: (from, to) => `${from} to ${to}`,
  at: (text, of, isAbout) => `${of === "day" ? "on" : "in"} ${isAbout ? "about " : ""}${text}`,
  during: (span) => `from ${span}`,
  since: (from, isEndUnknown) => `from ${from}${isEndUnknown ? ", end unknown" : ""}`,
  until: (to, isStartUnknown) => `until ${to}${isStartUnknown ? ", beginning unknown" : ""}`,
  decade: (year, before) => (before === undefined ? `${year}s` : `the ${year}s`),
  seasons: ["spring", "summer", "autumn", "winter"],
  before: (year) => `before ${year}`,
  after: (year) => `after ${year}`,
  atLatest: (text) => `${text} at the latest`,
  atEarliest: (text) => `${text} at the earliest`,
  between: (from, to) => `between ${from} and ${to}`,
});

export const english: Words = {
  language: "en",
  numbers,
  interval,
  date,
  when,
  seen: (edtf) => `One seen ${when(edtf)}`,
  statement: ({ says, values }) => statements[says](values),
  phrase,
  figures: englishFigureNames,
  methods,
  plots: englishPlots,
  pages: englishPages,
};
