import type { Sighting } from "../../records/sighting.ts";
import { wilson } from "../../statistics/wilson.ts";
import { type Basis, type Figure, figure, withheld } from "../figure.ts";
import { type Statement, statement } from "../statement.ts";
import { assessWait, isCountedOffer, type YearsWatched } from "./appearance.ts";
import type { Example } from "./examples.ts";
import { sourcesOf } from "./survivors.ts";

export interface ItemRarity {
  /** The share of fully recorded examples that are at least as complete. */
  readonly asComplete: Figure;
  readonly asCompleteSurvivors: Figure;
  readonly asCompleteWait: Figure;
  readonly rank: { readonly place: number; readonly of: number } | null;
}

/** Sums of the same weights in another order differ by less than this. */
const rounding = 1e-9;

/** How rare one as complete as this is, among the recorded examples of its variant: figures.md, section 4. */
export function assessItemRarity(
  item: { readonly id: string; readonly keys: readonly string[]; readonly certain: number | null },
  examples: readonly Example[],
  survivors: Figure,
  watched: YearsWatched | null,
  confidence: number,
): ItemRarity {
  const { certain } = item;
  // An item left out of the census may still be in the log; it is never held against itself.
  const isThis = (example: Example) =>
    example.items.includes(item.id) || item.keys.some((key) => example.keys.has(key));
  const others = examples.filter((example) => example.recordedCompleteness !== null && !isThis(example));
  const compared = certain === null ? others.length : others.length + 1;
  const isAsComplete = (example: Example) =>
    certain !== null &&
    example.recordedCompleteness !== null &&
    example.recordedCompleteness >= certain - rounding;
  const asCompleteAmong = others.filter(isAsComplete).length + 1;
  const above = others.filter(
    (example) => certain !== null && (example.recordedCompleteness ?? 0) > certain + rounding,
  ).length;

  const basis: Basis = {
    unit: "share",
    confidence,
    method: "wilson",
    inputs: { atLeastAsComplete: certain === null ? 0 : asCompleteAmong, compared, certain },
    sources: sourcesOf(others),
    caveats: [statement("counted-in-by-certain-part"), statement("assumes-even-chance")],
  };
  const asComplete =
    certain === null
      ? withheld(statement("no-part-in-reference"), basis)
      : figure(wilson(asCompleteAmong, compared, confidence), basis);

  const offers: Sighting[] = examples
    .filter(isAsComplete)
    .flatMap(({ rows }) => rows.filter((row) => isCountedOffer(row, watched)));
  const wait = assessWait(offers, watched, confidence);
  return {
    asComplete,
    asCompleteSurvivors: survivorsAsComplete(asComplete, survivors, asCompleteAmong, confidence),
    asCompleteWait:
      certain === null
        ? withheld(statement("no-part-in-reference"), { ...wait, inputs: wait.inputs })
        : { ...wait, caveats: [...wait.caveats, statement("counted-in-by-certain-part")] },
    rank: certain === null ? null : { place: above + 1, of: compared },
  };
}

/** `known`: how many of them are on record. Nothing else keeps the product of two low ends from falling below it. */
export function survivorsAsComplete(
  share: Figure,
  survivors: Figure,
  known: number,
  confidence: number,
): Figure {
  const ends = ({ value, low, high }: Figure) => ({ value, low, high });
  const basis: Basis = {
    unit: "examples",
    confidence,
    method: "share-of-survivors",
    inputs: { share: ends(share), survivors: ends(survivors) },
    sources: [...share.sources, ...survivors.sources],
    caveats: [statement("assumes-share-independent"), ...survivors.caveats],
  };
  const why: Statement | null = survivors.insufficient ? statement("survivors-withheld") : share.insufficient;
  if (why || share.value === null || share.low === null || share.high === null) {
    return withheld(why ?? statement("survivors-withheld"), basis);
  }
  const low = (survivors.low ?? 0) * share.low;
  return figure(
    { value: (survivors.value ?? 0) * share.value, low, high: (survivors.high ?? 0) * share.high },
    low < known
      ? { ...basis, caveats: [statement("at-least-known", { known }), ...(basis.caveats ?? [])] }
      : basis,
  );
}
