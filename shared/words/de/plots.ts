import type { PlotWords, SightingKind } from "../plot-words.ts";

const rules = new Intl.PluralRules("de");
const counted = (number: number, count: string, one: string, many: string) =>
  `${count} ${rules.select(number) === "one" ? one : many}`;

const kinds: Readonly<Record<SightingKind, readonly [one: string, many: string]>> = {
  offer: ["Angebot", "Angebote"],
  record: ["Beschreibung", "Beschreibungen"],
  mention: ["Erwähnung", "Erwähnungen"],
};

const sentences = (parts: readonly string[]) => parts.map((part) => `${part}.`).join(" ");

export const germanPlots: PlotWords = {
  casePlan: {
    part: (name, quantity) => (quantity > 1 ? `${name} ×\u00a0${quantity}` : name),
    partState: (part, state) => (state === null ? part : `${part}: ${state}`),
    keyed: (key, partState) => `${key}, ${partState}`,
  },
  completeness: {
    certain: (share) => `sicher ${share}`,
    possible: (share) => `möglich ${share}`,
    description: (certain, possible) =>
      possible === null
        ? `Nach Gewicht sind ${certain} der Garnitur vorhanden, und nichts ist ungewiss.`
        : `Nach Gewicht sind ${certain} der Garnitur sicher vorhanden; bis zu ${possible} sind möglich.`,
  },
  partRates: {
    withheld: "nicht bekannt",
    axis: "Anteil der erfassten Exemplare, die es haben",
    part: (part, rate) => `${part}: ${rate}`,
    description: (parts) => sentences(parts),
  },
  serialRanges: {
    own: (serial) => `dieses Exemplar, ${serial}`,
    span: (prefix, from, to) => {
      if (from === null)
        return to === null ? `${prefix && `${prefix}…, `}kein Ende bekannt` : `bis ${prefix}${to}`;
      if (to === null) return `ab ${prefix}${from}`;
      return from === to ? `${prefix}${from}` : `${prefix}${from} bis ${prefix}${to}`;
    },
    made: (date) => `gefertigt ${date}`,
    skipped: "einige Nummern ungenutzt",
    seen: (count, number) => counted(number, count, "nachgewiesene Nummer", "nachgewiesene Nummern"),
    unplaced: (count, number) => `${counted(number, count, "Nummer", "Nummern")} außerhalb dieser Reihen`,
    misplaced: (count, number) =>
      `${counted(number, count, "Nummer", "Nummern")} in einer Reihe einer anderen Variante als der eigenen`,
    description: (ranges, notes) => sentences([...ranges, ...notes]),
    range: (span, facts) => [span, ...facts].join(", "),
    none: "Keine Nummernreihe ist bekannt.",
  },
  sightings: {
    kind: (kind) => kinds[kind][1],
    each: (count) => `jedes Zeichen steht für bis zu ${count} Nachweise`,
    undated: (count, number) => `${counted(number, count, "Nachweis", "Nachweise")} ohne Jahr`,
    watching: (dates) => `Angebote beobachtet, ${dates}`,
    surfaces: {
      filled: "gefüllt: erreicht eine Stufe der Vollständigkeit",
      half: "halb gefüllt: erreicht keine",
      hollow: "leer: zu wenig erfasst",
    },
    reach: {
      filled: (count, number) =>
        `${count} ${rules.select(number) === "one" ? "erreicht" : "erreichen"} eine Stufe der Vollständigkeit`,
      half: (count, number) =>
        `${count} ${rules.select(number) === "one" ? "erreicht" : "erreichen"} keine Stufe`,
      hollow: (count) => `von ${count} ist zu wenig erfasst, um es zu sagen`,
    },
    description: (total, number, kindCounts, years, reached) => {
      const what = `${counted(number, total, "Nachweis", "Nachweise")} im Verzeichnis`;
      const when = years === null ? what : `${what}, ${years}`;
      const kinds = kindCounts.length > 1 ? `${when}: ${kindCounts.join(", ")}` : when;
      return sentences([
        kinds,
        ...(reached.length > 0 ? [`Nach dem Verzeichnis: ${reached.join(", ")}`] : []),
      ]);
    },
    again: (count) => `davon ${count} erneut angeboten`,
    kindCount: (kind, count, number) => `${count} ${kinds[kind][rules.select(number) === "one" ? 0 : 1]}`,
    span: (from, to) => (from === to ? from : `${from} bis ${to}`),
    none: "Kein Nachweis ist verzeichnet.",
  },
  likeness: {
    axis: "wie ähnlich: ein Strich für jedes andere erfasste Exemplar",
    nearest: (name, share) => `am ähnlichsten: ${name}, ${share}`,
    longer: "länger, wo er für mehrere steht",
    thin: (count) => `${count} an zu wenigem verglichen und weggelassen`,
    more: (count, number) =>
      `${counted(number, count, "weitere Garnitur", "weitere Garnituren")} nicht gezeichnet`,
    outfit: (name, count, _number, range, facts) =>
      [`${name}: mit ${count} anderen verglichen, ${range} ähnlich`, ...facts].join("; "),
    description: sentences,
  },
  custody: {
    event: ({ event, from, to, holder, place }) =>
      [
        event,
        ...(from === null ? [] : [`von ${from}`]),
        ...(to === null ? [] : [`an ${to}`]),
        ...[holder, place].flatMap((detail) => detail ?? []),
      ].join(", "),
    issued: "ausgegeben",
    examined: "geprüft",
    gap: ({ shortest, longest, isSure }) =>
      longest === null
        ? `${isSure ? "" : "mindestens "}${shortest} ${shortest === "1" ? "Jahr" : "Jahre"} kein Verbleib verzeichnet`
        : `${shortest} bis ${longest} Jahre kein Verbleib verzeichnet`,
    gapBetween: (from, to, gap) => `${from} bis ${to}: ${gap}`,
    dated: (date, event) => `${date}: ${event}`,
    undated: (count, number) => `${counted(number, count, "Ereignis", "Ereignisse")} ohne Datum`,
    description: sentences,
    none: "Kein datiertes Ereignis ist bekannt.",
  },
};
