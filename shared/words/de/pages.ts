import { citedPages } from "../cited-pages.ts";
import { countedIn, digitsIn } from "../counted.ts";
import type { PageWords } from "../en/pages.ts";
import { endOf } from "../ended.ts";
import { germanCompare } from "./compare.ts";
import { germanFinder } from "./finder.ts";
import { germanPhotographs } from "./photographs.ts";

const counted = countedIn("de");
const inDigits = digitsIn("de");

const disjunction = new Intl.ListFormat("de", { style: "long", type: "disjunction" });
const conjunction = new Intl.ListFormat("de", { style: "long", type: "conjunction" });
const list = (names: readonly string[]): string => conjunction.format(names);

/** What is counted is feminine or neuter here, so one is "eine" or "ein". */
const spoken: readonly string[] = [
  "keine",
  "eine",
  "zwei",
  "drei",
  "vier",
  "fünf",
  "sechs",
  "sieben",
  "acht",
  "neun",
];
const inWords = (number: number): string => spoken[number] ?? inDigits(number);
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Within a sentence only the first word of a label, which is no noun, loses its capital; a name keeps it. */
const inText = (label: string): string => label.charAt(0).toLowerCase() + label.slice(1);
const teile = (count: number) => counted(count, "Teil", "Teile");
const nachweise = (count: number) => counted(count, "Nachweis", "Nachweise");

/** What names itself, a folio or a plate, needs no name from us. */
const placeInSource = (place: string): string => (citedPages(place) === null ? place : `S.\u00a0${place}`);

