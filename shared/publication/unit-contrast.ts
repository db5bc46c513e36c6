/** How outfits are told apart passes the door as it is, for whoever sets published ones side by side. */
export { type ComparedUnits, contrastUnits, contrastValues } from "../assessments/unit-contrast.ts";
