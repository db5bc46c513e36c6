/** Which outfits parts are sought for is the same for whoever assesses them and for whoever lists what is wanted. */
export { isAtHand } from "../records/item.ts";
