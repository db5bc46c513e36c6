import { describe, expect, it } from "vitest";
import { checkCollection } from "../../shared/site/checks/check-collection.ts";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";

const header = "seen,variant,serial,example,source,kind,present,price,currency,note\n";

/** What is told of a log, beside one item that bears the serial T51. */
const told = (
  rows: string,
  frontMatter = "serial: T51\npublish: { serial: shown }",
  columns = header,
): string[] =>
  checkCollection(
    writeCollection(
      smallCollection("parts:\n  fork: { name: Fork }\n  board: { name: Board }\n", {
        "content/sources.yaml": "- { id: ledger, title: Ledger }\n",
        "content/items/one.md": item(frontMatter),
        "content/sightings/log.csv": `${columns}${rows}`,
      }),
    ),
  ).diagnostics.flatMap(({ code, file, line, column, found, remedy }) =>
    code === "no-photograph"
      ? []
      : [
          `${file.replace(/^.*\//, "")}:${line}:${column} ${code} ${found}${remedy === null ? "" : ` ${remedy}`}`,
        ],
  );

describe("an offer that was listed again", () => {
  it("is told of once a file, where it does not say of which example it was", () => {
    const columns = "seen,variant,serial,example,source,kind,relisted\n";
    const rows =
      "2001,chest-a,T52,,ledger,offer,\n2002,chest-a,T52,,ledger,offer,true\n2003,chest-a,,,ledger,offer,true\n2004,chest-a,,,ledger,offer,true\n2005,chest-a,,tin one,ledger,offer,true\n";
    expect(told(rows, undefined, columns)).toEqual([
      "log.csv:4:29 doubtful-example an offer that was listed again, and does not say of which example",
    ]);
  });
});

describe("a row that is there twice", () => {
  const row = "2021-08,chest-a,T52,,ledger,offer,,749,EUR,\n";
  const counted = "a row that repeats line 2, and is counted as well";

  it("is told of with the line of the other, each time", () => {
    const remedy = 'For an offer that was listed again, write "relisted: true", or give the day of each.';
    expect(told(`${row}2021-09,chest-a,T52,,ledger,offer,,749,EUR,\n${row}${row}`)).toEqual([
      `log.csv:4:1 repeated-sighting ${counted} ${remedy}`,
      `log.csv:5:1 repeated-sighting ${counted} ${remedy}`,
    ]);
  });

  it("is told of where it names its example in other ways, and is no offer", () => {
    const record = "2021,chest-a,,ferry-chest,ledger,record,fork,,,seen\n";
    expect(told(record + record)).toEqual([
      `log.csv:3:1 repeated-sighting ${counted} Remove one of them, or write what makes them different.`,
    ]);
  });

  it("may be two where it says something else, is listed again, or names no example", () => {
    expect(told(`${row}${row.replace(",\n", ",again\n")}`)).toEqual([]);
    const anonymous = "2021-08,chest-a,,,ledger,record,,,,\n";
    expect(told(anonymous + anonymous)).toEqual([]);
    const again = "2021,chest-a,T52,ledger,offer,true\n";
    expect(
      told(
        `2021,chest-a,T52,ledger,offer,\n${again}${again}`,
        undefined,
        "seen,variant,serial,source,kind,relisted\n",
      ),
    ).toEqual([]);
  });
});

describe("a serial in the place of a name", () => {
  it("is told of, whether an item or a row bears it", () => {
    const slip = (name: string) =>
      `doubtful-example "${name}", a serial of this variant, which as a name counts as a different example Did you mean the column "serial"?`;
    expect(told("2019-05,chest-a,,t 51,ledger,record,,,,\n2020,chest-a,T60,,ledger,record,,,,\n")).toEqual([
      `log.csv:2:18 ${slip("t 51")}`,
    ]);
    expect(told("2019-05,chest-a,,T60,ledger,record,,,,\n2020,chest-a,T60,,ledger,record,,,,\n")).toEqual([
      `log.csv:2:18 ${slip("T60")}`,
    ]);
  });

  it("is a name where whatever bears the serial bears that name, too", () => {
    expect(
      told(
        "2019-05,chest-a,,T51,ledger,record,,,,\n",
        "serial: T51\nexample: T51\npublish: { serial: shown }",
      ),
    ).toEqual([]);
    expect(told("2019-05,chest-a,T60,T60,ledger,record,,,,\n2020,chest-a,,T60,ledger,record,,,,\n")).toEqual(
      [],
    );
  });
});

describe("half a price", () => {
  const row = (example: string, price: string, currency: string) =>
    `2021,chest-a,,${example},ledger,offer,,${price},${currency},\n`;

  it("is told of at the first such row of a file, with the lines of the others", () => {
    const whole = row("quay", "90", "EUR");
    expect(told(whole + row("mole", "150", ""))).toEqual([
      'log.csv:3:34 price-incomplete a price without a currency, "150"',
    ]);
    expect(told(whole + row("mole", "", "EUR") + row("pier", "", "GBP"))).toEqual([
      'log.csv:3:35 price-incomplete a currency without a price, "EUR", and 1 more in this file (line 4)',
    ]);
    const bare = ["mole", "pier", "slip", "dock", "weir"].map((name) => row(name, "150", "")).join("");
    expect(told(bare + row("lock", "", "EUR"))).toEqual([
      'log.csv:2:34 price-incomplete a price without a currency, "150", and 4 more in this file (lines 3, 4, 5 and on)',
      'log.csv:7:35 price-incomplete a currency without a price, "EUR"',
    ]);
  });
});

describe("a part that a cell names twice", () => {
  it("is told of, once", () => {
    expect(told("2019,chest-a,T52,,ledger,record,fork;board;fork;fork,,,\n")).toEqual([
      'log.csv:2:33 repeated-part "fork" twice',
    ]);
    expect(told("2019,chest-a,T52,,ledger,record,rest; rest,,,\n")).toEqual([
      'log.csv:2:33 repeated-part "rest" twice',
    ]);
  });
});

describe("parts with commas between them", () => {
  it("are told of with how they are written", () => {
    expect(told('2019,chest-a,T52,,ledger,record,"fork, board",,,\n')).toEqual([
      'log.csv:2:33 unknown-part "fork, board" Did you mean "fork;board"?',
    ]);
    expect(told('2019,chest-a,T52,,ledger,record,"fork, bell",,,\n')).toEqual([
      'log.csv:2:33 unknown-part "fork, bell" Separate the parts with semicolons, as in "lens;rule".',
    ]);
  });
});

describe("a part from another case", () => {
  it("is there", () => {
    const states = (fork: string) =>
      told("", `assembled: [board, fork]\nparts: { fork: ${fork}, board: present }`);
    expect(states("absent")).toEqual(['one.md:4:20 wrong-value "fork" both absent and from another case']);
    expect(states("unverified")).toEqual([]);
    expect(states("[{ state: absent, quantity: 1 }, { state: present, quantity: 1 }]")).toEqual([
      "one.md:5:10 too-many-units 2 units",
    ]);
  });
});
