import type { FigureNames } from "../figure-names.ts";

const offered = { appearance: "Offered", wait: "Wait for the next offered" };

export const englishFigureNames: FigureNames = {
  variant: {
    made: "Made",
    survivors: "Surviving, from repeat sightings",
    survivorsTwoList: "Surviving, from two lists",
    survivalRate: "Share of those made that survives",
    ...offered,
    coverage: "Chance that the next one seen is known already",
  },
  level: { share: "Of the recorded examples", survivors: "Surviving that reach it", ...offered },
  item: {
    asComplete: "At least as complete as this, of the recorded examples",
    asCompleteSurvivors: "Surviving that are at least as complete",
    asCompleteWait: "Wait for the next offered that is at least as complete",
  },
};
