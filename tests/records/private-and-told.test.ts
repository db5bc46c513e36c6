import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { buildSite } from "../../shared/site/build/build-site.ts";
import { checkCollection } from "../../shared/site/checks/check-collection.ts";
import { type Files, item, smallCollection, writeCollection } from "../collections/collection.ts";

const codes = ["private-in-text", "serial-in-address", "serial-in-log"];

const root = (more: Files) =>
  writeCollection(
    smallCollection("parts:\n  fork: { name: Fork }\n", {
      "content/sources.yaml": "- { id: ledger, title: Ledger }\n",
      ...more,
    }),
  );

const toldIn = (folder: string): string[] =>
  checkCollection(folder).diagnostics.flatMap(({ code, file, line, column, found }) =>
    codes.includes(code) ? [`${file.replace(/^content\//, "")}:${line}:${column} ${code} ${found}`] : [],
  );

const told = (more: Files): string[] => toldIn(root(more));

const kept = "provenance:\n  - { date: 1998, event: bought, from: Ida Quarrendon, private: [from] }\n";

describe("what an item keeps private and tells all the same", () => {
  it("is told of where markup parts it, and its surname not by itself there", () => {
    expect(
      told({
        "content/items/one.md": `${item(kept)}I**da** _Quarren_&#100;on had it. Quarren**don** sold it.\n`,
        "content/articles/on.md": "---\ntitle: On\n---\nOf I*da* Quarrendon.\n",
      }),
    ).toEqual([
      'articles/on.md:4:4 private-in-text "Ida Quarrendon", which the item "one" keeps private under "provenance"',
      'items/one.md:9:1 private-in-text "Ida Quarrendon", which the item "one" keeps private under "provenance"',
      'items/one.md:9:35 private-in-text "Quarrendon", the surname in a name that the item "one" keeps private under "provenance"',
    ]);
  });

  it("is told of at every place that tells it", () => {
    const texts = `${kept}  - { date: 2001, event: Ida Quarrendon's sale }\nphotos:\n  - { file: a.png, alt: The case of Ida Quarrendon }`;
    expect(
      told({
        "content/items/one/index.md": `---\ntitle: A chest\nvariant: chest-a\n${texts}\n---\n\nIt was Ida\nQuarrendon's. Then Ida Quarrendon sold it.\n`,
        "content/items/one/a.png": "",
      }),
    ).toEqual([
      'items/one/index.md:6:26 private-in-text "Ida Quarrendon", which the item "one" keeps private under "provenance"',
      'items/one/index.md:8:37 private-in-text "Ida Quarrendon", which the item "one" keeps private under "provenance"',
      'items/one/index.md:11:8 private-in-text "Ida Quarrendon", which the item "one" keeps private under "provenance"',
      'items/one/index.md:12:20 private-in-text "Ida Quarrendon", which the item "one" keeps private under "provenance"',
    ]);
  });
});

describe("an amount that an item does not publish", () => {
  const said = (place: string, amount: string, field: string) =>
    `items/one.md:${place} private-in-text "${amount}", an amount that the item "one" keeps private under "${field}"`;
  const one = (text: string, more = "") =>
    told({ "content/items/one.md": `${item(`paid: { amount: 3100, currency: EUR }${more}`)}${text}\n` });

  // How amounts of money are written: The Chicago Manual of Style, 17th ed., 9.20-9.23; DIN 5008. From memory.
  it.each(["€3,100", "3.100 €", "EUR 3 100.00", "3100 euros", "3\u2019100,- Euro", "3**100** EUR"])(
    "is told of as %s",
    (text) => {
      expect(one(text)).toEqual([said("7:1", text.replaceAll("*", ""), "paid")]);
    },
  );

  it.each(["3100", "€13,100", "3100.50 EUR", "3100 leaves", "£3100", "3100 europium"])(
    "is another in %s",
    (text) => {
      expect(one(text)).toEqual([]);
    },
  );

  it("may be what an earlier owner paid, what it is insured for, or what is asked", () => {
    const more =
      "\nprice: { amount: 4200, currency: USD }\nprivate: { insured: { amount: 5000, currency: CHF } }\nprovenance:\n  - { date: 1998, event: bought, price: { amount: 12.5, currency: GBP } }";
    const text = "£12.50, $4200, CHF 5,000.";
    expect(one(text, more)).toEqual([
      said("11:1", "£12.50", "provenance"),
      said("11:9", "$4200", "price"),
      said("11:16", "CHF 5,000", "private"),
    ]);
    expect(one("$4200", `${more}\npublish: { price: shown }`)).toEqual([]);
  });
});

