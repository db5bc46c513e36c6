import type { Method } from "../../assessments/figure.ts";
import type { StatementId } from "../../assessments/statement.ts";
import { countedIn } from "../counted.ts";
import { dateReader } from "../dates.ts";
import { figurePhrase } from "../figure-phrase.ts";
import { numberWords } from "../numbers.ts";
import type { MethodWords, Words } from "../words.ts";
import { germanFigureNames } from "./figure-names.ts";
import { germanPages } from "./pages.ts";
import { germanPlots } from "./plots.ts";

const numbers = numberWords(
  "de",
  (written) => `unter ${written}`,
  (written) => `über ${written}`,
);
const { count } = numbers;
const counted = countedIn("de");

type Values = Readonly<Record<string, string | number>>;
const numberOf = (values: Values, name: string): number => Number(values[name] ?? 0);

const atLeastSurvive = (known: number): string => {
  if (known === 0) return "Von den sicher bekannten ist keines erhalten";
  return `Mindestens ${count(known)} ${known === 1 ? "ist" : "sind"} erhalten`;
};

const offersUndecided = (values: Values): string => {
  const [all, undecided] = [numberOf(values, "all"), numberOf(values, "undecided")];
  return `Von ${count(undecided)} der ${count(all)} Angebote ist nicht festgehalten, ob ${undecided === 1 ? "es einer solchen Garnitur galt; es zählt" : "sie einer solchen Garnitur galten; sie zählen"} nicht mit, sodass eine öfter und früher angeboten werden kann.`;
};

const namelessRows = (values: Values): string => {
  const [nameless, rows] = [numberOf(values, "nameless"), numberOf(values, "rows")];
  const isOne = nameless === 1;
  const verb = isOne ? "nennt" : "nennen";
  const which =
    rows === 1
      ? `Die eine Zeile des Verzeichnisses dahinter ${verb}`
      : `Von den ${count(rows)} Zeilen des Verzeichnisses dahinter ${verb} ${count(nameless)}`;
  return `${which} weder Seriennummer noch Exemplar: ${isOne ? "Sie" : "Jede"} zählt als eigenes Exemplar und ist vielleicht eines, das schon gesehen wurde.`;
};

