import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { pilotageFolder } from "./pilotage.ts";
import { runHere } from "./run-here.ts";
import { asUtf16, asWindows1252, spreadsheet } from "./spreadsheet.ts";

const log = (root: string, name = "old-list"): Record<string, string>[] =>
  parse(readFileSync(path.join(root, `content/sightings/${name}.csv`), "utf8"), { columns: true });

/** Proposes a map, changes it, and imports with it; where the headings are our own, there is none to be proposed. */
async function bringIn(root: string, content: string | Uint8Array, correct = (map: string) => map) {
  const { folder, file } = spreadsheet(content);
  const withoutMap = () => runHere(["import", "sightings", file, "--root", root], folder);
  const proposed = await withoutMap();
  const map = path.join(folder, "old list.map.yaml");
  const isProposed = existsSync(map);
  const text = isProposed ? readFileSync(map, "utf8") : "";
  if (isProposed) writeFileSync(map, correct(text));
  const withMap = () => runHere(["import", "sightings", file, "--map", map, "--root", root], folder);
  const again = isProposed ? withMap : withoutMap;
  const imported = isProposed ? await again() : proposed;
  if (imported.code !== 0 && imported.code !== 1) throw new Error(`The import did not run.\n${imported.err}`);
  const rejectedFile = path.join(folder, "old list.rejected.csv");
  const rejected = () => (existsSync(rejectedFile) ? readFileSync(rejectedFile, "utf8") : null);
  return { folder, file, map, text, proposed, imported, again, rejected };
}

const messy = [
  "Our list of pilotage outfits;;;;;;;",
  ";Sale;;Outfit;;;;",
  "Nr;Date;Price;Model;Serial;Missing;Again?;Remarks",
  "1;12.03.1998;1.250,50 €;Ebbholm Pilotage outfit, Mark II;H2101;Horizon shade;no;Nice – “as new”",
  "2;25/3/98;420,-;pilot-mk2;H2102;Sextant, Mercury bottle;yes;",
  ";;;;;;;",
  "Nr;Date;Price;Model;Serial;Missing;Again?;Remarks",
  "3;c. 1931;;Pilot MK2;unknown;everything;;",
  '4;March 2001;300;pilot-mk2;H2103;;;"two ""cases""; one lid"',
  "5;1999;;pilot-mk3;H2104;;;",
  "6;1999;;pilot-mk2;H2105;sextent;;",
  "7;soon;;pilot-mk2;H2106;;;=1+1",
  "",
].join("\r\n");