describe("a name that an item keeps private", () => {
  const found = '"Ida Quarrendon", which the item "one" keeps private under "provenance"';
  const one = { "content/items/one.md": item(kept) };

  it.each<[string, Files, string]>([
    [
      "an article",
      { "content/articles/on.md": "---\ntitle: On\n---\nA chest.\n\nIda Quarrendon had it.\n" },
      "articles/on.md:6:1",
    ],
    [
      "another item",
      { "content/items/two.md": item("provenance:\n  - { date: 2001, event: sold, to: Ida Quarrendon }") },
      "items/two.md:5:36",
    ],
    [
      "a family",
      {
        "schemas/reference/chest/family.yaml":
          "name: Chests\ndescription: As Ida Quarrendon says.\nfeatures:\n  lock: { name: Lock, values: [iron, brass, steel] }\n",
      },
      "schemas/reference/chest/family.yaml:2:17",
    ],
    [
      "a variant",
      {
        "schemas/reference/chest/chest-a.yaml":
          "name: Chest A\nparts:\n  fork: { name: Fork, note: As Ida Quarrendon says. }\n",
      },
      "schemas/reference/chest/chest-a.yaml:3:32",
    ],
    [
      "the log, as a table",
      {
        "content/sightings/log.csv":
          "seen,variant,kind,source,note\n2001,chest-a,offer,ledger,Ida QUARRENDON's\n",
      },
      "sightings/log.csv:2:27",
    ],
    [
      "the log, as YAML",
      {
        "content/sightings/log.yaml":
          "- { seen: 2001, variant: chest-a, kind: offer, source: ledger, note: Ida Quarrendon's }\n",
      },
      "sightings/log.yaml:1:70",
    ],
    [
      "the bibliography",
      { "content/sources.yaml": "- { id: ledger, title: Papers of Ida Quarrendon }\n" },
      "sources.yaml:1:34",
    ],
    [
      "the settings",
      { "content/collection.yaml": "title: A test collection\nnotice: Ask Ida Quarrendon.\n" },
      "collection.yaml:2:13",
    ],
  ])("is told of where %s tells it, by check and in the count of a build", async (_, more, place) => {
    const folder = root({ ...one, ...more });
    const said = found.replace("Ida Quarrendon", place.includes("csv") ? "Ida QUARRENDON" : "Ida Quarrendon");
    expect(toldIn(folder)).toEqual([`${place} private-in-text ${said}`]);
    const { written } = await buildSite(folder, path.join(folder, "_site"), "public");
    expect(written?.warnings).toBe(checkCollection(folder).diagnostics.length);
  });

  it("may be kept by several, and stands in none of them in the open", () => {
    expect(told({ ...one, "content/items/two.md": item(kept) })).toEqual([]);
  });

  it("is a name of several words and some length, with a capital", () => {
    const short = (name: string) =>
      told({
        "content/items/one.md": item(
          `provenance:\n  - { date: 1998, event: bought, from: ${name}, private: [from] }\nstorage: Upper Shelf`,
        ),
        "content/articles/on.md": `---\ntitle: On\n---\nThe ${name} on an upper shelf.\n`,
      });
    expect(short("Ida")).toEqual([]);
    expect(short("Quarrendon")).toEqual([]);
    expect(short("the collection")).toEqual([]);
    expect(short("the Quarrendons")).toHaveLength(1);
  });

  const toldOf = (from: string, text: string) =>
    told({
      "content/items/one.md": item(
        `provenance:\n  - { date: 1998, event: bought, from: "${from}", private: [from] }`,
      ),
      "content/articles/on.md": `---\ntitle: On\n---\nThen ${text} had it.\n`,
    });

  it("may have the family's name first, and is told of in either order", () => {
    const place = (name: string) =>
      `articles/on.md:4:6 private-in-text "${name}", which the item "one" keeps private under "provenance"`;
    expect(toldOf("Quarrendon, Ida", "Quarrendon, Ida")).toEqual([place("Quarrendon, Ida")]);
    expect(toldOf("Quarrendon, Ida", "Ida Quarrendon")).toEqual([place("Ida Quarrendon")]);
    expect(toldOf("Quarrendon, Ida", "Ida, Quarrendon")).toEqual([]);
    expect(
      told({
        "content/items/one.md":
          '---\ntitle: A chest\nvariant: chest-a\nprovenance: [{ date: 1998, event: bought, from: "Quarrendon, Ida", private: [from] }]\n---\nOf Ida Quarrendon.\n',
      }),
    ).toEqual([
      'items/one.md:6:4 private-in-text "Ida Quarrendon", which the item "one" keeps private under "provenance"',
    ]);
  });

  // A letter with an accent is one character or two, by Unicode the same (UAX #15).
  it.each([
    ["Andr\u00e9 Durand", "Andre\u0301 Durand"],
    ["Andre\u0301 Durand", "Andr\u00e9 Durand"],
    ["\u00c9mile Zorn", "E\u0301mile Zorn"],
    ["E\u0301mile Zorn", "\u00c9mile Zorn"],
  ])("is told of however its letters are put together: %j as %j", (from, text) => {
    const found = `private-in-text "${text}", which the item "one" keeps private under "provenance"`;
    expect(toldOf(from, text)).toEqual([`articles/on.md:4:6 ${found}`]);
    expect(told({ "content/items/one.md": `${item(`private: { owner: ${from} }`)}${text}\n` })).toEqual([
      `items/one.md:7:1 ${found.replace("provenance", "private")}`,
    ]);
  });

  it("is not told of where a letter of it has an accent more", () => {
    expect(toldOf("Ida Duse", "Ida Duse\u0301")).toEqual([]);
  });

  it("may stand under what is private to an item as a whole", () => {
    expect(
      told({
        "content/items/one.md": item("private: { owner: Ida Quarrendon, kind: Mahogany }"),
        "content/articles/on.md": "---\ntitle: On\n---\nMahogany, and Ida Quarrendon.\n",
      }),
    ).toEqual([
      'articles/on.md:4:15 private-in-text "Ida Quarrendon", which the item "one" keeps private under "private"',
    ]);
  });
});

