import { describe, expect, it } from "vitest";
import { checkCollection } from "../../shared/site/checks/check-collection.ts";
import { type Files, smallCollection, writeCollection } from "../collections/collection.ts";

const variant = [
  "issued: 1931/1938",
  "serials: [{ prefix: T, from: 1, to: 400, source: ledger }]",
  "features: { lock: iron }",
  "parts:",
  "  fork: { name: Fork, quantity: 2 }",
  "  spoon: { name: Spoon, accepts: [{ model: later-tin, credit: 0.5 }] }",
].join("\n");

const family =
  "name: Chests\nfeatures:\n  lock: { name: Lock, values: [iron, brass, steel] }\n  lid: { name: Lid, values: [flat, domed] }\n";

const sources = { "content/sources.yaml": "- { id: ledger, title: Ledger }\n" };
const familyFile = "schemas/reference/chest/family.yaml";

/** The errors that one run tells, in reading order: file, line and code, with what was found. */
const errors = (files: Files, reference = variant): string[] =>
  checkCollection(
    writeCollection(smallCollection(`${reference}\n`, { ...sources, ...files })),
  ).diagnostics.flatMap(({ file, line, code, severity, found }) =>
    severity === "error" ? [`${file.replace(/^.*\//, "")}:${line} ${code} ${found}`] : [],
  );

const item = (lines: readonly string[], text = "Text."): string =>
  ["---", "title: A chest", "variant: chest-a", ...lines, "---", text, ""].join("\n");