describe("fittedcase import sightings", () => {
  it("proposes a map and previews, and brings nothing in", async () => {
    const root = pilotageFolder();
    const { folder, file } = spreadsheet(asWindows1252(messy));
    const { code, out, err } = await runHere(["import", "sightings", file, "--root", root], folder);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toContain(
      "windows-1252, semicolons, headings in rows 2 and 3, 7 rows; 1 empty row and 1 repetition",
    );
    expect(out).toContain("4 rows can be brought in; 0 rows already there; 3 rows would be rejected.");
    expect(out).toContain(
      'row 11: absent: Found "sextent"; expected a part of "pilot-mk2", or "rest". Did you mean "sextant"?',
    );
    expect(out).toContain("Columns that are not used: Nr.");
    expect(readdirSync(path.join(root, "content/sightings"))).toEqual(["log.csv"]);
    const map = readFileSync(path.join(folder, "old list.map.yaml"), "utf8");
    expect(map).toMatch(/^sheet: \{ encoding: windows-1252, separator: semicolon, headings: \[2,3\] \}$/m);
    expect(map).toMatch(/^dates: day-month$/m);
    expect(map).toMatch(/^decimal: ","$/m);
    expect(map).toMatch(/^ {2}seen: Date$/m);
    expect(map).toMatch(/^ {2}kind: \{ always: offer \}$/m);
    expect(map).toMatch(/# pilot-mk3: pilot-mk/);
  });

  it("takes a currency by its sign, and tells of rows that say the same", async () => {
    const root = pilotageFolder();
    const rows = ["Date,Model,Serial,Price,Curr.,There,Gone"];
    for (const currency of ["€", "EUR", "euro"])
      rows.push(`2001,pilot-mk2,H${rows.length},100,${currency},sextant,`);
    rows.push(
      "2001,pilot-mk2,H1,100,€,Sextant,",
      "2002,pilot-mk2,H1,100,€,,rest",
      "2001,pilot-mk2,H1,100,EUR,sextant,",
    );
    const { text, imported, again } = await bringIn(root, `${rows.join("\n")}\n`);
    expect(text).toMatch(
      /^## Fields for which no column was found: example, source, list, condition, relisted, note$/m,
    );
    expect(imported).toMatchObject({ code: 0, err: "" });
    expect(imported.out).toContain("Rows 5, 7 say exactly what an earlier row says.");
    expect(log(root).map(({ currency }) => currency)).toEqual(Array(6).fill("EUR"));
    expect(log(root)[0]).toMatchObject({ present: "sextant" });
    expect((await again()).out).toContain("0 rows brought in; 6 rows already there; 0 rows rejected.");
  });

  it("reads a German list by its headings, and how each was seen by its words", async () => {
    const root = pilotageFolder();
    const rows = [
      "Gesehen am;Ausführung;Seriennummer;Fehlende Teile;Art;Zuschlag;Währung;Bemerkung",
      "12. März 1998;pilot-mk2;H2101;Sextant und shade;Auktion;1.250,50;EUR;Schön",
      "um 1931;pilot-mk2;H2102;alles;erwähnt;;;",
      "3.5.1999;pilot-mk2;unbekannt;Sextant;Sammlung;;;",
    ];
    const { text, imported } = await bringIn(root, asWindows1252(`${rows.join("\r\n")}\r\n`));
    expect(text).toMatch(/headings: \[1\] \}$/m);
    expect(imported).toMatchObject({ code: 0, err: "" });
    expect(log(root)).toMatchObject([
      { seen: "1998-03-12", serial: "H2101", absent: "sextant;shade", kind: "offer", price: "1250.5" },
      { seen: "1931~", serial: "H2102", absent: "rest", kind: "mention" },
      { seen: "1999-05-03", absent: "sextant", kind: "record" },
    ]);
  });

  it("says of a source that nobody knows where it could be told of", async () => {
    const root = pilotageFolder();
    const { imported } = await bringIn(root, "Date,Model,Source\n2001,pilot-mk2,Some old book\n");
    expect(imported.out).toContain(
      'row 2: source: Found "Some old book"; expected the id or the title of a source in content/sources.yaml.',
    );
  });

  it("takes the column that says how each was seen by its cells, and headings that nobody knows for headings", async () => {
    const root = pilotageFolder();
    const rows = ["Kdy;Co;Jak", "2001;pilot-mk2;mentioned", "2002;pilot-mk2;record", "2003;Sextant;offer"];
    const { text } = await bringIn(root, `${rows.join("\n")}\n`, (map) =>
      map.replace("  # seen: …", "  seen: Kdy").replace("  # variant: …", "  variant: Co"),
    );
    expect(text).toMatch(/headings: \[1\] \}$/m);
    expect(text).toMatch(/^ {2}kind: Jak$/m);
    expect(log(root).map(({ kind }) => kind)).toEqual(["mention", "record"]);
  });

  // What each country writes: CLDR, by way of its tables for numbers and dates.
  it.each([
    [
      "de",
      '"2.000 €",12.3.1998',
      ["dates: day-month", 'decimal: ","'],
      { price: "2000", seen: "1998-03-12" },
    ],
    ["en-US", '"2,000",3/12/1998', ["dates: month-day", "decimal: ."], { price: "2000", seen: "1998-03-12" }],
    ["en-GB", "2000.,3/12/1998", ["dates: day-month"], null],
    ["en", "DM 800,3/12/1998", ["# dates: day-month"], null],
    ["en", "2.000,1998", ["# dates: day-month"], null],
  ])(
    "reads what the file proves nothing of as a collection in %s would (%s)",
    async (language, cells, lines, first) => {
      const root = pilotageFolder({ "content/collection.yaml": `title: T\nlanguage: ${language}\n` });
      const { text, rejected } = await bringIn(
        root,
        `Price,Date seen,Model,Kind\n${cells},pilot-mk2,offer\n`,
      );
      for (const line of lines) expect(text.split("\n")).toContain(line);
      expect(text.includes("check whether your file does")).toBe(language !== "en");
      if (first) expect(log(root)).toMatchObject([first]);
      else expect(rejected()).not.toBeNull();
    },
  );

  it("believes the file before the language", async () => {
    const root = pilotageFolder({ "content/collection.yaml": "title: T\nlanguage: de\n" });
    const rows = '"2,000.50",3/25/1998,pilot-mk2,offer\n"1,000",3/12/1998,pilot-mk2,offer\n';
    const { text } = await bringIn(root, `Price,Date seen,Model,Kind\n${rows}`);
    expect(text).toContain("dates: month-day\n## The decimal sign, as your numbers show.\ndecimal: .\n");
    expect(log(root)).toMatchObject([
      { price: "2000.5", seen: "1998-03-25" },
      { price: "1000", seen: "1998-03-12" },
    ]);
  });

  it("reads in neither way a number with two readings where others of its column speak against each other", async () => {
    const root = pilotageFolder();
    const rows = ["1.250,00", "£ 1,200", "1.300", "12,50"].map(
      (price, at) => `200${at};pilot-mk2;H1;${price}`,
    );
    const { text, imported, rejected } = await bringIn(
      root,
      `${["Date;Model;Serial;Price", ...rows].join("\n")}\n`,
    );
    expect(text).toContain(
      '## Other numbers show "," before the decimals, and "£ 1,200" would have three of them.\n# decimal: ","\n',
    );
    expect(imported.out).toContain(
      'row 3: price: Found "£ 1,200"; expected a number whose decimal sign is clear; write decimal',
    );
    expect(log(root).map(({ price }) => price)).toEqual(["1250", "12.5"]);
    expect(rejected()).toMatch(/£ 1,200[\s\S]*1\.300/);
  });

  it("takes no thousandth for a price, whatever its map says", async () => {
    const root = pilotageFolder();
    const sheet = "Date;Model;Price\n2001;pilot-mk2;1.250,00\n2002;pilot-mk2;1,200\n2003;pilot-mk2;1.300\n";
    const { imported } = await bringIn(root, sheet, (map) => map.replace("# decimal", "decimal"));
    expect(imported.out).toContain(
      'row 3: price: Found "1,200"; expected an amount that can be read in one way',
    );
    expect(log(root).map(({ price }) => price)).toEqual(["1250", "1300"]);
  });

  it("leaves out of a list of parts what the map says tells of none", async () => {
    const root = pilotageFolder();
    const { imported, rejected } = await bringIn(
      root,
      'Date;Model;Kind;Serial;Missing\n2001;pilot-mk2;record;H1;"box lid; sextant"\n2002;pilot-mk2;record;H2;box lid\n',
      (map) =>
        map.replace(/^ {2}absent: Missing$/m, '  absent: { column: Missing, values: { "box lid": null } }'),
    );
    expect(rejected()).toBeNull();
    expect(imported.out).toContain("2 rows brought in");
    expect(log(root).map(({ serial, absent }) => [serial, absent ?? ""])).toEqual([
      ["H1", "sextant"],
      ["H2", ""],
    ]);
  });

  it("asks about words for how an example was seen that it does not know", async () => {
    const { text, imported } = await bringIn(
      pilotageFolder(),
      "Seen,Variant,Kind,Serial\n1998,pilot-mk2,offer,H2101\n1999,pilot-mk2,Tausch,H2102\n",
      (map) => map.replace(/# Tausch: .*/, "Tausch: offer"),
    );
    expect(text).toContain("Say for each which it is, offer, record, mention, and remove the #.");
    expect(imported.out).toContain("2 rows brought in; 0 rows already there; 0 rows rejected.");
  });

  it("takes a column that is headed as a part is, and rejects the rows that it cannot read", async () => {
    const root = pilotageFolder();
    const { text, imported } = await bringIn(
      root,
      "seen,variant,kind,serial,Sextant\n1998,pilot-mk2,offer,H2101,yes\n1999,pilot-mk2,offer,H2102,lent out\n",
    );
    expect(text).toContain("sextant: Sextant");
    expect(imported.out).toContain('row 3: sextant: Found "lent out"; expected one of present,');
    expect(log(root).map(({ present }) => present)).toEqual(["sextant"]);
  });

  it("tells of rows that a corrected map would bring in a second time", async () => {
    const root = pilotageFolder();
    const rows = ["Date,Model,Case no,Price", "2001,pilot-mk2,H1,100", "2002,pilot-mk2,H2,200"];
    const without = (map: string) => map.replace(/^ {2}serial: .*\n/m, "");
    const { folder, file, text, map, imported } = await bringIn(root, `${rows.join("\n")}\n`, without);
    expect(imported.out).not.toContain("in different words");
    writeFileSync(map, `${without(text)}  serial: Case no\n`);
    const again = await runHere(
      ["import", "sightings", file, "--map", map, "--root", root, "--dry-run"],
      folder,
    );
    expect(again.out).toContain(
      "2 rows may already be in content/sightings/old-list.csv, in different words",
    );
  });

  it("reads local dates and numbers, and rejects the rest with the words of check", async () => {
    const root = pilotageFolder();
    const { imported, rejected } = await bringIn(root, asWindows1252(messy));
    expect(imported.code).toBe(1);
    expect(imported.out).toContain("4 rows brought in; 0 rows already there; 3 rows rejected.");
    expect(log(root)).toEqual([
      {
        seen: "1998-03-12",
        variant: "pilot-mk2",
        serial: "H2101",
        kind: "offer",
        absent: "shade",
        price: "1250.5",
        currency: "EUR",
        relisted: "",
        note: "Nice – “as new”",
      },
      {
        seen: "1998-03-25",
        variant: "pilot-mk2",
        serial: "H2102",
        kind: "offer",
        absent: "sextant;mercury-bottle",
        price: "420",
        currency: "",
        relisted: "true",
        note: "",
      },
      {
        seen: "1931~",
        variant: "pilot-mk2",
        serial: "",
        kind: "offer",
        absent: "rest",
        price: "",
        currency: "",
        relisted: "",
        note: "",
      },
      {
        seen: "2001-03",
        variant: "pilot-mk2",
        serial: "H2103",
        kind: "offer",
        absent: "",
        price: "300",
        currency: "",
        relisted: "",
        note: 'two "cases"; one lid',
      },
    ]);
    expect((await runHere(["check"], root)).code).toBe(0);
    const left = parse(rejected()?.replace(/^\uFEFF/, "") ?? "", {
      delimiter: ";",
      from_line: 3,
      columns: true,
    }) as Record<string, string>[];
    expect(left.map(({ row, Nr }) => [row, Nr])).toEqual([
      ["10", "5"],
      ["11", "6"],
      ["12", "7"],
    ]);
    expect(left[0]?.reason).toBe(
      'variant: Found "pilot-mk3"; expected the id of a variant reference. Did you mean "pilot-mk1" or "pilot-mk2"?',
    );
    expect(left[2]?.Remarks).toBe("'=1+1");
  });

  it("adds nothing twice, and takes what was corrected from the rejected rows with the same map", async () => {
    const root = pilotageFolder();
    const { again, folder, map } = await bringIn(root, asWindows1252(messy));
    const before = readFileSync(path.join(root, "content/sightings/old-list.csv"), "utf8");
    expect((await again()).out).toContain("0 rows brought in; 4 rows already there; 3 rows rejected.");
    expect(readFileSync(path.join(root, "content/sightings/old-list.csv"), "utf8")).toBe(before);
    const file = path.join(folder, "old list.rejected.csv");
    writeFileSync(
      file,
      readFileSync(file, "utf8")
        .replace("pilot-mk3", "pilot-mk2")
        .replace("sextent", "sextant")
        .replace("soon", "2002"),
    );
    const corrected = await runHere(["import", "sightings", file, "--map", map, "--root", root], folder);
    expect(corrected.code).toBe(0);
    expect(corrected.out).toContain("3 rows brought in; 0 rows already there; 0 rows rejected.");
    expect(log(root)).toHaveLength(7);
    expect(log(root)[6]).toMatchObject({ seen: "2002", note: "=1+1" });
    // The log that was there keeps its bytes; the new rows stand behind them.
    expect(readFileSync(path.join(root, "content/sightings/old-list.csv"), "utf8").startsWith(before)).toBe(
      true,
    );
  });

  it("writes over rejected rows that are as it left them, and never over those that somebody is correcting", async () => {
    const root = pilotageFolder();
    const { again, folder, file, rejected } = await bringIn(
      root,
      "seen,variant,kind\n1999,pilot-mk2,offer\nsoon,pilot-mk2,offer\nlater,pilot-mk2,offer\n",
    );
    const firstTime = rejected();
    // Nothing was changed, and of two that were rejected one is left.
    writeFileSync(
      file,
      "seen,variant,kind\n1999,pilot-mk2,offer\n2000,pilot-mk2,offer\nlater,pilot-mk2,offer\n",
    );
    await again();
    expect(rejected()).not.toBe(firstTime);
    const corrected = rejected()?.replace("later", "2001") ?? "";
    writeFileSync(path.join(folder, "old list.rejected.csv"), corrected);
    const { code, err } = await again();
    expect({ code, err }).toEqual({
      code: 1,
      err: [
        `1 row went into ${path.join(folder, "old list.rejected-2.csv")}, each with its reason.`,
        `${path.join(folder, "old list.rejected.csv")} has been changed since it was written, and was left as it is.`,
        "",
      ].join("\n"),
    });
    expect(rejected()).toBe(corrected);
    writeFileSync(file, "seen,variant,kind\n1999,pilot-mk2,offer\n");
    expect((await again()).code).toBe(0);
    expect(readdirSync(folder).sort()).toEqual(["old list.csv", "old list.rejected.csv"]);
    expect(rejected()).toBe(corrected);
  });

  it.each([
    ["of Windows", "\r\n"],
    ["of Unix", "\n"],
    ["of old Macintoshes", "\r"],
  ])("adds to a log with the line ends that it has: %s", async (_, end) => {
    const existing = ["seen,variant,kind,serial", "1998,pilot-mk2,offer,H2101", ""].join(end);
    const root = pilotageFolder({ "content/sightings/old-list.csv": existing });
    const { imported } = await bringIn(root, "seen,variant,kind,serial\n1999,pilot-mk2,offer,H2102\n");
    expect(imported.out).toContain("1 row brought in");
    const logged = () => readFileSync(path.join(root, "content/sightings/old-list.csv"), "utf8");
    expect(logged()).toBe(`${existing}1999,pilot-mk2,offer,H2102${end}`);
    // The same where another column is needed.
    await bringIn(root, "seen,variant,kind,note\n2000,pilot-mk2,offer,lid\n");
    expect(logged().split(end)[0]).toBe("seen,variant,kind,serial,note");
    expect(logged().split(end)).toHaveLength(5);
    expect((await runHere(["check"], root)).code).toBe(0);
  });

  it("reads every row of a sheet, and of a log, whose lines end now one way and now the other", async () => {
    const root = pilotageFolder();
    const { imported } = await bringIn(
      root,
      'seen,variant,kind,note\r\n2004,pilot-mk2,offer,one\r\n2005,pilot-mk2,offer,two\n2006,pilot-mk2,offer,"thr\nee"\n2007,pilot-mk2,offer,four\n',
    );
    expect(imported).toMatchObject({ code: 0, err: "" });
    expect(log(root).map(({ seen, note }) => [seen, note])).toEqual([
      ["2004", "one"],
      ["2005", "two"],
      ["2006", "thr\nee"],
      ["2007", "four"],
    ]);
    const file = path.join(root, "content/sightings/old-list.csv");
    const mixed = readFileSync(file, "utf8").replace("\n", "\r\n").replace(/\n$/, "\r\n");
    writeFileSync(file, mixed);
    expect((await runHere(["check"], root)).code).toBe(0);
    const exported = await runHere(["export", "sightings"], root);
    expect(exported.out).toContain("2007,pilot-mk2");
    expect(exported.out).toContain('"thr\nee"');
  });

  it("rejects a row with a cell beyond the headings, unless the map reads it", async () => {
    const sheet = "seen;variant;kind;note\n1999;pilot-mk2;offer;lid; and tray\n2000;pilot-mk2;offer;\n";
    const { imported, rejected, folder, map } = await bringIn(pilotageFolder(), sheet);
    expect(imported.out).toContain("1 row brought in; 0 rows already there; 1 row rejected.");
    expect(imported.out).toContain('row 2: Found "and tray" in column E, beyond the headings;');
    // As it was rejected it is rejected again.
    const file = path.join(folder, "old list.rejected.csv");
    const as = await runHere(["import", "sightings", file, "--map", map, "--root", pilotageFolder()], folder);
    expect(as.out).toContain("0 rows brought in; 0 rows already there; 1 row rejected.");
    writeFileSync(file, rejected()?.replace("lid;and tray", '"lid; and tray";') ?? "");
    const mended = pilotageFolder();
    expect((await runHere(["import", "sightings", file, "--map", map, "--root", mended], folder)).code).toBe(
      0,
    );
    expect(log(mended)).toMatchObject([{ note: "lid; and tray" }]);
    const read = pilotageFolder();
    await bringIn(read, sheet, (text) => text.replace("note: note", "note: [note, column E]"));
    expect(log(read)).toMatchObject([{ note: "lid; and tray" }, { note: "" }]);
  });

  it("does not guess between day and month, but lets the map decide", async () => {
    const sheet =
      "date,model,serial\n3/12/98,pilot-mk2,H2101\n3/13/1998,pilot-mk1,X\n25/12/1998,pilot-mk1,Y\n";
    const open = pilotageFolder();
    const first = await bringIn(open, sheet);
    expect(first.text).toContain("# dates: day-month");
    expect(first.imported.code).toBe(1);
    expect(first.rejected()).toContain(
      "a date in which day and month can be told apart; write dates: day-month or dates: month-day",
    );
    const decided = pilotageFolder();
    await bringIn(decided, sheet, (map) => map.replace("# dates: day-month", "dates: month-day"));
    expect(log(decided)[0]).toMatchObject({ seen: "1998-03-12", serial: "H2101" });
  });

  it("keeps two rows that nothing tells apart, and matches each by one row only", async () => {
    const root = pilotageFolder();
    const { imported, again } = await bringIn(
      root,
      "seen,variant,kind\n1999,pilot-mk2,offer\n1999,pilot-mk2,offer\n",
    );
    expect(imported.out).toContain("2 rows brought in");
    expect((await again()).out).toContain("0 rows brought in; 2 rows already there");
    expect(log(root)).toHaveLength(2);
  });

  it.each([
    ["UTF-8 with a byte order mark", `\uFEFFseen\tvariant\tkind\tnote\n1999\tpilot-mk2\toffer\tcafé\n`],
    ["UTF-16", asUtf16("seen\tvariant\tkind\tnote\r\n1999\tpilot-mk2\toffer\tcafé\r\n")],
    ["UTF-16 without a mark", asUtf16("seen;variant;kind;note\r\n1999;pilot-mk2;offer;café\r\n", false)],
    [
      "Windows-1252",
      asWindows1252("seen,variant,kind,note\r1999,pilot-mk2,offer,café\r".replaceAll("\r", "\r\n")),
    ],
    ["a line that names the separator", "sep=;\nseen;variant;kind;note\n1999;pilot-mk2;offer;café\n"],
  ])("reads %s", async (_, content) => {
    const root = pilotageFolder();
    const { imported } = await bringIn(root, content);
    expect(imported.code).toBe(0);
    expect(log(root)).toEqual([{ seen: "1999", variant: "pilot-mk2", kind: "offer", note: "café" }]);
  });

  it("turns columns of single parts into lists, and a count that is short into a remark", async () => {
    const root = pilotageFolder();
    const { imported } = await bringIn(
      root,
      "Seen,Variant,Kind,Sextant,Horizon shade,Mercury bottle,Oil bottle\n1999,pilot-mk2,record,yes,4,x,no\n2000,pilot-mk2,record,Y,3,?,substitute\n",
    );
    expect(imported.code).toBe(0);
    expect(log(root)).toEqual([
      {
        seen: "1999",
        variant: "pilot-mk2",
        kind: "record",
        present: "sextant;shade;mercury-bottle",
        absent: "oil-bottle",
        note: "",
      },
      {
        seen: "2000",
        variant: "pilot-mk2",
        kind: "record",
        present: "sextant",
        absent: "",
        note: "shade: 3 of 4; oil-bottle: substitute",
      },
    ]);
  });

  it("tries without writing where asked to", async () => {
    const root = pilotageFolder();
    const { folder, file } = spreadsheet("Seen,Variant,Kind\n1999,pilot-mk2,offer\n1999,pilot-mk3,offer\n");
    const { code, out } = await runHere(["import", "sightings", file, "--dry-run", "--root", root], folder);
    expect(out).toContain(`Nothing was written. To write the map of the columns, for you to correct, run:
  fittedcase import sightings ${file.includes(" ") ? `"${file}"` : file} --root ${root}\n`);
    expect(out).not.toContain("--map");
    expect(code).toBe(0);
    expect(out).toContain("Nothing was written.");
    expect(readdirSync(folder)).toEqual(["old list.csv"]);
    await runHere(["import", "sightings", file, "--root", root], folder);
    const tried = ["import", "sightings", file, "--map", "old list.map.yaml", "--dry-run", "--root", root];
    expect((await runHere(tried, folder)).code).toBe(1);
    expect(readdirSync(folder).sort()).toEqual(["old list.csv", "old list.map.yaml"]);
    expect(readdirSync(path.join(root, "content/sightings"))).toEqual(["log.csv"]);
  });

  it("needs no map for a sheet whose headings are our own, in any order: what can be read comes in at once", async () => {
    const root = pilotageFolder();
    const { folder, file } = spreadsheet(
      "kind,note,variant,seen\noffer,lid,pilot-mk2,1999-03\noffer,,pilot-mk3,1999\noffer,,pilot-mk2,3.5.1998\noffer,,pilot-mk2,1999-13-45\n",
    );
    const run = (...more: string[]) =>
      runHere(["import", "sightings", file, "--root", root, ...more], folder);
    expect(await run("--dry-run")).toMatchObject({ code: 1, err: "" });
    expect(readdirSync(folder)).toEqual(["old list.csv"]);
    const { code, out, err } = await run();
    expect(code).toBe(1);
    expect(out).toContain("2 rows brought in; 0 rows already there; 2 rows rejected.");
    expect(out).toContain('row 3: variant: Found "pilot-mk3"');
    expect(out).toContain("row 5: seen:");
    expect(out).toContain('Dates such as "3.5.1998" are read as people write them');
    expect(err).toContain("2 rows went into");
    expect(log(root)).toEqual([
      { seen: "1999-03", variant: "pilot-mk2", kind: "offer", note: "lid" },
      { seen: "1998-05-03", variant: "pilot-mk2", kind: "offer", note: "" },
    ]);
    expect(readdirSync(folder).sort()).toEqual(["old list.csv", "old list.rejected.csv"]);
    // What can be read in two ways is asked for, in one line of a map.
    for (const seen of ["3/5/1998", "3.5.98", "1998-21,pilot-mk2,offer\n3.5.1998"]) {
      const asking = spreadsheet(`seen,variant,kind\n${seen},pilot-mk2,offer\n`);
      expect((await runHere(["import", "sightings", asking.file, "--root", root], asking.folder)).code).toBe(
        0,
      );
      expect(readdirSync(asking.folder).sort()).toEqual(["old list.csv", "old list.map.yaml"]);
    }
    // A heading that is not ours has to be guessed at, and that is for somebody to look over.
    const guessed = spreadsheet("seen,variant,kind,Remarks\n2001,pilot-mk2,offer,lid\n");
    const proposing = await runHere(["import", "sightings", guessed.file, "--root", root], guessed.folder);
    expect(proposing.code).toBe(0);
    expect(readdirSync(guessed.folder).sort()).toEqual(["old list.csv", "old list.map.yaml"]);
    expect(log(root)).toHaveLength(2);
  });

  it("brings 100,000 rows in", async () => {
    const rows = Array.from(
      { length: 100_000 },
      (_, at) =>
        `${1 + (at % 28)}.${1 + (at % 12)}.1998;pilot-mk2;H${2001 + (at % 412)};1.${100 + (at % 900)},50 €;row ${at}`,
    );
    const root = pilotageFolder();
    const { imported } = await bringIn(root, `date;model;serial;price;note\n${rows.join("\n")}\n`);
    expect(imported).toMatchObject({ code: 0, err: "" });
    expect(imported.out).toContain("100,000 rows brought in");
    expect(log(root)).toHaveLength(100_000);
  });

  it.each([
    [["import", "sightings"], "expected one"],
    [["import", "boats", "x.csv"], "expected sightings or items"],
    [["import", "sightings", "gone.csv"], 'Found no file "gone.csv"'],
    [["import", "sightings", "old list.csv", "--map", "gone.yaml"], "expected a map"],
    [["import", "sightings", "old list.csv", "--map", "wrong.yaml"], "unknown-field"],
    [["import", "sightings", "old list.csv", "--map", "strange.yaml"], 'Did you mean "seen"?'],
    [["import", "sightings", "content/sightings/log.csv"], "the collection's own content/"],
  ])("%j is refused", async (args, said) => {
    const root = pilotageFolder({
      "old list.csv": "seen,variant,kind\n1999,pilot-mk2,offer\n",
      "wrong.yaml": "import: sightings\ncolums: { seen: seen }\n",
      "strange.yaml": "import: sightings\ncolumns: { seen: sen }\n",
    });
    const { code, err } = await runHere(args, root);
    expect(code).toBe(2);
    expect(err).toContain(said);
    expect(err).not.toContain("    at ");
  });

  it("does not read a cell that never closes as the rest of the file", async () => {
    const { folder, file } = spreadsheet(
      'seen,variant,kind,note\n1999,pilot-mk2,offer,"open\n2000,pilot-mk2,offer,x\n',
    );
    const { code, err } = await runHere(["import", "sightings", file, "--root", pilotageFolder()], folder);
    expect(code).toBe(1);
    expect(err).toContain("never closes");
  });
});
