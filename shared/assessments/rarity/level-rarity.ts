import { neededBy } from "../../records/needed-parts.ts";
import type { Sighting } from "../../records/sighting.ts";
import type { Level, Part, Variant } from "../../records/variant.ts";
import { wilson } from "../../statistics/wilson.ts";
import { type Basis, type Figure, figure, withheld } from "../figure.ts";
import { statement } from "../statement.ts";
import {
  assessAppearance,
  assessWait,
  isCountedOffer,
  type Offers,
  offersIn,
  type YearsWatched,
} from "./appearance.ts";
import { asKnownNow, countingAssembled, survivorsAsComplete } from "./as-complete.ts";
import { type Example, isRecorded } from "./examples.ts";
import { countKnown, namelessInput, namelessOf, namingNameless } from "./nameless.ts";
import { countDestroyed, sourcesOfExamples } from "./survivors.ts";

/** How rare an example is that reaches a level, or a better one. */
export interface LevelRarity {
  readonly share: Figure;
  readonly survivors: Figure;
  readonly appearance: Figure;
  readonly wait: Figure;
}

/** Whether an example reaches a level, and whether each part that it needs is recorded. */
interface Reach {
  readonly example: Example;
  /** Null where what is recorded does not decide: one part that is gone does, whatever else is not known. */
  readonly reaches: boolean | null;
  readonly isRecorded: boolean;
}

export function reachOf(example: Example, needed: readonly Part[]): Reach {
  let isAnyIssued = false;
  let isKnown = true;
  let isShort = false;
  for (const { id } of needed) {
    const share = example.shares.get(id);
    if (share === "not-issued") continue;
    isAnyIssued = true;
    if (share === undefined || !isRecorded(share)) isKnown = false;
    else if (share.low < 1) isShort = true;
  }
  // One that was issued nothing of what it needs, cannot be said to reach it.
  const falls = isShort || !isAnyIssued;
  return { example, reaches: falls ? false : isKnown ? true : null, isRecorded: isKnown };
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
  const every = examples.map((example) => reachOf(example, needed));
  // One of which less is recorded may say that it falls short and never that it does not: counted in, it would only lower the share.
  const recorded = every.filter((each) => each.isRecorded);
  const reaching = recorded.filter((each) => each.reaches === true);
  const reachingExamples = reaching.map(({ example }) => example);
  const leftOut = every.length - recorded.length;
  const nameless = namelessOf(recorded.map(({ example }) => example));
  const basis: Basis = {
    unit: "share",
    confidence,
    method: "wilson",
    inputs: {
      reaching: reaching.length,
      recorded: recorded.length,
      ...(leftOut > 0 ? { leftOut } : {}),
      ...namelessInput(nameless),
    },
    sources: sourcesOfExamples(recorded.map(({ example }) => example)),
    caveats: [
      ...countingAssembled(reachingExamples.filter(({ isAssembled }) => isAssembled).length),
      ...(leftOut > 0 && recorded.length > 0 ? [statement("left-out-of-level", { examples: leftOut })] : []),
      ...namingNameless(nameless),
      statement("assumes-even-chance"),
    ],
  };
  const share =
    recorded.length === 0
      ? withheld(statement("no-example-recorded"), basis)
      : figure(wilson(reaching.length, recorded.length, confidence), basis);
  const offers = { reaching: [] as Sighting[], all: 0, decided: 0 };
  for (const { example, reaches, isRecorded: isWhole } of every) {
    const counted = example.rows.filter((row) => isCountedOffer(row, watched));
    offers.all += counted.length;
    if (reaches !== null) offers.decided += counted.length;
    if (reaches === true && isWhole) offers.reaching.push(...counted);
  }
  const offered: Offers = { ...offersIn(offers.reaching), among: offers };
  const known = countKnown(reachingExamples) - countDestroyed(reachingExamples);
  return {
    share,
    survivors: survivorsAsComplete(share, survivors, known),
    appearance: asKnownNow(assessAppearance(offered, watched, confidence)),
    wait: asKnownNow(assessWait(offered, watched, confidence)),
  };
}
