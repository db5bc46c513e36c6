import type { FigureNames } from "../figure-names.ts";

const offered = { appearance: "Angeboten", wait: "Warten auf das nächste Angebot" };

export const germanFigureNames: FigureNames = {
  variant: {
    made: "Gefertigt",
    survivors: "Erhalten, aus wiederholten Nachweisen",
    survivorsTwoList: "Erhalten, aus zwei Listen",
    survivalRate: "Erhaltener Anteil der gefertigten",
    ...offered,
    coverage: "Wahrscheinlichkeit, dass das nächste gesehene schon bekannt ist",
  },
  level: {
    share: "Anteil an den erfassten Exemplaren",
    survivors: "Erhalten und auf dieser Stufe",
    ...offered,
  },
  item: {
    asComplete: "Mindestens so vollständig wie dieses, von den erfassten",
    asCompleteSurvivors: "Erhalten und mindestens so vollständig",
    asCompleteWait: "Warten auf das nächste angebotene, das mindestens so vollständig ist",
  },
};
