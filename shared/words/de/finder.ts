import { countedIn, digitsIn } from "../counted.ts";
import type { englishFinder } from "../en/finder.ts";

const inDigits = digitsIn("de");
const counted = countedIn("de");
const garnituren = (count: number) => counted(count, "Garnitur", "Garnituren");

const quoted = (words: readonly string[]): string =>
  new Intl.ListFormat("de", { style: "long", type: "disjunction" }).format(words.map((word) => `„${word}“`));

/** Lists of outfits, and what a reader asks of them. */
export const germanFinder: typeof englishFinder = {
  label: "Garnituren suchen",
  q: "Wörter",
  find: "Suchen",
  hint: "Aus dem Titel oder dem Text, auch Teile eines Worts; ein Ort, eine Satznummer, eine Seriennummer, wie sie veröffentlicht ist.",
  narrow: "Liste eingrenzen und ordnen",
  outfits: "Garnituren",
  any: "beliebig",
  phrases: {
    family: "aus der Familie",
    variant: "von der Variante",
    from: "ausgegeben von",
    to: "bis",
    place: "einst in",
    level: "sicher auf der Stufe",
    least: "sicher vollständig zu mindestens",
    most: "möglich zu höchstens",
    evidence: "dem Befund nach",
    class: "in der Seltenheitsklasse",
    hazard: "mit der Gefahr",
    missing: "ohne das Teil",
    status: "geführt als",
    sort: "geordnet nach",
  },
  year: "Jahr",
  percent: "%",
  noYear: "Nicht verstanden und außer Acht gelassen; erwartet wird eine Jahreszahl wie 1920.",
  noPercent: "Nicht verstanden und außer Acht gelassen; erwartet wird eine Zahl von 0 bis 100 wie 80.",
  orders: {
    "": "dem Katalog, die besten Antworten zuerst",
    title: "ihren Titeln",
    complete: "Vollständigkeit, die vollständigste zuerst",
    year: "Ausgabe, die früheste zuerst",
    rare: "Seltenheit, die wenigsten erhaltenen zuerst",
    place: "ihrem Platz unter ihresgleichen",
  },
  found: (count, of) =>
    count === of
      ? of === 1
        ? "Die eine Garnitur"
        : `Alle ${garnituren(of)}`
      : `${inDigits(count)} von ${counted(of, "Garnitur", "Garnituren")}`,
  none: (of) =>
    of === 1
      ? "Auf die eine Garnitur trifft nicht all dies zu."
      : `Auf keine der ${garnituren(of)} trifft all dies zu.`,
  instead: (typed, taken) =>
    `„${typed}“ kommt nirgends vor; gesucht wurde stattdessen nach ${quoted(taken)}.`,
  ofParts: (typed, names) =>
    `Kein Eintrag nennt „${typed}“; gezeigt wird, was mit ${quoted(names.slice(0, 3))} ausgegeben wurde.`,
  reading: "Auch die Texte werden durchgesehen.",
  textsUnread:
    "Nicht alle Texte waren zu bekommen: Was nur in ihnen steht, fehlt hier vielleicht und wird bei der nächsten Frage wieder gesucht.",
  noAnswer:
    "Die Suche braucht ein Skript. Es ist nicht gelaufen oder hat seine Daten nicht bekommen. Die Listen weiter unten führen trotzdem zu jeder Garnitur.",
  all: "Wieder alle zeigen",
  results: "Was gefunden wurde",
  page: (page, of) => `Seite ${inDigits(page)} von ${inDigits(of)}`,
  pages: "Seiten dieser Liste",
  previous: "Vorige Seite",
  next: "Nächste Seite",
  titleOfPage: (title, page, of) => `${title}, Seite ${inDigits(page)} von ${inDigits(of)}`,
  lists: "Listen",
  byFamily: "Nach Familie",
  byVariant: "Nach Variante",
  byLevel: "Nach sicherer Stufe",
  ofFamily: (family) => `Garnituren der Familie ${family}`,
  ofVariant: (variant) => `Garnituren der Variante ${variant}`,
  ofLevel: (level) => `Garnituren der Stufe: ${level}`,
  leadOf: (count) => `${garnituren(count)} dieses Katalogs.`,
  compare: "Vergleichen",
  tick: (title) => `Zum Vergleich ankreuzen: ${title}`,
  ticked: (count) => `${garnituren(count)} angekreuzt.`,
  tickMore: "Für den Vergleich eine weitere ankreuzen.",
  setBeside: "Nebeneinander stellen",
  untick: "Kreuze entfernen",
};
