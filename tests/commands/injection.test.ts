import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { parse } from "csv-parse/sync";
import sharp from "sharp";
import { beforeAll, describe, expect, it } from "vitest";
import { smallCollection, writeCollection } from "../collections/collection.ts";
import { siteFiles } from "../collections/site-files.ts";
import { run } from "./run.ts";

/** It leaves an attribute, an element, a comment, a script and a CDATA section, and names what it would run. */
const attack = `"'><img src=x onerror=alert(1)><script>alert(1)</script>--></script>]]>`;
const quoted = JSON.stringify(attack);
const schemes = [
  "javascript:alert(1)",
  "data:text/html,<script>alert(1)</script>",
  "vbscript:x",
  "file:///etc/passwd",
];

const escaping = ["../../../../x", "/../x", "/..//x", "/a/../../x", "%2e%2e/%2e%2e/%2e%2e/x", "./../../../x"];

const reference = `made: { count: 9, source: ledger, page: ${quoted} }
serials: [{ prefix: H, from: 1, to: 99, made: 1931, source: ledger }]
parts:
  sextant: { name: ${quoted}, group: box, standing: core, look: ${quoted}, note: ${quoted}, marks: [${quoted}], hazards: [bite] }
`;
const record = `---
title: ${quoted}
variant: chest-a
serial: ${quoted}
set: ${quoted}
examined: 2026-03-14
materials: ${quoted}
measurements: [${quoted}]
parts:
  sextant: { state: present, marks: [${quoted}], serial: ${quoted}, condition: ${quoted}, repairs: [${quoted}], evidence: ${quoted}, note: ${quoted} }
extras: [{ name: ${quoted}, note: ${quoted} }]
labels: [{ where: ${quoted}, kind: ${quoted}, text: [${quoted}], note: ${quoted} }]
provenance: [{ date: 2001, event: ${quoted}, from: ${quoted}, place: ${quoted}, evidence: ${quoted}, note: ${quoted} }]
photos: [{ file: "a b&<c>'.jpg", alt: ${quoted}, caption: ${quoted} }]
publish: { serial: shown }
---
${attack}

${schemes.map((scheme) => `[link](${scheme}) ![picture](${scheme}) <${scheme}>`).join("\n\n")}

${escaping.map((way) => `[up](${way}) ![up](${way}.png)`).join("\n\n")}
`;

describe("what somebody writes into a record", () => {
  let pages: [string, string][];
  let files: Map<string, Buffer>;

  beforeAll(async () => {
    const root = writeCollection(
      smallCollection(reference, {
        "content/items/one/index.md": record,
        "content/items/one/a b&<c>'.jpg": await sharp({
          create: { width: 400, height: 300, channels: 3, background: "#887766" },
        })
          .jpeg()
          .toBuffer(),
        "content/sources.yaml": `- { id: ledger, title: ${quoted}, URL: "https://example.org/?a=1&b=2" }\n`,
        "schemas/hazards.yaml": `bite:\n  name: ${quoted}\n  caution: ${quoted}\n  source: ${quoted}\n`,
        "content/sightings/log.csv": `seen,variant,kind,example,source,note,condition\n2020,chest-a,offer,"${attack.replaceAll('"', '""')}",ledger,"=HYPERLINK(""x"")","@SUM(1)"\n`,
        "content/articles/one.md": `---\ntitle: ${quoted}\nabstract: ${quoted}\n---\n${attack}\n\n${schemes.map((scheme) => `[link](${scheme})`).join(" ")}\n`,
      }),
    );
    const out = path.join(mkdtempSync(path.join(tmpdir(), "fittedcase-injection-")), "site");
    const built = await run(["build", "--root", root, "--out", out], root);
    expect(built.err + built.out).not.toMatch(/ {2}error {2}/);
    expect(built.code).toBe(0);
    files = siteFiles(out);
    pages = [...files]
      .filter(([name]) => /\.(?:html|xml)$/.test(name))
      .map(([name, bytes]) => [name, String(bytes)]);
  });

  it("is on the pages, as letters", () => {
    const item = pages.find(([name]) => name === "items/one/index.html")?.[1] ?? "";
    expect(item.split("&lt;img src=x onerror=alert(1)&gt;").length).toBeGreaterThan(12);
  });

  it("makes no element, and leaves no attribute", () => {
    expect(pages.length).toBeGreaterThan(15);
    for (const [name, text] of pages) {
      expect(text.includes("<img src=x"), name).toBe(false);
      expect(text.includes("<script>"), name).toBe(false);
      expect(/<[^>"']*(?:"[^"]*"[^>"']*|'[^']*'[^>"']*)*\sonerror\s*=/.test(text), name).toBe(false);
    }
  });

  it("leads to no address but of the web, of mail, or of the site", () => {
    for (const [name, text] of pages) {
      const addresses = [...text.matchAll(/(?:href|src|srcset|action|poster)="([^"]*)"/g)].map(
        ([, to]) => to ?? "",
      );
      const foreign = addresses.filter(
        (to) => /^\s*[a-z][a-z\d+.-]*:/i.test(to) && !/^(?:https?|mailto):/i.test(to),
      );
      expect(foreign, name).toEqual([]);
    }
  });

  it("leads to no address above the site's own, however many steps up it takes", () => {
    const html = pages.find(([name]) => name === "items/one/index.html")?.[1] ?? "";
    const led = [...html.matchAll(/href="([^"]*)">up</g)].map(([, to]) => to ?? "");
    expect(led).toHaveLength(escaping.length);
    // A picture in a text is none on the page.
    expect(html).not.toContain('alt="up"');
    // WHATWG URL: resolved against a site two folders below the root of its host.
    for (const to of led)
      expect(new URL(to, "https://host.example/a/b/items/one/").pathname).toMatch(/^\/a\/b\/(?!.*\/\/)/);
  });

  it("starts no formula in a spreadsheet", () => {
    for (const [name, bytes] of files) {
      if (!name.endsWith(".csv")) continue;
      const cells = (parse(bytes) as string[][]).flat();
      expect(
        cells.filter((cell) => /^[=+@\t\r-]/.test(cell) && !/^[+-]?[\d.]+$/.test(cell)),
        name,
      ).toEqual([]);
    }
  });

  it("gives no file its name", () => {
    expect([...files.keys()].filter((name) => /[<>&' ]/.test(name))).toEqual([]);
  });

  it("is data in the data: every JSON file can be read", () => {
    for (const [name, bytes] of files) if (name.endsWith(".json")) JSON.parse(String(bytes));
  });
});
