import { describe, expect, it } from "vitest";
import { type Files, item, smallCollection, writeCollection } from "../collections/collection.ts";
import { run } from "./run.ts";
import { runHere } from "./run-here.ts";

interface Reported {
  errors: number;
  warnings: number;
  diagnostics: {
    file: string;
    line: number;
    column: number;
    endLine: number;
    endColumn: number;
    code: string;
    severity: string;
    message: string;
    frame: string;
  }[];
}

const parts = "parts:\n  oil-bottle: { standing: consumable }\n  sextant: { standing: core }\n";

async function check(files: Files): Promise<{ code: number | null } & Reported> {
  const { code, out } = await runHere(["check", "--format", "json"], writeCollection(files));
  const reported = JSON.parse(out) as Reported;
  // That these items have no photographs is tested by itself.
  const diagnostics = reported.diagnostics.filter((each) => each.code !== "no-photograph");
  const without = reported.diagnostics.length - diagnostics.length;
  return { code, errors: reported.errors, warnings: reported.warnings - without, diagnostics };
}

const withItem = (text: string | Uint8Array) =>
  smallCollection(parts, { "content/items/one/index.md": text });

/** `file:line:column code` of each problem. */
const placed = ({ diagnostics }: Reported) =>
  diagnostics.map(({ file, line, column, code }) => `${file}:${line}:${column} ${code}`);

