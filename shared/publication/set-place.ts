/**
 * A mark of the reference says the same to whoever checks parts by it and to whoever shows it. From a file without a
 * package, since a browser shows marks as well.
 */
export { markOfSet, setPlace } from "../records/set-place.ts";
