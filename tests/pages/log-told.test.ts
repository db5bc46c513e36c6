import { beforeAll, describe, expect, it } from "vitest";
import { everyFile } from "../../shared/site/eleventy/every-file.ts";
import { renderPage } from "../../templates/render-page.ts";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";

async function pagesOf(root: string): Promise<ReadonlyMap<string, string>> {
  const site = await everyFile(root, "public");
  if ("problems" in site) throw new Error(JSON.stringify(site.problems, null, 2));
  return new Map(
    site.parts.flatMap(({ files, site: around }) =>
      [...files].flatMap((file) =>
        file.kind === "page"
          ? [
              [
                file.address,
                renderPage(file.make(), around)
                  .replace(/<[^>]*>/g, " ")
                  .replace(/\s+/g, " "),
              ] as const,
            ]
          : [],
      ),
    ),
  );
}

const log = `seen,variant,serial,kind,present,absent,price,currency,relisted,source
2004,chest-a,A1,offer,rest,bow;key,1250,,,list
2005,chest-a,A1,offer,,,,,true,list
200X,chest-a,A2,offer,,,,,,list
2006,chest-a,A3,record,bow,rest,,,,list
`;

describe("what is made of a log says what it counts", () => {
  let pages: ReadonlyMap<string, string>;
  beforeAll(async () => {
    pages = await pagesOf(
      writeCollection(
        smallCollection("parts: { tray: {}, bow: { name: Bow }, key: { name: Key } }\n", {
          "content/collection.yaml": "title: T\nurl: https://example.org/\nwatching: 2003/2024\n",
          "content/sources.yaml":
            "- { id: list, title: On lamps, type: chapter, container-title: Lights at sea, author: [{ given: A., family: Ree }], editor: [{ family: Quist }], URL: 'https://example.org/lamps', accessed: 2024-05-03 }\n- { id: csl, title: Lamps again, URL: 'https://example.org/again', accessed: { date-parts: [[2024, 5, 4]] } }\n- { id: book, title: Cases, editor: [{ family: Ohm }, { family: Lind }] }\n",
          "content/sightings/log.csv": log,
          "content/items/one.md": item("serial: A4\nexamined: 2024-01-02"),
        }),
      ),
    );
  });

  // By hand: three rows that are new occasions, and the outfit itself; A1, A2, A3 and A4 were each seen once.
  it("on the page of the variant", () => {
    const variant = pages.get("/variants/chest-a/");
    expect(variant).toContain(
      "4 sightings of 4 different examples, the last on 2 January 2024; 4 of them seen once, 0 seen twice.",
    );
    expect(variant).toContain(
      "The outfits of this catalogue are counted among the sightings; the same offer listed again is not.",
    );
    expect(variant).toContain(
      "4 sightings in the log, 2004 to 2006: 3 offers, 1 record, 1 of them offered again.",
    );
  });

  // Of 200X nobody can say whether it lies within 2003 to 2024.
  it("and which offers are not counted", () => {
    expect(pages.get("/variants/chest-a/")).toContain(
      "1 offer of the log is not counted as offered: its date is not certain to lie within the years watched.",
    );
  });

  it("on the title page and in the table of the logs", () => {
    expect(pages.get("/")).toContain("1 outfit of 1 variant, 4 sightings in the log, 3 sources.");
    expect(pages.get("/sightings/")).toContain("the same offer listed again is not.");
  });

  it("beside the coverage, where it says next to nothing", () => {
    expect(pages.get("/sightings/")).toMatch(
      /No example was seen a second time: the formula gives this number/,
    );
  });

  it("names the rest after what it is the rest of", () => {
    const page = pages.get("/sightings/chest-a/");
    expect(page).toContain("without bow, key; with all the rest");
    expect(page).toContain("with bow; without all the rest");
  });

  it("shows a price of which nobody noted the currency", () => {
    expect(pages.get("/sightings/chest-a/")).toContain(" 1,250, currency not recorded ");
  });

  it("and names who edited a source", () => {
    const sources = pages.get("/sources/");
    expect(sources).toContain("A. Ree. “On lamps.” In Lights at sea , edited by Quist.");
    expect(sources).toContain("https://example.org/lamps (accessed 3 May 2024)");
    expect(sources).toContain("https://example.org/again (accessed 4 May 2024)");
    expect(sources).toContain("Ohm and Lind (eds). Cases .");
  });
});

it("a family whose variants have nothing in common has no opener for it", async () => {
  const common = "What they have in common";
  const files = (second: string) =>
    smallCollection("parts: { tray: {} }\n", {
      "schemas/reference/chest/family.yaml": "name: Chests\n",
      "schemas/reference/chest/chest-b.yaml": `name: B\n${second}`,
    });
  const page = async (second: string) =>
    (await pagesOf(writeCollection(files(second)))).get("/families/chest/") ?? "";
  expect(await page("parts: { key: {} }\n")).not.toContain(common);
  expect(await page("parts: { tray: {} }\n")).toContain(`${common}: 1 row`);
});

describe("the page of a log says what a reader needs to count the examples again", () => {
  const found = async (publish: string) => {
    const site = await everyFile(
      writeCollection(
        smallCollection("parts: { tray: {} }\n", {
          "content/sightings/log.csv":
            "seen,variant,serial,example,kind,list\n2004,chest-a,A-4,quay chest,offer,ports\n2005,chest-a,A1,,offer,\n2006,chest-a,A41,quay chest,record,depots\n",
          "content/items/one.md": item(`serial: A4\npublish: { serial: ${publish} }\nexamined: 2024-01-02`),
        }),
      ),
      "public",
    );
    if ("problems" in site) throw new Error(JSON.stringify(site.problems, null, 2));
    const page = site.parts
      .flatMap(({ files, site: around }) =>
        [...files].flatMap((file) =>
          file.kind === "page" && file.address === "/sightings/chest-a/"
            ? [renderPage(file.make(), around)]
            : [],
        ),
      )
      .join("");
    const rows = [...page.matchAll(/<tr[^>]*><th scope="row"[^>]*>(.*?)<\/tr>/gs)].map(
      ([, row]) => row ?? "",
    );
    return rows.map((row) => ({
      said: row
        .replace(/<[^>]*>/g, " ")
        .replace(/\s+/g, " ")
        .trim(),
      leadsTo: /href="([^"]*items\/[^"]*)"/.exec(row)?.[1],
    }));
  };

  it("which rows are held to be one, on which list each is, and which is an outfit of this catalogue", async () => {
    expect(await found("shown")).toEqual([
      { said: "2004 A-4 quay chest an offer list: ports", leadsTo: "../../items/one/" },
      { said: "2005 A1 an offer", leadsTo: undefined },
      { said: "2006 A41 quay chest a record list: depots", leadsTo: undefined },
    ]);
  });

  it("and leads nowhere from a serial that its outfit does not tell", async () => {
    expect((await found("masked")).map(({ leadsTo }) => leadsTo)).toEqual([undefined, undefined, undefined]);
  });
});