describe("fittedcase check", () => {
  it("finds nothing in a sound collection", async () => {
    const { code, errors, warnings } = await check(withItem(item("parts: { sextant: present }")));
    expect({ code, errors, warnings }).toEqual({ code: 0, errors: 0, warnings: 0 });
  });

  it("shows the first 500 problems, errors before warnings, counts the rest, and shows or lists all where asked to", async () => {
    const rows = Array.from({ length: 600 }, (_, at) => `${1300 + at},chest-a,offer,`).join("\n");
    const root = writeCollection(
      smallCollection("parts:\n  bottle: { hazards: [phosgene] }\n", {
        "content/sightings/log.csv": `seen,variant,kind,source\n${rows.replaceAll("offer,", "offre,")}\n`,
        "content/items/one/index.md": item(""),
      }),
    );
    const { out } = await runHere(["check"], root);
    const listed = JSON.parse((await runHere(["check", "--format", "json"], root)).out) as Reported;
    const blocks = (text: string) => text.match(/^\S+:\d+:\d+ {2}(?:error|warning) /gm)?.length;
    const all = listed.diagnostics.length;
    expect(listed.errors).toBeGreaterThan(600);
    expect(blocks(out)).toBe(500);
    expect(out).not.toContain("  warning  ");
    expect(out).toContain(`The first 500 are shown, errors before warnings, and ${all - 500} are not`);
    const whole = (await runHere(["check", "--all"], root)).out;
    expect(blocks(whole)).toBe(all);
    // Where no name is near, all are given.
    expect(whole).toContain("The register has: mercury, radium, ");
  });

  it("tells of photographs and recordings that are something else, as build does", async () => {
    const shown =
      "photos: [{ file: a.jpg, alt: A }, { file: b.png, alt: B }]\nvideo: { src: c.webm, captions: c.vtt }";
    const root = writeCollection({
      ...withItem(item(shown)),
      "content/items/one/a.jpg": "No picture.",
      // PNG (Third Edition), 5.2: the signature; what follows is not looked at.
      "content/items/one/b.png": Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0),
      "content/items/one/c.webm": "No film.",
      "content/items/one/c.vtt": "No captions.",
    });
    const checked = await runHere(["check", "--format", "json"], root);
    expect(checked.code).toBe(1);
    const { diagnostics } = JSON.parse(checked.out) as Reported;
    expect(diagnostics.map(({ code, message }) => `${code} ${message}`)).toEqual([
      "unreadable-photograph Found a file that is not a JPEG, PNG, WebP, AVIF, TIFF or GIF; expected a photograph that can be shown.",
      "unreadable-recording Found a file that is not a WebM, MP4, MP3, WAV or FLAC; expected a recording that can be published.",
      "unreadable-recording Found a file that is not WebVTT; expected captions in WebVTT.",
    ]);
    const built = await runHere(["build"], root);
    expect(built.code).toBe(1);
    for (const { message } of diagnostics) expect(built.err).toContain(message);
  });

  it("reports every problem at once, each at its place", async () => {
    const found = await check({
      ...withItem(
        [
          "---",
          "title: One",
          "variant: chest-a",
          "condtion: good",
          "examined: 1985-02-30",
          "features: { lock: irno, colour: red }",
          "parts:",
          "  oil-botle: present",
          "  sextant: prsent",
          "---",
          "",
        ].join("\n"),
      ),
      "content/items/two/index.md": "---\ntitle: Two\nvariant: chest-b\n---\n",
    });
    expect(found.code).toBe(1);
    expect(placed(found)).toEqual([
      "content/items/one/index.md:4:1 unknown-field",
      "content/items/one/index.md:5:11 wrong-date",
      "content/items/one/index.md:6:19 wrong-value",
      "content/items/one/index.md:6:25 unknown-feature",
      "content/items/one/index.md:8:3 unknown-part",
      "content/items/one/index.md:9:12 wrong-value",
      "content/items/two/index.md:3:10 unknown-variant",
    ]);
    const said = found.diagnostics.map(({ message }) => message);
    expect(said[4]).toBe('Found "oil-botle"; expected a part of the variant. Did you mean "oil-bottle"?');
    expect(said[5]).toContain('Did you mean "present"?');
    expect(said[6]).toContain('Did you mean "chest-a"?');
  });

  it("prints place, code and a frame for people", async () => {
    const { code, out } = await run(
      ["check"],
      writeCollection(withItem(item("parts: { oil-botle: present }"))),
    );
    expect(code).toBe(1);
    expect(out).toContain("content/items/one/index.md:4:10  error  unknown-part\n");
    expect(out).toContain("  > 4 | parts: { oil-botle: present }\n      |          ^^^^^^^^^\n");
    expect(out).toContain("1 error and 1 warning in 4 files.");
  });

  it.each([
    ["CRLF", item("parts: { sextnat: present }").replaceAll("\n", "\r\n"), ["4:10 unknown-part"]],
    ["a byte-order mark", `\uFEFF${item("parts: { sextnat: present }")}`, ["4:10 unknown-part"]],
    ["a tab", "---\ntitle: One\nvariant: chest-a\nparts:\n\tsextant: present\n---\n", ["5:1 yaml-syntax"]],
    ["empty front matter", "---\n---\nText.\n", ["2:1 missing-field", "2:1 missing-field"]],
    ["no closing line", "---\ntitle: One\nvariant: chest-a\n\nText.\n", ["1:1 front-matter-unclosed"]],
    ["no front matter", "Text.\n", ["1:1 front-matter-missing"]],
    ["an empty file", "", ["1:1 front-matter-missing"]],
    [
      "10 MB of text",
      `---\ntitle: One\nvariant: chest-a\n---\n${"word ".repeat(2_097_152)}`,
      ["1:1 file-too-large"],
    ],
    [
      "a binary file",
      new Uint8Array([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13]),
      ["3:1 not-text"],
    ],
    ["UTF-16", new Uint8Array([0xff, 0xfe, 0x2d, 0, 0x2d, 0, 0x2d, 0, 10, 0]), ["1:4 not-text"]],
    [
      "Latin 1",
      new Uint8Array(Buffer.from("---\ntitle: Caf\xe9\nvariant: chest-a\n---\n", "latin1")),
      ["2:11 not-text"],
    ],
    ["a quotation mark left open", item('set: a\nserial: "118\nstatus: offered'), ["5:9 yaml-syntax"]],
    ["a duplicate key", item("set: a\nset: b"), ["5:1 yaml-syntax"]],
    ["braces for a value, which are a map for a key", item("set: {{ name }}"), ["4:7 yaml-syntax"]],
    ["a map for a key by its other name", item("labels: [&a { x: 1 }, { *a : 2 }]"), ["4:25 yaml-syntax"]],
    ["two documents", "---js\nprocess.exit(7)\n---\n", ["1:1 front-matter-language"]],
    ["a number as text", item("title_: 1"), ["4:1 unknown-field"]],
  ])("says what is wrong with %s, and where", async (_, text, expected) => {
    const found = await check(withItem(text));
    expect(found.code).toBe(1);
    expect(placed(found)).toEqual(expected.map((each) => `content/items/one/index.md:${each}`));
  });

  it("does not unfold aliases that would fill the memory", async () => {
    const bomb = ["a: &a [x, x, x, x, x, x, x, x, x]"];
    for (const [at, name] of ["b", "c", "d", "e", "f", "g", "h", "i"].entries()) {
      const before = "abcdefgh"[at];
      bomb.push(`${name}: &${name} [${Array(9).fill(`*${before}`).join(", ")}]`);
    }
    const found = await check(withItem(item(`private:\n  ${bomb.join("\n  ")}`)));
    expect(placed(found)).toEqual(["content/items/one/index.md:6:10 yaml-aliases"]);
  });

  it("runs no code from front matter", async () => {
    const code =
      "---js\nrequire('fs').writeFileSync('ran', '');\n({ title: 'One', variant: 'chest-a' })\n---\n";
    const root = writeCollection(withItem(code));
    const { code: exit } = await run(["check", "--root", root], root);
    expect(exit).toBe(1);
    const { existsSync } = await import("node:fs");
    expect(existsSync(`${root}/ran`)).toBe(false);
  });

  it("finds references that lead nowhere, circles and doubles", async () => {
    const found = await check({
      ...smallCollection(
        "extends: chest-b\nmade: { count: 3, source: lost }\nparts: { sextant: { hazards: [merkury] } }\nlevels: [{ id: x, name: X, needs: { parts: [sextent] } }]\n",
      ),
      "schemas/reference/chest/chest-b.yaml": "name: B\nextends: chest-a\n",
      "schemas/reference/chest/chest-c.yaml":
        "name: C\nmade: { count: 3, source: lost }\nfeatures: { lock: wood, lock-plate: x }\nparts: { sextant: { hazards: [merkury] } }\nlevels: [{ id: x, name: X, needs: { parts: [sextent] } }]\n",
      "content/items/same.md":
        "---\ntitle: Same\nvariant: chest-c\nphotos: [{ file: gone.jpg, alt: Gone }]\n---\n",
      "content/items/same/index.md": "---\ntitle: Same\nvariant: chest-c\n---\n",
      "content/sightings/log.csv":
        "seen,variant,kind,present,source\n2001,chest-c,offer,sextent,gone\n2001,chest-d,offr,,\n",
    });
    expect(placed(found)).toEqual([
      "content/items/same.md:2:1 duplicate-id",
      "content/items/same.md:4:18 missing-file",
      "content/sightings/log.csv:2:20 unknown-part",
      "content/sightings/log.csv:2:28 unknown-source",
      "content/sightings/log.csv:3:6 unknown-variant",
      "content/sightings/log.csv:3:14 wrong-value",
      "content/sightings/log.csv:3:20 source-missing",
      "schemas/reference/chest/chest-a.yaml:3:27 unknown-source",
      "schemas/reference/chest/chest-a.yaml:4:31 unknown-hazard",
      "schemas/reference/chest/chest-b.yaml:2:10 circular-extends",
      "schemas/reference/chest/chest-c.yaml:2:27 unknown-source",
      "schemas/reference/chest/chest-c.yaml:3:19 wrong-value",
      "schemas/reference/chest/chest-c.yaml:3:25 unknown-feature",
      "schemas/reference/chest/chest-c.yaml:4:31 unknown-hazard",
      "schemas/reference/chest/chest-c.yaml:5:45 unknown-part",
    ]);
  });

  it("names those that extend each other round in a circle, and none that only leads to it", async () => {
    const found = await check({
      ...smallCollection("extends: chest-b\n"),
      "schemas/reference/chest/chest-b.yaml": "name: B\nextends: chest-c\n",
      "schemas/reference/chest/chest-c.yaml": "name: C\nextends: chest-b\n",
      "content/items/one.md": item(""),
    });
    expect(found.diagnostics.filter(({ code }) => code === "circular-extends")).toEqual([
      expect.objectContaining({ found: "a circle: chest-b extends chest-c extends chest-b" }),
    ]);
  });

  it("keeps dates and numbers as they were typed", async () => {
    const found = await check(
      withItem(
        item("serial: 0118\nset: 12E4\nexamined: 1931\nlabels: [{ kind: plate, text: [1850-02-30, 1:30] }]"),
      ),
    );
    expect(placed(found)).toEqual([]);
    const wrong = await check(withItem(item("title_: 1\nset: 1.50\nlabels: [{ kind: true }]")));
    expect(placed(wrong).slice(1)).toEqual([
      "content/items/one/index.md:5:6 wrong-type",
      "content/items/one/index.md:6:18 wrong-type",
    ]);
    expect(wrong.diagnostics[1]?.message).toContain("Put it in quotation marks.");
  });

  it("refuses the address that would give away a masked serial", async () => {
    const files = (publish: string) =>
      smallCollection(parts, { "content/items/no-h2118/index.md": item(`serial: H2118\n${publish}`) });
    expect(placed(await check(files("")))).toEqual(["content/items/no-h2118/index.md:4:9 serial-in-address"]);
    expect(placed(await check(files("publish: { serial: shown }")))).toEqual([]);
  });

  it.each([
    [["chekc"], 2, 'Did you mean "check"?'],
    [["check", "--format", "xml"], 2, "expected text"],
    [["check", "--rot", "x"], 2, "--rot"],
    [["check", "--root", "nowhere"], 2, "nowhere"],
    [[], 2, ""],
    [["--help"], 0, ""],
    [["check", "--help"], 0, ""],
  ])("%j exits with %d", async (args, code, said) => {
    const ran = await run(args, writeCollection(withItem(item(""))));
    expect(ran.code).toBe(code);
    expect(ran.err).toContain(said);
    expect(ran.err).not.toMatch(/^\s+at /m);
  });

  it("tells of a folder without a collection", async () => {
    const { code, out } = await run(["check"], writeCollection({ "notes.txt": "" }));
    expect(code).toBe(1);
    expect(out).toContain("content/collection.yaml:1:1  error  missing-file");
  });
});
