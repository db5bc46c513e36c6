import type { RarityClass } from "../../assessments/rarity/scale-class.ts";
import { placePhrase } from "../../pages/views/completeness-words.ts";
import type { PublishedFigure } from "../../publication/published.ts";
import { english } from "../../words/en/english.ts";
import { itemFigures, levelFigures, variantFigures } from "../../words/figure-names.ts";
import { wrappedLines } from "../terminal/wrapped-lines.ts";
import type { Explained } from "./explained.ts";
import { figureLines, labelled, type Setting } from "./figure-lines.ts";

type NamedFigures = readonly (readonly [string, PublishedFigure])[];

const namesOf = english.figures;

const ownFigures = ({ item: { rarity } }: Explained): NamedFigures =>
  itemFigures.map((name) => [namesOf.item[name], rarity[name]]);

const ofVariant = ({ variant: { rarity } }: Explained): NamedFigures =>
  variantFigures.map((name) => [namesOf.variant[name], rarity[name]]);

const apart = (figures: NamedFigures, setting: Setting): string[] =>
  figures.flatMap(([name, figure]) => ["", ...figureLines(name, figure, setting)]);

const ofLevels = ({ item, variant: { rarity } }: Explained): NamedFigures =>
  item.levels.flatMap(({ id, name }) => {
    const figures = Object.hasOwn(rarity.levels, id) ? rarity.levels[id] : undefined;
    if (!figures) return [];
    return levelFigures.map(
      (figure) => [english.pages.variant.ofLevel(name, namesOf.level[figure]), figures[figure]] as const,
    );
  });

/** How rare one as complete as this is. */
export function ownRarityLines(explained: Explained, setting: Setting): string[] {
  const { rank, asComplete } = explained.item.rarity;
  const { pages } = setting.words;
  const place = rank
    ? `${pages.capital(placePhrase(rank, setting.words))}.`
    : `${pages.catalogue.rank}: ${pages.inputs.unknown}. ${asComplete.insufficient ?? ""}`;
  const lines = wrappedLines(place, setting.width - 2).map((line) => `  ${line}`);
  return [...lines, ...apart(ownFigures(explained), setting)];
}

/** How rare its variant is. */
export function variantRarityLines(explained: Explained, setting: Setting): string[] {
  const { classWords, scaleName } = explained;
  const { rarity } = explained.variant;
  const count = setting.words.numbers.count;
  return [
    ...labelled(
      "the log",
      `${count(rarity.sightings)} sightings of ${count(rarity.distinct)} examples: ${count(rarity.once)} seen once, ${count(rarity.twice)} twice`,
      setting,
    ),
    ...(scaleName ? labelled("class", `${classSpan(rarity.class, classWords)} (${scaleName})`, setting) : []),
    ...apart(ofVariant(explained), setting),
    ...apart(ofLevels(explained), setting),
  ];
}

function classSpan(known: RarityClass | null, classWords: (id: string) => string): string {
  if (known === null || (known.low === null && known.high === null)) return "not known";
  const words = (id: string | null) => (id === null ? "outside the scale" : classWords(id));
  return known.low === known.high ? words(known.low) : `from ${words(known.low)} to ${words(known.high)}`;
}

/** Every figure of a report, in its order. */
export const figuresOf = (explained: Explained): PublishedFigure[] =>
  [...ownFigures(explained), ...ofVariant(explained), ...ofLevels(explained)].map(([, figure]) => figure);
