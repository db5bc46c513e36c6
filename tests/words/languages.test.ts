import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { StatementId } from "../../shared/assessments/statement.ts";
import { germanBench } from "../../shared/words/de/bench.ts";
import { german } from "../../shared/words/de/german.ts";
import { englishBench } from "../../shared/words/en/bench.ts";
import { english } from "../../shared/words/en/english.ts";
import { isSpoken, wordsFor } from "../../shared/words/languages.ts";

type Leaf = string | number | boolean | ((...given: readonly never[]) => unknown);

/** Every word of a language, by the way to it. */
function leaves(words: object, at = ""): Map<string, Leaf> {
  const found = new Map<string, Leaf>();
  for (const [name, value] of Object.entries(words) as [string, Leaf | object][]) {
    const way = at === "" ? name : `${at}.${name}`;
    if (typeof value === "object") for (const [below, leaf] of leaves(value, way)) found.set(below, leaf);
    else found.set(way, value);
  }
  return found;
}

const [inEnglish, inGerman] = [
  leaves({ ...english, bench: englishBench }),
  leaves({ ...german, bench: germanBench }),
];

/** Names, signs, and words that both languages have. */
const alike = new Set([
  "pages.efforts.0",
  "pages.cite.bibtex",
  "pages.cite.csl",
  "pages.finder.percent",
  "pages.variant.movedTo",
  "methods.coverage.formula",
  "methods.chao1.source",
  "methods.wilson.source",
  "methods.garwood.source",
  "methods.gamma-poisson.source",
  "pages.methods.dating.source",
  "pages.methods.likeness.source",
  "pages.compare.method.source",
]);

/** What a sentence may be made of, whatever it asks for: a number, a name, a list of them, or a record with more. */
const anything: unknown = new Proxy(() => anything, {
  get(_, name) {
    if (name === Symbol.toPrimitive) return (hint: string) => (hint === "number" ? 7 : "§");
    if (name === Symbol.iterator) return () => ["§", "§"].values();
    if (name === "length") return 2;
    return anything;
  },
  apply: () => anything,
});
/** Sentences differ for one, for several and for none, and for what is said or is not. */
const given: readonly unknown[] = [anything, 1, 2, 0, "§", null, ["§", "§"]];

/** Without what it was given; null where it cannot be made of it. */
function saidOf(say: (...given: readonly never[]) => unknown, each: unknown): string | null {
  try {
    const said = say(...(Array(6).fill(each) as never[]));
    return (typeof said === "object" ? JSON.stringify(said) : String(said)).replace(/§|null|NaN/g, "");
  } catch {
    return null;
  }
}

/** Amounts of money have no word of ours; the others are asked for below. */
const askedElsewhere = new Set([
  "numbers.money",
  "phrase",
  "statement",
  "plots.sightings.kind",
  "plots.sightings.kindCount",
]);

const statementsIn = readFileSync("shared/assessments/statement.ts", "utf8");
const statements = [...statementsIn.matchAll(/^ {2}\| "([a-z-]+)"/gm)].map(([, id]) => id as StatementId);

describe("the languages of the site", () => {
  it("have the same words, to the last one", () => {
    expect([...inGerman.keys()].sort()).toEqual([...inEnglish.keys()].sort());
    for (const [way, leaf] of inEnglish) expect(typeof inGerman.get(way), way).toBe(typeof leaf);
  });

  it("say everything in their own words", () => {
    const same = [...inEnglish].filter(
      ([way, leaf]) => typeof leaf === "string" && inGerman.get(way) === leaf && !alike.has(way),
    );
    expect(same).toEqual([]);
  });

  it("say every sentence that is put together in their own words", () => {
    const same: string[] = [];
    const silent: string[] = [];
    for (const [way, leaf] of inEnglish) {
      const other = inGerman.get(way);
      if (typeof leaf !== "function" || typeof other !== "function") continue;
      const said = given.map((each) => [saidOf(leaf, each), saidOf(other, each)] as const);
      if (said.every(([first, second]) => first === null || second === null)) silent.push(way);
      if (said.some(([first, second]) => first !== null && /\p{L}/u.test(first) && first === second))
        same.push(way);
    }
    expect(silent.filter((way) => !askedElsewhere.has(way))).toEqual([]);
    expect(same.filter((way) => !alike.has(way))).toEqual([]);
  });

  it("name each kind of sighting in their own words", () => {
    for (const kind of ["offer", "record", "mention"] as const)
      for (const count of [1, 2]) {
        const [first, second] = [english, german].map(({ plots: { sightings } }) => [
          sightings.kind(kind),
          sightings.kindCount(kind, String(count), count),
        ]);
        expect(first?.filter((said) => second?.includes(said))).toEqual([]);
      }
  });

  it("say in their own words what an assessment has to say", () => {
    expect(statements.length).toBeGreaterThan(30);
    for (const says of statements) {
      const [first, second] = [english, german].map((words) =>
        saidOf(words.statement as never, { says, values: {} }),
      );
      expect(first).toMatch(/\p{L}{3}/u);
      expect(second).not.toBe(first);
    }
  });

  it("are found by any tag of the language, and by no other", () => {
    expect(wordsFor("de-AT")).toBe(german);
    expect(wordsFor("DE")).toBe(german);
    expect(wordsFor("en-GB")).toBe(english);
    expect(isSpoken("fr")).toBe(false);
    expect(isSpoken("constructor")).toBe(false);
  });
});

