/** A mark of the reference says the same to whoever checks parts by it and to whoever shows it. */
export { markOfSet, setPlace } from "../records/set-marks.ts";