const statements: Record<StatementId, (values: Values) => string> = {
  "no-sighting": () => "Kein Nachweis ist verzeichnet.",
  "one-sighting": () =>
    "Ein einziger Nachweis sagt nicht, wie wahrscheinlich der nächste einem bekannten Exemplar gilt.",
  "no-example-recorded": () => "Von keinem Exemplar ist jedes Teil erfasst, das diese Stufe verlangt.",
  "every-example-seen-once": (values) =>
    `Jedes bekannte Exemplar wurde nur einmal gesehen; nichts sagt also, wie viele nie gesehen wurden. ${atLeastSurvive(numberOf(values, "known"))}.`,
  "not-two-lists": (values) =>
    numberOf(values, "lists") === 0
      ? "Kein Nachweis nennt die Liste, aus der er stammt; das Verfahren vergleicht genau zwei unabhängige Listen."
      : `Die Nachweise stammen aus ${counted(numberOf(values, "lists"), "Liste", "Listen")}; das Verfahren vergleicht genau zwei unabhängige.`,
  "lists-below-known": (values) =>
    `Die beiden Listen lassen nicht mehr als ${count(numberOf(values, "high"))} zu, und ${count(numberOf(values, "known"))} verschiedene Exemplare sind bekannt: Eine der Listen ist nicht das, wofür das Verfahren sie hält.`,
  "nothing-recorded-of-part": () => "Kein Nachweis sagt, ob ein Exemplar dieses Teil hat.",
  "no-part-in-reference": () =>
    "Die Referenz nennt kein Haupt- oder ausgegebenes Teil, nach dem sich vergleichen ließe.",
  "no-part-issued": () =>
    "Keines der Haupt- oder ausgegebenen Teile, nach denen sich vergleichen ließe, gehörte bei der Ausgabe dazu.",
  "no-part-examined": () => "Nach seinen Haupt- und ausgegebenen Teilen hat noch niemand gesehen.",
  "nobody-to-compare": () =>
    "Kein anderes ist Teil für Teil erfasst, mit dem sich seine Vollständigkeit vergleichen ließe.",
  "no-year-watched": () => "Niemand hat gesagt, in welchen Jahren auf Angebote geachtet wurde.",
  "no-offer-seen": (values) =>
    `In ${numberOf(values, "years") === 1 ? "dem einen beobachteten Jahr" : `den ${count(numberOf(values, "years"))} beobachteten Jahren`} ist kein solches Angebot verzeichnet: Die Zahl beruht allein auf ${numberOf(values, "years") === 1 ? "diesem Jahr" : "diesen Jahren"}.`,
  "no-offer-decided": (values) =>
    numberOf(values, "offers") === 1
      ? "Von dem einen Angebot ist nicht festgehalten, ob es einer solchen Garnitur galt."
      : `Von keinem der ${count(numberOf(values, "offers"))} Angebote ist festgehalten, ob es einer solchen Garnitur galt.`,
  "made-unknown": () => "Weder eine Angabe der gefertigten Zahl noch eine Nummernreihe ist bekannt.",
  "made-only-a-range": (values) =>
    `Die Quelle gibt eine Spanne und keine Zahl: ${count(numberOf(values, "low"))} bis ${count(numberOf(values, "high"))}.`,
  "serials-skipped": () =>
    "Nummern blieben ungenutzt; die Seriennummern zählen also nicht, was gefertigt wurde.",
  "too-few-serials": (values) =>
    `Aus einer offenen Reihe ${numberOf(values, "distinct") === 1 ? "ist" : "sind"} nur ${counted(numberOf(values, "distinct"), "Nummer", "Nummern")} nachgewiesen; das Verfahren braucht ${count(numberOf(values, "needed"))}.`,
  "made-withheld": () => "Wie viele gefertigt wurden, ist nicht gut genug bekannt.",
  "survivors-withheld": () => "Wie viele erhalten sind, ist nicht gut genug bekannt.",
  "survivors-exceed-made": () =>
    "Nach der Schätzung sind mehr erhalten, als gefertigt wurden: Eine der beiden Zahlen oder eine Angabe dahinter ist falsch.",
  "coverage-of-none-again": () =>
    "Kein Exemplar wurde ein zweites Mal gesehen: Die Formel ergibt diese Zahl, aber sie besagt so gut wie nichts.",
  "assumes-even-chance": () =>
    "Vorausgesetzt: Ob und wie genau ein Exemplar erfasst ist, hängt nicht davon ab, was in seinem Kasten ist.",
  "assumes-independent-sightings": () =>
    "Vorausgesetzt: Ob ein Exemplar wieder gesehen wird, hängt nicht davon ab, dass es schon einmal gesehen wurde.",
  "assumes-independent-lists": () =>
    "Vorausgesetzt: Ob ein Exemplar auf der einen Liste steht, hängt nicht davon ab, ob es auf der anderen steht.",
  "assumes-random-serials": () =>
    "Vorausgesetzt: Die nachgewiesenen Nummern sind eine zufällige Auswahl der vergebenen.",
  "assumes-constant-rate": () =>
    "Vorausgesetzt: Angebote kommen mit gleichbleibender Häufigkeit und unabhängig voneinander.",
  "assumes-share-independent": () =>
    "Vorausgesetzt: Nie gesehene Exemplare sind so vollständig wie die gesehenen. Multipliziert werden die Enden beider Intervalle; deshalb ist dieses weit.",
  "lower-bound-only": () =>
    "Eine Schätzung des Mindesten, sofern jedes wiedergesehene Exemplar erkannt wurde: Wurde eines nicht erkannt, können es weniger sein; sind manche viel schwerer zu sehen als andere, sind es mehr. Das obere Ende ist keine Grenze.",
  "serials-in-several-blocks": (values) =>
    `Die Nummern verlaufen in ${count(numberOf(values, "ranges"))} getrennten Reihen; jede wird für sich gezählt oder geschätzt.`,
  "serials-not-shown": (values) => {
    const serials = numberOf(values, "serials");
    return serials === 1
      ? "Ohne die eine Nummer, die nicht ganz veröffentlicht wird, da die Zahl sie verriete; liegt sie jenseits der gezählten, können mehr gefertigt worden sein."
      : `Ohne die ${count(serials)} Nummern, die nicht ganz veröffentlicht werden, da die Zahl sie verriete; liegt eine jenseits der gezählten, können mehr gefertigt worden sein.`;
  },
  "serial-not-read": () => "Die Nummer ist nicht ganz zu lesen und wird an keiner Nummernreihe gemessen.",
  "sightings-differ": (values) => {
    const examples = numberOf(values, "examples");
    return examples === 1
      ? "Bei einem dieser Exemplare sagen einige Nachweise, dass das Teil da ist, andere, dass es fehlt; der letzte zählt."
      : `Bei ${count(examples)} dieser Exemplare sagen einige Nachweise, dass das Teil da ist, andere, dass es fehlt; der letzte zählt.`;
  },
  "serial-shared": (values) =>
    `Die Nummer liegt in den Nummernreihen von ${count(numberOf(values, "variants"))} Varianten der Familie und entscheidet allein nicht zwischen ihnen.`,
  "serials-misread": (values) => {
    const examples = numberOf(values, "examples");
    const which = "Es zählt die der vorliegenden Garnitur, sonst die zuletzt gelesene";
    return examples === 1
      ? `Von einem Exemplar sind mehrere Nummern verzeichnet. ${which}.`
      : `Von ${count(examples)} Exemplaren sind je mehrere Nummern verzeichnet. ${which}.`;
  },
  "known-exceed-made": (values) => {
    const made = numberOf(values, "made");
    return `${count(numberOf(values, "known"))} verschiedene Exemplare sind bekannt, und ${count(made)} ${made === 1 ? "soll" : "sollen"} gefertigt worden sein: Eine Angabe ist falsch.`;
  },
  "estimate-exceeds-made": (values) =>
    `Nach der Schätzung sind mehr erhalten als ${numberOf(values, "made") === 1 ? "das eine, das gefertigt wurde" : `die ${count(numberOf(values, "made"))}, die gefertigt wurden`}: Eine der beiden Zahlen oder eine Angabe dahinter ist falsch.`,
  "counts-contradicted": (values) => {
    const examples = numberOf(values, "examples");
    return examples === 1
      ? "Eines der gezählten gilt hier gegen den Befund als diese Variante und ist vielleicht kein Exemplar von ihr."
      : `${count(examples)} der gezählten gelten hier gegen den Befund als diese Variante und sind vielleicht keine Exemplare von ihr.`;
  },
  "counts-assembled": (values) => {
    const examples = numberOf(values, "examples");
    return examples === 1
      ? "Eines der gezählten wurde mit Teilen aus einem anderen Kasten ergänzt."
      : `${count(examples)} der gezählten wurden mit Teilen aus einem anderen Kasten ergänzt.`;
  },
  "less-destroyed": (values) => {
    const examples = numberOf(values, "examples");
    return examples === 1
      ? "Abzüglich des einen, das seither nachweislich zerstört oder aufgelöst worden ist."
      : `Abzüglich der ${count(examples)}, die seither nachweislich zerstört oder aufgelöst worden sind.`;
  },
  "nameless-rows": namelessRows,
  "many-nameless-rows": namelessRows,
  "left-out-of-level": (values) => {
    const examples = numberOf(values, "examples");
    return examples === 1
      ? "Ohne ein Exemplar, von dem nicht jedes verlangte Teil erfasst ist: Was von ihm bekannt ist, könnte zeigen, dass es die Stufe verfehlt, nie aber, dass es sie erreicht."
      : `Ohne die ${count(examples)} Exemplare, von denen nicht jedes verlangte Teil erfasst ist: Was von einem solchen bekannt ist, könnte zeigen, dass es die Stufe verfehlt, nie aber, dass es sie erreicht.`;
  },
  "joint-confidence": (values) =>
    `Das Intervall ist aus denen zweier Schätzungen gebildet und gilt mit einem Vertrauensniveau von mindestens ${numbers.exactShare(numberOf(values, "confidence"))}.`,
  "offers-as-known-now": () =>
    "Ein Angebot zählt nach dem, was heute von der Garnitur bekannt ist; damals kann weniger im Kasten gewesen sein.",
  "offers-undecided": offersUndecided,
  "many-offers-undecided": offersUndecided,
  "counted-in-by-certain-part": () =>
    "Dieses Exemplar ist mitgezählt, und zwar mit dem, was von ihm sicher ist.",
  "lists-share-nothing": () =>
    "Die beiden Listen nennen kein gemeinsames Exemplar; die Schätzung steht auf schwachen Füßen.",
  "at-least-known": (values) =>
    `Mindestens ${count(numberOf(values, "known"))} ${numberOf(values, "known") === 1 ? "ist" : "sind"} bekannt, gleich was das untere Ende sagt.`,
  "dates-as-written": () =>
    "Einige der Daten sind ungewiss oder ungefähr; sie gelten, wie sie geschrieben sind.",
  "years-from-log": () =>
    "Niemand hat gesagt, in welchen Jahren auf Angebote geachtet wurde: Dafür steht das Verzeichnis ein, vom ersten bis zum letzten Jahr, in das seine Nachweise datiert sind.",
};

