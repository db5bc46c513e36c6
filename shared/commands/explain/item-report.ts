import type { RarityClass } from "../../assessments/rarity/scale-class.ts";
import type {
  PublishedFamily,
  PublishedFigure,
  PublishedItem,
  PublishedItemPart,
  PublishedVariant,
} from "../../publication/published.ts";
import { figureLines, labelled, methodLines, type Setting, sourceLines } from "./figure-lines.ts";
import { partLines } from "./part-lines.ts";

export interface Explained {
  readonly item: PublishedItem;
  readonly variant: PublishedVariant;
  readonly family: PublishedFamily | undefined;
  readonly groups: readonly (readonly PublishedItemPart[])[];
  /** The words of a class of the collection's scale. */
  readonly classWords: (id: string) => string;
  readonly scaleName: string | null;
}

const verdicts = {
  confirmed:
    "Confirmed. What was observed agrees, and something speaks against every other variant of the family.",
  consistent: "Consistent. Nothing speaks against it, but something else is still possible.",
  contradicted: "Contradicted. Something observed is not found with this variant.",
} as const;
const verdictColours = { confirmed: "green", consistent: "yellow", contradicted: "red" } as const;

/** The whole assessment of one item, for reading in a terminal. */
export function itemReport(explained: Explained, setting: Setting): string {
  const { item } = explained;
  const heading = (text: string) => ["", setting.paint("bold", text.toUpperCase())];
  const figures = [...ownFigures(explained), ...variantFigures(explained)].map(([, figure]) => figure);
  const cited = item.provenance.events.flatMap(({ source }) => source ?? []);
  const sections: [string, string[]][] = [
    ["Take care", hazards(explained, setting)],
    ["Identification", identification(explained, setting)],
    ["Completeness", completeness(explained, setting)],
    ["Part by part", [...partLines(explained.groups, setting)]],
    ["Dating", dating(explained, setting)],
    ["Rarity of one as complete as this", ownRarity(explained, setting)],
    [`Rarity of ${item.variant.name}`, variantRarity(explained, setting)],
    ["Provenance", provenance(explained, setting)],
    ["Kept to yourself", confidential(explained, setting)],
    ["Methods", methodLines(figures, setting)],
    ["Sources", sourceLines([...figures, ...item.parts.map(({ rate }) => rate)], cited, setting)],
  ];
  return [
    ...head(explained, setting),
    ...sections.flatMap(([title, lines]) => (lines.length === 0 ? [] : [...heading(title), ...lines])),
    "",
    setting.paint(
      "dim",
      "This is the owner's view: it shows serials, owners and prices that the public site may withhold.",
    ),
  ].join("\n");
}

function head({ item }: Explained, { paint, words }: Setting): string[] {
  const facts = [
    item.serial && `serial ${item.serial}`,
    item.set && `set ${item.set}`,
    item.examined && `examined ${words.date(item.examined)}`,
    item.status,
  ].filter(Boolean);
  return [
    paint("bold", item.title),
    `${item.variant.name} (${item.variant.id}), of ${item.family.name}`,
    facts.join("; "),
  ];
}

function hazards({ item }: Explained, setting: Setting): string[] {
  const nameOf = (id: string) => item.parts.find((part) => part.id === id)?.name ?? id;
  return item.hazards.flatMap(({ name, parts, extras, caution, source }) => [
    `  ${setting.paint("red", `${name}: ${[...parts.map(nameOf), ...extras].join(", ")}`)}`,
    ...labelled("caution", caution, setting, 4),
    ...labelled("source", source, setting, 4),
  ]);
}

function identification({ item, family }: Explained, setting: Setting): string[] {
  const { verdict, candidates, lookNext } = item.identification;
  const featureName = (id: string) =>
    id === "serial" ? "serial" : (item.features.find((feature) => feature.id === id)?.name ?? id);
  const seen = item.features.filter(({ value }) => value !== null);
  const [first, ...others] = verdicts[verdict].split(". ");
  return [
    `  ${setting.paint(verdictColours[verdict], `${first}.`)} ${others.join(". ")}`,
    ...(seen.length > 0
      ? labelled("observed", seen.map(({ name, value }) => `${name}: ${value}`).join("; "), setting)
      : labelled("observed", "no feature", setting)),
    ...candidates.flatMap(({ name, variant, contradictions, unobserved }) => [
      `  ${name} (${variant})`,
      ...labelled(
        "against it",
        contradictions.length > 0 ? contradictions.map(featureName).join(", ") : "nothing",
        setting,
        4,
      ),
      ...(unobserved.length > 0
        ? labelled("not looked at", unobserved.map(featureName).join(", "), setting, 4)
        : []),
    ]),
    ...lookNext.flatMap((id, at) => {
      const look = family?.features.find((feature) => feature.id === id)?.look;
      return labelled(
        at === 0 ? "look next at" : "",
        `${featureName(id)}${look ? `. ${look}` : ""}`,
        setting,
      );
    }),
  ];
}

