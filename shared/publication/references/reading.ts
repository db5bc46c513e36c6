import type { Bounds, CountedBounds, StandingCompleteness } from "../../assessments/completeness.ts";
import { figureData } from "../figure-data.ts";
import type { PublishedFigure, PublishedItem, PublishedVariant, Unit } from "../published.ts";

/** Something that a path leads to, and that a sentence can print or an assertion be about. */
export type Reading =
  | { readonly kind: "figure"; readonly figure: PublishedFigure }
  | { readonly kind: "completeness"; readonly completeness: PublishedItem["completeness"] }
  | { readonly kind: "shares"; readonly bounds: Bounds | null }
  | { readonly kind: "units"; readonly units: CountedBounds | null }
  | { readonly kind: "rank"; readonly rank: PublishedItem["rarity"]["rank"] }
  | { readonly kind: "level"; readonly level: PublishedItem["completeness"]["level"] }
  | { readonly kind: "class"; readonly class: PublishedVariant["rarity"]["class"] }
  | { readonly kind: "number"; readonly value: number | null; readonly unit: Unit | "count" }
  /** Why a figure is withheld; null where it is not. */
  | { readonly kind: "reason"; readonly text: string | null }
  /** An id, for assertions; a sentence is written by its writer. */
  | { readonly kind: "word"; readonly word: string | null }
  /** Not a reading yet: a name is still to come. */
  | { readonly kind: "group"; readonly of: string; readonly members: ReadonlyMap<string, Reading> };

/** What is read of a variant, and of an item. */
export type ReadVariant = Pick<PublishedVariant, "id" | "rarity">;
export interface ReadItem extends Pick<PublishedItem, "id" | "rarity" | "completeness"> {
  readonly identification: Pick<PublishedItem["identification"], "verdict">;
  readonly provenance: Pick<PublishedItem["provenance"], "documentedYears">;
}

const number = (value: number | null | undefined, unit: Unit | "count"): Reading => ({
  kind: "number",
  value: value ?? null,
  unit,
});
const word = (value: string | null | undefined): Reading => ({ kind: "word", word: value ?? null });
const shares = (bounds: Bounds | null | undefined): Reading => ({ kind: "shares", bounds: bounds ?? null });
const units = (counted: CountedBounds | null | undefined): Reading => ({
  kind: "units",
  units: counted ?? null,
});
const figure = (of: PublishedFigure): Reading => ({ kind: "figure", figure: of });
const group = (of: string, members: Iterable<readonly [string, Reading]>): Reading => ({
  kind: "group",
  of,
  members: new Map(members),
});
const figures = (of: Readonly<Record<string, PublishedFigure>>) =>
  Object.entries(of).map(([name, each]) => [name, figure(each)] as const);
const standing = (of: string, completeness: StandingCompleteness | null) =>
  group(of, [
    ["weighted", shares(completeness?.weighted)],
    ["counted", units(completeness?.counted)],
  ]);

/** A reading as the data files have it. */
export function dataOf(reading: Reading): unknown {
  switch (reading.kind) {
    case "figure":
      return figureData(reading.figure);
    case "completeness":
      return reading.completeness;
    case "shares":
      return reading.bounds;
    case "units":
      return reading.units;
    case "rank":
      return reading.rank;
    case "level":
      return reading.level;
    case "class":
      return reading.class;
    case "number":
      return reading.value;
    case "reason":
      return reading.text;
    case "word":
      return reading.word;
    case "group":
      return null;
  }
}

/** What a reading is made of, by the names that the data files give it. */
export function membersOf(reading: Reading): ReadonlyMap<string, Reading> {
  switch (reading.kind) {
    case "group":
      return reading.members;
    case "figure": {
      const { value, low, high, unit, insufficient } = reading.figure;
      return new Map([
        ["value", number(value, unit)],
        ["low", number(low, unit)],
        ["high", number(high, unit)],
        ["insufficient", { kind: "reason", text: insufficient }],
      ]);
    }
    case "completeness": {
      const { weighted, counted, level, consumable, optional } = reading.completeness;
      return new Map([
        ["weighted", shares(weighted)],
        ["counted", units(counted)],
        ["level", { kind: "level", level }],
        ["consumable", standing("consumables", consumable)],
        ["optional", standing("optional parts", optional)],
      ]);
    }
    case "shares":
      return new Map([
        ["low", number(reading.bounds?.low, "share")],
        ["high", number(reading.bounds?.high, "share")],
      ]);
    case "units":
      return new Map([
        ["low", number(reading.units?.low, "count")],
        ["high", number(reading.units?.high, "count")],
        ["expected", number(reading.units?.expected, "count")],
      ]);
    case "rank":
      return new Map([
        ["place", number(reading.rank?.place, "count")],
        ["of", number(reading.rank?.of, "count")],
      ]);
    case "level":
      return new Map([
        ["sure", word(reading.level.sure)],
        ["possible", word(reading.level.possible)],
      ]);
    case "class":
      return new Map([
        ["low", word(reading.class?.low)],
        ["high", word(reading.class?.high)],
      ]);
    default:
      return new Map();
  }
}

export function variantReading({ id, rarity }: ReadVariant): Reading {
  const { made, coverage, survivors, survivorsTwoList, survivalRate, appearance, wait } = rarity;
  return group(`the variant "${id}"`, [
    ...figures({ made, survivors, survivorsTwoList, survivalRate, coverage, appearance, wait }),
    ["sightings", number(rarity.sightings, "count")],
    ["distinct", number(rarity.distinct, "count")],
    ["once", number(rarity.once, "count")],
    ["twice", number(rarity.twice, "count")],
    ["class", { kind: "class", class: rarity.class }],
    ["parts", group(`the parts of "${id}"`, figures(rarity.parts))],
    [
      "levels",
      group(
        `the levels of "${id}"`,
        Object.entries(rarity.levels).map(([level, found]) => [
          level,
          group(`the level "${level}"`, figures(found)),
        ]),
      ),
    ],
  ]);
}

export function itemReading({ id, rarity, completeness, identification, provenance }: ReadItem): Reading {
  const { asComplete, asCompleteSurvivors, asCompleteWait, rank } = rarity;
  return group(`the item "${id}"`, [
    ["completeness", { kind: "completeness", completeness }],
    ...figures({ asComplete, asCompleteSurvivors, asCompleteWait }),
    ["rank", { kind: "rank", rank }],
    ["verdict", word(identification.verdict)],
    ["documentedYears", number(provenance.documentedYears, "count")],
  ]);
}
