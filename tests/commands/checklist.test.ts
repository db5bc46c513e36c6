import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { HtmlValidate } from "html-validate";
import { describe, expect, it } from "vitest";
import { installedBrowser } from "../../shared/commands/checklist/installed-browser.ts";
import { pilotageFolder } from "./pilotage.ts";
import { run } from "./run.ts";
import { runHere } from "./run-here.ts";

async function sheet(id: string, more = {}) {
  const root = pilotageFolder(more);
  const ran = await runHere(["checklist", id], root);
  expect(ran).toMatchObject({ code: 0, err: "" });
  return readFileSync(path.join(root, `checklist-${id}.html`), "utf8");
}

describe("fittedcase checklist", () => {
  it("has a box for each unit of each part, in the order of unpacking, cautions first", async () => {
    const html = await sheet("pilot-mk2");
    const rows = [...html.matchAll(/<td class="ticks">(.*?)<\/td><th scope="row">(.*?)<br>/g)];
    expect(rows.map(([, boxes, name]) => [name, boxes?.match(/class="box"/g)?.length])).toEqual([
      ["Sextant", 1],
      ["Horizon shade", 4],
      ["Mercury bottle", 1],
      ["Oil bottle", 1],
    ]);
    expect(html.indexOf("Keep the vessel closed")).toBeGreaterThan(0);
    expect(html.indexOf("Keep the vessel closed")).toBeLessThan(
      html.indexOf("What tells the variants apart"),
    );
    expect(html).toContain("Mercury in Museum Collections");
    for (const heading of ["Marks read", "Serial", "Condition, remarks"])
      expect(html).toContain(`>${heading}</th>`);
    expect(html).toContain("size: A4");
  });

  it("names what can hurt before it says how to look, in every row too", async () => {
    const html = await sheet("pilot-mk2", {
      "schemas/reference/pilot/pilot-mk2.yaml":
        "name: Mark II\nparts:\n  lamp: { name: Lamp, hazards: [flammable, mercury], look: Smell the cap. }\n",
    });
    const row = html.slice(html.indexOf('<td class="details">'));
    expect(row).toMatch(
      /^<td class="details"><strong class="danger">Caution: [^<]*mercury[^<]*<\/strong> Smell the cap\./,
    );
    expect(html.indexOf("Keep the vessel closed")).toBeLessThan(html.indexOf("Smell the cap."));
  });

  // Where browsers stand on no PATH, one may be found all the same.
  it.skipIf(installedBrowser({}) !== undefined).each([
    [{ CHROME_PATH: "", PATH: "/nowhere" }, "Found no browser that can print a PDF"],
    [{ CHROME_PATH: "/nowhere/browser" }, 'Found no browser at "/nowhere/browser", which CHROME_PATH names'],
  ])("says so where there is no browser to print a PDF: %j", async (environment, said) => {
    const root = pilotageFolder();
    const ran = await run(["checklist", "pilot-mk2", "--pdf"], root, environment);
    expect(ran.code).toBe(2);
    expect(ran.err).toContain(said);
    expect(existsSync(path.join(root, "checklist-pilot-mk2.pdf"))).toBe(false);
  });

  it("says of an item what is on record, and which numbers it should bear", async () => {
    const html = await sheet("river-office");
    expect(html).toContain("On record: 3 present, marked P31.");
    expect(html).toContain("Marks: 118.");
    expect(html).toContain("H2118");
  });

  it("says all that is on record of a part", async () => {
    const html = await sheet("full", {
      "content/items/full.md": `---
title: Full
variant: pilot-mk2
parts:
  sextant: { state: present, serial: S9, condition: worn, packed: sealed, repairs: [relacquered], evidence: letter }
  shade: [{ state: present, quantity: 1, rest: absent }, { state: unverified, belongs: spare }]
  mercury-bottle: { state: not-issued, note: See the issue book. }
  oil-bottle: { state: substitute, model: later-tin }
---
`,
    });
    expect([...html.matchAll(/On record: ([^<]*)<\/em>/g)].map(([, said]) => said)).toEqual([
      "present, serial S9, worn, packed: sealed, repairs: relacquered, by letter.",
      "1 present, the rest missing; 1 unverified, spare.",
      "never issued, See the issue book.",
      "substitute, model later-tin.",
    ]);
  });

  it("tells the variants of a family apart: what each value means, where to look, and the serials", async () => {
    const html = await sheet("pilot");
    const text = html.replace(/<[^>]*>/g, " ").replace(/\s+/g, " ");
    expect(text).toContain("Ebbholm Pilotage outfit, Mark I pilot-mk1 not known");
    expect(text).toContain("Ebbholm Pilotage outfit, Mark II pilot-mk2 H2001 to H2412 (1931 to 1938)");
    expect(text).toContain(
      "Arc a glance Breathe on it. silver Ebbholm Pilotage outfit, Mark I platinum Ebbholm Pilotage outfit, Mark II",
    );
    expect(text.indexOf("Keep the vessel closed")).toBeLessThan(text.indexOf("Breathe on it."));
  });

  it("says of which variants of the family nothing is told", async () => {
    const html = await sheet("pilot", {
      "schemas/reference/pilot/pilot-mk3.yaml":
        "name: Mark III\nfeatures: { arc: silver }\nparts: { lamp: { name: Lamp } }\n",
    });
    const text = html.replace(/<[^>]*>/g, " ").replace(/\s+/g, " ");
    expect(text).toContain("57 Ebbholm Pilotage outfit, Mark I, or Mark III (not recorded) 112");
    expect(text).toContain("silver Ebbholm Pilotage outfit, Mark I; Mark III");
  });

  it("keeps the letters of a range of which neither end is known", async () => {
    const more = {
      "schemas/reference/pilot/pilot-mk3.yaml":
        "name: Mark III\nserials: [{ prefix: K, made: 1938/1940 }]\nparts: { lamp: {} }\n",
    };
    const told = "K…, neither end known (1938 to 1940)";
    expect(await sheet("pilot", more)).toContain(`<td>${told}</td>`);
    expect(await sheet("pilot-mk3", more)).toContain(`Known serials: ${told}.`);
  });

  it("names what there is where it knows no such id", async () => {
    const ran = await runHere(["checklist", "nonsuch"], pilotageFolder());
    expect(ran.code).toBe(2);
    expect(ran.err).toContain("expected the id of an item, a variant or a family. Known: ");
    expect(ran.err).toMatch(/Known: .*pilot-mk1.*\bpilot\b/);
  });

  it("is one file of valid HTML, with nothing from outside", async () => {
    const html = await sheet("pilot-mk2", {
      "content/items/odd.md": "---\ntitle: '<b>Odd</b> & \"others\"'\nvariant: pilot-mk2\n---\n",
    });
    const odd = await sheet("odd", {
      "content/items/odd.md": "---\ntitle: '<b>Odd</b> & \"others\"'\nvariant: pilot-mk2\n---\n",
    });
    expect(odd).toContain("<h1>&lt;b&gt;Odd&lt;/b&gt; &amp;");
    const validator = new HtmlValidate({
      extends: ["html-validate:recommended"],
      rules: { "long-title": "off" },
    });
    for (const each of [html, odd, await sheet("pilot")]) {
      expect(each).not.toMatch(/<(?:script|link|img|iframe)|url\((?!"data:font)|@import|https?:/);
      const report = await validator.validateString(each);
      expect(report.results.flatMap(({ messages }) => messages.map(({ message }) => message))).toEqual([]);
    }
  });

  it.each([
    [["checklist"], 2, "expected one"],
    [["checklist", "pilot-mk"], 2, "Did you mean"],
    [["checklist", "pilot-mk2", "--out", "gone/x.html"], 2, "no folder"],
    [["checklist", "--help"], 0, ""],
  ])("%j exits with %d", async (args, code, said) => {
    const ran = await runHere(args, pilotageFolder());
    expect(ran.err).toContain(said);
    expect(ran.code, ran.err).toBe(code);
  });
});