function completeness({ item }: Explained, setting: Setting): string[] {
  const { completeness: found, parts, levels } = item;
  const { words } = setting;
  const partOf = new Map(parts.map((part) => [part.id, part]));
  const nameOf = (id: string) => partOf.get(id)?.name ?? id;
  const share = (low: number, high: number) =>
    low === high
      ? `${words.numbers.share(low)}, with nothing uncertain`
      : `${words.numbers.share(low)} for certain, ${words.numbers.share(high)} at most`;
  const units = (low: number, high: number, expected: number) =>
    `${words.interval(words.numbers.measure(low), words.numbers.measure(high))} of ${words.numbers.count(expected)} units`;
  const level = (id: string | null) => levels.find((each) => each.id === id)?.name ?? "none";
  const short = (id: string) => {
    const part = partOf.get(id);
    return part ? `${part.name} (${part.units.absent} of ${part.units.expected} gone)` : id;
  };
  const list = (label: string, ids: readonly string[], name = nameOf) =>
    ids.length === 0 ? [] : labelled(label, ids.map(name).join("; "), setting);
  const { weighted, counted, consumable, optional } = found;
  const apart = (label: string, standing: typeof consumable) =>
    standing
      ? labelled(
          label,
          `${share(standing.weighted.low, standing.weighted.high)}; ` +
            units(standing.counted.low, standing.counted.high, standing.counted.expected),
          setting,
        )
      : [];
  return [
    ...(weighted
      ? labelled("by weight", `${share(weighted.low, weighted.high)}, of core and issued parts`, setting)
      : labelled("by weight", "The reference lists no core or issued part.", setting)),
    ...(counted ? labelled("in units", units(counted.low, counted.high, counted.expected), setting) : []),
    ...apart("consumables", consumable),
    ...apart("optional parts", optional),
    ...(levels.length > 0
      ? labelled(
          "level",
          found.level.sure === found.level.possible
            ? level(found.level.sure)
            : `${level(found.level.sure)} for certain, ${level(found.level.possible)} at best`,
          setting,
        )
      : []),
    ...list("missing", found.missing),
    ...list("in part gone", found.partial, short),
    ...list("substitutes", found.substitutes),
    ...list("unverified", found.unverified),
    ...list("not examined", found.unexamined),
    ...list("surplus", found.surplus),
    ...(found.extras.length > 0
      ? labelled(
          "not listed",
          found.extras
            .map(
              ({ name, quantity, note }) =>
                `${quantity > 1 ? `${quantity} × ` : ""}${name}${note ? ` (${note})` : ""}`,
            )
            .join("; "),
          setting,
        )
      : []),
    ...labelled(
      "method",
      "Sums over the parts, each by its weight. What is unknown is neither counted nor struck out: the two ends are the worst and the best case (Manski 1989, Journal of Human Resources 24: 343–360).",
      setting,
    ),
  ];
}

const datingWords = {
  fits: "fits the issue",
  earlier: "earlier than the issue, as stock often is",
  later: "LATER than the issue: it cannot have been issued with it",
  undated: "in no dated range",
} as const;

function dating({ item }: Explained, setting: Setting): string[] {
  const { issued, serial, parts } = item.dating;
  const { words } = setting;
  return [
    ...labelled("issued", issued ? words.date(issued) : "not known", setting),
    ...labelled("by its serial", serial.made ? words.date(serial.made) : "not known", setting),
    ...Object.entries(parts).flatMap(([id, { made, verdict }]) =>
      labelled(
        "a part",
        `${item.parts.find((part) => part.id === id)?.name ?? id}: ${made ? `made ${words.date(made)}, ` : ""}${datingWords[verdict]}`,
        setting,
      ),
    ),
  ];
}

