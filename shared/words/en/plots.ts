import type { PlotWords, SightingKind } from "../plot-words.ts";

const plural = (number: number, count: string, one: string, many = `${one}s`) =>
  `${count} ${number === 1 ? one : many}`;

const kinds: Readonly<Record<SightingKind, readonly [one: string, many: string]>> = {
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
    description: (certain, possible) =>
      possible === null
        ? `${certain} of the outfit by weight is there, and nothing is uncertain.`
        : `${certain} of the outfit by weight is certainly there; up to ${possible} is possible.`,
  },
  partRates: {
    withheld: "not known",
    axis: "share of recorded examples that have it",
    part: (part, rate) => `${part}: ${rate}`,
    description: (parts) => sentences(parts),
  },
  serialRanges: {
    own: (serial) => `this one, ${serial}`,
    span: (prefix, from, to) => {
      if (from === null)
        return to === null ? `${prefix && `${prefix}…, `}neither end known` : `up to ${prefix}${to}`;
      if (to === null) return `from ${prefix}${from}`;
      return from === to ? `${prefix}${from}` : `${prefix}${from} to ${prefix}${to}`;
    },
    made: (date) => `made ${date}`,
    skipped: "some numbers left unused",
    seen: (count, number) => plural(number, count, "serial seen", "serials seen"),
    unplaced: (count, number) => `${plural(number, count, "serial")} outside these ranges`,
    misplaced: (count, number) =>
      `${plural(number, count, "serial")} in a range of a variant other than ${number === 1 ? "its" : "their"} own`,
    description: (ranges, notes) => sentences([...ranges, ...notes]),
    range: (span, facts) => [span, ...facts].join(", "),
    none: "No range of serials is known.",
  },
  sightings: {
    kind: (kind) => kinds[kind][1],
    each: (count) => `each mark stands for up to ${count} sightings`,
    undated: (count, number) => `${plural(number, count, "sighting")} without a year`,
    watching: (dates) => `offers watched for, ${dates}`,
    surfaces: {
      filled: "filled: reaches a level of completeness",
      half: "half filled: reaches none",
      hollow: "hollow: too little recorded to say",
    },
    reach: {
      filled: (count, number) => `${count} ${number === 1 ? "reaches" : "reach"} a level of completeness`,
      half: (count, number) => `${count} ${number === 1 ? "reaches" : "reach"} no level`,
      hollow: (count, number) => `${count} ${number === 1 ? "is" : "are"} too little recorded to say`,
    },
    description: (total, number, kindCounts, years, reached) => {
      const what = `${plural(number, total, "sighting")} in the log`;
      const when = years === null ? what : `${what}, ${years}`;
      const kinds = kindCounts.length > 1 ? `${when}: ${kindCounts.join(", ")}` : when;
      return sentences([
        kinds,
        ...(reached.length > 0 ? [`By what the log says of them, ${reached.join(", ")}`] : []),
      ]);
    },
    again: (count) => `${count} of them offered again`,
    kindCount: (kind, count, number) => `${count} ${kinds[kind][number === 1 ? 0 : 1]}`,
    span: (from, to) => (from === to ? from : `${from} to ${to}`),
    none: "No sighting is recorded.",
  },
  likeness: {
    axis: "how alike: a stroke for every other recorded example",
    nearest: (name, share) => `most alike: ${name}, ${share}`,
    longer: "longer where it stands for several",
    thin: (count, number) => `${count} compared on too little ${number === 1 ? "is" : "are"} left out`,
    more: (count, number) => `${plural(number, count, "further outfit")} not drawn`,
    outfit: (name, count, number, range, facts) =>
      [`${name}: ${plural(number, count, "other")} compared, ${range} alike`, ...facts].join("; "),
    description: sentences,
  },
  custody: {
    event: ({ event, from, to, holder, place }) =>
      [
        event,
        ...(from === null ? [] : [`from ${from}`]),
        ...(to === null ? [] : [`to ${to}`]),
        ...[holder, place].flatMap((detail) => detail ?? []),
      ].join(", "),
    issued: "issued",
    examined: "examined",
    gap: ({ shortest, longest, isSure }) =>
      longest === null
        ? `no custody recorded for ${isSure ? "" : "at least "}${shortest} ${shortest === "1" ? "year" : "years"}`
        : `no custody recorded for ${shortest} to ${longest} years`,
    gapBetween: (from, to, gap) => `${from} to ${to}: ${gap}`,
    dated: (date, event) => `${date}: ${event}`,
    undated: (count, number) => `${plural(number, count, "event")} without a date`,
    description: sentences,
    none: "No dated event is known.",
  },
};