describe("the surname alone of somebody whom an item keeps private", () => {
  const said = (place: string, name: string) =>
    `${place} private-in-text "${name}", the surname in a name that the item "one" keeps private under "provenance"`;

  it("is told of wherever the texts of that item have it, and the whole name by itself", () => {
    const texts = `${kept}  - { date: 2001, event: sold by QUARRENDON for 500 }\nphotos:\n  - { file: a.png, alt: "Ida Quarrendon's case, at Quarrendon's" }`;
    expect(
      told({
        "content/items/one/index.md": `---\ntitle: A chest\nvariant: chest-a\n${texts}\n---\n\nI. Quarrendon, that is Ida Quarrendon, had it.\nQuarrendonian it was not; Quarrendon's it was.\n`,
        "content/items/one/a.png": "",
      }),
    ).toEqual([
      said("items/one/index.md:6:34", "QUARRENDON"),
      'items/one/index.md:8:26 private-in-text "Ida Quarrendon", which the item "one" keeps private under "provenance"',
      said("items/one/index.md:11:4", "Quarrendon"),
      'items/one/index.md:11:24 private-in-text "Ida Quarrendon", which the item "one" keeps private under "provenance"',
      said("items/one/index.md:12:27", "Quarrendon"),
    ]);
  });

  it("is told of in the rows of the log that are of the same example, and in no other record", () => {
    const row = (serial: string, example: string, note: string) =>
      `2001,chest-a,offer,ledger,${serial},${example},${note}`;
    const rows = [
      row("H 40", "", "Of Quarrendon"),
      row("H41", "", "Of Quarrendon"),
      row("", "attic", "quarrendon's"),
      row("", "", "Of Quarrendon"),
      row("H40", "", "Of Ida Quarrendon"),
    ];
    const log = `seen,variant,kind,source,serial,example,note\n${rows.join("\n")}\n`;
    expect(
      told({
        "content/items/one.md": item(`${kept}serial: H40\nexample: attic\npublish: { serial: shown }`),
        "content/items/two.md": item("serial: H42\npublish: { serial: shown }\nstorage: x\n"),
        "content/articles/on.md": "---\ntitle: On\n---\nThen Quarrendon had it.\n",
        "content/sightings/log.csv": log,
      }),
    ).toEqual([
      said("sightings/log.csv:2:36", "Quarrendon"),
      said("sightings/log.csv:4:34", "quarrendon"),
      'sightings/log.csv:6:35 private-in-text "Ida Quarrendon", which the item "one" keeps private under "provenance"',
    ]);
  });

  const toldOf = (from: string, text: string, more: Files = {}) =>
    told({
      "content/items/one.md": `${item(`provenance:\n  - { date: 1998, event: bought, from: "${from}", private: [from] }`)}${text}\n`,
      ...more,
    }).map((each) => / "([^"]*)", the surname/.exec(each)?.[1] ?? each);

  it.each([
    ["J. Mott", "Mott"],
    ["Quarrendon, Ida", "Quarrendon"],
    ["E. Gannow, boatbuilder", "Gannow"],
    ["The executors of R. Penhallick", "Penhallick"],
    ["Ludwig van der Berg", "Berg"],
    ["Ida Smith-Jones", "Smith-Jones"],
    ["Andr\u00e9 Dur\u00e9e", "Dure\u0301e"],
  ])("of %s is %s", (name, surname) => {
    expect(toldOf(name, `Then ${surname} had it.`)).toEqual([surname]);
  });

  it.each([
    ["a name of one word, which may be a place", "Wick", "At Wick."],
    ["three letters", "E. Orm", "At Orm."],
    ["a word without a capital", "The dealer", "By a dealer."],
    ["somebody who is not named", "Ein H\u00e4ndler", "Vom H\u00e4ndler."],
    ["a remark", "Bought with the rest of it from Wick", "At Wick."],
  ])("is not made of %s", (_, name, text) => {
    expect(toldOf(name, text)).toEqual([]);
  });

  it("is not looked for where it is a word of the maker, the family or the variant", () => {
    const family = (name: string, maker: string) => ({
      "schemas/reference/chest/family.yaml": `name: ${name}\nmaker: ${maker}\n`,
    });
    const text = "A Quarrendon chest.";
    expect(toldOf("Ida Quarrendon", text, family("Chests", "Hale"))).toEqual(["Quarrendon"]);
    expect(toldOf("Ida Quarrendon", text, family("Chests", "Quarrendon & Hale"))).toEqual([]);
    expect(toldOf("Ida Quarrendon", text, family("Quarrendon chests", "Hale"))).toEqual([]);
    expect(
      toldOf("Ida Quarrendon", text, {
        "schemas/reference/chest/chest-a.yaml": "name: The QUARRENDON\nparts: { fork: { name: Fork } }\n",
      }),
    ).toEqual([]);
  });
});

