import { readFileSync } from "node:fs";
import path from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { type Files, writeCollection } from "../collections/collection.ts";
import { runHere } from "../commands/run-here.ts";

const parts = `parts: { body: { name: Body, standing: core }, tray: { name: Tray } }
levels: [{ id: whole, name: Whole, needs: { standing: [core, issued] } }]
`;

const shared: Files = {
  "content/sources.yaml": "- { id: ledger, title: Ledger }\n",
  "schemas/reference/chest/family.yaml": "name: Chests\n",
};

/** A variant for each thing that the evidence does not carry. */
const variants: Readonly<Record<string, string>> = {
  unseen: "name: Unseen\n",
  once: "name: Once\nmade: { count: 9, source: ledger }\n",
  skipped: "name: Skipped\nserials: [{ prefix: S, from: 1, skipped: true, source: ledger }]\n",
  few: "name: Few\nserials: [{ prefix: F, from: 1, source: ledger }]\n",
  range: "name: Range\nmade: { low: 40, high: 50, source: ledger }\n",
  unmade: "name: Unmade\n",
  exceeding: "name: Exceeding\nmade: { count: 5, source: ledger }\n",
  halves: "name: Halves\n",
  outnumbering: "name: Outnumbering\nmade: { count: 1, source: ledger }\n",
};

const log = `seen,variant,serial,example,source,kind,list,present
2001,once,,o1,ledger,record,,
2002,once,,o2,ledger,record,east,
2001,few,F7,,ledger,record,,
2001,range,,r1,ledger,record,,
2002,range,,r1,ledger,record,,
2001,unmade,,u1,ledger,record,,
2002,unmade,,u1,ledger,record,,
2001,exceeding,,e1,ledger,record,,
2002,exceeding,,e1,ledger,record,,
2001,exceeding,,e2,ledger,record,,
2001,exceeding,,e3,ledger,record,,
2001,exceeding,,e4,ledger,record,,
2001,halves,,h1,ledger,offer,east,
2001,halves,,h1,ledger,record,west,
2001,halves,,h2,ledger,record,,
2001,outnumbering,,n1,ledger,record,,
2001,outnumbering,,n2,ledger,record,,
`;

const telling: Files = {
  ...shared,
  "content/collection.yaml": "title: T\nurl: https://example.org/\n",
  "content/sightings/log.csv": log,
  "content/items/alone.md": "---\ntitle: Alone\nvariant: few\ncensus: false\nparts: { body: present }\n---\n",
  // Not counted among the sightings: in the lists, on cards and in the opening their variants' survivors stand alone.
  ...Object.fromEntries(
    ["exceeding", "outnumbering"].map((id) => [
      `content/items/${id}-one.md`,
      `---\ntitle: One of ${id}\nvariant: ${id}\ncensus: false\nparts: { body: present }\n---\n`,
    ]),
  ),
  ...Object.fromEntries(
    Object.entries(variants).map(([id, text]) => [`schemas/reference/chest/${id}.yaml`, text + parts]),
  ),
};

/** Nobody watched, nothing was seen, and its one outfit has nothing to be complete by. */
const silent: Files = {
  ...shared,
  "content/collection.yaml": "title: T\nurl: https://example.org/\n",
  "schemas/reference/chest/oils.yaml": "name: Oils\nparts: { oil: { name: Oil, standing: consumable } }\n",
  "schemas/reference/chest/plain.yaml":
    "name: Plain\nparts: { body: { name: Body, standing: core } }\nlevels: [{ id: whole, name: Whole, needs: { standing: [core] } }]\n",
  "content/items/bare.md":
    "---\ntitle: Bare\nvariant: plain\ncensus: false\nparts: { body: not-issued }\n---\n",
  "content/items/jar.md": "---\ntitle: Jar\nvariant: oils\ncensus: false\n---\n",
};

const built = async (files: Files) => {
  const root = writeCollection(files);
  const out = path.join(root, "site");
  const { code, err } = await runHere(["build", "--root", root, "--out", out], root);
  expect({ code, err }).toEqual({ code: 0, err: expect.any(String) });
  return (page: string) =>
    readFileSync(path.join(out, page, "index.html"), "utf8")
      .replace(/<[^>]+>/g, " ")
      .replace(/\s+/g, " ");
};

