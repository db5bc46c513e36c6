import type {
  PublishedCollection,
  PublishedFigure,
  PublishedVariant,
  Said,
} from "../../publication/published.ts";
import { levelFigures as levelNames, variantFigures as variantNames } from "../../words/figure-names.ts";
import type { CollectionIndex } from "../collection-index.ts";
import { type FigureView, figureView } from "../views/figure-view.ts";

export interface LabelledFigure {
  readonly id: string;
  readonly label: string;
  readonly figure: FigureView;
}

export interface ClassView {
  /** "URS-6, 17 to 32 known", or a span of two. */
  readonly phrase: string;
  /** The same where nothing beside it says which scale it is on. */
  readonly named: string;
  readonly scale: string;
}

/** "survivors-two-list": the name of a figure as addresses have names. */
export const inAddress = (name: string): string =>
  name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** How many were made, how many are left, how often one turns up. */
export function variantFigures(variant: PublishedVariant, index: CollectionIndex): LabelledFigure[] {
  return variantNames.map((name) => ({
    id: inAddress(name),
    label: index.words.figures.variant[name],
    figure: figureView(variant.rarity[name], index),
  }));
}

/** What the figures of a variant are made from, and as of when. */
export function countedInWords({ rarity }: PublishedVariant, { words }: CollectionIndex): string {
  const { latest } = rarity;
  return words.pages.variant.sightings(rarity, latest && words.when(latest));
}

/** How many of the recorded examples reach a level, how many survive that do, how often one turns up. */
export function levelFigures(
  { rarity }: PublishedVariant,
  level: string,
  index: CollectionIndex,
): LabelledFigure[] {
  const ofLevel = Object.hasOwn(rarity.levels, level) ? rarity.levels[level] : undefined;
  if (!ofLevel) return [];
  return levelNames.map((name) => ({
    id: `level-${level}-${name}`,
    label: index.words.figures.level[name],
    figure: figureView(ofLevel[name], index),
  }));
}

/** A span of classes is shown as a span: the figure behind it is an interval. */
export function classView(
  { rarity }: PublishedVariant,
  { scale }: PublishedCollection,
  say: CollectionIndex["words"]["pages"]["variant"],
): ClassView | null {
  if (!scale || !rarity.class) return null;
  const { low, high } = rarity.class;
  const wordsOf = (id: string | null) =>
    id === null ? say.classNone : (scale.classes.find((each) => each.id === id)?.words ?? id);
  const isWithheld = rarity.survivors.low === null || rarity.survivors.high === null;
  const phrase = isWithheld ? say.classWithheld : say.classSpan(wordsOf(low), wordsOf(high));
  return {
    phrase,
    named: `${scale.name}: ${phrase}`,
    scale: say.scaleSource(scale.name, scale.citation),
  };
}

type Conflict = Said["says"] & ("known-exceed-made" | "estimate-exceeds-made");

const isConflict = (says: Said["says"]): says is Conflict =>
  says === "known-exceed-made" || says === "estimate-exceeds-made";

/** What is said where more are known, or estimated to survive, than were made. */
export const conflictWithMade = ({ caveats }: PublishedFigure): string | null =>
  caveats.find(({ says }) => isConflict(says))?.text ?? null;

/** How many survive where nothing stands beside it: with a word where that speaks against the number made. */
export function survivorsInBrief(
  survivors: PublishedFigure | undefined,
  { phrase, pages: { home: say } }: CollectionIndex["words"],
): string {
  const isKnown = survivors !== undefined && survivors.value !== null;
  const survive = isKnown ? say.survive(phrase(survivors)) : say.surviveUnknown;
  const conflict = survivors?.caveats.map(({ says }) => says).find(isConflict);
  return conflict === undefined ? survive : say.conflict(survive, say.conflicts[conflict]);
}
