import { describe, expect, it } from "vitest";
import { dataOf, type Files } from "../collections/collection.ts";

const files = (items: Record<string, string>, log = ""): Files => ({
  "content/collection.yaml": "title: T\nurl: https://example.org/\nwatching: 2001/2010\n",
  "content/sources.yaml": "- { id: lists, title: Lists }\n",
  "content/sightings/log.csv": `seen,variant,example,source,kind,present,absent\n${log}`,
  "schemas/reference/chest/family.yaml":
    "name: Chests\nfeatures:\n  lock: { name: Lock, values: [iron, brass] }\n",
  "schemas/reference/chest/a.yaml": `name: A
issued: 1901/1905
features: { lock: [iron, brass] }
parts:
  body: { standing: core, marks: ["No. {set}"] }
  tray: { standing: issued, marks: ["{set}", "OAK"] }
  hook: { standing: issued }
  oil: { standing: consumable }
levels:
  - { id: whole, name: Whole, needs: { standing: [core, issued] } }
  - { id: bare, name: Bare, needs: { parts: [body] } }
`,
  ...Object.fromEntries(
    Object.entries(items).map(([id, frontMatter]) => [
      `content/items/${id}/index.md`,
      `---\ntitle: Chest ${id}\nvariant: a\n${frontMatter}\n---\n`,
    ]),
  ),
});

describe("matching numbers", () => {
  const matching = (body: string, more: Record<string, string> = {}) => {
    const data = dataOf(files({ one: `set: "118"\nparts: ${body}`, ...more }));
    const item = data.get("/data/items/one.json") as { parts: Record<string, { matching: unknown }> };
    return item.parts;
  };

  // Common practice, no source: the parts of an outfit bear its number, and a stranger bears another's.
  it.each([
    [
      '{ body: { state: present, marks: ["No. 118"] } }',
      { verdict: "matching", otherSet: null, otherItem: null },
    ],
    [
      '{ body: { state: present, marks: ["no.  118"] } }',
      { verdict: "matching", otherSet: null, otherItem: null },
    ],
    [
      '{ body: { state: present, marks: ["No. 97"] } }',
      { verdict: "other-set", otherSet: "97", otherItem: null },
    ],
    ["{ body: present }", { verdict: "unread", otherSet: null, otherItem: null }],
    [
      '{ body: { state: present, marks: ["A. Smith"] } }',
      { verdict: "partial", otherSet: null, otherItem: null },
    ],
    ["{ body: absent }", null],
  ])("reads %s", (parts, expected) => {
    expect(matching(parts).body?.matching).toEqual(expected);
  });

  it("names the item of the collection whose number a part bears", () => {
    const found = matching('{ tray: { state: present, marks: ["97"] } }', { other: 'set: "97"' });
    expect(found.tray?.matching).toEqual({
      verdict: "other-set",
      otherSet: "97",
      otherItem: { id: "other", name: "Chest other" },
    });
  });

  // Which of two it came from, the number alone does not say.
  it("names none where two have that number", () => {
    const more = { other: 'set: "97"', another: 'set: "97"' };
    const found = matching('{ tray: { state: present, marks: ["97"] } }', more);
    expect(found.tray?.matching).toEqual({ verdict: "other-set", otherSet: "97", otherItem: null });
  });
});

describe("the nearest recorded examples", () => {
  it("are those that agree in most of what is known of both", () => {
    const data = dataOf(
      files(
        {
          one: "features: { lock: iron }\nparts: { body: present, tray: present, hook: absent }",
          two: "features: { lock: brass }\nparts: { body: present, tray: present, hook: absent }",
        },
        "2001,a,alpha,lists,record,body;tray,hook\n2002,a,beta,lists,record,body,tray;hook\n2003,a,gamma,lists,mention,,\n",
      ),
    );
    const { nearest } = data.get("/data/items/one.json") as {
      nearest: { name: string; item: string | null; likeness: number; compared: number }[];
    };
    // Gower (1971), Biometrics 27: 857-871, by hand: alpha agrees in 3 of 3, two in 3 of 4, beta in 2 of 3;
    // of gamma nothing is known, so it is not compared.
    expect(nearest).toEqual([
      { name: "alpha", item: null, likeness: 1, compared: 3 },
      { name: "Chest two", item: "two", likeness: 0.75, compared: 4 },
      { name: "beta", item: null, likeness: 2 / 3, compared: 3 },
    ]);
  });
});