// The list is that of the design, and every other reason for which a figure is withheld.
describe("a figure that the evidence does not carry is withheld in plain words, on a page", () => {
  let told: (page: string) => string;
  let unsaid: (page: string) => string;
  beforeAll(async () => {
    told = await built(telling);
    unsaid = await built(silent);
  });

  it.each([
    ["unseen", "No sighting is recorded."],
    ["unseen", "No record of the number made is known, and no range of serials."],
    ["unseen", "No sighting names the list that it comes from"],
    ["unseen", "How many survive is not known well enough."],
    ["unseen", "For no example are all the parts recorded that this level needs."],
    [
      "once",
      "Every known example was seen only once, so nothing tells how many have never been seen; at least 2 survive.",
    ],
    ["few", "A single sighting does not tell how likely it is that the next one is of a known example."],
    ["halves", "For the one offer it is not recorded whether it was of such an outfit."],
    [
      "halves",
      "The two lists allow for no more than 1, and 2 different examples are known: one of the lists is not what the method takes it for.",
    ],
    ["once", "The sightings come from 1 list; the method compares exactly two independent ones."],
    ["skipped", "Numbers were left unused, so the serials do not count what was made."],
    ["few", "Only 1 serial of an open range is recorded; the method needs 2."],
    ["few", "at least 1 survives."],
    // In the narrow column of a list of parts; the data file has the whole sentence.
    ["few", "not recorded"],
    ["unmade", "How many were made is not known well enough."],
    ["range", "The record gives a range and no number: 40 to 50."],
    ["exceeding", "More are estimated to survive than were made"],
    ["exceeding", "More are estimated to survive than the 5 that were made"],
    ["outnumbering", "2 different examples are known, and 1 is said to have been made: a record is wrong."],
  ])("%s: %s", (variant, reason) => {
    expect(told(`variants/${variant}`)).toContain(reason);
  });

  // By hand, Chao1: D = 4, f1 = 3, f2 = 1, so T = 3 * 2 / (2 * 2) = 1.5, and 5.5 exceed the 5 made; var = 6/4 + 75/16 +
  // 36/64 = 6.75, K = exp(1.96 * sqrt(ln 4)) = 10.05, and 4 + 1.5 / K = 4.15, 4 + 1.5 * K = 19.1.
  it.each([
    ["exceeding", "about 6, 4 to 19 survive: more than were made"],
    ["outnumbering", "survivors not known: more are known than were made"],
  ])("%s: wherever its survivors stand alone, %s", (variant, said) => {
    for (const page of [
      "",
      "items",
      `items/by/variant/${variant}`,
      `items/${variant}-one`,
      `items/${variant}-one/card`,
    ])
      expect(told(page).replace(/ :/g, ":").toLowerCase(), page).toContain(said);
  });

  // By hand, Jeffreys' prior without an offer in T = 2: 2(2² − 1) = 6.
  it("unseen: a rate and a wait are given, and what they rest on stands beside them unasked", () => {
    const seen = "No such offer is recorded in the 2 years watched: the figure rests on those years alone.";
    const page = told("variants/unseen");
    expect(page).toContain(`0 a year, 0 to 1.8 basis : Offered ${seen} Method`);
    expect(page).toContain(
      `about 6 years, 1 month to over 100 years basis : Wait for the next offered ${seen} Method`,
    );
  });

  it("alone: nobody to compare", () => {
    expect(told("items/alone")).toContain(
      "No other is recorded part by part, to compare its completeness with.",
    );
  });

  it.each([
    ["variants/oils", "Nobody has said in which years offers were watched for."],
    ["items/jar", "The reference lists no principal or issued part to compare by."],
    ["items/jar", "The reference lists no principal or issued part, so completeness has no meaning here."],
    ["items/bare", "It was issued none of the principal or issued parts, so there is nothing to compare."],
    [
      "items/bare",
      "It was issued none of the principal or issued parts, so completeness has no meaning here.",
    ],
    ["items/bare", "Nothing: it was issued no part"],
    ["items/bare", "It was issued none of the parts of the reference."],
  ])("%s: %s", (page, reason) => {
    expect(unsaid(page)).toContain(reason);
  });

  it("of parts that an outfit was never issued nobody says that they are there, or were not looked for", () => {
    expect(unsaid("items/bare")).not.toMatch(/The reference lists no|Nobody has looked|Every part/);
  });
});
