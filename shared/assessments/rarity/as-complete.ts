import { wilson } from "../../statistics/wilson.ts";
import { type Basis, type Figure, figure, jointConfidence, withheld } from "../figure.ts";
import { type Statement, statement } from "../statement.ts";
import { assessWait } from "./appearance.ts";
import { namelessInput, namingNameless } from "./nameless.ts";
import type { RankedExamples } from "./ranked-examples.ts";
import { knownAboveLow, namingJoint } from "./survivors.ts";

/** Its place among so many, and how many have that place, itself among them. */
export interface Rank {
  readonly place: number;
  readonly of: number;
  readonly sharing: number;
}

export interface ItemRarity {
  /** The share of fully recorded examples that are at least as complete. */
  readonly asComplete: Figure;
  readonly asCompleteSurvivors: Figure;
  readonly asCompleteWait: Figure;
  readonly rank: Rank | null;
}

/** Why nothing is certain of the core and issued parts of an outfit. */
export type NothingCertain = "no-part-in-reference" | "no-part-issued" | "no-part-examined";

/** How rare one as complete as this is, among the recorded examples of its variant: its place, and the share of them that are at least as complete. */
export function assessItemRarity(
  item: {
    readonly id: string;
    readonly keys: readonly string[];
    readonly certain: number | NothingCertain;
    readonly isAssembled: boolean;
    readonly isDestroyed: boolean;
  },
  examples: RankedExamples,
  survivors: Figure,
  confidence: number,
): ItemRarity {
  const [certain, nothing] =
    typeof item.certain === "number" ? [item.certain, null] : [null, statement(item.certain)];
  const { others, asComplete, above, assembled, destroyed, nameless, rowsCompared, sources } =
    examples.besides({
      ...item,
      certain,
    });
  const compared = certain === null ? others : others + 1;
  const asCompleteAmong = asComplete + 1;

  const basis: Basis = {
    unit: "share",
    confidence,
    method: "wilson",
    inputs: {
      atLeastAsComplete: certain === null ? 0 : asCompleteAmong,
      compared,
      certain,
      ...namelessInput(rowsCompared),
    },
    sources,
    caveats: [
      ...countingAssembled(assembled + Number(item.isAssembled)),
      ...namingNameless(rowsCompared),
      statement("counted-in-by-certain-part"),
      statement("assumes-even-chance"),
    ],
  };
  const alone = others === 0 ? statement("nobody-to-compare") : null;
  const why = nothing ?? alone;
  const share = why ? withheld(why, basis) : figure(wilson(asCompleteAmong, compared, confidence), basis);
  const offers = examples.offersAsComplete(certain);
  const known = asCompleteAmong - nameless - destroyed - Number(item.isDestroyed);
  return {
    asComplete: share,
    asCompleteSurvivors: survivorsAsComplete(share, survivors, known),
    asCompleteWait: asKnownNow(assessWait(offers, examples.watched, confidence, nothing)),
    rank: certain === null ? null : { place: above + 1, of: compared, sharing: asCompleteAmong - above },
  };
}

/** Where some are as complete as they are only since parts of another case were put into theirs, the figure says so. */
export const countingAssembled = (examples: number): Statement[] =>
  examples === 0 ? [] : [statement("counts-assembled", { examples })];

/** An offer counts by what is recorded of the example since. */
export const asKnownNow = (offers: Figure): Figure =>
  offers.value === null
    ? offers
    : { ...offers, caveats: [...offers.caveats, statement("offers-as-known-now")] };

/** What is said of a share holds of those that survive, too. */
const saidOfShare: ReadonlySet<string> = new Set(["counts-assembled", "left-out-of-level"]);

/** `known`: how many of them are on record. Nothing else keeps the product of two low ends from falling below it. */
export function survivorsAsComplete(share: Figure, survivors: Figure, known: number): Figure {
  const ends = ({ value, low, high }: Figure) => ({ value, low, high });
  const confidence = jointConfidence(share.confidence, survivors.confidence);
  const basis: Basis = {
    unit: "examples",
    confidence,
    method: "share-of-survivors",
    inputs: { share: ends(share), survivors: ends(survivors) },
    sources: [...share.sources, ...survivors.sources],
    caveats: [
      ...share.caveats.filter(({ says }) => saidOfShare.has(says)),
      statement("assumes-share-independent"),
      ...survivors.caveats,
    ],
  };
  const why: Statement | null = survivors.insufficient ? statement("survivors-withheld") : share.insufficient;
  if (why || share.value === null || share.low === null || share.high === null) {
    return withheld(why ?? statement("survivors-withheld"), basis);
  }
  const low = (survivors.low ?? 0) * share.low;
  const product = namingJoint(
    figure(
      { value: (survivors.value ?? 0) * share.value, low, high: (survivors.high ?? 0) * share.high },
      basis,
    ),
  );
  return { ...product, caveats: [...knownAboveLow(low, known), ...product.caveats] };
}