// CLDR 45 as Intl has it, and Duden's rules for ranges ("bis").
describe("figures and dates in German", () => {
  it.each([
    ["1931/1938", "1931 bis 1938"],
    ["1984~", "um 1984"],
    ["1984?", "1984 (ungewiss)"],
    ["2026-03-14", "14. März 2026"],
    ["2026-03-14/2026-03-16", "14. bis 16. März 2026"],
    ["2026-03-14/2026-05-16", "14. März bis 16. Mai 2026"],
    ["2026-03/2026-05", "März bis Mai 2026"],
    ["2025-12/2026-01", "Dezember 2025 bis Januar 2026"],
    ["193X", "1930er Jahre"],
    ["1985/..", "ab 1985"],
    ["1985/", "ab 1985, Ende unbekannt"],
    ["/1985", "bis 1985, Beginn unbekannt"],
    ["193X~", "um die 1930er Jahre"],
    ["193X/..", "ab den 1930er Jahren"],
    ["1931~/..", "ab etwa 1931"],
    ["../193X", "bis zu den 1930er Jahren"],
    ["19XX", "1900 bis 1999"],
    ["192X/193X", "1920er Jahre bis 1930er Jahre"],
    ["1960-21", "Frühjahr 1960"],
    ["1960-23/..", "ab Herbst 1960"],
    ["[..1930]", "vor 1931"],
    ["[1932..]", "nach 1931"],
    ["[..1930~]", "vor etwa 1931"],
    ["[..1930-06]", "spätestens im Juni 1930"],
    ["[..193X]", "spätestens in den 1930er Jahren"],
    ["[1932-03-14?..]", "frühestens am 14. März 1932 (ungewiss)"],
    ["[1931..1938]", "zwischen 1931 und 1938"],
  ])("%s", (edtf, words) => {
    expect(german.date(edtf)).toBe(words);
  });

  it("phrases a figure as English does, with its own separators", () => {
    const figure = { unit: "examples", value: 2883.27, low: 2705, high: 3202 } as const;
    expect(german.phrase(figure)).toBe("etwa 2.883, 2.705 bis 3.202");
    expect(german.phrase({ unit: "years", value: 2.7377, low: 0.18454, high: 16.92 })).toBe(
      "etwa 2,7 Jahre, 2 Monate bis 17 Jahre",
    );
    expect(german.phrase({ unit: "share", value: 0.931, low: null, high: null })).toBe("93\u00a0%");
  });
});

describe("dates in English that share a month or a year", () => {
  it.each([
    ["2026-03-14/2026-03-16", "14 to 16 March 2026"],
    ["2026-03-14/2026-05-16", "14 March to 16 May 2026"],
    ["2026-03/2026-05", "March to May 2026"],
    ["2026-03-14/2027-05-16", "14 March 2026 to 16 May 2027"],
    ["2026-03-14/2026-03-14", "14 March 2026 to 14 March 2026"],
    ["2026-03~/2026-05", "about March 2026 to May 2026"],
  ])("%s", (edtf, words) => {
    expect(english.date(edtf)).toBe(words);
  });

  it.each([
    ["2021-06-05", "on 5 June 2021", "am 5. Juni 2021"],
    ["1931-05-03~", "on about 3 May 1931", "etwa am 3. Mai 1931"],
    ["1931-05-03?", "on 3 May 1931 (uncertain)", "am 3. Mai 1931 (ungewiss)"],
    ["2021-06", "in June 2021", "im Juni 2021"],
    ["1931-05~", "in about May 1931", "etwa im Mai 1931"],
    ["2021-21", "in spring 2021", "im Frühjahr 2021"],
    ["2021", "in 2021", "2021"],
    ["1984%", "in about 1984 (uncertain)", "um 1984 (ungewiss)"],
    ["193X", "in the 1930s", "in den 1930er Jahren"],
    ["193X~", "in about the 1930s", "etwa in den 1930er Jahren"],
    ["19XX", "between 1900 and 1999", "zwischen 1900 und 1999"],
    ["[..1930]", "before 1931", "vor 1931"],
    ["[..1999-12]", "in December 1999 at the latest", "spätestens im Dezember 1999"],
    ["[1931..1938]", "between 1931 and 1938", "zwischen 1931 und 1938"],
    ["1931/..", "from 1931", "ab 1931"],
    ["../193X", "until the 1930s", "bis zu den 1930er Jahren"],
    ["1931/1938", "from 1931 to 1938", "von 1931 bis 1938"],
    ["1911~/1921", "from about 1911 to 1921", "von etwa 1911 bis 1921"],
    ["192X/193X", "from the 1920s to the 1930s", "von den 1920er Jahren bis zu den 1930er Jahren"],
    ["2026-03-14/2026-03-16", "from 14 to 16 March 2026", "vom 14. bis 16. März 2026"],
  ])("an example that was seen %s is called by when that was", (edtf, inEnglish, inGerman) => {
    expect(english.seen(edtf)).toBe(`One seen ${inEnglish}`);
    expect(german.seen(edtf)).toBe(`Eines, gesehen ${inGerman}`);
  });
});
