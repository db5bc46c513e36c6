import { readFileSync } from "node:fs";
import path from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";
import { runHere } from "../commands/run-here.ts";

const rows = [
  "seen,variant,kind,example",
  "2001,chest-a,record,A",
  "2002,chest-a,record,A",
  "2003,chest-a,record,B",
];

const files = smallCollection("features: { lock: brass }\nparts: { key: { name: Key } }\n", {
  "content/sightings/log.csv": `${rows.join("\n")}\n`,
  "content/items/one.md": item("features: { lock: brass }").replace("A chest", "One"),
  "content/items/two.md": item("features: { lock: iron }\nparts: { key: absent }").replace("A chest", "Two"),
});

// The contract's verdict `contradicted`: what was observed does not agree with what the outfit is catalogued as.
describe("an outfit whose evidence speaks against its label says so wherever it is named beside the others", () => {
  let site: string;
  beforeAll(async () => {
    const root = writeCollection(files);
    site = path.join(root, "site");
    expect((await runHere(["build", "--root", root, "--out", site], root)).code).toBe(0);
  });
  const words = (file: string) =>
    readFileSync(path.join(site, file), "utf8")
      .replace(/<[^>]+>/g, " ")
      .replace(/\s+/g, " ");

  it.each([
    ["index.html", "Two Chest A, contradicted"],
    ["items/index.html", "Two Chest A contradicted"],
    ["items/one/index.html", "Two contradicted"],
    ["variants/chest-a/index.html", "Two Chest A contradicted"],
    ["items/two/index.html", "It is catalogued as Chest A, and what was observed does not agree with that."],
    ["wants/index.html", "Two Chest A, contradicted"],
    ["wants/index.html", "It holds only if the outfit is one after all."],
  ])("on %s", (page, said) => {
    expect(words(page)).toContain(said);
  });

  it("and so does every figure that counts it", () => {
    const doubt = "One of those counted is here under this name against the evidence";
    const { rarity } = JSON.parse(readFileSync(path.join(site, "data/variants/chest-a.json"), "utf8"));
    expect(rarity.distinct).toBe(4);
    expect(rarity.survivors.caveats[0]).toContain(doubt);
    expect(words("variants/chest-a/index.html")).toContain(doubt);
    expect(words("items/one/index.html")).toContain(doubt);
  });

  it("and of one that agrees nothing of the kind is said", () => {
    expect(words("items/two/index.html")).toContain("One Side by side");
  });
});

// What the case of one needs is in doubt, and so is what the other could do without: each may be of another variant.
describe("an outfit whose evidence speaks against its label, beside one that lacks what it could give", () => {
  const brass = "features: { lock: brass }\nparts";
  const iron = "features: { lock: iron }\nparts";
  const giver = "{ key: { state: present, quantity: 2 }, tray: absent }";
  const taker = "{ key: absent, tray: absent }";
  const built = async (one: string, two: string) => {
    const root = writeCollection(
      smallCollection("features: { lock: brass }\nparts: { key: { name: Key }, tray: { name: Tray } }\n", {
        "content/items/one.md": item(one).replace("A chest", "One"),
        "content/items/two.md": item(two).replace("A chest", "Two"),
      }),
    );
    const site = path.join(root, "site");
    expect((await runHere(["build", "--root", root, "--out", site], root)).code).toBe(0);
    return (file: string) =>
      readFileSync(path.join(site, file), "utf8")
        .replace(/<[^>]+>/g, " ")
        .replace(/\s+/g, " ");
  };

  it.each([
    [brass, brass, true],
    [iron, brass, false],
    [brass, iron, false],
  ])("neither gives nor is completed: %j, %j", async (one, two, isCompletable) => {
    const words = await built(`${one}: ${giver}`, `${two}: ${taker}`);
    for (const page of ["wants/index.html", "variants/chest-a/index.html"]) {
      expect(words(page).includes("What could be completed here")).toBe(isCompletable);
      expect(words(page).includes("Two certain 0%, would be 50%")).toBe(isCompletable);
    }
  });

  it("says so where it opens the catalogue", async () => {
    const words = await built(`${iron}: ${giver}`, `${iron}: ${taker}`);
    expect(words("index.html")).toContain("One (contradicted): 50% complete by weight");
  });
});