describe("rarity by level", () => {
  // Common practice, no source: the bare instrument turns up often, the whole outfit hardly ever.
  it("counts the examples that reach each level, of those of which every part is recorded that it needs", () => {
    const data = dataOf(
      files(
        {},
        [
          "2001,a,alpha,lists,offer,body;tray;hook,",
          "2002,a,alpha,lists,record,,",
          "2003,a,beta,lists,offer,body,tray;hook",
          "2004,a,gamma,lists,offer,body,",
          "2005,a,delta,lists,offer,,body",
          "",
        ].join("\n"),
      ),
    );
    const { rarity } = data.get("/data/variants/a.json") as {
      rarity: {
        levels: Record<string, Record<string, { inputs: Record<string, unknown>; value: number | null }>>;
      };
    };
    expect(rarity.levels.bare?.share?.inputs).toEqual({ reaching: 3, recorded: 4 });
    // Of gamma and delta tray and hook are not recorded: that delta's body is gone can count for a no, and nothing for a yes.
    expect(rarity.levels.whole?.share?.inputs).toEqual({ reaching: 1, recorded: 2, leftOut: 2 });
    expect(rarity.levels.bare?.appearance?.value).toBeCloseTo(0.3, 12);
    expect(rarity.levels.whole?.appearance?.value).toBeCloseTo(0.1, 12);
    // Delta is certainly not whole, and gamma may be.
    expect(rarity.levels.whole?.appearance?.inputs).toMatchObject({ offersOfAny: 4, offersRecorded: 3 });
    // Chao1 by hand: 4 examples, 3 once, 1 twice: 4 + 3·2/(2·2) = 5.5; times the shares.
    expect(rarity.levels.bare?.survivors?.value).toBeCloseTo(5.5 * 0.75, 12);
    expect(rarity.levels.whole?.survivors?.value).toBeCloseTo(5.5 / 2, 12);
  });
});

describe("provenance", () => {
  it("counts documented years and says how long a gap is at least and at most", () => {
    const data = dataOf(
      files({
        one: `examined: 2026-03-14
provenance:
  - { date: 1905/1931, event: in use }
  - { date: 1955/1960, event: in a school, evidence: inventory }
  - { date: "2001~", event: acquired }`,
      }),
    );
    const { provenance } = data.get("/data/items/one.json") as {
      provenance: {
        documentedYears: number;
        lifetimeYears: number;
        gaps: { from: number; to: number; years: number; longest: number }[];
        caveats: string[];
      };
    };
    // Calendar years: 27 + 6 + 1, and that of the examination, of 1901 to 2026.
    expect(provenance.documentedYears).toBe(35);
    expect(provenance.lifetimeYears).toBe(126);
    expect(provenance.gaps.map(({ from, to }) => [from, to])).toEqual([
      [1931, 1955],
      [1960, 2001],
      [2001, 2026],
    ]);
    expect(provenance.caveats).toEqual([
      "Some of the dates are uncertain or approximate, and are taken as written.",
    ]);
    // From the end of 1931 to the beginning of 1955 are 23 years.
    expect(provenance.gaps[0]?.years).toBeCloseTo(23, 1);
    expect(provenance.gaps[0]?.longest).toBeCloseTo(25, 1);
  });

  const custodyOf = (events: string, examined = "2020") => {
    const one = `examined: ${examined}\nprovenance:\n${events}`;
    return (
      dataOf(files({ one })).get("/data/items/one.json") as {
        provenance: { documentedYears: number; gaps: { from: number; to: number }[] };
      }
    ).provenance;
  };

  // By hand: the variant was issued from 1901, and the year of the examination, 2020, is one.
  it.each([
    ["a decade is one year that nobody knows", "  - { date: 193X, event: sold }", 2],
    ["held from 2011 on lasts to the examination", "  - { date: 2011/.., event: acquired }", 10],
    [
      "an end that is not known documents no more than its beginning",
      '  - { date: "2011/", event: acquired }',
      2,
    ],
    [
      "from some year of the tens to 1915 is certain for its last year only",
      "  - { date: 191X/1915, event: in use }",
      2,
    ],
    ["what lies before its life is none of it", "  - { date: 1850/1902, event: in use }", 3],
  ])("%s", (_, events, documented) => {
    expect(custodyOf(events).documentedYears).toBe(documented);
  });

  it("finds no gap after a custody that goes on", () => {
    const { gaps } = custodyOf(
      "  - { date: 1950/.., event: held }\n  - { date: 1960, event: shown }\n  - { date: 1990, event: shown }",
    );
    expect(gaps).toMatchObject([{ from: 1905, to: 1950 }]);
  });
});
