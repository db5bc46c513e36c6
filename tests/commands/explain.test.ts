import { describe, expect, it } from "vitest";
import { english } from "../../shared/words/en/english.ts";
import { pilotageFolder } from "./pilotage.ts";
import { run } from "./run.ts";
import { runHere } from "./run-here.ts";

describe("fittedcase explain", () => {
  it("tells the whole assessment, each figure with its method, inputs and sources", async () => {
    const { code, out, err } = await run(["explain", "river-office"], pilotageFolder());
    expect(err).toBe("");
    expect(code).toBe(0);
    // By hand: weights 10, 1 and 2; (10 + 3/4) / 13 = 0.827 and (10 + 4/4) / 13 = 0.846, down and up.
    expect(out).toMatch(/by weight +82% for certain, 85% at most/);
    expect(out).toMatch(/in units +4 to 5 of 6 units/);
    expect(out).toMatch(/missing +Mercury bottle/);
    expect(out).toMatch(/not examined +Horizon shade; Oil bottle/);
    expect(out).toMatch(/level +Instrument only\n/);
    // The worked figure of the contract: Chao1 for D = 21, f1 = 9, f2 = 6 is 26.14, 22.13 to 44.41.
    expect(out).toMatch(
      /Surviving, from repeat sightings: about 26, 22 to 44\n +method +Surviving, from repeat sightings, 95% interval/,
    );
    expect(out).toMatch(
      /inputs +examples 21, seen once 9, seen twice 6, sightings 39\n +sources +works-ledger/,
    );
    expect(out).toMatch(/works-ledger\n +Ledger of finished sets/);
    expect(out).toMatch(/Made: 412\n +method +Made, as documented\n +inputs .*page 31/);
    // Refused, with the reason.
    expect(out).toMatch(/Surviving, from two lists: not known\. No sighting names the list/);
    expect(out).toMatch(/Confirmed\./);
    // By hand: 1931 to 1960, 2001 and the examination, of 1931 to 2026.
    expect(out).toMatch(/documented +32 of 96 calendar years since issue/);
  });

  it("tells of every method that it uses what it takes for granted and what would change its figures", async () => {
    const { out } = await runHere(["explain", "river-office"], pilotageFolder());
    const methods = out.slice(out.indexOf("\nMETHODS"), out.indexOf("\nSOURCES"));
    // Its number made is documented, so that nothing is estimated from serials.
    const used = Object.entries(english.methods).filter(([id]) => id !== "serial-ranges");
    for (const [, { name, asks }] of used) {
      const [, told = ""] = methods.split(`  ${name} (`);
      expect(told, name).toContain(asks);
      expect(told.split(/\n {2}\S/)[0], name).toMatch(
        /formula +\S[\s\S]*\n +from +\S[\s\S]*\n +assumes +\S[\s\S]*\n +changes with +\S/,
      );
    }
  });

  it("gives appearance, survivors and the wait by level of completeness, too", async () => {
    const { out } = await runHere(["explain", "river-office"], pilotageFolder());
    for (const level of ["Complete", "Instrument only"])
      for (const figure of [
        "of the recorded examples",
        "surviving that reach it",
        "offered",
        "wait for the next offered",
      ])
        expect(out).toContain(`\n  ${level}, ${figure}: `);
  });

  it("has the words of the site for states, standings and places", async () => {
    const { out } = await runHere(["explain", "river-office"], pilotageFolder());
    expect(out).toMatch(/consumables +0% for certain, 100% at most; 0 to 1 of 1 unit\n/);
    expect(out).toContain("of principal and issued parts");
    // It is not recorded in full itself: of three shades the fourth was not looked at.
    expect(out).toMatch(/\n {2}(In completeness, place|No other is recorded part by part)/);
    expect(out).not.toMatch(/unexamined|\bcore\b|recorded in full/);
    // No label stands beside nothing.
    expect(out).not.toMatch(/\n +(inputs|sources|method) *\n/);
  });

  it("keeps the names of the parts in one column, however long their states are", async () => {
    const parts = "{ shade: [{ state: present }, { state: substitute, model: x }, { state: unverified }] }";
    const { out } = await runHere(
      ["explain", "another"],
      pilotageFolder({
        "content/items/another.md": `---\ntitle: Another\nvariant: pilot-mk2\nparts: ${parts}\n---\n`,
      }),
    );
    const rows = out.slice(out.indexOf("PART BY PART"), out.indexOf("DATING")).split("\n");
    const columns = ["Sextant (", "Horizon shade, 4 (", "Mercury bottle (", "Oil bottle ("].map(
      (name) => rows.find((row) => row.includes(name))?.indexOf(name) ?? Number.NaN,
    );
    expect(new Set(columns).size).toBe(1);
    expect(out).toMatch(
      /\n {4}1 present, 1 substitute, +Horizon.*\n {4}1 unverified, 1 not examined +model x\n/,
    );
  });

  it("says of an item of which nothing is recorded just that, with what can hurt and what to do", async () => {
    const bare = "---\ntitle: Another\nvariant: pilot-mk2\nset: 9\nstorage: Attic\n---\n";
    const { out } = await runHere(
      ["explain", "another"],
      pilotageFolder({ "content/items/another.md": bare }),
    );
    expect(out).toContain("Nothing is recorded of it yet");
    expect(out).toContain("fittedcase checklist another");
    for (const told of ["Mercury: Mercury bottle", "Attic"]) expect(out).toContain(told);
    for (const title of ["IDENTIFICATION", "RARITY", "METHODS"]) expect(out).not.toContain(title);
    expect(out.split("\n").length).toBeLessThan(25);
  });

  it("calls an outfit assembled, and says which parts came from elsewhere and whose number they bear", async () => {
    const assembled = `---
title: Another
variant: pilot-mk2
set: "7"
parts: { sextant: { state: present, marks: ["118"] } }
assembled: [sextant]
---
`;
    const { out } = await runHere(
      ["explain", "another"],
      pilotageFolder({ "content/items/another.md": assembled }),
    );
    expect(out).toMatch(/set 7; collection, assembled\n/);
    expect(out).toMatch(/from elsewhere +Sextant\n/);
    expect(out).toMatch(/bears the number of set 118\n +came from another case/);
  });

  it("warns before anything else of what can hurt, but not of what is known to be gone", async () => {
    const there = "---\ntitle: Another\nvariant: pilot-mk2\nparts: { mercury-bottle: present }\n---\n";
    const root = pilotageFolder({ "content/items/another.md": there });
    const { out } = await runHere(["explain", "another"], root);
    expect(out.indexOf("Mercury: Mercury bottle")).toBeGreaterThan(0);
    expect(out.indexOf("Mercury: Mercury bottle")).toBeLessThan(out.indexOf("IDENTIFICATION"));
    expect((await runHere(["explain", "river-office"], root)).out).not.toContain("TAKE CARE");
  });

  it("shows the owner everything, and says so", async () => {
    const { out } = await runHere(["explain", "river-office"], pilotageFolder());
    for (const kept of [
      "H2118",
      "I. Venn",
      "Cupboard 2",
      "A burn in the lid",
      "EUR 310".replace(" ", "\u00a0"),
    ])
      expect(out).toContain(kept);
    expect(out).toMatch(/This is the owner's view/);
  });

  it("is plain in a pipe, and in colour where colour is asked for", async () => {
    const introducer = "\u001b[";
    const root = pilotageFolder();
    const plain = await run(["explain", "river-office"], root, { NO_COLOR: "" });
    expect(plain.out).not.toContain(introducer);
    const coloured = await run(["explain", "river-office"], root, { NO_COLOR: "", FORCE_COLOR: "1" });
    expect(coloured.out).toContain(`${introducer}1m`);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: the escapes of ECMA-48 that set colours
    expect(coloured.out.replace(/\u001b\[\d+m/g, "")).toBe(plain.out);
  });

  it("gives the same as JSON, with every digit", async () => {
    const { code, out } = await runHere(["explain", "river-office", "--json"], pilotageFolder());
    const data = JSON.parse(out);
    expect(code).toBe(0);
    expect(data.serial).toBe("H2118");
    expect(data.completeness.weighted.low).toBeCloseTo(10.75 / 13, 12);
    expect(data.variantRarity.survivors.value).toBeCloseTo(21 + (9 * 8) / (2 * 7), 12);
    // Of the item and of its variant alike, what is to be borne in mind is sentences, as in the data files.
    for (const { caveats } of [data.rarity.asComplete, data.variantRarity.coverage, data.variantRarity.wait])
      expect(caveats).toEqual(expect.arrayContaining([expect.stringMatching(/^[A-Z].*\.$/)]));
  });

  it.each([
    [["explain", "river-ofice"], 2, 'Did you mean "river-office"?'],
    [["explain"], 2, "expected one"],
    [["explain", "a", "b"], 2, "expected one"],
    [["explain", "--help"], 0, ""],
  ])("%j exits with %d", async (args, code, said) => {
    const ran = await runHere(args, pilotageFolder());
    expect(ran.code).toBe(code);
    expect(ran.err).toContain(said);
    expect(ran.err).not.toContain("    at ");
  });

  it("tells nothing of a collection with errors", async () => {
    const root = pilotageFolder({ "content/items/wrong.md": "---\ntitle: Wrong\nvariant: pilot-mk3\n---\n" });
    const { code, out, err } = await runHere(["explain", "river-office"], root);
    expect({ code, out }).toEqual({ code: 1, out: "" });
    expect(err).toContain("unknown-variant");
  });
});
