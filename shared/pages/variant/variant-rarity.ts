import type {
  PublishedCollection,
  PublishedFigure,
  PublishedVariant,
  Said,
} from "../../publication/published.ts";
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

/** How many were made, how many are left, how often one turns up. */
export function variantFigures(variant: PublishedVariant, index: CollectionIndex): LabelledFigure[] {
  const say = index.words.pages.variant;
  const { rarity } = variant;
  const figures = [
    ["made", say.made, rarity.made],
    ["survivors", say.survivors, rarity.survivors],
    ["survivors-two-list", say.survivorsTwoList, rarity.survivorsTwoList],
    ["survival-rate", say.survivalRate, rarity.survivalRate],
    ["appearance", say.appearance, rarity.appearance],
    ["wait", say.wait, rarity.wait],
    ["coverage", say.coverage, rarity.coverage],
  ] as const;
  return figures.map(([id, label, figure]) => ({ id, label, figure: figureView(figure, index) }));
}

/** What the figures of a variant are made from, and as of when. */
export function countedInWords({ rarity }: PublishedVariant, { words }: CollectionIndex): string {
  const { sightings, distinct, once, twice, latest } = rarity;
  return words.pages.variant.sightings(sightings, distinct, once, twice, latest && words.when(latest));
}

/** How many of the recorded examples reach a level, how many survive that do, how often one turns up. */
export function levelFigures(
  { rarity }: PublishedVariant,
  level: string,
  index: CollectionIndex,
): LabelledFigure[] {
  const say = index.words.pages.variant;
  const ofLevel = Object.hasOwn(rarity.levels, level) ? rarity.levels[level] : undefined;
  if (!ofLevel) return [];
  const figures = [
    ["share", say.levelShare, ofLevel.share],
    ["survivors", say.levelSurvivors, ofLevel.survivors],
    ["appearance", say.appearance, ofLevel.appearance],
    ["wait", say.wait, ofLevel.wait],
  ] as const;
  return figures.map(([id, label, figure]) => ({
    id: `level-${level}-${id}`,
    label,
    figure: figureView(figure, index),
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

const conflicts: ReadonlySet<Said["says"]> = new Set(["known-exceed-made", "estimate-exceeds-made"]);

/** What is said where more are known, or estimated to survive, than were made. */
export const conflictWithMade = ({ caveats }: PublishedFigure): string | null =>
  caveats.find(({ says }) => conflicts.has(says))?.text ?? null;