type NamedFigures = readonly (readonly [string, PublishedFigure])[];

const ownFigures = ({ item: { rarity } }: Explained): NamedFigures => [
  ["Recorded examples at least as complete", rarity.asComplete],
  ["Survivors at least as complete", rarity.asCompleteSurvivors],
  ["Wait for the next one as complete", rarity.asCompleteWait],
];

const variantFigures = ({ variant: { rarity } }: Explained): NamedFigures => [
  ["Made", rarity.made],
  ["Coverage of the log", rarity.coverage],
  ["Survivors", rarity.survivors],
  ["Survivors, from two lists", rarity.survivorsTwoList],
  ["Survival rate", rarity.survivalRate],
  ["Appearance", rarity.appearance],
  ["Wait for the next", rarity.wait],
];

const apart = (figures: NamedFigures, setting: Setting): string[] =>
  figures.flatMap(([name, figure]) => ["", ...figureLines(name, figure, setting)]);

function ownRarity(explained: Explained, setting: Setting): string[] {
  const { rank } = explained.item.rarity;
  const place = rank
    ? `${rank.place} of ${rank.of} examples recorded in full`
    : "not known: the reference lists no core or issued part to compare by";
  return [...labelled("place", place, setting), ...apart(ownFigures(explained), setting)];
}

function variantRarity(explained: Explained, setting: Setting): string[] {
  const { classWords, scaleName } = explained;
  const { rarity } = explained.variant;
  const count = setting.words.numbers.count;
  return [
    ...labelled(
      "the log",
      `${count(rarity.sightings)} sightings of ${count(rarity.distinct)} examples: ${count(rarity.once)} seen once, ${count(rarity.twice)} twice`,
      setting,
    ),
    ...(scaleName ? labelled("class", `${classSpan(rarity.class, classWords)} (${scaleName})`, setting) : []),
    ...apart(variantFigures(explained), setting),
  ];
}

function classSpan(known: RarityClass | null, classWords: (id: string) => string): string {
  if (known === null || (known.low === null && known.high === null)) return "not known";
  const words = (id: string | null) => (id === null ? "outside the scale" : classWords(id));
  return known.low === known.high ? words(known.low) : `from ${words(known.low)} to ${words(known.high)}`;
}

function provenance({ item }: Explained, setting: Setting): string[] {
  const { events, documentedYears, lifetimeYears, gaps } = item.provenance;
  const { words } = setting;
  const eventText = (event: (typeof events)[number]) =>
    [
      event.event,
      event.holder && `held by ${event.holder}`,
      event.from && `from ${event.from}`,
      event.to && `to ${event.to}`,
      event.place,
      event.price && words.numbers.money(event.price.amount, event.price.currency),
      event.evidence ? `by ${event.evidence}` : event.source === null && "no evidence given",
      event.source && `[${event.source}]`,
      event.note,
    ]
      .filter(Boolean)
      .join("; ");
  const years = (number: number) => `${words.numbers.measure(number)} ${number === 1 ? "year" : "years"}`;
  return [
    ...events.flatMap((event) => [
      `  ${words.date(event.date)}`,
      ...labelled("", eventText(event), setting, 0),
    ]),
    ...labelled(
      "documented",
      lifetimeYears === null
        ? `${documentedYears} calendar years`
        : `${documentedYears} of ${lifetimeYears} calendar years since issue`,
      setting,
    ),
    ...gaps.flatMap(({ from, to, years: shortest, longest }, at) =>
      labelled(
        at === 0 ? "gaps" : "",
        `${from} to ${to}: ${years(shortest)}${longest !== null && longest - shortest > 0.05 ? `, or as many as ${words.numbers.measure(longest)}` : ""}`,
        setting,
      ),
    ),
  ];
}

function confidential({ item }: Explained, setting: Setting): string[] {
  const kept = item.confidential;
  if (!kept) return [];
  const { money } = setting.words.numbers;
  return [
    ...(kept.storage ? labelled("storage", kept.storage, setting) : []),
    ...(kept.paid ? labelled("paid", money(kept.paid.amount, kept.paid.currency), setting) : []),
    ...Object.entries(kept.fields).flatMap(([name, value]) =>
      labelled(name, typeof value === "string" ? value : JSON.stringify(value), setting),
    ),
  ];
}
