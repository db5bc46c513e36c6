import { casePlan } from "../../plots/case-plan/case-plan.ts";
import { completenessInterval } from "../../plots/completeness-interval.ts";
import { custodyLine } from "../../plots/custody/custody-line.ts";
import { likenessStrips } from "../../plots/likeness-strips.ts";
import { partRates } from "../../plots/part-rates.ts";
import { rangesSideBySide, serialRanges } from "../../plots/serials/serial-ranges.ts";
import { sightingsOverYears } from "../../plots/sightings/sightings-over-years.ts";
import { isMasked } from "../../publication/masked-sign.ts";
import { isAmongThree } from "../../publication/others-compared.ts";
import type {
  PartSummary,
  PublishedFamily,
  PublishedItem,
  PublishedVariant,
} from "../../publication/published.ts";
import { itemPlots, type PlotAt, variantPlots } from "../../publication/references/plot-at.ts";
import { rangeOf } from "../../publication/serial-number.ts";
import type { CollectionIndex } from "../collection-index.ts";
import { stateOf } from "./item-parts.ts";
import { yearsOf } from "./years-of.ts";

type Index = Pick<CollectionIndex, "collection" | "words">;

interface Place {
  /** Unique in its page. */
  readonly idPrefix: string;
  /** What stands before a part's id in its link; "#part-" where unsaid. */
  readonly linkPrefix?: string;
  /** Whether it stands on a display card. */
  readonly onCard?: boolean;
}

/** A drawing as SVG, wherever it stands; null where nothing is recorded that it could be made from. */
export function drawing(at: PlotAt, index: Index, place: Place): string | null {
  const label = drawingLabel(at, index);
  return at.kind === "variant"
    ? variantDrawing(at.plot, at.variant, index, { ...place, label })
    : itemDrawing(at.plot, at.item, index, { ...place, label });
}

/** The serials of a family's variants on one scale; null where no range of any is known. */
export function serialsOfFamily(
  { name }: PublishedFamily,
  members: readonly PublishedVariant[],
  { words }: Pick<Index, "words">,
): string | null {
  const series = members.map(({ name: of, serials, sightings }) => ({
    name: of,
    ranges: serials,
    seen: seenSerials(sightings),
  }));
  if (series.every(({ ranges }) => ranges.length === 0)) return null;
  const label = words.pages.family.serialsLabel(name);
  return rangesSideBySide(series, { idPrefix: "serials", words, label });
}

/** Where the serial of an example lies among those seen of its variant; null where it is not told, or lies in no range. */
export function serialOfItem(
  { serial, variant: { id } }: PublishedItem,
  { variants, words }: Pick<CollectionIndex, "variants" | "words">,
): string | null {
  const variant = variants.get(id);
  const range = serial !== null && !isMasked(serial) ? rangeOf(variant?.serials ?? [], serial) : undefined;
  if (!variant || !range) return null;
  return serialRanges([range], {
    idPrefix: "serial",
    words,
    label: words.pages.item.serialLabel(variant.name),
    seen: seenSerials(variant.sightings).filter((each) => rangeOf(variant.serials, each) === range),
    own: serial,
  });
}

const seenSerials = (sightings: PublishedVariant["sightings"]): string[] =>
  sightings.flatMap(({ serial }) => serial ?? []);

/** What a drawing shows, in words. */
export function drawingLabel(at: PlotAt, { words }: Pick<Index, "words">): string {
  const { variant, item, completeness } = words.pages;
  if (at.kind === "variant") {
    const labels = {
      sightings: variant.logLabel,
      serials: variant.serialsLabel,
      parts: variant.ratesLabel,
      likeness: variant.likenessLabel,
      "case-plan": variant.planLabel,
    };
    return labels[at.plot](at.variant.name);
  }
  const labels = {
    "case-plan": item.planLabel(at.item.title),
    completeness: completeness.plotLabel,
    custody: item.custodyLabel,
  };
  return labels[at.plot];
}

type Labelled = Place & { readonly label: string };

function variantDrawing(
  plot: keyof typeof variantPlots,
  variant: PublishedVariant,
  { collection, words }: Index,
  place: Labelled,
): string | null {
  if (!variantPlots[plot](variant)) return null;
  const options = { ...place, words, stateWord: stateWord(words) };
  switch (plot) {
    case "sightings":
      return sightingsOverYears(variant.levels.length > 0 ? variant.sightings : withoutLevels(variant), {
        ...options,
        yearsOf,
        watching: collection.settings.watching,
      });
    case "serials":
      return serialRanges(variant.serials, {
        ...options,
        seen: seenSerials(variant.sightings),
      });
    case "parts":
      return partRates(variant.parts, options);
    case "likeness":
      return likenessStrips(likenedOutfits(variant), {
        ...options,
        left: variant.items.length - variant.likenesses.length,
      });
    case "case-plan":
      return casePlan(variant.parts, options);
  }
}

/** Where the reference has no level there is none to reach. */
const withoutLevels = ({ sightings }: PublishedVariant) =>
  sightings.map(({ seen, kind, relisted }) => ({ seen, kind, relisted }));

function likenedOutfits({ items, likenesses }: PublishedVariant) {
  const titles = new Map(items.map(({ id, name }) => [id, name]));
  return likenesses
    .filter(isAmongThree)
    .map((spread) => ({ ...spread, name: titles.get(spread.item) ?? spread.item }));
}

function itemDrawing(
  plot: keyof typeof itemPlots,
  item: PublishedItem,
  { words }: Index,
  place: Labelled,
): string | null {
  if (!itemPlots[plot](item)) return null;
  const options = { ...place, words, stateWord: stateWord(words) };
  switch (plot) {
    case "case-plan":
      return casePlan(item.parts, options);
    case "completeness":
      return item.completeness.weighted && completenessInterval(item.completeness.weighted, options);
    case "custody":
      return custodyLine(item.provenance, {
        ...options,
        yearsOf,
        issued: item.dating.issued,
        examined: item.examined,
      });
  }
}

/** The state of a part, or of so many of its units; a number stays in one line with what it counts. */
export const stateWord =
  (words: Index["words"]) =>
  (state: PartSummary, units?: number): string =>
    units === undefined
      ? words.pages.states[state]
      : words.pages.item.stateUnits(units, stateOf(state, units, words)).replace(" ", "\u00a0");
