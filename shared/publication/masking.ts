import { addUnder } from "../lists/grouping.ts";
import type { Item, SerialPublishing } from "../records/item.ts";
import { serialKey } from "../records/serial.ts";
import { mayBeParted, replacePrinted, withoutMarkup } from "../source/without-markup.ts";
import { maskSign } from "./masked-sign.ts";

/** How many of the last digits of a serial a mask hides. */
export const masked = 2;

/** A serial without its last two digits, or without any where it has no more than two. */
export function maskSerial(serial: string): string {
  const letters = [...serial];
  const digits = letters.flatMap((letter, at) => (/\p{Nd}/u.test(letter) ? at : []));
  const hidden = new Set(digits.slice(-masked));
  // A serial without digits has no last ones: nothing of it can be shown safely.
  if (digits.length === 0) return serial.replace(/[\p{L}\p{N}]/gu, maskSign);
  return letters.map((letter, at) => (hidden.has(at) ? maskSign : letter)).join("");
}

export function publishSerial(serial: string | undefined, how: SerialPublishing): string | null {
  if (serial === undefined || how === "hidden") return null;
  return how === "shown" ? serial : maskSerial(serial);
}

const alone = (pattern: string, end = "(?![\\p{L}\\p{N}])") =>
  new RegExp(`(?<![\\p{L}\\p{N}])${pattern}${end}`, "giu");

const isNumber = (run: string | undefined): run is string => run !== undefined && /^\p{Nd}+$/u.test(run);

/** Zeros before a number tell no serials apart (serialKey): G0094 is G94. */
const withoutZeros = (run: string): string => run.replace(/^0+(?=\p{Nd})/u, "");

/** A run as it stands, or as a plate may have it: with a space between any two of its characters. */
function closeOrSpaced(run: string, asItStands = run): string {
  const letters = [...run];
  if (letters.length < 2) return asItStands;
  const another = isNumber(run) ? "(?!\\s\\p{Nd}(?!\\p{N}))" : "";
  return `(?:${asItStands}|${letters.join("\\s")}${another})`;
}

/**
 * Letters and digits of a serial, with whatever a writer may put between them, with zeros before its numbers, and
 * with a letter after its number that distinguishes one of several tags.
 */
function spelling(runs: readonly string[]): RegExp | null {
  const text = runs
    .map((run) => closeOrSpaced(run, isNumber(run) ? `0*${withoutZeros(run)}` : run))
    .join("[\\s./\u2010-\u2015-]*");
  if (runs.join("").length < 3) return null;
  return runs.length > 1 && isNumber(runs.at(-1)) ? alone(text, "(?!\\p{N})") : alone(text);
}

/**
 * The number of a serial written without its letters, as 271828 or 271 828 for H271828. One of one or two digits
 * stays, unless zeros make it longer: such a number counts lenses, and nothing of it would be left.
 */
function numberAlone(digits: string): RegExp {
  const number = withoutZeros(digits);
  if (number.length < 3) return alone(`0{${3 - number.length},}${number}`);
  if (number.length < 5) return alone(closeOrSpaced(number, `0*${number}`));
  return alone(`0*${[...number].join("[\\s.,'\u2019]?")}`);
}

const runsOf = (serial: string): readonly string[] => serial.normalize("NFKC").match(/\p{L}+|\p{N}+/gu) ?? [];

export type Redact = (text: string) => string;

function takeOut(text: string, pattern: RegExp, shown: string): string {
  const taken = text.replace(pattern, shown);
  return mayBeParted(taken) ? replacePrinted(taken, pattern, shown) : taken;
}

const known = new WeakMap<Item, Redact>();

/** Takes the serials that an item does not show out of whatever else its author wrote about it. */
export function redactorFor(item: Item): Redact {
  const redact = known.get(item) ?? makeRedactor(item);
  known.set(item, redact);
  return redact;
}

/** What every spelling of some runs has in it, as it stands: most texts have it not, and need not be searched. */
const mark = (runs: readonly string[]): string =>
  runs
    .filter((run) => /^[0-9]+$/.test(run))
    .map(withoutZeros)
    .reduce((a, b) => (b.length > a.length ? b : a), "");

/** A number with a space between any two of its digits. */
const spacedNumber = /(?<!\p{Nd})\p{Nd}(?:\s\p{Nd})+(?!\p{Nd})/u;
const spacedNumbers = new RegExp(spacedNumber, "gu");