describe("a serial that its item does not show", () => {
  it("is told of at each address that spells it out", () => {
    expect(
      told({
        "content/items/chest-h2118.md": item(
          "serial: H2118\nformerly: [old-one, h-2118, no-h2118, set-02118, of-1921]",
        ),
        "content/items/of-40.md": item("serial: H40"),
      }),
    ).toEqual([
      'items/chest-h2118.md:4:9 serial-in-address the address "chest-h2118", which spells out the serial',
      'items/chest-h2118.md:5:21 serial-in-address the address "h-2118", which spells out the serial',
      'items/chest-h2118.md:5:29 serial-in-address the address "no-h2118", which spells out the serial',
      'items/chest-h2118.md:5:39 serial-in-address the address "set-02118", which spells out the number of the serial',
    ]);
  });

  it("is told of at each row of the log that has it", () => {
    expect(
      told({
        "content/items/one.md": item("serial: H40"),
        "content/sightings/log.csv":
          "seen,variant,serial,source,kind\n2001,chest-a,H 40,ledger,offer\n2002,chest-a,H41,ledger,offer\n2003,chest-a,h40,ledger,offer\n",
      }),
    ).toEqual([
      'sightings/log.csv:2:14 serial-in-log "H 40" in full, although the item "one" has it masked',
      'sightings/log.csv:4:14 serial-in-log "h40" in full, although the item "one" has it masked',
    ]);
  });
});

describe("a link to elsewhere whose address has a serial that its item does not show", () => {
  const said = (place: string, address: string) =>
    `${place} private-in-text "${address}", an address with a serial that is masked or hidden`;
  const links = "See [H40](https://example.org/h-40) and <https://example.org/?n=H40>.";

  it("leads there, and is told of in any text; its words are masked", async () => {
    const folder = root({
      "content/items/one.md": `${item("serial: H40")}${links} [Not](https://example.org/40).\n`,
      "content/items/two.md": `${item("serial: H41\npublish: { serial: shown }")}[H41](https://example.org/H41)\n`,
      "content/articles/on.md": `---\ntitle: On\n---\n[H 40][1]\n\n[1]: https://example.org/H40\n`,
    });
    expect(toldIn(folder)).toEqual([
      said("articles/on.md:6:6", "https://example.org/H40"),
      said("items/one.md:7:11", "https://example.org/h-40"),
      said("items/one.md:7:42", "https://example.org/?n=H40"),
    ]);
    const site = path.join(folder, "_site");
    const { written } = await buildSite(folder, site, "public");
    expect(written?.warnings).toBe(checkCollection(folder).diagnostics.length);
    const page = (address: string) => readFileSync(path.join(site, address, "index.html"), "utf8");
    expect(page("items/one")).toContain('<a href="https://example.org/h-40">H••</a>');
    expect(page("items/one")).toContain('<a href="https://example.org/?n=H40">');
    expect(page("articles/on")).toContain('<a href="https://example.org/H40">H••</a>');
  }, 60_000);

  it("of the number alone is told of in its own item, where that is masked, too", () => {
    const text = "[x](https://example.org/318) [y](../other-318/)\n";
    expect(
      told({
        "content/items/one.md": `${item("serial: H318")}${text}`,
        "content/articles/on.md": `---\ntitle: On\n---\n${text}`,
      }),
    ).toEqual([said("items/one.md:7:5", "https://example.org/318")]);
  });
});
