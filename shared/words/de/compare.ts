import { countedIn, digitsIn } from "../counted.ts";
import type { englishCompare } from "../en/compare.ts";

const counted = countedIn("de");
const inDigits = digitsIn("de");

/** Outfits set side by side. */
export const germanCompare: typeof englishCompare = {
  title: "Nebeneinander",
  description: "Welche Garnituren dieses Katalogs nebeneinander stehen können und wie ähnlich sie sich sind.",
  lead: "Garnituren, Teil für Teil: was verschieden ist, was von der einen oder anderen nicht bekannt ist, was gleich ist.",
  pair: (first, second) => `${first}, neben ${second}`,
  pairDescription: (first, second, variant) =>
    `Zwei Exemplare der Variante ${variant}, Teil für Teil: ${first} und ${second}.`,
  beside: "neben",
  sideBySide: "Nebeneinander",
  distancesNote:
    "Wo Zeile und Spalte sich treffen, steht, wie ähnlich sich die beiden sind; von dort geht es zur Seite des Paars. Die kleine Zahl daneben sagt, auf wie vielen Merkmalen und Teilen das beruht.",
  distancesCaption: (variant) => `Ähnlichkeit der Exemplare von ${variant}`,
  tooMany: (count, variant) =>
    `${counted(count, "Exemplar", "Exemplare")} von ${variant} sind zu viele für eine Tabelle.`,
  tooManyList: "In ihrer Liste ankreuzen",
  nearestPairs: "Die ähnlichsten",
  thinLast:
    "Zuletzt steht, was an weniger als halb so vielem verglichen wurde wie das am besten Verglichene.",
  limit: (most) =>
    `Jedes Paar einer Variante mit höchstens ${inDigits(most)} Exemplaren hat eine eigene Seite, solange es nicht zu viele werden. Alle anderen stellt der Browser nebeneinander, aus den Daten des Katalogs.`,
  anyOutfits: "Beliebige Garnituren",
  anyNote:
    "Wer in irgendeiner Liste Garnituren ankreuzt, gleich welcher Variante, sieht sie hier nebeneinander. Die Adresse sagt dann, welche es sind, und lässt sich weitergeben.",
  none: "Noch hat keine Variante zwei Exemplare in diesem Katalog.",
  likeness: "Ähnlichkeit",
  likenessOf: (share) => `zu ${share} ähnlich`,
  likenessNone:
    "Es ist nichts bekannt, worin sich beide vergleichen ließen; wie ähnlich sie sich sind, lässt sich nicht sagen.",
  likenessBasis: (features, parts) =>
    `Nach ${[features > 0 && counted(features, "Merkmal", "Merkmalen"), parts > 0 && counted(parts, "Teil", "Teilen")].filter(Boolean).join(" und ")}, ${features + parts === 1 ? "das von beiden bekannt ist" : "die von beiden bekannt sind"}; was von einer der beiden nicht bekannt ist, bleibt außer Betracht.`,
  compared: "Was verglichen wurde",
  comparedFeatures: "Merkmale",
  comparedParts: "Teile",
  nothing: "keine",
  outfit: "Garnitur",
  variant: "Variante",
  verdict: "Befund",
  complete: "Vollständig nach Gewicht",
  counted: "Nach Stückzahl",
  level: "Stufe",
  serial: "Seriennummer",
  set: "Satz",
  issued: "Ausgegeben",
  row: "Merkmal oder Teil",
  features: "Merkmale",
  parts: "Teile",
  differs: "Was verschieden ist",
  differsNote:
    "Bestand, Stückzahl, Modell eines Ersatzes, Übereinstimmung der Zeichen, Datierung. Die Erhaltung wird genannt, aber nicht gewertet.",
  differsNone: "Nichts, was von beiden bekannt ist, ist verschieden.",
  unknown: (count) => `Von der einen oder der anderen nicht bekannt: ${counted(count, "Zeile", "Zeilen")}`,
  alike: (count) => `Gleich: ${counted(count, "Zeile", "Zeilen")}`,
  others: "Weitere Paare dieser Variante",
  notObserved: "nicht angesehen",
  notOfVariant: "kein Teil dieser Variante",
  loading: "Die Daten werden geholt.",
  notFound: (ids) => `Nicht in diesem Katalog: ${ids}.`,
  noAnswer:
    "Garnituren, die eine Adresse nennt, stellt ein Skript nebeneinander. Es ist nicht gelaufen oder hat seine Daten nicht bekommen. Was sich ohne Skript vergleichen lässt, steht weiter unten.",
  tooFew: "Es braucht mindestens zwei Garnituren.",
  most: (most) => `Nur die ersten ${inDigits(most)} sind zu sehen.`,
  shown: (count) => `${counted(count, "Garnitur", "Garnituren")} nebeneinander.`,
  goesOn: "Die Tabelle geht seitlich weiter.",
  remove: (title) => `${title} herausnehmen`,
  takeOut: "herausnehmen",
  addMore: "Weitere im Katalog ankreuzen",
  method: {
    name: "Ähnlichkeit zweier Exemplare",
    asks: "Wie ähnlich sind sie sich?",
    formula:
      "S = Σ w·s / Σ w über die Merkmale und Teile, die von beiden bekannt sind, w = 1: Bei einem Merkmal ist s gleich 1, wo beide denselben Wert haben, sonst 0; bei einem Teil ist s = 1 − |x − y|, der Unterschied der vorhandenen Anteile.",
    worked:
      "Zwei Exemplare stimmen in einem Merkmal überein und unterscheiden sich in einem anderen; von einem Teil, von dem vier Stück ausgegeben wurden, hat eines drei und das andere vier: S = (1 + 0 + ¾) / 3, also 58\u00a0%.",
    source: "Gower (1971), Biometrics 27: 857–871.",
    assumes:
      "Was von einem der beiden nicht bekannt ist, bleibt aus beiden Summen heraus, ebenso ein Teil, dessen Anteil nur zwischen zwei Grenzen bekannt ist; zwei Ähnlichkeiten können also auf verschiedenen Teilen beruhen. Jedes Merkmal und jedes Teil zählt gleich viel.",
  },
};