/** What the pages say of themselves in German. */
export const germanPages: PageWords = {
  list,
  capital,
  inText,
  nameInText: (name) => name,
  quotes: "„“‚‘",
  site: {
    skip: "Zum Text",
    contents: "Inhalt",
    trail: "Wo diese Seite steht",
    outfits: "Garnituren",
    families: "Familien",
    articles: "Aufsätze",
    sightings: "Nachweise",
    sources: "Quellen",
    methods: "Verfahren",
    home: "Titelblatt",
    data: "Daten",
    enquiries: "Anfragen",
    feed: "Neue und geänderte Einträge",
    allData: "Der ganze Katalog als Daten",
    table: "Die Garnituren als Tabelle (CSV)",
    privateCopy:
      "Das eigene Exemplar des Eigentümers. Es enthält, was nicht zur Veröffentlichung bestimmt ist.",
    made: "Aus den Einträgen berechnet, als diese Seiten entstanden.",
  },
  states: {
    present: "vorhanden",
    incomplete: "unvollzählig",
    "partly-examined": "teils gesehen",
    substitute: "ersetzt",
    unverified: "ungesichert",
    unexamined: "ungeprüft",
    absent: "fehlt",
    "not-issued": "nie ausgegeben",
  },
  statesOfSeveral: { absent: "fehlen", substitute: "ersetzt" },
  standings: {
    core: "Hauptteil",
    issued: "ausgegeben",
    consumable: "Verbrauchsmaterial",
    optional: "wahlweise",
  },
  assembled: "zusammengesetzt",
  statuses: {
    collection: "in der Sammlung",
    offered: "angeboten",
    sold: "verkauft",
    reference: "zum Vergleich geführt",
    lost: "verschollen",
    stolen: "als gestohlen gemeldet",
    destroyed: "zerstört oder aufgelöst",
  },
  fates: {
    lost: {
      headline: "Verschollen",
      said: ["Der Verbleib ist unbekannt. Diese Seite gibt wieder, was zuvor davon bekannt war."],
    },
    stolen: {
      headline: "Als gestohlen gemeldet",
      said: [
        "Wird es Ihnen angeboten, verständigen Sie bitte die Polizei, die den Stand der Sache kennt, oder über diesen Katalog den Eigentümer.",
        "Polizei und Versicherer fragen nach einem Datenblatt nach Object ID, dem Standard des Getty, den jetzt ICOM pflegt; wer diesen Katalog herausgibt, kann es erstellen.",
      ],
    },
    destroyed: {
      headline: "Zerstört oder aufgelöst",
      said: ["Als Garnitur besteht es nicht mehr. Diese Seite gibt wieder, was zuvor davon bekannt war."],
    },
  },
  efforts: ["", "auf einen Blick", "in der Hand", "nach dem Zerlegen"],
  verdicts: {
    confirmed: {
      short: "bestätigt",
      headline: (variant) => `Bestätigt: ${variant}`,
      sentence: () => "Was beobachtet wurde, passt zu dieser Variante und zu keiner anderen ihrer Familie.",
    },
    consistent: {
      short: "möglich, nicht bewiesen",
      headline: (variant) => `Möglich, nicht bewiesen: ${variant}`,
      sentence: () =>
        "Nichts Beobachtetes spricht gegen diese Variante, und nichts schließt alle anderen aus.",
    },
    contradicted: {
      short: "im Widerspruch",
      headline: (variant) => `Der Befund spricht dagegen: ${variant}`,
      sentence: (variant) =>
        `Katalogisiert ist es als ${variant}; was beobachtet wurde, stimmt damit nicht überein.`,
    },
  },
  inputs: {
    unknown: "nicht bekannt",
    names: {
      sightings: "Nachweise",
      distinct: "Exemplare",
      once: "einmal gesehen",
      twice: "zweimal gesehen",
      lists: "Listen",
      firstList: "auf der ersten",
      secondList: "auf der zweiten",
      both: "auf beiden",
      survivors: "erhalten",
      made: "gefertigt",
      low: "untere Grenze",
      high: "obere Grenze",
      page: "Seite",
      place: "Stelle in der Quelle",
      ranges: "Nummernreihen",
      offers: "Angebote",
      years: "beobachtete Jahre",
      firstYear: "erstes Jahr",
      lastYear: "letztes Jahr",
      atLeastAsComplete: "mindestens so vollständig",
      compared: "verglichen",
      certain: "von diesem sicher",
      share: "Anteil",
      having: "haben es",
      recorded: "erfasst",
      reaching: "erreichen sie",
      leftOut: "weggelassen",
      destroyed: "nachweislich zerstört",
      nameless: "Zeilen ohne Seriennummer und ohne Exemplar",
      offersOfAny: "Angebote aller Garnituren",
      offersRecorded: "davon von hinreichend erfassten Garnituren",
    },
    range: ({ prefix, from, to, after, before, distinct, largest, fromEnd, span }) =>
      [
        `${prefix} ${from ?? "?"} bis ${to ?? "?"}`.trim(),
        after && `, nach ${after}`,
        before && `, vor ${before}`,
        distinct && ` (${distinct} nachgewiesen`,
        largest && `, die ${distinct === "1" ? "" : "letzte davon die "}${largest}. der Reihe`,
        fromEnd && `, die ${distinct === "1" ? "" : "erste davon die "}${fromEnd}. von ihrem Ende her`,
        span && span !== "1" && `, innerhalb von ${span} Nummern`,
        distinct && ")",
      ]
        .filter(Boolean)
        .join(""),
  },
  figure: {
    basis: "Grundlage",
    notKnown: "Nicht bekannt",
    method: "Verfahren",
    interval: (confidence) => `Intervall bei einem Vertrauensniveau von ${confidence}`,
    intervalAside: (confidence) => `Intervall bei einem Vertrauensniveau von ${confidence}`,
    atLeast: (confidence) => `mindestens ${confidence}`,
    from: "Aus",
    sources: "Quellen",
    caveats: "Zu bedenken",
    changes: "Was sie ändern würde",
  },
  completeness: {
    title: "Wie vollständig",
    weighted: "Nach Gewicht",
    counted: "Nach Stückzahl",
    units: (low, high, expected) =>
      low === high ? `${low} von ${expected} Stück` : `${low} bis ${high} von ${expected} Stück`,
    withSubstitutes: (units) => `${units}, Ersatz so weit gezählt, wie die Referenz ihn anerkennt`,
    apartByWeight: (units, share) => `${units}; ${share} nach Gewicht`,
    consumables: "Verbrauchsmaterial",
    optional: "Wahlweise Ausgegebenes",
    weightMeans:
      "Nach Gewicht: Jedes Teil zählt so viel, wie es nach der Referenz bedeutet, gleich wie schwer es ist.",
    apart: "Verbrauchsmaterial und wahlweise Ausgegebenes zählen für sich und senken die Zahlen darüber nie.",
    level: "Erreichte Stufe",
    levelSure: (level) => `${level}, sicher`,
    levelPossible: (level) => `${level}, wenn jeder Zweifel zu seinen Gunsten ausgeht`,
    levelBoth: (level) => level,
    noLevel: "keine der Stufen der Referenz",
    levelNone: "keine Stufe sicher",
    noReference:
      "Die Referenz nennt kein Haupt- oder ausgegebenes Teil; von Vollständigkeit lässt sich hier nicht sprechen.",
    noneIssued:
      "Keines der Haupt- oder ausgegebenen Teile gehörte bei der Ausgabe dazu; von Vollständigkeit lässt sich hier nicht sprechen.",
    method: "Wie Vollständigkeit gezählt wird",
    plotLabel: "Vollständigkeit nach Gewicht",
  },
  catalogue: {
    title: "Die Garnituren",
    description: (count) => `Alle Garnituren dieses Katalogs: ${counted(count, "Eintrag", "Einträge")}.`,
    lead: (count) =>
      `${capital(inWords(count))} ${count === 1 ? "Garnitur" : "Garnituren"}, Teil für Teil durchgesehen. Die Vollständigkeit ist nach Gewicht angegeben: was sicher und was möglich ist.`,
    outfit: "Garnitur",
    held: "Gilt als",
    verdict: "Befund",
    completeness: "Vollständig",
    level: "Sichere Stufe",
    rank: "Platz",
    status: "Geführt als",
    rankOf: (place, of) => `${inDigits(place)} von ${inDigits(of)}`,
    rankNote:
      "Platz: nach der Vollständigkeit, die vollständigste zuerst, unter der Garnitur selbst und allen anderen Exemplaren ihrer Variante, die Teil für Teil erfasst sind. Eine Garnitur, die selbst nicht so erfasst ist, wird unter ihnen nach dem eingereiht, was von ihr sicher ist.",
    empty: "Es gibt noch keinen Eintrag.",
    arrangement: "Gezeigt als",
    asList: "Liste",
    asPlates: "Tafeln",
  },
  finder: germanFinder,
  compare: germanCompare,
  photographs: germanPhotographs,
  item: {
    description: (variant, verdict, complete) =>
      `${variant}: ${verdict}${complete === null ? "" : `; nach Gewicht zu ${complete} vollständig`}.`,
    heldToBe: "gilt als",
    serial: "Seriennummer",
    set: "Satz",
    issued: "Ausgegeben",
    examined: "Geprüft",
    updated: "Eintrag durchgesehen",
    status: "Geführt als",
    price: "Gefordert",
    brief: "Kurz gefasst",
    what: "Was es ist",
    howComplete: "Wie vollständig",
    howRare: "Wie selten",
    whatMissing: "Was fehlt",
    place: (place, of, sharing) =>
      of === 1
        ? "kein anderes ist Teil für Teil erfasst, mit dem sich seine Vollständigkeit vergleichen ließe"
        : `in der Vollständigkeit Platz ${place}${sharing === null ? "" : `, den sich ${sharing} teilen,`} von ${inDigits(of)}: dieses und ${of === 2 ? "das eine andere" : `die ${inDigits(of - 1)} anderen`}, Teil für Teil erfasst`,
    onlyVariant:
      "Was beobachtet wurde, passt zu dieser Variante, der einzigen, die hier von ihrer Familie verzeichnet ist.",
    nothingMissing: "Nichts",
    nothingExamined: "Nach seinen Teilen hat niemand gesehen",
    nothingIssued: "Nichts: Kein Teil gehörte bei der Ausgabe dazu",
    nothingMissingOfExamined: "Nichts, soweit geprüft",
    ofOtherSet: (count) =>
      `${teile(count)} ${count === 1 ? "trägt" : "tragen"} die Nummer eines anderen Satzes`,
    inDoubt: (count) => `${teile(count)} zweifelhaft oder ungeprüft`,
    andMore: (count) => (count === 1 ? "1 weiteres" : `${inDigits(count)} weitere`),
    handle: "Vor dem Anfassen",
    photographs: "Aufnahmen",
    plan: "Kastenplan",
    planLabel: (title) => `Kastenplan von ${title}: jedes Teil, und ob es vorhanden ist`,
    planNoteByWeight:
      "Jedes Fach steht für ein Teil und führt zu seiner Zeile in der Teileliste. Seine Größe folgt dem Gewicht, das die Referenz dem Teil gibt.",
    planNoteDrawn:
      "Jedes Fach steht für ein Teil, dort, wo die Referenz es einzeichnet, und führt zu seiner Zeile in der Teileliste.",
    planNoteLoose: "Was sie nicht einzeichnet, liegt vorn, nach Gewicht.",
    missing: "Was fehlt oder nicht sicher ist",
    lists: {
      missing: "Fehlt",
      partial: "Unvollzählig",
      substitutes: "Durch anderes ersetzt",
      unverified: "Vorhanden, aber nicht als zugehörig gesichert",
      unexamined: "Ungeprüft",
      otherSet: "Trägt die Nummer eines anderen Satzes",
      surplus: "Mehr, als ausgegeben wurde",
      extras: "Nicht in der Referenz",
      assembled: "Aus einem anderen Kasten",
    },
    setNumber: (set, bearer) => (bearer === null ? `Satz ${set}` : `Satz ${set}, die Nummer von ${bearer}`),
    allThere: "Jedes Teil ist vorhanden, und jedes Teil wurde geprüft.",
    noPartIssued: "Keines der Teile der Referenz gehörte bei der Ausgabe dazu.",
    unitsOf: (found, expected) => `${found} von ${expected}`,
    someUnits: {
      missing: (some, count) => `${some} ${count === 1 ? "fehlt" : "fehlen"}`,
      substitutes: (some) => `${some} ersetzt`,
      unverified: (some) => `${some} ungesichert`,
      unexamined: (some) => `${some} ungeprüft`,
    },
    foundIn: (share) => `vorhanden bei ${share} der erfassten Exemplare`,
    assembledNote:
      "Wer Teile aus einem Kasten in einen anderen legt, ändert, was ein Gegenstand ist. Diese stammen aus einem anderen.",
    rarity: "Wie selten",
    figuresNote: "Von jeder Zahl erst die beste Schätzung, dann der Bereich, den die Nachweise zulassen.",
    rarityHere: "Eines, so vollständig wie dieses",
    rarityVariant: (variant) => `${variant}, gleich wie vollständig`,
    parts: "Teileliste",
    part: "Teil",
    state: "Bestand",
    units: "Stück",
    marks: "Zeichen und Nummer",
    remarks: "Erhaltung und Bemerkungen",
    recorded: "Vorhanden bei",
    recordedNote:
      "Vorhanden bei: der Anteil der erfassten Exemplare, die das Teil vollzählig haben, mit seinem Intervall und der Zahl der erfassten. Verfahren:",
    notRecorded: "nicht erfasst",
    ofRecorded: (having, recorded) => `${having} von ${recorded}`,
    matching: {
      matching: () => "Nummern stimmen überein",
      partial: () => "nicht jedes erwartete Zeichen gefunden",
      "other-set": (set) => `trägt die Nummer des Satzes ${set}`,
      unread: () => "",
    },
    offSheet: {
      sentence: (left) => `Nicht auf diesem Blatt, aber unter der Adresse oben: ${list(left)}.`,
      photographs: "weitere Aufnahmen",
      recording: "Film oder Ton",
      features: "der Vergleich der beobachteten Merkmale mit jeder Variante",
      completing: "die gesuchten Teile",
      others: "die ähnlichsten Stücke",
      revisions: "die Änderungen an diesem Eintrag",
    },
    wants: "Was es vervollständigen würde",
    wantsNote:
      "Das Teil, das am meisten bringen würde, steht zuerst. Was es bringt, zählt nach Gewicht; was für sich zählt, bringt nichts und steht zuletzt.",
    wantsUnits: "Gesucht",
    wantsAdds: "Bringt",
    neededFor: (levels) => `nötig für ${levels}`,
    spares: "Hier übrig",
    nearest: "Am ähnlichsten",
    nearestNote:
      "Nach Merkmalen und Teilen, die von beiden bekannt sind; was von einem nicht bekannt ist, bleibt außer Betracht.",
    example: "Exemplar",
    likeness: "Ähnlichkeit",
    comparedOn: "Vergleichspunkte",
    expectedMarks: (marks) => `sollte ${marks} tragen`,
    serialIs: (serial) => `Nr.\u00a0${serial}`,
    // Teil and Stück are neuter.
    several: (count, text) => `${count === 1 ? "eines" : inWords(count)} ${text}`,
    stateUnits: (count, state) => `${inDigits(count)} ${state}`,
    model: (model) => `Modell: ${model}`,
    packed: (how) => how,
    repairs: (repairs) => `ausgebessert: ${repairs}`,
    belongsSpare: "übrig",
    evidence: (evidence) => `Beleg: ${evidence}`,
    fromElsewhere: "aus einem anderen Kasten",
    caution: "Warnhinweis",
    papers: "Aufschriften und Papiere",
    dating: "Datierung",
    serialLabel: (variant) => `Die Nummer dieser Garnitur unter den nachgewiesenen von ${variant}`,
    serialNote: "Ein Strich steht für eine nachgewiesene Nummer der Variante.",
    datingIssued: "Ausgegeben",
    datingSerial: "Nach seiner Nummer gefertigt",
    datingNone: "Kein Teil trägt eine Nummer, deren Jahr bekannt ist.",
    datingVerdicts: {
      fits: "passt zur Zeit der Ausgabe",
      earlier: "früher als die Ausgabe, wohl aus dem Vorrat, was üblich war",
      later: "später als die Ausgabe, ein starker Zweifel",
      undated: "Jahr nicht bekannt",
      outside: "Nummer außerhalb jeder Reihe, die für dieses Teil bekannt ist",
    },
    made: (when) => `gefertigt ${when}`,
    custody: "Verbleib",
    custodyLabel: "Verbleib über die Jahre, mit seinen Lücken",
    documented: (documented, lifetime) => {
      const are = documented === 1 ? "ist" : "sind";
      if (lifetime === null) return `${counted(documented, "Kalenderjahr", "Kalenderjahre")} ${are} belegt.`;
      if (lifetime === 1) return `Sein einziges Kalenderjahr ist ${documented === 1 ? "" : "nicht "}belegt.`;
      return `${inDigits(documented)} seiner ${counted(lifetime, "Kalenderjahr", "Kalenderjahre")} ${are} belegt.`;
    },
    gap: (from, to, { shortest, longest, isSure }) => {
      const least = `${shortest} ${shortest === "1" ? "Jahr" : "Jahre"}`;
      const length = isSure
        ? least
        : `mindestens ${least}${longest === null ? "" : `, höchstens ${longest}`}`;
      return `Zwischen ${from} und ${to} ist kein Verbleib verzeichnet: ${length}.`;
    },
    noCustody: "Über den Verbleib ist nichts verzeichnet.",
    from: (who) => `von ${who}`,
    to: (who) => `an ${who}`,
    at: (place) => place,
    undated: "Datum nicht veröffentlicht",
    cautions: "Warnhinweise",
    cautionsNote:
      "Vor dem Öffnen, Auspacken oder Reinigen zu lesen. Örtliche Vorschriften und zugelassene Fachleute gehen vor.",
    concerns: "Betrifft",
    identification: "Worauf die Bestimmung beruht",
    observed: "Beobachtet",
    expected: "Die Variante hat",
    contradictionSerial: "Die Nummer liegt außerhalb jeder Reihe, die für diese Variante bekannt ist.",
    contradiction: (feature, observed, expected) => `${feature}: ${observed}; die Variante hat ${expected}`,
    reservation: (variant) =>
      `Berechnet nach der Referenz von ${variant}, obwohl der Befund dagegen spricht: Es gilt nur, falls die Garnitur doch dazugehört.`,
    fits: (variants) => `Passt zu ${variants}`,
    fitsNone: "Passt zu keiner Variante der Familie",
    candidates: "An jeder Variante der Familie gemessen",
    candidate: "Variante",
    speaksAgainst: "Spricht dagegen",
    nothingAgainst: "nichts",
    serialWord: "Seriennummer",
    lookNext: "Was als Nächstes anzusehen ist",
    serialTells:
      "Sie allein unterscheidet sie: Keine Nummer liegt in den Reihen von zweien, die noch in Frage kommen.",
    lookNextNote: "Das Aufschlussreichste zuerst.",
    notObserved: "nicht angesehen",
    comparison: "Andere Garnituren dieser Variante hier",
    allOfVariant: "Alle Garnituren dieser Variante",
    sources: "Quellen dieses Eintrags",
    data: "Daten",
    dataNote: "Jede Zahl dieser Seite mit allen Stellen, Eingaben und Quellen:",
    materials: "Material",
    measurements: "Maße",
    confidential: "Nur für den Eigentümer",
    objectId: "Object-ID-Blatt",
    objectIdNote:
      "Nach dem Standard des Getty Information Institute (1999), von ICOM gepflegt: wonach Polizei, Versicherung und Zoll fragen, wenn ein Gegenstand abhandenkommt. Auszudrucken und getrennt vom Gegenstand aufzubewahren.",
    objectIdFields: {
      photographs: "Aufnahmen",
      type: "Art des Gegenstands",
      materials: "Material und Technik",
      measurements: "Maße",
      markings: "Inschriften und Marken",
      distinguishing: "Besondere Kennzeichen",
      title: "Titel",
      date: "Datum oder Zeit",
      maker: "Hersteller",
      description: "Beschreibung",
    },
    objectIdLacks: (fields) => `Noch fehlt: ${fields}.`,
    objectIdWhole: "Es fehlt nichts.",
    storage: "Aufbewahrt",
    paid: "Bezahlt",
    notes: "Beschreibung",
    legend: "In der Aufnahme nummeriert",
    reference: "Referenz der Variante",
    or: " oder ",
  },
  displayCard: {
    description: (title) => `Objektschild zum Ausdrucken: ${title}.`,
    term: "Ausstellen",
    link: "Objektschild zum Ausdrucken",
    back: "Zurück zum Eintrag",
    paper: "Ein Blatt A5, Hochformat",
    complete: (share, units) => `nach Gewicht zu ${share} vollständig${units === null ? "" : `; ${units}`}`,
    unknown: "nicht bekannt",
    cautions: "Warnhinweise stehen im Eintrag.",
    assembled: (parts) => `Aus einem anderen Kasten: ${parts}.`,
  },
  variant: {
    description: (name, issued) =>
      `${name}${issued === null ? "" : `, ausgegeben ${issued}`}: was dazugehörte, wie viele gefertigt wurden und wie viele erhalten sind.`,
    extends: "Beschrieben im Unterschied zu",
    partFound: (part) => `${part}: Anteil der erfassten Exemplare, die es vollzählig haben`,
    ofLevel: (level, label) => `${level}: ${label}`,
    issued: "Ausgegeben",
    family: "Familie",
    brief: "In Zahlen",
    class: "Klasse auf der Skala",
    classSpan: (low, high) => (low === high ? low : `von ${low}, bis ${high}`),
    classNone: "außerhalb der Skala",
    classWithheld: "nicht bekannt, weil auch die Zahl der erhaltenen Exemplare nicht bekannt ist",
    scaleSource: (name, citation) => (citation === null ? name : `${name} (${citation})`),
    sightings: ({ sightings, distinct, once, twice, nameless }, last) => {
      if (sightings === 0) return "Kein Nachweis ist verzeichnet.";
      const often =
        distinct === 1 ? "" : `; davon ${inDigits(once)} einmal gesehen, ${inDigits(twice)} zweimal`;
      const until = last === null ? "" : sightings === 1 ? `, ${last}` : `, der letzte ${last}`;
      const apart =
        distinct === 1 || nameless === 0
          ? ""
          : ` ${inDigits(nameless)} der Nachweise ${nameless === 1 ? "nennt weder Seriennummer noch Exemplar und zählt als eigenes Exemplar" : "nennen weder Seriennummer noch Exemplar und zählen als eigene Exemplare"}.`;
      return `${nachweise(sightings)} von ${counted(distinct, "Exemplar", nameless === 0 ? "verschiedenen Exemplaren" : "Exemplaren")}${until}${often}.${apart}`;
    },
    offersLeft: (offers) =>
      offers === 1
        ? "1 Angebot des Verzeichnisses zählt nicht als angeboten: Sein Datum liegt nicht sicher in den beobachteten Jahren."
        : `${offers} Angebote des Verzeichnisses zählen nicht als angeboten: Ihre Daten liegen nicht sicher in den beobachteten Jahren.`,
    seeLog: "Das Verzeichnis der Nachweise",
    features: "Woran man sie erkennt",
    feature: "Merkmal",
    found: "Kommt vor mit",
    look: "Wo hinzusehen ist",
    parts: "Was ausgegeben wurde",
    partsNote: (units, kinds) => `${inDigits(units)} Stück in ${counted(kinds, "Art", "Arten")}.`,
    part: "Teil",
    quantity: "Ausgegeben",
    standing: "Rang",
    weight: "Gewicht",
    marks: "Zeichen",
    found2: "Vorhanden bei",
    planLabel: (name) => `Kastenplan von ${name}, wie ausgegeben`,
    plan: "Kastenplan",
    rates: "Was noch vorkommt",
    ratesLabel: (name) => `Anteil der erfassten Exemplare von ${name}, die das jeweilige Teil haben`,
    likeness: "Wie ähnlich",
    likenessLabel: (name) => `Wie ähnlich einander die Exemplare von ${name} sind`,
    serials: "Seriennummern",
    serialsLabel: (name) => `Nachgewiesene Nummern von ${name}, entlang der vergebenen Reihen`,
    range: "Nummern",
    rangeMade: "Gefertigt",
    rangeSource: "Quelle",
    rangeFrom: (prefix, from, to) =>
      from === null && to === null
        ? `${prefix && `${prefix}…, `}kein Ende bekannt`
        : `${from === null ? "(Anfang nicht bekannt)" : prefix + from} bis ${to === null ? "(Ende nicht bekannt)" : prefix + to}`,
    skipped: "einige Nummern ungenutzt",
    page: placeInSource,
    noSerials: "Keine Nummernreihe ist bekannt.",
    partSerials: "Nummern der Teile",
    partSerialsNote:
      "An ihnen ist ein später eingelegtes Teil von einem zu unterscheiden, das bei der Ausgabe da war.",
    levels: "Stufen der Vollständigkeit",
    levelNeeds: (count) => `verlangt ${counted(count, "Art von Teil", "Arten von Teilen")}`,
    levelParts: "Die Teile, die sie verlangt",
    reallocation: "Was sich hier vervollständigen ließe",
    reallocationNote:
      "Nur überzählige Teile werden umgelegt, und nur zwischen Garnituren, gegen deren Variante nichts spricht. Eines, das die Nummer eines anderen Satzes trägt, geht an diesen Satz, wenn es dort gesucht wird; mit allen übrigen ist der Gewinn so groß wie möglich. Wer Teile umlegt, ändert, was ein Gegenstand ist: Eine so vervollständigte Garnitur heißt zusammengesetzt, wo immer sie gezeigt wird.",
    moved: "Teil",
    movedUnits: "Stück",
    movedFrom: "Aus",
    movedTo: "In",
    wouldRise: (before, after) => `sicher ${before}, wären ${after}`,
    items: "Exemplare in diesem Katalog",
    sources: "Quellen",
    log: "Nachweise",
    logLabel: (name) => `Nachweise von ${name} über die Jahre`,
    siblings: "Ihre Familie",
    none: "keine",
  },
  family: {
    title: "Familien",
    description: "Die Familien von Garnituren in diesem Katalog und die Varianten einer jeden.",
    maker: "Hersteller",
    comparison: "Die Varianten nebeneinander",
    differs: "Nur was verschieden ist, steht hier.",
    alone: "Was die Variante hat",
    rest: (count) => `Was sie gemeinsam haben: ${counted(count, "Zeile", "Zeilen")}`,
    featuresOf: "Merkmale",
    partsOf: "Teile",
    row: "Merkmal oder Teil",
    none: "nicht dabei",
    unstated: "nicht angegeben",
    key: "Bestimmungsschlüssel",
    keyNote: "Mit 1 beginnen; jede Antwort führt weiter.",
    bySerial: "Eine Seriennummer allein unterscheidet sie: Keine liegt in den Reihen von zweien.",
    smallest: "Die wenigsten Merkmale, die sie unterscheiden, mit der geringsten Mühe:",
    proven: "Bewiesen: Keine Auswahl ist kleiner oder macht weniger Mühe.",
    notProven:
      "Nicht als kleinste bewiesen: Die Suche wurde abgebrochen, und dies ist die beste, die sie fand.",
    otherSets: (count) =>
      count === 1 ? "Eine andere Auswahl leistet dasselbe" : `${inDigits(count)} andere leisten dasselbe`,
    notAllListed: (count) => `Es gibt mehr davon als die ${inDigits(count)}, die aufgeführt sind.`,
    unseparated: "Kein Merkmal unterscheidet sicher",
    mayBeSeparated: (pair, features) => `${pair} (vielleicht ${features})`,
    serialsLabel: (name) => `Nachgewiesene Nummern von ${name}, entlang der vergebenen Reihen jeder Variante`,
    serialsNote:
      "Ein Strich steht für eine nachgewiesene Nummer. Reihen mit einem gemeinsamen Vorsatz stehen auf einem Maßstab, wo sich das zeichnen lässt.",
    features: "Was sie unterscheidet und wo hinzusehen ist",
    known: "Was von jeder bekannt ist",
    variant: "Variante",
    issued: "Ausgegeben",
    seen: "Gesehen",
    here: "Hier",
    sources: "Quellen",
    cell: (quantity, standing) => (standing === "" ? quantity : `${quantity}, ${standing}`),
  },
  articles: {
    title: "Aufsätze",
    description: "Aufsätze dieses Katalogs zum Nachschlagen.",
    by: (authors) => `Von ${authors}`,
    revised: (date) => `Durchgesehen: ${date}`,
    none: "Es gibt noch keinen Aufsatz.",
    others: "Weitere Aufsätze",
    note: "Anmerkung",
    notes: "Worauf die Zahlen beruhen",
    notesLead: "Jede Zahl des Textes ist aus den Einträgen berechnet. Ihre Ziffer dort führt hierher.",
    back: (number, place) => `zurück zu Anmerkung ${number} im Text${place > 1 ? `, Stelle ${place}` : ""}`,
    bibliography: "Angeführte Quellen",
    about: "Dieser Aufsatz",
    outfits: (count) =>
      count === 0
        ? "Auf keine Garnitur dieses Katalogs trifft dies zu."
        : `${counted(count, "Garnitur", "Garnituren")} dieses Katalogs, die vollständigsten zuerst`,
  },
  sources: {
    title: "Quellen",
    description: "Das Quellenverzeichnis: jede Quelle, und wo sie angeführt ist.",
    lead: "Alles, worauf ein Eintrag, eine Zahl oder ein Nachweis beruht, und wo es gebraucht wird.",
    cited: "Angeführt in",
    notCited: "Nicht angeführt.",
    andOthers: (name) => `${name} u.\u00a0a.`,
    andMore: (count) => counted(count, "weitere Seite", "weitere Seiten"),
    // The point stands behind the closing mark, unless the title has an end of its own.
    inQuotes: (title) => `„${title}“${endOf(title)}`,
    inside: "In:",
    editedBy: (editors) => `hrsg. von ${editors}`,
    asEditors: (editors) => `${editors} (Hrsg.)`,
    accessed: (date) => `abgerufen: ${date}`,
    pages: placeInSource,
    sightings: (count, variant) => `${nachweise(count)} von ${variant}`,
    none: "Es gibt noch keine Quelle.",
    types: {
      manuscript: "Handschrift",
      report: "Bericht",
      dataset: "Register",
      map: "Karte",
      patent: "Patentschrift",
      thesis: "Hochschulschrift",
      personal_communication: "Brief",
      "article-newspaper": "Zeitung",
    },
  },
  sightings: {
    title: "Nachweise",
    titleOf: (variant) => `Nachweise von ${variant}`,
    description: "Das Verzeichnis der Nachweise, auf dem jede Zahl zur Seltenheit beruht.",
    descriptionOf: (variant, count) => `${nachweise(count)} von ${variant}, wie veröffentlicht.`,
    lead: "Jedes Mal, wenn ein Exemplar angeboten, beschrieben oder erwähnt wurde. Was gezählt wird und wie oft eines wieder auftaucht, entscheidet, was sich von denen sagen lässt, die niemand gesehen hat.",
    variant: "Variante",
    count: "Nachweise",
    distinct: "Exemplare",
    once: "Einmal gesehen",
    twice: "Zweimal gesehen",
    seen: "Gesehen",
    example: "Exemplar",
    kind: "Als",
    kinds: { offer: "Angebot", record: "Beschreibung", mention: "Erwähnung" },
    state: "Was dabei war",
    condition: "Erhaltung",
    price: "Gesehener Preis",
    currencyUnknown: (amount) => `${amount}, Währung nicht angegeben`,
    source: "Quelle",
    present: "mit",
    absent: "ohne",
    allOthers: { present: "allem Übrigen", absent: "alles Übrige" },
    all: { present: "allem", absent: "alles" },
    unnamed: "nicht benannt",
    relisted: "erneut angeboten",
    none: "Kein Nachweis ist verzeichnet.",
    itemsToo:
      "Die Garnituren dieses Katalogs zählen ebenfalls als Nachweise; sie sind hier nicht wiederholt.",
    counted:
      "Unter den Nachweisen sind die Garnituren dieses Katalogs mitgezählt; dasselbe Angebot, erneut gedruckt, ist es nicht.",
    prices: "Ein gesehener Preis ist, was eine Liste druckte. Er ist keine Schätzung des Werts.",
    watching: (years) => `Auf Angebote geachtet wurde: ${years}.`,
    list: (list) => `Liste: ${list}`,
    toVariant: "Die Zahlen, die sich daraus ergeben",
    caption: "Das Verzeichnis, das Früheste zuerst",
  },
  wants: {
    title: "Was gesucht wird",
    description:
      "Was den Garnituren im Haus fehlt, was sie übrig haben und was sich womit vervollständigen ließe.",
    lead: "Was den Garnituren im Haus fehlt, geordnet nach dem, was jedes Teil bringen würde, und was sie übrig haben. Verkaufte, zum Vergleich geführte und solche, die nicht mehr da sind, bleiben außer Betracht. Verbrauchsmaterial und wahlweise Ausgegebenes wird gesucht, wo eine Stufe der Vollständigkeit es verlangt, und steht zuletzt.",
    wanted: "Gesucht",
    spare: "Übrig",
    spareNote: "Mehr, als die eigenen Kästen brauchen.",
    outfit: "Garnitur",
    units: "Stück",
    nothingWanted: "Es ist nicht bekannt, dass etwas fehlt.",
    nothingSpare: "Nichts ist übrig.",
    doubtNote:
      "Im Widerspruch: berechnet nach der Referenz einer Variante, gegen die der Befund spricht. Es gilt nur, falls die Garnitur doch dazugehört.",
  },
  fields: {
    title: "Alle Felder eines Eintrags",
    description: "Was in jeder Datei einer Sammlung stehen darf, und was check dazu meldet.",
    lead: "Für alle, die an diesem Katalog schreiben. Ein Punkt führt in ein Feld hinein, [] steht für jeden Eintrag einer Liste, ID für eine Kennung nach Wahl. Was nicht eigens verlangt wird, darf fehlen. Die Erklärungen stehen auf Englisch.",
    contents: "Die Arten von Einträgen",
    records: {
      collection: "Sammlung",
      family: "Familie",
      variant: "Referenz einer Variante",
      item: "Garnitur",
      sighting: "Nachweis",
      source: "Quelle",
      article: "Aufsatz",
      hazard: "Gefahr",
      scale: "Skala",
    },
    required: "verlangt",
    problems: "Was check meldet",
    problemsNote: "Mit Fehlern entsteht keine Seite; über Warnungen urteilen Sie.",
    error: "Fehler",
    warning: "Warnung",
    link: "Alle Felder eines Eintrags",
    takes: {
      forms: {
        id: "eine Kennung",
        line: "eine Zeile Text",
        text: "Text",
        name: "ein Name oder eine Zahl",
        date: "ein Datum (EDTF)",
        names: "ein Name oder eine Zahl, oder eine Liste davon",
        privateFields: "eine Liste von Feldnamen",
      },
      types: {
        string: "Text",
        integer: "eine ganze Zahl",
        number: "eine Zahl",
        boolean: "true oder false",
        array: "eine Liste",
        object: "eigene Felder",
        null: "nichts",
      },
      anything: "Beliebiges",
      oneOf: (choices) => disjunction.format(choices),
      listOf: (each) => `eine Liste, jeder Eintrag ${each}`,
      atLeast: (number) => `mindestens ${number}`,
      atMost: (number) => `höchstens ${number}`,
      within: (what, bounds) => `${what}, ${conjunction.format(bounds)}`,
    },
  },
  methods: {
    title: "Verfahren",
    description:
      "Jedes Verfahren hinter den Zahlen dieser Seiten: Formel, Quelle, Voraussetzungen und ein Beispiel.",
    lead: "Nichts hier ist eine Meinung. Jede Zahl geht nach einem dieser Verfahren aus den Einträgen hervor; wo die Einträge sie nicht tragen, wird sie nicht genannt und der Grund gesagt.",
    source: "Quelle",
    assumes: "Setzt voraus",
    example: "Ein Beispiel aus diesem Katalog",
    worked: "Ein Beispiel, erfunden",
    exampleOf: (label) => `${label}:`,
    gives: "– das ergibt",
    low: "unt",
    high: "ob",
    symbols:
      "z ist das Quantil der Standardnormalverteilung zum Vertrauensniveau, α ist 1 minus Vertrauensniveau, C(a, b) die Zahl der Möglichkeiten, b aus a auszuwählen.",
    contents: "Die Verfahren",
    counts: "Was gezählt wird",
    estimates: "Was geschätzt wird",
    rounding:
      "Die Seiten runden zum Lesen: ganze Exemplare, ganze Prozent, bei einer Vollständigkeit mit zwei Enden das sichere ab und das mögliche auf, zwei Ziffern für Jahre und Häufigkeiten, jedoch höchstens zwei Stellen nach dem Komma, ganze Monate für ein Warten von weniger als zwei Jahren. Die Datendateien behalten jede Stelle.",
    completeness: {
      name: "Vollständigkeit",
      asks: "Was ist sicher vorhanden, und was vielleicht?",
      formula:
        "Für jedes Teil der Stückzahl q und des Gewichts w: a Stück sind vorhanden, s Ersatz, soweit anerkannt, u ungesichert, x nicht geprüft; die obere Grenze nimmt für einen Ersatz, dessen Modell nicht festgehalten ist, den höchsten Wert, den die Referenz einem anerkannten gibt. Die Zahl nach Gewicht ist die Summe über Haupt- und ausgegebene Teile; die gezählte ist Σ q·unt bis Σ q·ob, von Σ q Stück.",
      worked:
        "Vier Teile der Gewichte 5, 3, 1 und 1, je ein Stück: Das erste ist vorhanden, das zweite nicht geprüft, das dritte vorhanden, das vierte fehlt. Nach Gewicht (5 + 1) / 10 bis (5 + 3 + 1) / 10, also 60\u00a0% bis 90\u00a0%; nach Stückzahl 2 bis 3 von 4.",
      source:
        "Äußerste Schranken bei fehlenden Daten: Manski (1989), Journal of Human Resources 24: 343–360; Manski (2003), Partial Identification of Probability Distributions.",
      assumes:
        "Nichts. Was unbekannt ist, wird weder gezählt noch gestrichen. Teile, die ein Exemplar nie hatte, fallen aus jeder Summe heraus; Verbrauchsmaterial und wahlweise Ausgegebenes zählen für sich.",
    },
    identification: {
      name: "Bestimmung",
      asks: "Stimmt der Gegenstand mit seiner Bezeichnung überein?",
      formula:
        "Jede Variante der Familie wird an dem gemessen, was beobachtet wurde. Eine Nummer, die nicht ganz zu lesen ist, wird an keiner Reihe gemessen. Im Widerspruch: Etwas Beobachtetes spricht gegen die behauptete Variante. Bestätigt: Etwas stimmt überein, nichts widerspricht, und jeder anderen Variante wird widersprochen. Sonst möglich; was als Nächstes anzusehen ist, ordnet sich nach der erwarteten Entropie H der n verbleibenden Varianten, sobald das Merkmal angesehen ist: Variante i kommt mit k seiner Werte vor, und die Summen zu einem Wert v gehen über die Varianten, die mit ihm vorkommen. Der Schlüssel einer Familie fragt nach der kleinsten Auswahl von Merkmalen, die jedes unterscheidbare Paar von Varianten unterscheidet: zuerst die geringste Mühe, dann die wenigsten (F, ihre Merkmale, jedes mit seiner Mühe e; V, die Werte einer Variante). Von ihnen fragt er zuerst nach dem, was am leichtesten zu sehen ist, bei gleicher Mühe nach dem, was am meisten sagt. Die Suche ist exakt und führt jede solche Auswahl auf. Sie hat ihr Ergebnis für jede Familie von bis zu 20 Varianten und 40 Merkmalen bewiesen, an der sie erprobt wurde, und für fast alle von 30 und 60; wo sie vor dem Beweis aufhört, sagt die Seite, dass die Auswahl nicht als kleinste bewiesen ist.",
      source:
        "Übliche Praxis; die Reihenfolge nach Shannon (1948), Bell System Technical Journal 27: 379–423; die kleinste Auswahl: Garey und Johnson (1979), Computers and Intractability, Aufgabe SP6; Payne und Preece (1980), Journal of the Royal Statistical Society A 143: 253–292.",
      worked:
        "Vier Varianten bleiben. Ein Bogen, der bei zweien silbern und bei zweien aus Platin ist, lässt ½ · log₂ 2 + ½ · log₂ 2 = 1 Bit Zweifel; ein Schild, das nur eine hat, lässt ¼ · log₂ 1 + ¾ · log₂ 3 = 1,19. Nach dem Bogen wird zuerst gefragt. Fünf Varianten, deren Werte in fünf Merkmalen 11001, 01101, 00111, 10011 und 00000 sind, brauchen drei der Merkmale: Zwei von je zwei Werten unterscheiden höchstens vier.",
      assumes: "Die Referenz nennt jeden Wert, mit dem eine Variante vorkommt.",
    },
    dating: {
      name: "Datierung",
      asks: "Gehört jedes Teil in die Zeit der Ausgabe?",
      formula:
        "Eine Nummer gibt die Daten m ihrer Reihe; d sind die der Ausgabe. Jedes Stück eines Teils wird nach seiner eigenen datiert; für das Teil als Ganzes geben die Daten an, was den stärksten Zweifel weckt. Später, die erste Formel: Ihr frühestes Datum liegt nach dem spätesten der Ausgabe. Früher, die zweite: Ihr spätestes liegt vor dem frühesten der Ausgabe. Daten, die als ungewiss oder ungefähr bezeichnet sind, gelten, wie sie geschrieben sind.",
      worked:
        "Ausgegeben 1931/1938. Eine Lampe aus einer Reihe von 1940/1945 ist später, denn 1940 liegt nach 1938; eine von 1926/1930 ist früher, denn 1930 liegt vor 1931; eine von 1930/1932 passt.",
      source: "Extended Date/Time Format, ISO 8601-2:2019.",
      assumes: "Die Reihen stimmen so, wie ihre Quellen sie geben.",
    },
    custody: {
      name: "Verbleib",
      asks: "Welcher Teil seines Lebens ist belegt?",
      formula:
        "Kalenderjahre Y, in denen ein Ereignis liegt, wann auch immer innerhalb seiner Daten, von denen zwischen erster Ausgabe, t₀, und letztem Ereignis, t₁. Die Prüfung ist eines der Ereignisse. Eine Lücke reicht vom spätesten Ende a eines Verbleibs zum frühesten Anfang b des nächsten; höchstens ist sie so lang, wie deren Daten zulassen. Daten, die als ungewiss oder ungefähr bezeichnet sind, gelten, wie sie geschrieben sind.",
      worked:
        "Ausgegeben 1931, im Dienst 1931/1946, in einer Hand seit 2001 (2001/..), geprüft 2026: 16 + 26 = 42 von 2026 − 1931 + 1 = 96 Kalenderjahren. Eine Lücke: vom Ende 1946 bis zum Anfang 2001 sind es 54 Jahre; vom Anfang 1946 bis zum Ende 2001 höchstens 56.",
      source: "Kalenderrechnung.",
      assumes:
        "Ein Ereignis mit zwei Daten dauerte vom einen zum anderen, eines ohne Ende bis zum letzten bekannten Tag; von einem ohne Anfang zählt nur das Ende. Ein Ereignis in irgendeinem von mehreren Jahren zählt als ein Jahr.",
    },
    likeness: germanCompare.method,
  },
  home: {
    description: (title) => `${title}: ein Katalog von Garnituren in Kästen.`,
    openNote: (title, complete, hasConsumables) =>
      `${title}: nach Gewicht zu ${complete} vollständig${hasConsumables ? "; Verbrauchsmaterial ist für sich gezählt" : ""}. Jedes Fach steht für ein Teil.`,
    outfits: "Die Garnituren",
    completeByWeight: "vollständig nach Gewicht, vom Sicheren zum Möglichen",
    allOutfits: "Alle Garnituren, zum Vergleich",
    families: "Die Familien und ihre Varianten",
    articles: "Zu lesen",
    basis: "Worauf es beruht",
    counts: (items, variants, sightings, sources) =>
      `${counted(items, "Garnitur", "Garnituren")} in ${counted(variants, "Variante", "Varianten")}, ${nachweise(sightings)} im Verzeichnis, ${counted(sources, "Quelle", "Quellen")}.`,
    survive: (phrase) => `${phrase} erhalten`,
    surviveUnknown: "Zahl der erhaltenen Exemplare nicht bekannt",
    conflict: (survive, conflict) => `${survive}: ${conflict}`,
    conflicts: {
      "estimate-exceeds-made": "mehr, als gefertigt wurden",
      "known-exceed-made": "mehr bekannt, als gefertigt wurden",
    },
  },
  cite: {
    title: "Diese Seite anführen",
    forPrograms: "für Programme: BibTeX und CSL-JSON",
    bibtex: "BibTeX",
    csl: "CSL-JSON",
    version: (version) => `Fassung ${version}`,
    versionNote:
      "Die Fassung ist der Anfang der SHA-256-Summe der eigenen Datendatei dieser Seite. In ihr stehen auch die Fassungen der Zahlen von Varianten und der Aufnahmen: Gleiche Fassung heißt gleicher Eintrag, gleiche Zahlen und gleiche Aufnahmen.",
    revisions: "Änderungen",
  },
  missing: {
    title: "Nicht in diesem Katalog",
    description: "Unter dieser Adresse steht keine Seite.",
    text: "Unter dieser Adresse steht keine Seite. Vielleicht wurde sie umbenannt, oder die Adresse hat unterwegs einen Buchstaben verloren.",
    ways: "Von hier aus",
  },
};