/** A pattern takes longer to make than most texts to be read, and most have nothing to be found. */
function once<Value>(make: () => Value): () => Value {
  let made: { readonly value: Value } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

function makeRedactor(item: Item): Redact {
  if (item.publish.serial === "shown") return (text) => text;
  const serials = [item.serial, ...[...item.parts.values()].flat().map(({ serial }) => serial)];
  const publish = (serial: string) => publishSerial(serial, item.publish.serial) ?? maskSign.repeat(3);
  const secrets = serials
    .flatMap((serial) => (serial === undefined ? [] : [serial]))
    .flatMap((serial) => {
      const runs = runsOf(serial);
      const whole = { pattern: once(() => spelling(runs)), shown: publish(serial), has: mark(runs) };
      const numbers = runs.map((run) => ({
        pattern: once(() => (isNumber(run) ? numberAlone(run) : null)),
        shown: publish(run),
        // Its digits may be parted.
        has: mark(withoutZeros(run).length > 4 ? [withoutZeros(run).charAt(0)] : [run]),
      }));
      return [whole, ...numbers];
    });
  return (text) => {
    const isParted = mayBeParted(text) || spacedNumber.test(text);
    return secrets.reduce((redacted, { pattern, shown, has }) => {
      const found = isParted || redacted.includes(has) ? pattern() : null;
      return found ? takeOut(redacted, found, shown) : redacted;
    }, text);
  };
}

/** A serial that its item does not show, with what is shown in its place. Plain data. */
export interface HiddenSerial {
  readonly serial: string;
  readonly shown: string;
}

/** Whether a text can be said to tell a serial: a number alone, unless it is long, may count anything. */
const canBeTold = (serial: string): boolean =>
  /\p{L}/u.test(serial) || (serial.match(/\p{Nd}+/gu) ?? []).some((run) => withoutZeros(run).length >= 6);

/** Of those that a text about something else can tell. */
export function hiddenSerials(items: Iterable<Pick<Item, "serial" | "publish">>): HiddenSerial[] {
  return [...items].flatMap(({ serial, publish }) =>
    serial === undefined || publish.serial === "shown" || !canBeTold(serial)
      ? []
      : { serial, shown: publishSerial(serial, publish.serial) ?? maskSign.repeat(3) },
  );
}

const between = /[\s./\u2010-\u2015-]/;
const isLetter = (letter: string | undefined): boolean => letter !== undefined && /\p{L}/u.test(letter);

/** The letters beside a number, past what may part them: most numbers of a text are told from a serial by these. */
function lettersBeside(text: string, from: number, step: 1 | -1): string {
  let at = from;
  while (between.test(text.charAt(at))) at += step;
  const start = at;
  while (isLetter(text[at])) at += step;
  return (step === 1 ? text.slice(start, at) : text.slice(at + 1, start + 1)).toUpperCase();
}

/** Which of some serials a text tells, of those that are wanted, however it spells them; with how to find each in it. */
export function serialFinder<Known extends { readonly serial: string }>(serials: readonly Known[]) {
  interface Entry {
    readonly known: Known;
    readonly pattern: () => RegExp | null;
    /** Undefined where the serial has no letters there. */
    readonly before: string | undefined;
    readonly after: string | undefined;
  }
  const byNumber = new Map<string, Entry[]>();
  for (const known of serials) {
    if (!canBeTold(known.serial)) continue;
    const runs = runsOf(known.serial.toUpperCase());
    const number = mark(runs);
    if (number === "") continue;
    const at = runs.findIndex((run) => withoutZeros(run) === number);
    const lettersAt = (place: number) => (isLetter(runs[place]?.[0]) ? runs[place] : undefined);
    const entry = {
      known,
      pattern: once(() => spelling(runs)),
      before: lettersAt(at - 1),
      after: lettersAt(at + 1),
    };
    addUnder(byNumber, number, entry);
  }
  const findIn = (text: string, isWanted: (known: Known) => boolean, told: Map<Known, RegExp>): void => {
    const look = (entry: Entry) => {
      const pattern = told.has(entry.known) || !isWanted(entry.known) ? null : entry.pattern();
      if (pattern && text.search(pattern) >= 0) told.set(entry.known, pattern);
    };
    for (const [spaced] of text.matchAll(spacedNumbers))
      for (const entry of byNumber.get(withoutZeros(spaced.replace(/\s/g, ""))) ?? []) look(entry);
    for (const { 0: number, index } of text.matchAll(/[0-9]+/g)) {
      const entries = byNumber.get(withoutZeros(number));
      if (!entries) continue;
      const before = lettersBeside(text, index - 1, -1);
      const after = lettersBeside(text, index + number.length, 1);
      for (const entry of entries) {
        if (entry.before !== undefined && entry.before !== before) continue;
        if (entry.after !== undefined && entry.after !== after) continue;
        look(entry);
      }
    }
  };
  return (
    text: string,
    isWanted: (known: Known) => boolean = () => true,
  ): { readonly known: Known; readonly pattern: RegExp }[] => {
    if (byNumber.size === 0) return [];
    const told = new Map<Known, RegExp>();
    findIn(text, isWanted, told);
    if (mayBeParted(text)) findIn(withoutMarkup(text).text, isWanted, told);
    return [...told].map(([known, pattern]) => ({ known, pattern }));
  };
}

/** Takes hidden serials out of a text, but not the one that its own record bears. */
export type RedactAny = (text: string, borne?: string) => string;

/** Takes hidden serials out of a text that may be about anything, whoever wrote it. */
export function redactorOf(hidden: readonly HiddenSerial[]): RedactAny {
  const find = serialFinder(hidden);
  return (text, borne) =>
    find(text, isAnotherThan(borne)).reduce(
      (redacted, { known, pattern }) => takeOut(redacted, pattern, known.shown),
      text,
    );
}

/** Two records may bear one serial, and each tells its own. */
export function isAnotherThan(borne: string | undefined): (known: { readonly serial: string }) => boolean {
  if (borne === undefined) return () => true;
  const key = serialKey(borne);
  return ({ serial }) => serialKey(serial) !== key;
}
