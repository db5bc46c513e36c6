import {
  type Found,
  findEntries,
  needsDetails,
  wordsMeant,
} from "../../../shared/pages/search/find-entries.ts";
import type { ViewState } from "../../../shared/pages/search/view-state.ts";
import type { Fetched } from "./fetched.ts";

export interface WholeAnswer {
  readonly found: Found;
  /** Whether all texts could be read in which a word may be. */
  readonly isRead: boolean;
}

/** Whether it can be answered with what is here. */
export const hasAll = (fetched: Fetched, state: ViewState): boolean =>
  fetched.hasTexts(wordsMeant(state.q, fetched.catalogue)) &&
  (fetched.details !== null || !needsDetails(state));

/** What answers, with whatever it takes fetched first; null once nobody waits for it any more. */
export async function wholeAnswer(
  fetched: Fetched,
  state: ViewState,
  isWaitedFor: () => boolean,
): Promise<WholeAnswer | null> {
  const [isRead] = await Promise.all([
    fetched.fetchTexts(wordsMeant(state.q, fetched.catalogue)),
    ...(needsDetails(state) ? [fetched.fetchDetails()] : []),
  ]);
  if (!isWaitedFor()) return null;
  // A word of which not all texts are here may be in another of them: nothing is put in its place.
  const find = () => findEntries(fetched.searched, state, isRead);
  let found = find();
  if (found.needsParts) {
    await fetched.fetchDetails();
    if (!isWaitedFor()) return null;
    found = find();
  }
  // The words taken instead begin with other letters, and may be in other files.
  const taken = found.instead.flatMap(({ taken: words }) => words);
  if (fetched.hasTexts(taken)) return { found, isRead };
  const isAllRead = await fetched.fetchTexts(taken);
  return isWaitedFor() ? { found: find(), isRead: isAllRead } : null;
}