const interval = (low: string, high: string) => (low === high ? low : `${low} bis ${high}`);

const phrase = figurePhrase(numbers, {
  about: (value) => `etwa ${value}`,
  interval,
  years: (written) => `${written} Jahre`,
  months: (written) => (/(?:^|\s)1$/.test(written) ? `${written} Monat` : `${written} Monate`),
  aYear: (written) => `${written} im Jahr`,
  unknown: "nicht bekannt",
});

const methods: Record<Method, MethodWords> = {
  documented: {
    name: `${germanFigureNames.variant.made}, wie belegt`,
    asks: "Wie viele wurden gefertigt?",
    formula: "Die Zahl in der angeführten Quelle, wie sie dort steht.",
    source: "Die Quelle, die neben der Zahl genannt ist.",
    assumes: "Die Angabe zählt, was ausgegeben wurde.",
    changes: "Eine andere Angabe mit einer anderen Zahl.",
  },
  "serial-ranges": {
    name: `${germanFigureNames.variant.made}, aus Seriennummern`,
    asks: "Wie viele wurden gefertigt, wo keine Quelle es sagt?",
    formula:
      "Eine Reihe, deren beide Enden bekannt sind, zählt ihre Länge. Eine offene wird geschätzt: N = m + m/k − 1 bei k verschiedenen Nummern, deren größte m ist, vom Anfang an gezählt oder, wo nur das Ende bekannt ist, rückwärts von diesem, und nicht mehr, als es Nummern vor der nächsten Reihe desselben Vorsatzes, dieser Variante oder einer anderen der Familie, oder nach der vorigen gibt; die untere Grenze ist m, die obere das größte N mit C(m, k) / C(N, k) ≥ α. Wo keines von beiden bekannt ist, mit der Spannweite w: N = (w − 1)(k + 1)/(k − 1) − 1; die untere Grenze ist w, die obere das größte N mit (w + k(N − w))/w · C(w, k) / C(N, k) ≥ α.",
    source:
      "Goodman (1952), Journal of the American Statistical Association 47: 622–634; Ruggles und Brodie (1947), dieselbe Zeitschrift 42: 72–91; ohne bekannten Anfang Goodman (1954), dieselbe Zeitschrift 49: 97–112.",
    assumes:
      "Die Nummern liefen ohne Lücke durch, und die nachgewiesenen sind eine zufällige Auswahl. Mehrere Reihen werden zusammengezählt.",
    changes:
      "Eine Nummer über der größten bekannten, wo das Ende, oder unter der kleinsten, wo der Anfang nicht bekannt ist; ein Beleg, dass Nummern ungenutzt blieben.",
  },
  chao1: {
    name: germanFigureNames.variant.survivors,
    asks: "Wie viele sind erhalten, die nie verzeichneten mitgezählt?",
    formula:
      "S = D + f₁(f₁ − 1) / (2(f₂ + 1)): D verschiedene Exemplare, davon f₁ einmal und f₂ zweimal gesehen; lognormales Intervall oder, wo S = D ist, das unten genannte, bei n Nachweisen. Von allen drei Zahlen gehen die nachweislich zerstörten ab.",
    source:
      "Chao (1984), Scandinavian Journal of Statistics 11: 265–270; Chao (1987), Biometrics 43: 783–791.",
    assumes:
      "Es ist eine untere Schranke, sofern jedes wiedergesehene Exemplar erkannt wurde; eine Zeile, die weder Seriennummer noch Exemplar nennt, zählt als eigenes. Jedes Exemplar kann gesehen werden; wie leicht, darf verschieden sein.",
    changes:
      "Wird ein bekanntes Exemplar wiedergesehen, sinkt die Zahl; taucht eines auf, das niemand kannte, steigt sie.",
  },
  chapman: {
    name: germanFigureNames.variant.survivorsTwoList,
    asks: "Wie viele sind erhalten, gemessen daran, wie weit zwei unabhängige Listen übereinstimmen?",
    formula:
      "N = (n₁ + 1)(n₂ + 1) / (m + 1) − 1 für Listen von n₁ und n₂ Exemplaren, davon m gemeinsam; lognormales Intervall über den r, die beide zusammen nennen, oder r allein, wo N nicht größer ist. Von allen drei Zahlen gehen die nachweislich zerstörten ab.",
    source:
      "Chapman (1951), University of California Publications in Statistics 1: 131–160; Varianz: Seber (1970), Biometrika 57.",
    assumes:
      "Ob ein Exemplar auf der einen Liste steht, hat keinen Einfluss darauf, ob es auf der anderen steht.",
    changes:
      "Kommt ein Exemplar hinzu, das auf beiden Listen steht, sinkt die Zahl; steht es nur auf einer, steigt sie.",
  },
  coverage: {
    name: germanFigureNames.variant.coverage,
    asks: "Wie viel von dem, was zu sehen wäre, ist gesehen worden?",
    formula:
      "C = 1 − (f₁/n) · (n − 1)f₁ / ((n − 1)f₁ + 2f₂) bei n Nachweisen, mindestens zweien. Wo kein Exemplar ein zweites Mal gesehen wurde, sagt sie so gut wie nichts.",
    source: "Good (1953), Biometrika 40: 237–264; Chao und Jost (2012), Ecology 93: 2533–2547.",
    assumes: "Der nächste Nachweis kommt zustande wie die früheren.",
    changes: "Jeder neue Nachweis: Sie steigt, wenn ein bekanntes Exemplar wiedergesehen wird.",
  },
  "survival-ratio": {
    name: germanFigureNames.variant.survivalRate,
    asks: "Welcher Anteil der gefertigten Exemplare ist erhalten?",
    formula:
      "Erhaltene / Gefertigte; die untere Grenze ist die untere der einen durch die obere der anderen, die obere umgekehrt, höchstens 1. Wo beide geschätzt sind, ist das Vertrauensniveau mindestens die Summe der beiden minus 1.",
    source: "Intervallrechnung.",
    assumes: "Was die beiden Zahlen voraussetzen.",
    changes: "Was immer eine der beiden Zahlen ändert.",
  },
  wilson: {
    name: "Anteil der erfassten Exemplare",
    asks: "Wie groß ist der Anteil, der dieses Teil hat oder mindestens so vollständig ist?",
    formula: "x / n mit dem Score-Intervall: (2np + z² ± z√(z² + 4npq)) / (2(n + z²)).",
    source: "Wilson (1927), Journal of the American Statistical Association 22: 209–212.",
    assumes: "Die erfassten Exemplare sind wie die anderen.",
    changes:
      "Jedes weitere Exemplar, von dem es erfasst wird; je mehr es sind, desto enger wird das Intervall.",
  },
  "share-of-survivors": {
    name: germanFigureNames.item.asCompleteSurvivors,
    asks: "Wie viele sind erhalten, die mindestens so vollständig sind?",
    formula:
      "Erhaltene × Anteil, Ende für Ende; das Vertrauensniveau ist mindestens die Summe der beiden minus 1.",
    source: "Intervallrechnung.",
    assumes: "Nie gesehene Exemplare sind so vollständig wie die gesehenen.",
    changes: "Was immer eine der beiden Zahlen ändert.",
  },
  garwood: {
    name: germanFigureNames.variant.appearance,
    asks: "Wie oft wird eines angeboten?",
    formula:
      "k Angebote in T Jahren: k/T; Intervall χ²(α/2; 2k)/2T bis χ²(1 − α/2; 2k + 2)/2T. Die Jahre sind die beobachteten oder, wo niemand sagt, welche es waren, die vom ersten bis zum letzten des Verzeichnisses; eine bloße Erwähnung oder ein Datum von mehr als einem Jahr zählt dabei nur, wo es nichts anderes gibt.",
    source: "Garwood (1936), Biometrika 28: 437–442.",
    assumes: "Angebote kommen mit gleichbleibender Häufigkeit und unabhängig voneinander.",
    changes: "Jedes neue Angebot und jedes beobachtete Jahr ohne eines.",
  },
  "gamma-poisson": {
    name: germanFigureNames.variant.wait,
    asks: "Wie lange dauert es, bis das nächste angeboten wird?",
    formula:
      "P(W > t) = (T / (T + t))^(k + ½), A-priori-Verteilung nach Jeffreys: der Median T(2^(1/(k + ½)) − 1), mit den Quantilen α/2 und 1 − α/2. Ohne ein Angebot ist der Median 3T und beruht allein auf den beobachteten Jahren.",
    source:
      "Jeffreys (1946), Proceedings of the Royal Society A 186: 453–461; Lomax (1954), Journal of the American Statistical Association 49: 847–852.",
    assumes: "Angebote kommen mit gleichbleibender Häufigkeit und unabhängig voneinander.",
    changes: "Jedes neue Angebot und jedes beobachtete Jahr ohne eines.",
  },
};

