import type { Words } from "../../words/words.ts";

/** What an entry has on the screen and not on paper, where two sheets have to do. */
export interface OnScreenOnly {
  readonly photographs: number;
  readonly isRecorded: boolean;
  readonly features: number;
  readonly isCompletable: boolean;
  readonly others: number;
  readonly revisions: number;
}

/** A sentence for the paper; null where it has everything. */
export function offSheet(
  { photographs, isRecorded, features, isCompletable, others, revisions }: OnScreenOnly,
  words: Words,
): string | null {
  const say = words.pages.item.offSheet;
  const left = [
    photographs > 1 && say.photographs,
    isRecorded && say.recording,
    features > 0 && say.features,
    isCompletable && say.completing,
    others > 0 && say.others,
    revisions > 0 && say.revisions,
  ].filter((each) => each !== false);
  return left.length === 0 ? null : say.sentence(left);
}
