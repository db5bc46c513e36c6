import type { PlotWords } from "../plots/plot-words.ts";

const plural = (number: number, count: string, one: string, many = `${one}s`) =>
  `${count} ${number === 1 ? one : many}`;

const kinds: Readonly<Record<string, readonly [one: string, many: string]>> = {
  offer: ["offer", "offers"],
  record: ["record", "records"],
  mention: ["mention", "mentions"],
};

const sentences = (parts: readonly string[]) => parts.map((part) => `${part}.`).join(" ");

export const englishPlots: PlotWords = {
  casePlan: {
    part: (name, quantity) => (quantity > 1 ? `${name} ×\u00a0${quantity}` : name),
    partState: (part, state) => (state === null ? part : `${part}: ${state}`),
    keyed: (key, partState) => `${key}, ${partState}`,
  },
  completeness: {
    certain: (share) => `certain ${share}`,
    possible: (share) => `possible ${share}`,
    description: (low, high) =>
      low === high
        ? `${low} of the outfit by weight is there, and nothing is uncertain.`
        : `${low} of the outfit by weight is certainly there; up to ${high} is possible.`,
  },
  partRates: {
    withheld: "not known",
    axis: "share of recorded examples that have it",
    part: (part, rate, state) => (state === null ? `${part}: ${rate}` : `${part}: ${rate}; here ${state}`),
    description: (parts) => sentences(parts),
  },
  serialRanges: {
    own: (serial) => `this one, ${serial}`,
    seen: (count, number) => plural(number, count, "serial seen", "serials seen"),
    unplaced: (count, number) => `${plural(number, count, "serial")} outside these ranges`,
    skipped: "numbers left unused",
    endUnknown: "end not known",
    range: (from, to, made, seen) => {
      const span = `${from ?? "an unknown start"} to ${to ?? "an unknown end"}`;
      return made === null ? `${span}: ${seen}` : `${span}, made ${made}: ${seen}`;
    },
    none: "No range of serials is known.",
  },
  sightings: {
    kind: (kind) => kinds[kind]?.[1] ?? kind,
    each: (count) => `each mark stands for ${count} sightings`,
    undated: (count, number) => `${plural(number, count, "sighting")} without a year`,
    watching: (from, to) => `offers watched for, ${from} to ${to}`,
    description: (total, number, kindCounts, years) => {
      const what = plural(number, total, "sighting");
      const when = years === null ? what : `${what}, ${years}`;
      return `${kindCounts.length > 1 ? `${when}: ${kindCounts.join(", ")}` : when}.`;
    },
    kindCount: (kind, count, number) => `${count} ${kinds[kind]?.[number === 1 ? 0 : 1] ?? kind}`,
    span: (from, to) => (from === to ? from : `${from} to ${to}`),
    none: "No sighting is recorded.",
  },
  custody: {
    gap: (years, number) => `nothing known for ${plural(number, years, "year")}`,
    issued: "issued",
    examined: "examined",
    gapBetween: (from, to, gap) => `${from} to ${to}, ${gap}`,
    event: (date, event) => `${date}: ${event}`,
    description: (events, gaps) => sentences([...events, ...gaps]),
    none: "No dated event is known.",
  },
};
