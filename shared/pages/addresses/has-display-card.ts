import type { PublishedItem } from "../../publication/published.ts";
import { isFate } from "../../terms/states.ts";

/**
 * In a catalogue larger than this, nobody stands a card beside everything; beside what is offered, a shop does. What
 * is gone has no place for one.
 */
const most = 2000;

export const hasDisplayCard = (
  { status }: Pick<PublishedItem, "status">,
  { itemCount }: { readonly itemCount: number },
): boolean => !isFate(status) && (status === "offered" || itemCount <= most);
