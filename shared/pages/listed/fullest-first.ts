import type { OpenedItem } from "./listed-family.ts";

/** As much of an outfit as says whether to lay it open. */
type Openable = Pick<OpenedItem, "item" | "photo" | "isGone" | "isSound" | "certain">;

/**
 * The order in which outfits are laid open: what is still there before what is gone, what has been photographed before
 * what has not, what is sound before what is not, and then the fullest.
 */
export const fullestFirst = (a: Openable, b: Openable): number =>
  Number(a.isGone) - Number(b.isGone) ||
  Number(b.photo !== null) - Number(a.photo !== null) ||
  Number(b.isSound) - Number(a.isSound) ||
  b.certain - a.certain ||
  (a.item.address < b.item.address ? -1 : 1);
