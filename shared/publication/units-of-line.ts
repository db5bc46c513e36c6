/** A line of a part speaks for as many units to whoever shows it as to whoever counts it. */
export { unitsOfLine } from "../records/units-of-line.ts";
