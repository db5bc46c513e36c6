import { chmodSync, lstatSync, readdirSync, readFileSync, rmSync, statSync, symlinkSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { catalogue } from "../../shared/diagnostics/catalogue.ts";
import { writeCollection } from "../collections/collection.ts";
import { pilotage, pilotageFolder } from "./pilotage.ts";
import { runHere } from "./run-here.ts";

const read = (root: string, file: string) => readFileSync(path.join(root, file), "utf8");
const item = "content/items/one.md";
const reference = "schemas/reference/pilot";

describe("fittedcase check --fix", () => {
  it("mends slips with one near name, and keeps every other byte", async () => {
    const before =
      "\uFEFF---\r\ntitle: One   # a remark \r\nvariant: pilot-mk2\r\nserail: H2001\r\nfeatures: {arc:   'platinm'}\r\nparts:\r\n  sextnat: prsent # seen\r\n  shade: {state: \"absnt\",  quantity: 1}\r\n---\r\n\tsextnat in the text stays.";
    const root = pilotageFolder({ [item]: before });
    const { code, out } = await runHere(["check", "--fix"], root);
    expect(code).toBe(0);
    expect(out).toContain(`${item}:7:3  Replaced "sextnat" with "sextant".`);
    expect(read(root, item)).toBe(
      before
        .replace("serail", "serial")
        .replace("platinm", "platinum")
        .replace("  sextnat: prsent", "  sextant: present")
        .replace("absnt", "absent"),
    );
    expect((await runHere(["check", "--fix"], root)).out).toContain("Nothing to fix.");
  });

  it("puts the whole mended file in the place of the old one, with its mode, and where a link of the folder's leads", async () => {
    const root = pilotageFolder({ "shelf/one.md": "---\ntitle: One\nvariant: pilot-mkk2\n---\n" });
    const [real, link] = [path.join(root, "shelf/one.md"), path.join(root, item)];
    rmSync(link, { force: true });
    symlinkSync("../../shelf/one.md", link);
    chmodSync(real, 0o640);
    const { ino } = statSync(real);
    expect((await runHere(["check", "--fix"], root)).code).toBe(0);
    expect(read(root, "shelf/one.md")).toContain("variant: pilot-mk2\n");
    expect(statSync(real).mode & 0o777).toBe(0o640);
    expect(statSync(real).ino).not.toBe(ino);
    expect(lstatSync(link).isSymbolicLink()).toBe(true);
    expect(readdirSync(path.join(root, "shelf"))).toEqual(["one.md"]);
  });

  it("goes on from a variant that was misspelt to its parts", async () => {
    const root = pilotageFolder({
      [item]: "---\ntitle: One\nvariant: pilot-mkk2\nparts: { shde: present }\n---\n",
    });
    expect((await runHere(["check", "--fix"], root)).code).toBe(0);
    expect(read(root, item)).toContain("variant: pilot-mk2\nparts: { shade: present }");
  });

  it("leaves alone what two names are near to", async () => {
    const before = "---\ntitle: One\nvariant: pilot-mk3\n---\n";
    const root = pilotageFolder({ [item]: before });
    const { code, out } = await runHere(["check", "--fix"], root);
    expect(code).toBe(1);
    expect(out).toContain('Did you mean "pilot-mk1" or "pilot-mk2"?');
    expect(read(root, item)).toBe(before);
  });

  it("judges nothing by a reference whose base or family has errors, and mends nothing by it", async () => {
    const own = "name: Mark III\nextends: pilot-mk2\nparts:\n  shades: { name: Pair of shades }\n";
    const log = "seen,variant,kind,present\n1991,pilot-mk3,offer,shade;sextant\n";
    const record = "---\ntitle: One\nvariant: pilot-mk3\nparts: { shade: present, shades: absent }\n---\n";
    const files = { [item]: record, "content/sightings/more.csv": log, [`${reference}/pilot-mk3.yaml`]: own };
    for (const [name, from, to] of [
      ["pilot-mk2.yaml", "issued: 1931/1938", "issued: 1938/1931"],
      ["family.yaml", "name: Ebbholm Pilotage outfits", "nam: 1"],
    ] as const) {
      const file = `${reference}/${name}`;
      const root = pilotageFolder({ ...files, [file]: String(pilotage[file]).replace(from, to) });
      const { code, out } = await runHere(["check", "--fix", "--format", "json"], root);
      expect(code).toBe(1);
      const told = (JSON.parse(out) as { diagnostics: { file: string; severity: string }[] }).diagnostics;
      const wrong = new Set(told.filter(({ severity }) => severity === "error").map((each) => each.file));
      expect([...wrong]).toEqual([file]);
      expect(read(root, item)).toBe(record);
      expect(read(root, "content/sightings/more.csv")).toBe(log);
    }
  });

  it("takes no name for a slip of one that stands beside it", async () => {
    const before =
      "---\ntitle: One\ntitel: Two\nvariant: pilot-mk2\nparts: { shade: present, shde: absent }\n---\n";
    const root = pilotageFolder({ [item]: before });
    expect((await runHere(["check", "--fix"], root)).code).toBe(1);
    expect(read(root, item)).toBe(before);
  });

  it("indents with spaces where tabs are all that is wrong", async () => {
    const before =
      "---\ntitle: One\nvariant: pilot-mk2\nparts:\n\tshade:\n\t\tstate: present\n---\n\tindented text\n";
    const root = pilotageFolder({ [item]: before });
    expect((await runHere(["check", "--fix"], root)).code).toBe(0);
    expect(read(root, item)).toBe(
      "---\ntitle: One\nvariant: pilot-mk2\nparts:\n  shade:\n    state: present\n---\n\tindented text\n",
    );
    const worse = before.replace("state: present", "state: [present");
    const other = pilotageFolder({ [item]: worse });
    expect((await runHere(["check", "--fix"], other)).code).toBe(1);
    expect(read(other, item)).toBe(worse);
  });

  it("mends one name among several in a cell of the log", async () => {
    const log = "seen,variant,kind,present,source\n1999,pilot-mk2,ofer,sextant;shde,works-ledgr\n";
    const root = pilotageFolder({ "content/sightings/b.csv": log });
    expect((await runHere(["check", "--fix"], root)).code).toBe(0);
    expect(read(root, "content/sightings/b.csv")).toBe(
      "seen,variant,kind,present,source\n1999,pilot-mk2,offer,sextant;shade,works-ledger\n",
    );
  });

  it("keeps its remarks out of what a program reads", async () => {
    const root = pilotageFolder({ [item]: "---\ntitle: One\nvariant: pilot-mk2\nserail: H2001\n---\n" });
    const { out, err } = await runHere(["check", "--fix", "--format", "json"], root);
    expect(JSON.parse(out).errors).toBe(0);
    expect(err).toContain('Replaced "serail" with "serial".');
  });
});

describe("fittedcase check --format sarif", () => {
  const broken = {
    ...pilotage,
    "content/sightings/ça va.csv": "seen,variant,kind,present\n1999,pilot-mk2,offer,sextnat\n",
  };

  // SARIF 2.1.0, OASIS Standard, 27 March 2020; the sections are named beside each line.
  it("is a log of one run, as the standard has it", async () => {
    const { code, out } = await runHere(["check", "--format", "sarif"], writeCollection(broken));
    expect(code).toBe(1);
    const log = JSON.parse(out);
    expect(log.version).toBe("2.1.0"); // 3.13.2
    expect(log.runs).toHaveLength(1); // 3.13.4
    const [{ tool, results, columnKind, originalUriBaseIds }] = log.runs;
    expect(columnKind).toBe("utf16CodeUnits"); // 3.14.27
    expect(tool.driver.name).toBe("Fittedcase"); // 3.19.8
    expect(tool.driver.semanticVersion).toMatch(/^\d+\.\d+\.\d+/); // 3.19.12
    // 3.19.23: the rules, each id once (3.49.3)
    expect(tool.driver.rules.map(({ id }: { id: string }) => id)).toEqual(Object.keys(catalogue));
    for (const result of results) {
      expect(tool.driver.rules[result.ruleIndex].id).toBe(result.ruleId); // 3.27.6
      expect(["error", "warning"]).toContain(result.level); // 3.27.10
      expect(result.message.text).not.toBe(""); // 3.27.11
      const { artifactLocation, region } = result.locations[0].physicalLocation; // 3.29
      expect(originalUriBaseIds).toHaveProperty(artifactLocation.uriBaseId); // 3.4.4
      // 3.4.3 and RFC 3986: a relative reference has none but these characters before it is resolved.
      expect(artifactLocation.uri).toMatch(/^[A-Za-z0-9\-._~!$&'()*+,;=:@/%]+$/);
      expect(region.startLine).toBeGreaterThanOrEqual(1); // 3.30.5
      expect(region.endLine).toBeGreaterThanOrEqual(region.startLine); // 3.30.7
      expect(region.endColumn).toBeGreaterThan(region.startLine === region.endLine ? region.startColumn : 0); // 3.30.8
    }
  });

  it("says how a slip is mended", async () => {
    const { out } = await runHere(["check", "--format", "sarif"], writeCollection(broken));
    const found = JSON.parse(out).runs[0].results.find(
      ({ ruleId }: { ruleId: string }) => ruleId === "unknown-part",
    );
    // 3.55 to 3.57: one file, one stretch, and what takes its place.
    expect(found.fixes[0].artifactChanges).toEqual([
      {
        artifactLocation: { uri: "content/sightings/%C3%A7a%20va.csv", uriBaseId: "COLLECTION" },
        replacements: [
          {
            deletedRegion: { startLine: 2, startColumn: 22, endLine: 2, endColumn: 29 },
            insertedContent: { text: "sextant" },
          },
        ],
      },
    ]);
  });
});

describe("what check warns of although it is allowed", () => {
  const warnings = async (front: string) => {
    const root = pilotageFolder({ [item]: `---\ntitle: One\nvariant: pilot-mk2\n${front}---\n` });
    const { code, out } = await runHere(["check", "--format", "json"], root);
    expect(code).toBe(0);
    const { diagnostics } = JSON.parse(out) as {
      diagnostics: { file: string; code: string; line: number; message: string }[];
    };
    return diagnostics.filter(({ file, code: each }) => file === item && each !== "no-photograph");
  };

  it("marks that the reference expects and nobody recorded, once for an item", async () => {
    const [found, ...others] = await warnings(
      'set: "118"\nparts:\n  oil-bottle: present\n  sextant: present\n  shade: { state: present, marks: [P30] }\n',
    );
    expect(others).toEqual([]);
    expect(found).toMatchObject({ code: "mark-not-recorded", line: 7 });
    expect(found?.message).toMatch(/^Found "sextant" present without .*, and "shade" with the mark "P30";/);
    // Marks as they are typed; without a set number its mark cannot be expected; unverified parts claim nothing.
    expect(
      await warnings(
        'set: "118"\nparts:\n  sextant: { state: present, marks: 118 }\n  shade: { state: present, marks: [p31] }\n',
      ),
    ).toEqual([]);
    expect(await warnings("parts:\n  sextant: present\n  shade: unverified\n")).toEqual([]);
  });

  it("custody without evidence, once for an item", async () => {
    const found = await warnings(
      "provenance:\n  - { date: 1931, event: issued, source: works-ledger }\n  - { date: 1940, event: sold }\n  - { date: 1950, event: sold }\n",
    );
    expect(found).toMatchObject([{ code: "evidence-missing", line: 6 }]);
    expect(found[0]?.message).toContain("2 events without evidence (1940; 1950)");
  });

  it("sightings without a source, once for a log", async () => {
    const root = pilotageFolder({
      "content/sightings/b.csv": `seen,variant,kind\n${"1999,pilot-mk1,offer\n".repeat(1200)}`,
    });
    const { out } = await runHere(["check"], root);
    expect(out.match(/source-missing/g)).toHaveLength(1);
    expect(out).toContain("and 1,199 more in this file");
  });
});
