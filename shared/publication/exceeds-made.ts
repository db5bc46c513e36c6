/** When an estimate and the record contradict each other is the same for the figures and for the page that says so. */
export { exceedsMade } from "../assessments/rarity/survivors.ts";
