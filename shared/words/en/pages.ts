import { typeNames } from "../../diagnostics/type-names.ts";
import type { Fate } from "../../terms/states.ts";
import { citedPages } from "../cited-pages.ts";
import { ended } from "../ended.ts";
import type { GapLength } from "../gap-length.ts";
import { englishCompare } from "./compare.ts";
import { englishFinder } from "./finder.ts";
import { englishPhotographs } from "./photographs.ts";
import { inDigits, plural } from "./plural.ts";

const disjunction = new Intl.ListFormat("en-GB", { style: "long", type: "disjunction" });
const conjunction = new Intl.ListFormat("en-GB", { style: "long", type: "conjunction" });
const list = (names: readonly string[]): string => conjunction.format(names);

const spoken: readonly string[] = [
  "no",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
];
const inWords = (number: number): string => spoken[number] ?? inDigits(number);
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** How a label, and the name of a thing, are written within a sentence. */
const inText = (label: string): string => label.toLowerCase();

/** What names itself, a folio or a plate, needs no name from us. */
const pagesAre = { one: "p.", several: "pp." };
const placeInSource = (place: string): string => {
  const pages = citedPages(place);
  return pages === null ? place : `${pagesAre[pages]} ${place}`;
};

/** What the pages say of themselves in English. A second language is a file of the same shape. */
export const englishPages = {
  list,
  capital,
  inText,
  nameInText: inText,
  /** As markdown-it takes them: outer opening and closing, inner opening and closing. */
  quotes: "“”‘’",
  site: {
    skip: "To the text",
    contents: "Contents",
    trail: "Where this page stands",
    outfits: "Outfits",
    families: "Families",
    articles: "Articles",
    sightings: "Sightings",
    sources: "Sources",
    methods: "Methods",
    home: "Title page",
    data: "Data",
    enquiries: "Enquiries",
    feed: "New and changed entries",
    allData: "The whole catalogue as data",
    table: "The outfits as a table (CSV)",
    privateCopy: "The owner's own copy. It holds what is not for publication.",
    made: "Computed from the records when this site was built.",
  },
  states: {
    present: "present",
    incomplete: "incomplete",
    substitute: "substitute",
    unverified: "unverified",
    "partly-examined": "partly seen",
    unexamined: "not examined",
    absent: "missing",
    "not-issued": "never issued",
  },
  /** Of several units, where a language has another form for them. */
  statesOfSeveral: { absent: "missing", substitute: "substitutes" },
  standings: {
    core: "principal",
    issued: "issued",
    consumable: "consumable",
    optional: "optional",
  },
  /** Of an outfit with parts that came out of another case. */
  assembled: "assembled",
  statuses: {
    collection: "in the collection",
    offered: "offered",
    sold: "sold",
    reference: "held for reference",
    lost: "lost",
    stolen: "reported stolen",
    destroyed: "destroyed or broken up",
  },
  /** At the head of an outfit that is nowhere to be had: what has become of it, and what follows from that. */
  fates: {
    lost: {
      headline: "Lost",
      said: ["Where it is now is not known. This page gives what was known of it before."],
    },
    stolen: {
      headline: "Reported stolen",
      said: [
        "If it is offered to you, please tell the police, who can say how the matter stands, or its owner by way of this catalogue.",
        "The police and insurers ask for an Object ID record, after the standard of the Getty that ICOM now keeps; whoever publishes this catalogue can make one.",
      ],
    },
    destroyed: {
      headline: "Destroyed or broken up",
      said: ["It no longer exists as an outfit. This page gives what was known of it before."],
    },
  } satisfies Record<Fate, { headline: string; said: readonly string[] }>,
  efforts: ["", "at a glance", "by handling", "by taking apart"],
  verdicts: {
    confirmed: {
      short: "confirmed",
      headline: (variant: string) => `Confirmed as ${variant}`,
      sentence: (_variant: string) => "What was observed fits this variant and no other of its family.",
    },
    consistent: {
      short: "possible, not proved",
      headline: (variant: string) => `May be ${variant}; not proved`,
      sentence: (_variant: string) =>
        "Nothing observed speaks against this variant, and nothing rules out every other.",
    },
    contradicted: {
      short: "contradicted",
      headline: (variant: string) => `The evidence speaks against ${variant}`,
      sentence: (variant: string) =>
        `It is catalogued as ${variant}, and what was observed does not agree with that.`,
    },
  },
  inputs: {
    unknown: "not known",
    names: {
      sightings: "sightings",
      distinct: "examples",
      once: "seen once",
      twice: "seen twice",
      lists: "lists",
      firstList: "on the first",
      secondList: "on the second",
      both: "on both",
      survivors: "survivors",
      made: "made",
      low: "lowest",
      high: "highest",
      page: "page",
      place: "place in the source",
      ranges: "serial ranges",
      offers: "offers",
      years: "years watched",
      firstYear: "first year",
      lastYear: "last year",
      atLeastAsComplete: "at least as complete",
      compared: "compared",
      certain: "certain of this one",
      share: "share",
      having: "have it",
      recorded: "recorded",
      reaching: "reach it",
      leftOut: "left out",
      destroyed: "known to be destroyed",
      nameless: "rows with neither serial nor example",
      offersOfAny: "offers of any outfit",
      offersRecorded: "of them of outfits sufficiently recorded",
    } as Readonly<Record<string, string>>,
    range: ({
      prefix,
      from,
      to,
      after,
      before,
      distinct,
      largest,
      fromEnd,
      span,
    }: Readonly<
      Record<"from" | "to" | "after" | "before" | "distinct" | "largest" | "fromEnd" | "span", string | null>
    > & {
      readonly prefix: string;
    }) =>
      [
        `${prefix} ${from ?? "?"} to ${to ?? "?"}`.trim(),
        after && `, after ${after}`,
        before && `, before ${before}`,
        distinct && ` (${distinct} seen`,
        largest && `, ${distinct === "1" ? "" : "the last of them "}number ${largest} of the range`,
        fromEnd && `, ${distinct === "1" ? "" : "the first of them "}number ${fromEnd} from its end`,
        span && span !== "1" && `, within ${span} numbers`,
        distinct && ")",
      ]
        .filter(Boolean)
        .join(""),
  },
  figure: {
    basis: "basis",
    notKnown: "Not known",
    method: "Method",
    interval: (confidence: string) => `Interval at a confidence of ${confidence}`,
    /** The same within a sentence. */
    intervalAside: (confidence: string) => `interval at a confidence of ${confidence}`,
    /** Of a confidence, where it is no more than a bound. */
    atLeast: (confidence: string) => `at least ${confidence}`,
    from: "From",
    sources: "Sources",
    caveats: "Bear in mind",
    changes: "What would change it",
  },
  completeness: {
    title: "How complete",
    weighted: "By weight",
    counted: "By count",
    units: (low: string, high: string, expected: string) =>
      `${low === high ? low : `${low} to ${high}`} of ${expected} ${expected === "1" ? "unit" : "units"}`,
    /** Of units among which substitutes are counted. */
    withSubstitutes: (units: string) => `${units}, counting a substitute as far as the reference accepts it`,
    apartByWeight: (units: string, share: string) => `${units}; ${share} by weight`,
    consumables: "Consumables",
    optional: "Optional things",
    weightMeans:
      "By weight: each part counts for as much as the reference says that it matters, however heavy it is.",
    apart: "Consumables and optional things are counted apart and never lower the figures above.",
    level: "Level reached",
    levelSure: (level: string) => `${level}, for certain`,
    levelPossible: (level: string) => `${level}, if every doubt is resolved in its favour`,
    levelBoth: (level: string) => level,
    noLevel: "none of the levels of the reference",
    levelNone: "no level for certain",
    noReference: "The reference lists no principal or issued part, so completeness has no meaning here.",
    noneIssued: "It was issued none of the principal or issued parts, so completeness has no meaning here.",
    method: "How completeness is counted",
    plotLabel: "Completeness by weight",
  },
  catalogue: {
    title: "The outfits",
    description: (count: number) => `Every outfit of this catalogue: ${plural(count, "entry", "entries")}.`,
    lead: (count: number) =>
      `${capital(inWords(count))} ${count === 1 ? "outfit" : "outfits, each"} gone through part by part. Completeness is given by weight: what is certain, and what is possible.`,
    outfit: "Outfit",
    held: "Catalogued as",
    verdict: "Evidence",
    completeness: "Complete",
    level: "Level for certain",
    rank: "Place",
    status: "Standing",
    rankOf: (place: number, of: number) => `${inDigits(place)} of ${inDigits(of)}`,
    rankNote:
      "Place: by completeness, the most complete first, among the outfit itself and all other examples of its variant that are recorded part by part. An outfit that is not itself recorded part by part is placed among them by what is certain of it.",
    empty: "There is no entry yet.",
    arrangement: "Shown as",
    asList: "a list",
    asPlates: "plates",
  },
  finder: englishFinder,
  compare: englishCompare,
  photographs: englishPhotographs,
  item: {
    description: (variant: string, verdict: string, complete: string | null) =>
      `${variant}: ${verdict}${complete === null ? "" : `; ${complete} complete by weight`}.`,
    heldToBe: "catalogued as",
    serial: "Serial",
    set: "Set",
    issued: "Issued",
    examined: "Examined",
    updated: "Entry revised",
    status: "Standing",
    price: "Asked",
    brief: "In brief",
    what: "What it is",
    howComplete: "How complete",
    howRare: "How rare",
    whatMissing: "What is missing",
    place: (place: string, of: number, sharing: string | null) =>
      of === 1
        ? "no other is recorded part by part, to compare its completeness with"
        : `in completeness, place ${place}${sharing === null ? "" : `, shared by ${sharing},`} of ${inDigits(of)}: this one and the ${of === 2 ? "one other" : plural(of - 1, "other")} recorded part by part`,
    onlyVariant: "What was observed fits this variant, the only one of its family on record here.",
    nothingMissing: "Nothing",
    nothingExamined: "Nobody has looked for its parts",
    nothingIssued: "Nothing: it was issued no part",
    nothingMissingOfExamined: "Nothing, as far as it was examined",
    ofOtherSet: (count: number) =>
      `${plural(count, "part")} ${count === 1 ? "bears" : "bear"} another set's number`,
    inDoubt: (count: number) => `${plural(count, "part")} in doubt or not examined`,
    andMore: (count: number) => `${inDigits(count)} more`,
    handle: "Before handling",
    photographs: "Photographs",
    plan: "Case plan",
    planLabel: (title: string) => `Case plan of ${title}: each part with its state`,
    planNoteByWeight:
      "Each compartment is a part and leads to its line in the list of parts. Its size follows the weight that the reference gives the part.",
    planNoteDrawn:
      "Each compartment is a part, where the reference draws it, and leads to its line in the list of parts.",
    planNoteLoose: "What it does not draw lies along the front, by weight.",
    missing: "What is not there, or not certain",
    lists: {
      missing: "Missing",
      partial: "Incomplete",
      substitutes: "Substitute in place",
      unverified: "There, not established to be right",
      unexamined: "Not examined",
      otherSet: "Bears another set's number",
      surplus: "More than were issued",
      extras: "Not in the reference",
      assembled: "From another case",
    },
    setNumber: (set: string, bearer: string | null) =>
      bearer === null ? `set ${set}` : `set ${set}, the number of ${bearer}`,
    allThere: "Every part is there, and every part was examined.",
    noPartIssued: "It was issued none of the parts of the reference.",
    unitsOf: (found: string, expected: string) => `${found} of ${expected}`,
    /** Of several units of a part those that are told of, where the others are not so. */
    someUnits: {
      missing: (some: string, _count: number) => `${some} gone`,
      substitutes: (some: string, _count: number) => `${some} replaced`,
      unverified: (some: string, _count: number) => `${some} unverified`,
      unexamined: (some: string, _count: number) => `${some} not examined`,
    },
    foundIn: (share: string) => `found in ${share} of recorded examples`,
    assembledNote:
      "Moving parts from one case to another changes what an object is. These came from elsewhere.",
    rarity: "How rare",
    figuresNote: "For each figure, first the best estimate, then the range that the record allows.",
    rarityHere: "One as complete as this",
    rarityVariant: (variant: string) => `${variant}, in any state`,
    parts: "List of parts",
    part: "Part",
    state: "State",
    units: "Units",
    marks: "Marks and serial",
    remarks: "Condition and remarks",
    recorded: "Found in",
    recordedNote:
      "Found in: the share of recorded examples that have the part in full, with its interval and the number recorded. Method:",
    notRecorded: "not recorded",
    ofRecorded: (having: string, recorded: string) => `${having} of ${recorded}`,
    matching: {
      matching: () => "numbers match",
      partial: () => "not every expected mark was found",
      "other-set": (set: string) => `bears the number of set ${set}`,
      unread: () => "",
    },
    offSheet: {
      sentence: (left: readonly string[]) => `Not on this sheet, but at the address above: ${list(left)}.`,
      photographs: "further photographs",
      recording: "film or sound",
      features: "what was observed, feature by feature, and held against every variant",
      completing: "what would make it whole",
      others: "the outfits most like it",
      revisions: "what was changed in this entry",
    },
    wants: "What would make it whole",
    wantsNote:
      "The part that would add most comes first. What it adds is counted by weight; what is counted apart adds nothing, and comes last.",
    wantsUnits: "Wanted",
    wantsAdds: "Adds",
    neededFor: (levels: string) => `needed for ${levels}`,
    spares: "Spare here",
    nearest: "Most alike",
    nearestNote: "By features and parts known of both; what is not known of either is left out.",
    example: "Example",
    likeness: "Alike",
    comparedOn: "Compared on",
    expectedMarks: (marks: string) => `should bear ${marks}`,
    serialIs: (serial: string) => `no. ${serial}`,
    several: (count: number, text: string) => `${inWords(count)} ${text}`,
    stateUnits: (count: number, state: string) => `${inDigits(count)} ${state}`,
    model: (model: string) => `model: ${model}`,
    packed: (how: string) => how,
    repairs: (repairs: string) => `repaired: ${repairs}`,
    belongsSpare: "spare",
    evidence: (evidence: string) => `evidence: ${evidence}`,
    fromElsewhere: "from another case",
    caution: "caution",
    papers: "Labels and papers",
    dating: "Dating",
    serialLabel: (variant: string) => `The serial of this outfit among those of ${variant} that were seen`,
    serialNote: "A stroke is a serial of its variant that was seen.",
    datingIssued: "Issued",
    datingSerial: "By its serial, made",
    datingNone: "No part bears a serial whose year is known.",
    datingVerdicts: {
      fits: "fits the time of issue",
      earlier: "earlier: from stock, which was normal",
      later: "later than the issue: a strong doubt",
      undated: "year not known",
      outside: "serial outside every range known for this part",
    },
    made: (when: string) => `made ${when}`,
    custody: "Custody",
    custodyLabel: "Custody over the years, with its gaps",
    documented: (documented: number, lifetime: number | null) => {
      const are = documented === 1 ? "is" : "are";
      if (lifetime === null) return `${plural(documented, "calendar year")} ${are} documented.`;
      if (lifetime === 1) return `Its one calendar year is ${documented === 1 ? "" : "not "}documented.`;
      return `${inDigits(documented)} of its ${plural(lifetime, "calendar year")} ${are} documented.`;
    },
    gap: (from: string, to: string, { shortest, longest, isSure }: GapLength) => {
      const least = `${shortest} ${shortest === "1" ? "year" : "years"}`;
      const length = isSure ? least : `at least ${least}${longest === null ? "" : `, at most ${longest}`}`;
      return `No custody is recorded between ${from} and ${to}: ${length}.`;
    },
    noCustody: "Nothing is recorded of where it has been.",
    from: (who: string) => `from ${who}`,
    to: (who: string) => `to ${who}`,
    at: (place: string) => `at ${place}`,
    undated: "date not published",
    cautions: "Cautions",
    cautionsNote:
      "Read these before anything is opened, unpacked or cleaned. Local rules and licensed practice come first.",
    concerns: "Concerns",
    identification: "What the identification rests on",
    observed: "Observed",
    expected: "The variant has",
    contradictionSerial: "Its serial lies outside every range known for this variant.",
    contradiction: (feature: string, observed: string, expected: string) =>
      `${feature}: ${observed}, where the variant has ${expected}`,
    reservation: (variant: string) =>
      `Counted against ${variant}, which the evidence contradicts: it holds only if the outfit is one after all.`,
    fits: (variants: string) => `Fits ${variants}`,
    fitsNone: "Fits no variant of its family",
    candidates: "Compared with every variant of the family",
    candidate: "Variant",
    speaksAgainst: "Speaks against it",
    nothingAgainst: "nothing",
    serialWord: "serial",
    lookNext: "Where to look next",
    serialTells: "It alone tells them apart: no serial lies in the ranges of two of those that remain.",
    lookNextNote: "The most telling first.",
    notObserved: "not looked at",
    comparison: "Other outfits of this variant here",
    allOfVariant: "All outfits of this variant",
    sources: "Sources of this entry",
    data: "Data",
    dataNote: "Every figure of this page with all its digits, inputs and sources:",
    materials: "Materials",
    measurements: "Measurements",
    confidential: "For the owner alone",
    objectId: "Object ID record",
    objectIdNote:
      "By the standard of the Getty Information Institute (1999), kept by ICOM: what police, insurers and customs ask for when an object is gone. Print it, and keep it apart from the object.",
    objectIdFields: {
      photographs: "Photographs",
      type: "Type of object",
      materials: "Materials and techniques",
      measurements: "Measurements",
      markings: "Inscriptions and markings",
      distinguishing: "Distinguishing features",
      title: "Title",
      date: "Date or period",
      maker: "Maker",
      description: "Description",
    },
    objectIdLacks: (fields: string) => `It still lacks: ${fields}.`,
    objectIdWhole: "It lacks nothing.",
    storage: "Kept",
    paid: "Paid",
    notes: "Description",
    legend: "Numbered in the photograph",
    reference: "Reference of the variant",
    or: " or ",
  },
  displayCard: {
    description: (title: string) => `A sheet to print and to stand beside the piece: ${title}.`,
    term: "Display",
    link: "A card to print and stand beside it",
    back: "Back to the entry",
    paper: "One sheet of A5, upright",
    complete: (share: string, units: string | null) =>
      `${share} complete by weight${units === null ? "" : `; ${units}`}`,
    unknown: "not known",
    cautions: "See the entry for cautions.",
    assembled: (parts: string) => `From another case: ${parts}.`,
  },
  variant: {
    description: (name: string, issued: string | null) =>
      `${name}${issued === null ? "" : `, issued ${issued}`}: what was issued, how many were made and how many survive.`,
    extends: "Described as differing from",
    partFound: (part: string) => `${part}: share of the recorded examples that have it in full`,
    ofLevel: (level: string, label: string) => `${level}, ${inText(label)}`,
    issued: "Issued",
    family: "Family",
    brief: "In figures",
    class: "Class on the scale",
    classSpan: (low: string, high: string) => (low === high ? low : `from ${low}, to ${high}`),
    classNone: "outside the scale",
    classWithheld: "not known, since the number of survivors is not",
    scaleSource: (name: string, citation: string | null) =>
      citation === null ? name : `${name} (${citation})`,
    /** `last`: when the last was, as in a sentence. */
    sightings: (
      {
        sightings,
        distinct,
        once,
        twice,
        nameless,
      }: Readonly<Record<"sightings" | "distinct" | "once" | "twice" | "nameless", number>>,
      last: string | null,
    ) => {
      if (sightings === 0) return "No sighting is recorded.";
      const of = plural(distinct, distinct > 1 && nameless === 0 ? "different example" : "example");
      const apart =
        distinct === 1 || nameless === 0
          ? ""
          : ` ${inDigits(nameless)} of the sightings ${nameless === 1 ? "names neither serial nor example, and counts as an example of its own" : "name neither serial nor example, and count as examples of their own"}.`;
      const until = last === null ? "" : sightings === 1 ? `, ${last}` : `, the last ${last}`;
      const often =
        distinct === 1 ? "" : `; ${inDigits(once)} of them seen once, ${inDigits(twice)} seen twice`;
      return `${plural(sightings, "sighting")} of ${of}${until}${often}.${apart}`;
    },
    offersLeft: (offers: number) =>
      `${plural(offers, "offer")} of the log ${offers === 1 ? "is" : "are"} not counted as offered: ${offers === 1 ? "its date is" : "their dates are"} not certain to lie within the years watched.`,
    seeLog: "The log of sightings",
    features: "How it is known",
    feature: "Feature",
    found: "Found with",
    look: "Where to look",
    parts: "What was issued",
    partsNote: (units: number, kinds: number) => `${plural(units, "unit")} of ${plural(kinds, "kind")}.`,
    part: "Part",
    quantity: "Issued",
    standing: "Standing",
    weight: "Weight",
    marks: "Marks",
    found2: "Found in",
    planLabel: (name: string) => `Case plan of ${name}, as issued`,
    plan: "Case plan",
    rates: "What is still found",
    ratesLabel: (name: string) => `Share of the recorded examples of ${name} that have each part`,
    likeness: "How alike",
    likenessLabel: (name: string) => `How like one another the examples of ${name} are`,
    serials: "Serials",
    serialsLabel: (name: string) => `Serials of ${name} seen, along the ranges issued`,
    range: "Numbers",
    rangeMade: "Made",
    rangeSource: "Source",
    rangeFrom: (prefix: string, from: number | null, to: number | null) =>
      from === null && to === null
        ? `${prefix && `${prefix}…, `}neither end known`
        : `${from === null ? "(start not known)" : prefix + from} to ${to === null ? "(end not known)" : prefix + to}`,
    skipped: "some numbers left unused",
    page: placeInSource,
    noSerials: "No range of serials is known.",
    partSerials: "Serials of the parts",
    partSerialsNote: "By these a part put in later can be told from one that was there at issue.",
    levels: "Levels of completeness",
    levelNeeds: (count: number) => `needs ${plural(count, "kind of part", "kinds of part")}`,
    levelParts: "The parts it needs",
    reallocation: "What could be completed here",
    reallocationNote:
      "Only spare parts are moved, and only between outfits whose variant nothing speaks against. One that bears the number of another set goes to that set where it is wanted there; with all others the gain is the largest possible. Moving parts changes what an object is: an outfit completed in this way is called assembled wherever it is shown.",
    moved: "Part",
    movedUnits: "Units",
    movedFrom: "From",
    movedTo: "To",
    wouldRise: (before: string, after: string) => `certain ${before}, would be ${after}`,
    items: "Examples in this catalogue",
    sources: "Sources",
    log: "Sightings",
    logLabel: (name: string) => `Sightings of ${name} over the years`,
    siblings: "Its family",
    none: "none",
  },
  family: {
    title: "Families",
    description: "The families of outfits in this catalogue, and the variants of each.",
    maker: "Maker",
    comparison: "The variants side by side",
    differs: "Only what differs is shown.",
    alone: "What the variant has",
    rest: (count: number) => `What they have in common: ${plural(count, "row")}`,
    featuresOf: "Features",
    partsOf: "Parts",
    row: "Feature or part",
    none: "none",
    unstated: "not stated",
    key: "Key",
    keyNote: "Begin at 1; each answer leads on.",
    bySerial: "A serial alone tells them apart: none lies in the ranges of two of them.",
    smallest: "The fewest features that tell them apart, with the least trouble:",
    proven: "Proven: no set is smaller, or less trouble.",
    notProven: "Not proven smallest: the search was cut short, and this is the best that it met.",
    otherSets: (count: number) =>
      count === 1 ? "One other set does as well" : `${inDigits(count)} other sets do as well`,
    notAllListed: (count: number) => `There are more of them than the ${inDigits(count)} that are listed.`,
    unseparated: "No feature is sure to separate",
    mayBeSeparated: (pair: string, features: string) => `${pair} (perhaps ${features})`,
    serialsLabel: (name: string) => `Serials of ${name} seen, along the ranges issued of each variant`,
    serialsNote:
      "A stroke is a serial that was seen. Ranges of one prefix stand on one scale, where that can be drawn.",
    features: "What tells them apart, and where to look",
    known: "Known of each",
    variant: "Variant",
    issued: "Issued",
    seen: "Seen",
    here: "Here",
    sources: "Sources",
    cell: (quantity: string, standing: string) => (standing === "" ? quantity : `${quantity}, ${standing}`),
  },
  articles: {
    title: "Articles",
    description: "Reference articles of this catalogue.",
    by: (authors: string) => `By ${authors}`,
    revised: (date: string) => `Revised ${date}`,
    none: "There is no article yet.",
    others: "Other articles",
    note: "note",
    notes: "What the figures rest on",
    notesLead: "Each figure in the text is computed from the records. Its number there leads here.",
    back: (number: number, place: number) =>
      `back to note ${number} in the text${place > 1 ? `, place ${place}` : ""}`,
    bibliography: "Sources cited",
    about: "This article",
    outfits: (count: number) =>
      count === 0
        ? "No outfit in this catalogue matches this."
        : `${plural(count, "outfit")} of this catalogue, the most complete first`,
  },
  sources: {
    title: "Sources",
    description: "The bibliography: every source, and where it is cited.",
    lead: "Everything that an entry, a figure or a sighting rests on, and where it is used.",
    cited: "Cited in",
    notCited: "Not cited.",
    andOthers: (name: string) => `${name} et al.`,
    andMore: (count: number) => `${inDigits(count)} more`,
    /** What stands within something else, with the point that ends it. */
    inQuotes: (title: string) => `“${ended(title)}”`,
    inside: "In",
    editedBy: (editors: string) => `edited by ${editors}`,
    /** Where nobody is named as its author. */
    asEditors: (editors: string, count: number) => `${editors} (${count === 1 ? "ed." : "eds"})`,
    accessed: (date: string) => `accessed ${date}`,
    pages: placeInSource,
    sightings: (count: number, variant: string) => `${plural(count, "sighting")} of ${variant}`,
    none: "There is no source yet.",
    types: {
      manuscript: "manuscript",
      report: "report",
      dataset: "register",
      map: "map",
      patent: "patent",
      thesis: "thesis",
      personal_communication: "letter",
      "article-newspaper": "newspaper",
    } as Readonly<Record<string, string>>,
  },
  sightings: {
    title: "Sightings",
    titleOf: (variant: string) => `Sightings of ${variant}`,
    description: "The log of recorded examples, on which every figure of rarity rests.",
    descriptionOf: (variant: string, count: number) =>
      `${plural(count, "recorded sighting")} of ${variant}, as published.`,
    lead: "Each time that an example was offered, described or named. What is counted, and how often one turns up again, decides what can be said of those that nobody has seen.",
    variant: "Variant",
    count: "Sightings",
    distinct: "Examples",
    once: "Seen once",
    twice: "Seen twice",
    seen: "Seen",
    example: "Example",
    kind: "As",
    kinds: { offer: "an offer", record: "a record", mention: "a mention" },
    state: "What was there",
    condition: "Condition",
    price: "Price seen",
    currencyUnknown: (amount: string) => `${amount}, currency not recorded`,
    source: "Source",
    present: "with",
    absent: "without",
    allOthers: { present: "all the rest", absent: "all the rest" },
    all: { present: "everything", absent: "everything" },
    unnamed: "not named",
    relisted: "offered again",
    none: "No sighting is recorded.",
    itemsToo: "The outfits of this catalogue count as sightings too; they are not repeated here.",
    counted:
      "The outfits of this catalogue are counted among the sightings; the same offer listed again is not.",
    prices: "A price seen is what a list printed. It is no appraisal.",
    watching: (years: string) => `Offers were watched for: ${years}.`,
    list: (list: string) => `list: ${list}`,
    toVariant: "The figures made from them",
    caption: "The log, earliest first",
  },
  wants: {
    title: "What is wanted",
    description: "What the outfits at hand lack, what they have to spare, and what could complete what.",
    lead: "What the outfits at hand lack, by what each part would add, and what they have to spare. Those sold, held for reference or gone are left out. Things used up and optional things are sought where a level of completeness needs them, and come last.",
    wanted: "Wanted",
    spare: "To spare",
    spareNote: "Beyond what their own cases need.",
    outfit: "Outfit",
    units: "Units",
    nothingWanted: "Nothing is known to be missing.",
    nothingSpare: "There is nothing to spare.",
    doubtNote:
      "Contradicted: counted against a variant that the evidence speaks against. It holds only if the outfit is one after all.",
  },
  fields: {
    title: "Every field of a record",
    description: "What may be written in each file of a collection, and what check reports of it.",
    lead: "For those who write for this catalogue. A dot leads into a field, [] stands for each entry of a list, and ID for an id that you choose. What is not marked as needed may be left out.",
    contents: "The kinds of record",
    /** The kinds of record by their ids; one that is not here keeps the name of its schema. */
    records: {
      collection: "Collection",
      family: "Family",
      variant: "Variant reference",
      item: "Item",
      sighting: "Sighting",
      source: "Source",
      article: "Article",
      hazard: "Hazard",
      scale: "Scale",
    } as Readonly<Record<string, string>>,
    required: "needed",
    problems: "What check reports",
    problemsNote: "Errors keep the site from being built; warnings are for you to judge.",
    error: "error",
    warning: "warning",
    link: "Every field of a record",
    /** What a field takes. */
    takes: {
      /** The forms that records share, by their names in the schemas. */
      forms: {
        id: "an id",
        line: "one line of text",
        text: "text",
        name: "a name or number",
        date: "a date (EDTF)",
        names: "a name or number, or a list of them",
        privateFields: "a list of field names",
      },
      types: { ...typeNames, object: "fields of its own" },
      anything: "anything",
      oneOf: (choices: readonly string[]) => disjunction.format(choices),
      listOf: (each: string) => `a list, each ${each}`,
      atLeast: (number: number) => `at least ${number}`,
      atMost: (number: number) => `at most ${number}`,
      within: (what: string, bounds: readonly string[]) => `${what}, ${conjunction.format(bounds)}`,
    },
  },
  methods: {
    title: "Methods",
    description: "Every method behind the figures of this site: formula, source, assumptions and an example.",
    lead: "Nothing here is an opinion. Each figure comes from the records by one of these methods; where the records do not support it, it is withheld and the reason is given.",
    source: "Source",
    assumes: "Takes for granted",
    example: "An example from this catalogue",
    worked: "An example, invented",
    exampleOf: (label: string) => `${label}:`,
    gives: "gives",
    /** Below a letter in a formula: the lower and the upper end of its interval. */
    low: "low",
    high: "high",
    symbols:
      "z is the normal quantile of the confidence, α is 1 less the confidence, C(a, b) the number of ways to choose b out of a.",
    contents: "The methods",
    counts: "What is counted",
    estimates: "What is estimated",
    rounding:
      "Pages round for reading: to whole examples and whole percent; of a completeness with two ends, the certain one down and the possible one up; years and rates to two figures, but to no more than two decimals; a wait of less than two years to whole months. The data files keep every digit.",
    completeness: {
      name: "Completeness",
      asks: "What is certainly there, and what may be?",
      formula:
        "For each part of quantity q and weight w: a units are present, s are substitutes, each by its credit, u are unverified, x were not examined; high takes for a substitute of which the model is not recorded the best credit that the reference accepts. The weighted figure is summed over principal and issued parts; the counted one is Σ q·low to Σ q·high, of Σ q units.",
      worked:
        "Four parts of weights 5, 3, 1 and 1, one unit of each: the first is present, the second was not examined, the third is present, the fourth is gone. By weight (5 + 1) / 10 to (5 + 3 + 1) / 10, which is 60% to 90%; by count 2 to 3 of 4 units.",
      source:
        "Worst-case bounds under missing data: Manski (1989), Journal of Human Resources 24: 343–360; Manski (2003), Partial Identification of Probability Distributions.",
      assumes:
        "Nothing. What is unknown is neither counted nor struck out. Parts never issued to an example leave every sum; things used up and optional things are counted apart.",
    },
    identification: {
      name: "Identification",
      asks: "Does the object agree with its label?",
      formula:
        "Every variant of the family is compared with what was observed. A serial that cannot be read in full is compared with no range. Contradicted: something observed speaks against the variant claimed. Confirmed: something agrees, nothing contradicts, and every other variant is contradicted. Otherwise possible; what to look at next is ranked by the expected entropy H of the n variants that remain, once the feature has been looked at: variant i is found with k of its values, and the sums for a value v are over the variants found with it. The key of a family asks for the smallest set of features that separates every pair of variants that can be separated: least trouble first, then fewest (F, its features, each with its effort e; V, the values of a variant). Of these it asks first for what is easiest to see, and among equals for what tells most. The search is exact and lists every such set. It has proved its result for every family of up to 20 variants and 40 features that it was tried on, and for all but the hardest of 30 and 60; where it stops before the proof, the page says that the set is not proven smallest.",
      source:
        "Common practice; the ranking after Shannon (1948), Bell System Technical Journal 27: 379–423; the smallest set: Garey and Johnson (1979), Computers and Intractability, problem SP6; Payne and Preece (1980), Journal of the Royal Statistical Society A 143: 253–292.",
      worked:
        "Four variants remain. An arc that is silver on two and platinum on two leaves ½ · log₂ 2 + ½ · log₂ 2 = 1 bit of doubt; a plate that one alone has leaves ¼ · log₂ 1 + ¾ · log₂ 3 = 1.19. The arc is asked for first. Five variants whose values of five features are 11001, 01101, 00111, 10011 and 00000 need three of the features: two, of two values each, tell four apart at most.",
      assumes: "The reference lists every value with which a variant is found.",
    },
    dating: {
      name: "Dating",
      asks: "Does every part belong to the time of issue?",
      formula:
        "A serial gives the dates m of its range; d are those of issue. Each unit of a part is dated by its own; of the part as a whole the data give what raises the gravest doubt. Later, the first formula: its earliest date lies after the latest of issue. Earlier, the second: its latest lies before the earliest of issue. Dates marked as uncertain or approximate are taken as written.",
      worked:
        "Issued 1931/1938. A lamp from a range of 1940/1945 is later, since 1940 lies after 1938; one of 1926/1930 is earlier, since 1930 lies before 1931; one of 1930/1932 fits.",
      source: "Extended Date/Time Format, ISO 8601-2:2019.",
      assumes: "The ranges are right as their sources give them.",
    },
    custody: {
      name: "Custody",
      asks: "How much of its life is documented?",
      formula:
        "Calendar years Y in which an event lies, whenever within its dates, over those from first issue, t₀, to the last event, t₁. The examination is one of the events. A gap runs from the latest end a of one custody to the earliest start b of the next; at most it is as long as their dates allow. Dates marked as uncertain or approximate are taken as written.",
      worked:
        "Issued 1931, in service 1931/1946, had since 2001 (2001/..), examined in 2026: 16 + 26 = 42 of 2026 − 1931 + 1 = 96 calendar years. One gap: from the end of 1946 to the beginning of 2001, 54 years; from the beginning of 1946 to the end of 2001, at most 56.",
      source: "Calendar arithmetic.",
      assumes:
        "An event with two dates lasted from the one to the other, one without an end until the last day that is known; of one without a beginning only the end counts. An event in some year of several counts as one year.",
    },
    likeness: englishCompare.method,
  },
  home: {
    description: (title: string) => `${title}: a catalogue of cased outfits.`,
    openNote: (title: string, complete: string, hasConsumables: boolean) =>
      `${title}: ${complete} complete by weight${hasConsumables ? "; what was meant to be used up is counted apart" : ""}. Each compartment is a part.`,
    outfits: "The outfits",
    completeByWeight: "complete by weight, from what is certain to what is possible",
    allOutfits: "All outfits, to compare",
    families: "The families and their variants",
    articles: "To read",
    basis: "What it rests on",
    counts: (items: number, variants: number, sightings: number, sources: number) =>
      `${plural(items, "outfit")} of ${plural(variants, "variant")}, ${plural(sightings, "sighting")} in the log, ${plural(sources, "source")}.`,
    survive: (phrase: string) => `${phrase} ${phrase === "1" ? "survives" : "survive"}`,
    surviveUnknown: "survivors not known",
    conflict: (survive: string, conflict: string) => `${survive}: ${conflict}`,
    conflicts: {
      "estimate-exceeds-made": "more than were made",
      "known-exceed-made": "more are known than were made",
    },
  },
  cite: {
    title: "Cite this page",
    forPrograms: "for programs: BibTeX and CSL-JSON",
    bibtex: "BibTeX",
    csl: "CSL-JSON",
    version: (version: string) => `Version ${version}`,
    versionNote:
      "The version is the beginning of the SHA-256 of this page's own data file. It also names the versions of the figures of variants and of the photographs, so that the same version means the same record, figures and pictures.",
    revisions: "Revisions",
  },
  missing: {
    title: "Not in this catalogue",
    description: "There is no page at this address.",
    text: "There is no page at this address. It may have been renamed, or the address may have lost a letter on its way.",
    ways: "From here",
  },
};

export type PageWords = typeof englishPages;
