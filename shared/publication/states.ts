/** What can be asked of an item is what can be said of it. From files without a package, since a browser asks as well. */
export { verdicts } from "../assessments/verdicts.ts";
export { isFate, isMain, statuses } from "../records/states.ts";
