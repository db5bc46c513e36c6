import { neededBy } from "../../records/needed-parts.ts";
import type { Level, Part, Variant } from "../../records/variant.ts";
import { wilson } from "../../statistics/wilson.ts";
import { type Basis, type Figure, figure, withheld } from "../figure.ts";
import { statement } from "../statement.ts";
import { assessAppearance, assessWait, isCountedOffer, offersIn, type YearsWatched } from "./appearance.ts";
import { asKnownNow, countingAssembled, survivorsAsComplete } from "./as-complete.ts";
import { type Example, isRecorded } from "./examples.ts";
import { sourcesOf } from "./survivors.ts";

/** How rare an example is that reaches a level, or a better one. */
export interface LevelRarity {
  readonly share: Figure;
  readonly survivors: Figure;
  readonly appearance: Figure;
  readonly wait: Figure;
}

/** Whether an example reaches a level; null where what is recorded of it does not decide. */
function reaches(example: Example, needed: readonly Part[]): boolean | null {
  let undecided = false;
  for (const { id } of needed) {
    const share = example.shares.get(id);
    if (share === "not-issued") continue;
    if (share === undefined || !isRecorded(share)) undecided = true;
    else if (share.low < 1) return false;
  }
  return undecided ? null : true;
}

/**
 * Rarity by level of completeness: the bare instrument may turn up every year and the whole outfit once in a
 * lifetime, so one figure for both would mislead.
 */
export function assessLevelRarity(
  level: Level,
  variant: Variant,
  examples: readonly Example[],
  survivors: Figure,
  watched: YearsWatched | null,
  confidence: number,
): LevelRarity {
  const needed = neededBy(level, variant.parts);
  const decided = examples.map((example) => ({ example, reaches: reaches(example, needed) }));
  const recorded = decided.filter((each) => each.reaches !== null).map(({ example }) => example);
  const reaching = decided.filter((each) => each.reaches === true).map(({ example }) => example);
  const basis: Basis = {
    unit: "share",
    confidence,
    method: "wilson",
    inputs: { reaching: reaching.length, recorded: recorded.length },
    sources: sourcesOf(recorded),
    caveats: [
      ...countingAssembled(reaching.filter(({ isAssembled }) => isAssembled).length),
      statement("assumes-even-chance"),
    ],
  };
  const share =
    recorded.length === 0
      ? withheld(statement("no-example-recorded"), basis)
      : figure(wilson(reaching.length, recorded.length, confidence), basis);
  const offers = offersIn(reaching.flatMap(({ rows }) => rows.filter((row) => isCountedOffer(row, watched))));
  return {
    share,
    survivors: survivorsAsComplete(share, survivors, reaching.length, confidence),
    appearance: asKnownNow(assessAppearance(offers, watched, confidence)),
    wait: asKnownNow(assessWait(offers, watched, confidence)),
  };
}