describe("one run tells every problem", () => {
  it("of an item: what does not fit, and all that other records do not bear out", () => {
    const one = item(
      [
        "examined: 2015-13",
        "features: { lock: irn, hinge: long }",
        "parts:",
        "  fork: subsitute",
        "  frok: present",
        "  spoon: { state: present, quantity: none }",
        "assembled: [spon]",
        "photos:",
        "  - { file: nix.jpg, alt: 7 }",
        "  - { file: nox.jpg }",
        "provenance:",
        "  - { event: sold, source: ledgr }",
        "  - none",
        "  - { date: 1946, event: sold, source: leger }",
        "extras: [{ hazards: [leed] }]",
      ],
      "As the [@ledgre] says.",
    );
    expect(errors({ "content/items/one.md": one })).toEqual([
      'one.md:4 wrong-date "2015-13"',
      'one.md:5 wrong-value "irn"',
      'one.md:5 unknown-feature "hinge"',
      'one.md:7 wrong-value "subsitute"',
      'one.md:8 unknown-part "frok"',
      'one.md:9 wrong-type "none"',
      'one.md:10 unknown-part "spon"',
      'one.md:12 missing-file "nix.jpg"',
      "one.md:12 wrong-type 7",
      'one.md:13 missing-field no field "alt"',
      'one.md:13 missing-file "nox.jpg"',
      'one.md:15 missing-field no field "date"',
      'one.md:15 unknown-source "ledgr"',
      'one.md:16 wrong-type "none"',
      'one.md:17 unknown-source "leger"',
      'one.md:18 missing-field no field "name"',
      'one.md:18 unknown-hazard "leed"',
      'one.md:20 unknown-source "ledgre"',
    ]);
  });

  it("of a row", () => {
    const log = [
      "seen,variant,source,kind,present,price",
      "2015-13,chest-a,ledgr,offer,frok,5",
      "2001,chest-a,ledger,ofer,fork;spon,x",
      "2001,chest-b,ledgr,offer,fork,5",
    ];
    expect(
      errors({
        "content/items/one.md": item([]),
        "content/sightings/log.csv": `${log.join("\n")}\n`,
      }),
    ).toEqual([
      'log.csv:2 wrong-date "2015-13"',
      'log.csv:2 unknown-source "ledgr"',
      'log.csv:2 unknown-part "frok"',
      'log.csv:3 wrong-value "ofer"',
      'log.csv:3 unknown-part "spon"',
      'log.csv:3 wrong-type "x"',
      'log.csv:4 unknown-variant "chest-b"',
      'log.csv:4 unknown-source "ledgr"',
    ]);
  });

  const broken = item(["features: { lock: irn }", "parts: { frok: present }"]);
  const row = "seen,variant,kind,source,present\n2001,chest-a,offer,ledger,frok\n";
  const ofItemAndRow = [
    'one.md:4 wrong-value "irn"',
    'one.md:5 unknown-part "frok"',
    'log.csv:2 unknown-part "frok"',
  ];

  it.each<[string, Files, string, string]>([
    ["family", { [familyFile]: `${family}makr: Tarn\n` }, variant, 'family.yaml:5 unknown-field "makr"'],
    ["variant", {}, variant.replace("quantity: 2", "standing: coer"), 'chest-a.yaml:6 wrong-value "coer"'],
    ["variant, in one part", {}, `${variant}\n  frame: 3`, "chest-a.yaml:8 wrong-type 3"],
  ])("of an item and a row of a %s that does not fit", (_, files, reference, found) => {
    const told = errors(
      { "content/items/one.md": broken, "content/sightings/log.csv": row, ...files },
      reference,
    );
    expect([...told].sort()).toEqual([...ofItemAndRow, found].sort());
  });

  it("of a variant that does not fit", () => {
    const reference = [
      "issued: 1931-13",
      "made: { count: many, source: ledgr }",
      "serials: [{ prefix: T, from: 9, to: 2, source: ledgr }, { from: one, source: leger }]",
      "features: { lock: irn, hinge: long }",
      "parts:",
      "  fork: { quantity: 0, hazards: [leed] }",
      "levels: [{ id: full, needs: { parts: [frok] } }]",
    ].join("\n");
    expect(errors({ "content/items/one.md": item([]) }, reference)).toEqual([
      'chest-a.yaml:2 wrong-date "1931-13"',
      'chest-a.yaml:3 wrong-type "many"',
      'chest-a.yaml:3 unknown-source "ledgr"',
      "chest-a.yaml:4 range-reversed a range from 9 to 2",
      'chest-a.yaml:4 unknown-source "ledgr"',
      'chest-a.yaml:4 wrong-type "one"',
      'chest-a.yaml:4 unknown-source "leger"',
      'chest-a.yaml:5 wrong-value "irn"',
      'chest-a.yaml:5 unknown-feature "hinge"',
      "chest-a.yaml:7 out-of-range 0",
      'chest-a.yaml:7 unknown-hazard "leed"',
      'chest-a.yaml:8 missing-field no field "name"',
      'chest-a.yaml:8 unknown-part "frok"',
    ]);
  });

  it("of texts: figures, tables and drawings that there will not be", () => {
    const text = [
      "Of <figure:variants/nope/made> and <figure:variants/chest-a/maid>, of",
      "<figure:items/one/rank/plaice> and <figure:variants/chest-a/parts/frok/value>, as",
      "<figure:variants/chest-a/parts/fork> and <figure:items/two/rank> say, and <figur:items/one/rank>.",
      "",
      "<table:variants/chset>",
      "",
      "<table:items?varaint=chest-a>",
      "",
      "<table:items?variant=chest-z&show=rank>",
      "",
      "<plot:items/one/costody>",
      "",
      "<table:items?variant=chest-a>",
      "",
      "```expect",
      "variants/nope/made/value at least 3",
      "variants/chest-a/made/value is about 3",
      "```",
    ].join("\n");
    const found = errors({
      "content/items/one.md": item([]),
      // One that does not fit has figures of which nothing is known; so has one that cannot be read.
      "content/items/two.md": item(["examined: 2015-13"]),
      "content/items/three.md": "---\ntitle: A\ntitle: B\n---\n",
      "content/articles/on.md": `---\ntitle: On chests\n---\n<figure:items/two/rnk> <figure:items/three/rank>\n${text}\n`,
    });
    expect(found).toEqual([
      'on.md:5 unknown-figure "nope"',
      'on.md:5 unknown-figure "maid"',
      'on.md:6 unknown-figure "plaice"',
      'on.md:6 unknown-figure "frok"',
      'on.md:7 unknown-figure "figur:"',
      'on.md:9 unknown-table "chset"',
      'on.md:11 unknown-table "varaint"',
      'on.md:13 unknown-table "chest-z"',
      'on.md:15 unknown-plot "costody"',
      'on.md:20 unknown-figure "nope"',
      'on.md:21 wrong-expectation "variants/chest-a/made/value is about 3"',
      'three.md:3 yaml-syntax "title" again',
      'two.md:4 wrong-date "2015-13"',
    ]);
  });

  it("where the settings cannot be read, too", () => {
    expect(
      errors({
        "content/collection.yaml": "title: A\ntitle: B\n",
        "content/items/one.md": item(["parts: { frok: present }"], "As the [@ledgre] says."),
      }).map((each) => each.split(" ")[1]),
    ).toEqual(["yaml-syntax", "unknown-part", "unknown-source"]);
  });
});

