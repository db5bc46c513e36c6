import type { PublishedVariant } from "../../publication/published.ts";
import type { ReadingAt } from "../../publication/references/reading-at.ts";
import { addresses } from "../addresses/addresses.ts";
import type { CollectionIndex } from "../collection-index.ts";
import type { Link } from "../page.ts";
import { classView } from "../variant/variant-rarity.ts";
import { completenessView } from "../views/completeness-view.ts";
import { levelPhrase, shareInterval, unitsInWords } from "../views/completeness-words.ts";
import { type FigureView, figureView } from "../views/figure-view.ts";

/** What a figure in a sentence rests on, as a note tells it. */
export interface Basis {
  /** The same for whatever rests on the same figure. */
  readonly key: string;
  readonly label: string;
  readonly subject: Link;
  readonly figure: FigureView;
}

export interface ReadingInWords {
  readonly text: string;
  /** Null where a number was counted and not estimated. */
  readonly basis: Basis | null;
  /** Where it leads on a page without notes. */
  readonly address: string;
  /** True where the text is a sentence of its own. */
  readonly isSentence: boolean;
}

/** A reading as a sentence says it, in the words that every page has for it. */
export function readingInWords(at: ReadingAt, index: CollectionIndex): ReadingInWords {
  const basis = basisOf(at, index);
  return {
    text: textOf(at, index),
    basis,
    address: basis?.figure.method.address ?? countedAt(at),
    isSentence: at.reading.kind === "reason",
  };
}

function textOf({ reading, subject }: ReadingAt, index: CollectionIndex): string {
  const { words, collection } = index;
  const { pages } = words;
  const unknown = pages.inputs.unknown;
  switch (reading.kind) {
    case "figure":
      return words.phrase(reading.figure);
    case "number":
      if (reading.value === null) return unknown;
      return reading.unit === "count"
        ? words.numbers.quantity(reading.value)
        : words.phrase({ value: reading.value, low: null, high: null, unit: reading.unit });
    case "completeness":
      return reading.completeness.weighted ? shareInterval(reading.completeness.weighted, words) : unknown;
    case "shares":
      return reading.bounds ? shareInterval(reading.bounds, words) : unknown;
    case "units":
      return reading.units ? unitsInWords(reading.units, words) : unknown;
    case "rank":
      return reading.rank ? pages.catalogue.rankOf(reading.rank.place, reading.rank.of) : unknown;
    case "level":
      return subject.kind === "item" ? levelPhrase(subject.item, words) : unknown;
    case "class":
      return subject.kind === "variant"
        ? (classView(subject.variant, collection, pages.variant)?.phrase ?? unknown)
        : unknown;
    case "reason":
      return reading.text ?? unknown;
    default:
      return unknown;
  }
}

/** What was counted, to look at. */
const countedAt = ({ subject }: ReadingAt): string =>
  subject.kind === "variant"
    ? addresses.sightingsOf(subject.variant.id)
    : `${addresses.item(subject.item.id)}#custody`;

function basisOf(at: ReadingAt, index: CollectionIndex): Basis | null {
  const { subject, whole, names } = at;
  if (subject.kind === "variant") {
    const { id, name, rarity } = subject.variant;
    const link = { address: addresses.variant(id), name };
    const key = `variants/${id}/${names.join("/")}`;
    if (whole.kind === "class") {
      const classed = classView(subject.variant, index.collection, index.words.pages.variant);
      if (!classed) return null;
      const figure = { ...figureView(rarity.survivors, index), phrase: classed.phrase };
      const caveats = [`${classed.scale}.`, ...figure.caveats];
      return { key, label: index.words.pages.variant.class, subject: link, figure: { ...figure, caveats } };
    }
    if (whole.kind !== "figure") return null;
    const label = variantLabel(subject.variant, names, index);
    return { key, label, subject: link, figure: figureView(whole.figure, index) };
  }
  const { item } = subject;
  const { words } = index;
  const { pages } = words;
  const link = { address: addresses.item(item.id), name: item.title };
  const note = (name: string, label: string, figure: FigureView) => ({
    key: `items/${item.id}/${name}`,
    label,
    subject: link,
    figure,
  });
  if (names[0] === "completeness") {
    const { completeness } = pages;
    const { weighted, counted } = completenessView(item, index);
    const { inText } = pages;
    return note("completeness", `${completeness.title}, ${inText(completeness.weighted)}`, {
      phrase: weighted ?? pages.inputs.unknown,
      isKnown: true,
      withheld: null,
      doubt: null,
      method: { address: addresses.method("completeness"), name: pages.methods.completeness.name },
      confidence: null,
      inputs: [
        ...(counted === null ? [] : [{ name: inText(completeness.counted), value: counted }]),
        { name: inText(completeness.level), value: levelPhrase(item, words) },
      ],
      sources: [],
      caveats: [],
    });
  }
  if (whole.kind === "rank") {
    const figure = figureView(item.rarity.asComplete, index);
    return note("asComplete", words.figures.item.asComplete, figure);
  }
  if (whole.kind !== "figure") return null;
  const name = names[0] ?? "";
  return note(name, nameOf(words.figures.item, name), figureView(whole.figure, index));
}

/** The name of the figure that a reference asks for. */
const nameOf = (names: Readonly<Record<string, string>>, figure: string): string => names[figure] ?? figure;

function variantLabel(
  { parts, levels }: PublishedVariant,
  [group = "", id = "", name = ""]: readonly string[],
  { words }: CollectionIndex,
): string {
  const say = words.pages.variant;
  if (group === "parts") return say.partFound(parts.find((part) => part.id === id)?.name ?? id);
  if (group === "levels") {
    const level = levels.find((each) => each.id === id)?.name ?? id;
    return say.ofLevel(level, nameOf(words.figures.level, name));
  }
  return nameOf(words.figures.variant, group);
}