const decades = {
  alone: (year: string) => `${year}er Jahre`,
  about: (year: string) => `die ${year}er Jahre`,
  since: (year: string) => `den ${year}er Jahren`,
  until: (year: string) => `zu den ${year}er Jahren`,
};

const wordAt = { day: "am ", month: "im ", season: "im ", year: "", decade: "in " } as const;

const { date, when } = dateReader("de", {
  about: (text, before) => `${before === undefined ? "um" : "etwa"} ${text}`,
  uncertain: (text) => `${text} (ungewiss)`,
  span: (from, to) => `${from} bis ${to}`,
  at: (text, of, isAbout) => `${isAbout ? (of === "year" ? "um " : "etwa ") : ""}${wordAt[of]}${text}`,
  // With a day "vom", else "von".
  during: (span) => `${/^\d+\./.test(span) ? "vom" : "von"} ${span}`,
  since: (from, isEndUnknown) => `ab ${from}${isEndUnknown ? ", Ende unbekannt" : ""}`,
  until: (to, isStartUnknown) => `bis ${to}${isStartUnknown ? ", Beginn unbekannt" : ""}`,
  decade: (year, before) => decades[before ?? "alone"](year),
  seasons: ["Frühjahr", "Sommer", "Herbst", "Winter"],
  before: (year) => `vor ${year}`,
  after: (year) => `nach ${year}`,
  atLatest: (text) => `spätestens ${text}`,
  atEarliest: (text) => `frühestens ${text}`,
  between: (from, to) => `zwischen ${from} und ${to}`,
});

export const german: Words = {
  language: "de",
  numbers,
  interval,
  date,
  when,
  seen: (edtf) => `Eines, gesehen ${when(edtf)}`,
  statement: ({ says, values }) => statements[says](values),
  phrase,
  figures: germanFigureNames,
  methods,
  plots: germanPlots,
  pages: germanPages,
};