describe("nothing is told of what rests on something that does not fit", () => {
  const sound = item(
    [
      "serial: T7",
      "publish: { serial: shown }",
      "features: { lock: iron, lid: flat }",
      "parts: { fork: { state: present, quantity: 2 }, spoon: { state: substitute, model: later-tin } }",
    ],
    "As the [@ledger] says.",
  );
  const log = "seen,variant,kind,source,serial,present\n2001,chest-a,offer,ledger,T9,fork;spoon\n";
  const told = (files: Files, reference = variant): string[] =>
    checkCollection(
      writeCollection(
        smallCollection(`${reference}\n`, {
          ...sources,
          "content/items/one.md": sound,
          "content/sightings/log.csv": log,
          ...files,
        }),
      ),
    ).diagnostics.flatMap(({ file, line, code }) =>
      code === "no-photograph" ? [] : [`${file.replace(/^.*\//, "")}:${line} ${code}`],
    );

  it("of a sound collection", () => {
    expect(told({})).toEqual([]);
  });

  it.each<[string, Files, string, readonly string[]]>([
    [
      "parts that are a list",
      {},
      variant.replace(/parts:.*/s, "parts: [fork]"),
      ["chest-a.yaml:5 wrong-type"],
    ],
    [
      "parts under a misspelt name",
      {},
      variant.replace("parts:", "prats:"),
      ["chest-a.yaml:5 unknown-field"],
    ],
    [
      "parts under another name",
      {},
      variant.replace("parts:", "contents:"),
      ["chest-a.yaml:5 unknown-field"],
    ],
    ["a part with another id", {}, variant.replace("  fork:", "  Fork:"), ["chest-a.yaml:6 wrong-id"]],
    ["a part that is a number", {}, variant.replace(/fork: .*/, "fork: 2"), ["chest-a.yaml:6 wrong-type"]],
    ["a quantity", {}, variant.replace("quantity: 2", "quantity: two"), ["chest-a.yaml:6 wrong-type"]],
    ["models", {}, variant.replace("model: later-tin", "model: Later tin"), ["chest-a.yaml:7 wrong-id"]],
    ["a range", {}, variant.replace("to: 400", "to: many"), ["chest-a.yaml:3 wrong-type"]],
    ["the years of issue", {}, variant.replace("1931/1938", "1938/1931"), ["chest-a.yaml:2 wrong-date"]],
    [
      "the features of the family",
      { [familyFile]: "name: Chests\nfeatures: [lock]\n" },
      variant,
      ["family.yaml:2 wrong-type"],
    ],
    [
      "values of a feature",
      { [familyFile]: family.replace("[iron, brass, steel]", "[iron, iron]") },
      variant,
      ["family.yaml:3 wrong-value"],
    ],
    [
      "a family that cannot be read",
      { [familyFile]: `${family}name: Chests\n` },
      variant,
      ["family.yaml:5 yaml-syntax"],
    ],
    ["a family that is no text", { [familyFile]: new Uint8Array([0]) }, variant, ["family.yaml:1 not-text"]],
    ["a variant that cannot be read", {}, `${variant}\nname: Chest A`, ["chest-a.yaml:8 yaml-syntax"]],
    ["the base of a variant", {}, "extends: chest-b", ["chest-a.yaml:2 unknown-variant"]],
    ["a bibliography", { "content/sources.yaml": "ledger" }, variant, ["sources.yaml:1 wrong-type"]],
    [
      "the id of a source",
      { "content/sources.yaml": "- { id: Ledger, title: Ledger }\n" },
      variant,
      ["sources.yaml:1 wrong-id"],
    ],
    [
      "a source",
      { "content/sources.yaml": "- { id: ledger, issued: [1931] }\n" },
      variant,
      ["sources.yaml:1 missing-field", "sources.yaml:1 wrong-type"],
    ],
  ])("of %s", (_, files, reference, expected) => {
    expect(told(files, reference)).toEqual(expected);
  });

  it("of a choice of what is published", () => {
    const named = {
      "content/items/t7x.md": sound.replace("serial: T7\n", "serial: T7X\n").replace("shown", "shwn"),
    };
    expect(told(named).filter((each) => !each.includes("serial-out-of-range"))).toEqual([
      "t7x.md:5 wrong-value",
    ]);
  });
});
