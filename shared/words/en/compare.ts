import { inDigits, plural } from "./plural.ts";

/** Outfits set side by side. */
export const englishCompare = {
  title: "Side by side",
  description: "Which outfits of this catalogue can be set side by side, and how alike they are.",
  lead: "Outfits, part by part: what differs, what is not known of one or another, what is alike.",
  pair: (first: string, second: string) => `${first}, beside ${second}`,
  pairDescription: (first: string, second: string, variant: string) =>
    `Two examples of ${variant}, part by part: ${first}, and ${second}.`,
  beside: "beside",
  sideBySide: "Side by side",
  distancesNote:
    "Where a row meets a column, the table gives how alike the two are, and leads to the page of the pair. The small number beside it says on how many features and parts this rests.",
  distancesCaption: (variant: string) => `Likeness of the examples of ${variant}`,
  tooMany: (count: number, variant: string) =>
    `${plural(count, "example")} of ${variant} are too many for a table.`,
  tooManyList: "Tick them in their list",
  nearestPairs: "The most alike",
  thinLast: "Those compared on less than half as much as the best compared come last.",
  limit: (most: number) =>
    `Every pair of a variant with at most ${inDigits(most)} examples has a page of its own, until there are many. Any others are set side by side by the browser, from the data of the catalogue.`,
  anyOutfits: "Any outfits",
  anyNote:
    "Tick outfits in any list, of any variant, and they are set side by side here. The address then says which, and can be sent on.",
  none: "No variant has two examples in this catalogue yet.",
  likeness: "Alike",
  likenessOf: (share: string) => `${share} alike`,
  likenessNone: "Nothing is known of both, so how alike they are cannot be said.",
  likenessBasis: (features: number, parts: number) =>
    `By ${[features > 0 && plural(features, "feature"), parts > 0 && plural(parts, "part")].filter(Boolean).join(" and ")} known of both; what is not known of either is left out.`,
  compared: "What was compared",
  comparedFeatures: "Features",
  comparedParts: "Parts",
  nothing: "none",
  outfit: "Outfit",
  variant: "Variant",
  verdict: "Evidence",
  complete: "Complete by weight",
  counted: "By count",
  level: "Level",
  serial: "Serial",
  set: "Set",
  issued: "Issued",
  row: "Feature or part",
  features: "Features",
  parts: "Parts",
  differs: "What differs",
  differsNote:
    "State, number of units, model of a substitute, whether the marks agree, dating. Condition is given but not weighed.",
  differsNone: "Nothing that is known of both differs.",
  unknown: (count: number) => `Not known of one or the other: ${plural(count, "row")}`,
  alike: (count: number) => `Alike: ${plural(count, "row")}`,
  others: "Other pairs of this variant",
  notObserved: "not looked at",
  notOfVariant: "not a part of this variant",
  loading: "The data are being fetched.",
  notFound: (ids: string) => `Not in this catalogue: ${ids}.`,
  noAnswer:
    "Outfits that an address names are set side by side by a script, which has not run or has not got its data. What can be compared without it is below.",
  tooFew: "At least two outfits are needed.",
  most: (most: number) => `Only the first ${inDigits(most)} are shown.`,
  shown: (count: number) => `${plural(count, "outfit")} side by side.`,
  goesOn: "The table goes on to the side.",
  remove: (title: string) => `Take out ${title}`,
  takeOut: "take out",
  addMore: "Tick more in the catalogue",
  method: {
    name: "Likeness of two examples",
    asks: "How alike are they?",
    formula:
      "S = Σ w·s / Σ w over the features and parts that are known of both, w = 1: for a feature s is 1 where both have the same value and 0 where not, for a part s = 1 − |x − y|, the difference of the shares that are there.",
    worked:
      "Two examples agree in one feature and differ in another; of a part issued in fours one has three and the other four: S = (1 + 0 + ¾) / 3, which is 58%.",
    source: "Gower (1971), Biometrics 27: 857–871.",
    assumes:
      "What is not known of either is left out of both sums, as is a part of which the share is known only between two bounds; so two likenesses may rest on different parts. Every feature and every part counts the same.",
  },
};
