import { existsSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { pilotageFolder } from "./pilotage.ts";
import { runHere } from "./run-here.ts";

const read = (root: string, file: string) => readFileSync(path.join(root, file), "utf8");

async function errorsOf(root: string): Promise<{ file: string; message: string }[]> {
  const { out } = await runHere(["check", "--format", "json"], root);
  const { diagnostics } = JSON.parse(out) as {
    diagnostics: { file: string; severity: string; message: string }[];
  };
  return diagnostics.filter(({ severity }) => severity === "error");
}

describe("fittedcase new", () => {
  it("refuses what cannot be part of an address, and says what could", async () => {
    const root = pilotageFolder();
    const { code, err } = await runHere(["new", "item", "Attic Case!", "--variant", "pilot-mk2"], root);
    expect(code).toBe(2);
    expect(err).toContain('Found "Attic Case!"; expected small letters, digits and single hyphens.');
    expect(err).toContain('Did you mean "attic-case"?');
  });

  it.each([
    ["thing", 'Found "thing"; expected item, variant, family, article.'],
    ["artcle", 'Found "artcle"; expected item, variant, family, article. Did you mean "article"?'],
  ])("names the kinds once where %s is none of them", async (word, said) => {
    const { code, err } = await runHere(["new", word, "x"], pilotageFolder());
    expect(code).toBe(2);
    expect(err.split("\n")[0]).toBe(said);
  });

  it("lists every part of the variant in the order of unpacking, and passes check as it is", async () => {
    const root = pilotageFolder();
    const { code, err } = await runHere(
      ["new", "item", "attic-case", "--variant", "pilot-mk2", "--set", "7"],
      root,
    );
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(await errorsOf(root)).toEqual([]);
    const text = read(root, "content/items/attic-case/index.md");
    const ticks = [...text.matchAll(/^ {2}# ([a-z-]+): (?:present|\{ state: present)/gm)].map(([, id]) => id);
    // Groups as family.yaml orders them, parts within a group as the reference does.
    expect(ticks).toEqual(["sextant", "shade", "mercury-bottle", "oil-bottle"]);
    expect(text).toContain('Marks: "7".');
    expect(text).toContain("4 of them");
    expect(text).toMatch(/later-tin \(counts for 0\.5\)/);
    expect(text).toContain("Look below the arc: a number.");
    expect(text.indexOf("CAUTION, mercury")).toBeGreaterThan(0);
    expect(text.indexOf("CAUTION, mercury")).toBeLessThan(text.indexOf("# mercury-bottle: present"));
  });

  it("claims nothing until a line is brought in, and is sound when every part is", async () => {
    const root = pilotageFolder();
    await runHere(["new", "item", "attic-case", "--variant", "pilot-mk2"], root);
    const file = path.join(root, "content/items/attic-case/index.md");
    const before = JSON.parse((await runHere(["explain", "attic-case", "--json"], root)).out);
    expect(before.completeness.weighted).toEqual({ low: 0, high: 1 });
    writeFileSync(
      file,
      read(root, "content/items/attic-case/index.md").replace(/^ {2}# (?=[a-z-]+: (?:present|\{))/gm, "  "),
    );
    expect(await errorsOf(root)).toEqual([]);
    const after = JSON.parse((await runHere(["explain", "attic-case", "--json"], root)).out);
    expect(after.completeness.weighted).toEqual({ low: 1, high: 1 });
  });

  it("quotes what YAML would read as something else", async () => {
    const root = pilotageFolder();
    const title = 'Case no. 7: "the #1", found - so they say';
    await runHere(
      [
        "new",
        "item",
        "seven",
        "--variant",
        "pilot-mk2",
        "--title",
        title,
        "--serial",
        "2007",
        "--set",
        "007",
      ],
      root,
    );
    const data = JSON.parse((await runHere(["explain", "seven", "--json"], root)).out);
    expect([data.title, data.serial, data.set]).toEqual([title, "2007", "007"]);
  });

  it("begins a variant from nothing, from another and from an item", async () => {
    const root = pilotageFolder({
      "content/items/odd.md":
        "---\ntitle: Odd\nvariant: pilot-mk2\nfeatures: { arc: silver }\nparts:\n  shade: { state: not-issued, evidence: issue-book }\n  oil-bottle: absent\nextras: [{ name: Second sextant }]\n---\n",
    });
    const made = await Promise.all([
      runHere(["new", "variant", "pilot-mk3", "--family", "pilot", "--name", "Mark III"], root),
      runHere(["new", "variant", "pilot-mk4", "--from", "pilot-mk2"], root),
      runHere(["new", "variant", "pilot-mk5", "--from-item", "odd"], root),
    ]);
    expect(made.map(({ code }) => code)).toEqual([0, 0, 0]);
    // What nothing tells from the others takes their certainty from them; one begun from an item differs by itself.
    const told = "they cannot tell it from the others of its family";
    expect(made.map(({ out }) => out.includes(told))).toEqual([true, true, false]);
    expect(await errorsOf(root)).toEqual([]);
    const four = read(root, "schemas/reference/pilot/pilot-mk4.yaml");
    expect(four).toContain("extends: pilot-mk2");
    // What was made of the other was not made of this one.
    expect(four).toMatch(/^made: null$/m);
    expect(four).toMatch(/^serials: null$/m);
    for (const part of ["sextant", "shade", "mercury-bottle", "oil-bottle"])
      expect(four).toContain(`  # ${part}: null`);
    const five = read(root, "schemas/reference/pilot/pilot-mk5.yaml");
    expect(five).toMatch(/^extends: pilot-mk2$/m);
    // Seen to differ, or known never to have been there: taken over. Gone, or extra: left to decide.
    expect(five).toMatch(/^ {2}arc: silver$/m);
    expect(five).toMatch(/^ {2}shade: null$/m);
    expect(five).toMatch(/^ {2}# oil-bottle: null$/m);
    expect(five).toMatch(/^ {2}# second-sextant: /m);
  });

  it("begins a family and an article, and what follows from the family", async () => {
    const root = pilotageFolder();
    for (const args of [
      ["family", "chests", "--name", "Chests: all of them", "--maker", "Ebbholm Works"],
      ["variant", "chest-a", "--family", "chests"],
      ["item", "chest-one", "--variant", "chest-a"],
      ["article", "on-arcs", "--title", "On arcs"],
    ]) {
      expect((await runHere(["new", ...args], root)).code).toBe(0);
    }
    expect(await errorsOf(root)).toEqual([]);
  });

  it("shows in an article how it takes figures from the data, with ids that are there", async () => {
    const root = pilotageFolder();
    await runHere(["new", "article", "on-arcs"], root);
    const file = path.join(root, "content/articles/on-arcs.md");
    const examples =
      read(root, "content/articles/on-arcs.md").match(/<(?:figure|table|plot):\S+>|\[@[^\]]+\]/g) ?? [];
    expect(examples).toHaveLength(4);
    writeFileSync(file, `${readFileSync(file, "utf8")}\n${examples.join("\n\n")}\n`);
    expect(await errorsOf(root)).toEqual([]);
  });

  it("never writes over a file", async () => {
    const root = pilotageFolder();
    const before = read(root, "content/items/river-office/index.md");
    const { code, err } = await runHere(["new", "item", "river-office", "--variant", "pilot-mk2"], root);
    expect(code).toBe(2);
    expect(err).toContain("already exists");
    expect(read(root, "content/items/river-office/index.md")).toBe(before);
    const again = ["new", "article", "on-arcs"];
    expect((await runHere(again, root)).code).toBe(0);
    expect((await runHere(again, root)).code).toBe(2);
  });

  it.each([
    [["item", "x", "--variant", "pilot-mk"], "Did you mean"],
    [["item", "x"], "fittedcase checklist FAMILY makes a sheet that tells its variants apart"],
    [["item", "x"], "Known: pilot-mk1, pilot-mk2."],
    [["item", "../x", "--variant", "pilot-mk2"], "small letters"],
    [["item", "X y", "--variant", "pilot-mk2"], "small letters"],
    [["item", "no-h2007", "--variant", "pilot-mk2", "--serial", "H2007"], "serial-in-address"],
    [["itm", "x"], 'Did you mean "item"?'],
    [["article"], "expected one"],
    [["article", "x", "--variant", "pilot-mk2"], "--variant"],
    [["variant", "x", "--family", "pilt"], 'Did you mean "pilot"?'],
    [
      ["variant", "x", "--famly", "pilot"],
      'Found "--famly"; expected a flag of this command. Did you mean "--family"?\nUsage: ',
    ],
  ])("new %j is refused, and writes nothing", async (args, said) => {
    const root = pilotageFolder();
    const { code, err } = await runHere(["new", ...args], root);
    expect(code).toBe(2);
    expect(err).toContain(said);
    expect(err).not.toContain("    at ");
    for (const file of ["content/items/x", "content/x", "content/items/no-h2007", "content/articles/x.md"]) {
      expect(existsSync(path.join(root, file))).toBe(false);
    }
  });
});
