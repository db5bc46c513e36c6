/** What stands in a mark of the reference for the number of the set that the part belongs to. */
export const setPlace = "{set}";

/** A mark of the reference as a part of this set bears it. */
export const markOfSet = (mark: string, set: string): string => mark.replaceAll(setPlace, () => set);
