import { createHash } from "node:crypto";
import { existsSync, mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";
import { runHere } from "./run-here.ts";

const parts = "parts:\n  sextant: { standing: core }\n";
const scratch = () => mkdtempSync(path.join(tmpdir(), "fittedcase-out-"));
const picture = await sharp({ create: { width: 40, height: 30, channels: 3, background: "#a52" } })
  .png()
  .toBuffer();
const family = "schemas/reference/chest/family.yaml";

const small = smallCollection(parts);
const renamed = {
  ...small,
  [family]: `${small[family]}formerly: [coffer, kist]\n`,
  "schemas/reference/chest/chest-a.yaml": `name: Chest A\nformerly: [chest-one]\n${parts}`,
  // What is taken over by a variant that extends it is not the address that it had.
  "schemas/reference/chest/chest-b.yaml": "name: Chest B\nextends: chest-a\n",
  "content/items/one/index.md": item(
    "formerly: [zuno, uno]\nupdated: 2024-05-05\nphotos: [{ file: a.png, alt: Open }]\nparts: { sextant: present }",
  ),
  "content/items/one/a.png": picture,
  "content/items/two/index.md": item("formerly: [duo]\nparts: { sextant: absent }"),
  // As many as need a second page.
  "content/sightings/log.csv": `seen,variant,kind\n${"2001,chest-a,record\n".repeat(101)}`,
  "content/articles/essay.md": "---\ntitle: Essay\nformerly: [draft]\n---\nText.\n",
};

describe("a former id", async () => {
  const out = path.join(scratch(), "site");
  const built = await runHere(["build", "--root", writeCollection(renamed), "--out", out], "/");
  const read = (file: string) => readFileSync(path.join(out, file), "utf8");

  it("is no mistake", () => {
    expect(built.code).toBe(0);
  });

  it.each([
    ["items/uno/", "items/one/"],
    ["items/zuno/", "items/one/"],
    ["items/uno/card/", "items/one/card/"],
    ["compare/two/uno/", "compare/one/two/"],
    ["compare/duo/one/", "compare/one/two/"],
    ["compare/duo/zuno/", "compare/one/two/"],
    ["variants/chest-one/", "variants/chest-a/"],
    ["sightings/chest-one/", "sightings/chest-a/"],
    ["sightings/chest-one/page/2/", "sightings/chest-a/page/2/"],
    ["items/by/variant/chest-one/", "items/by/variant/chest-a/"],
    ["families/coffer/", "families/chest/"],
    ["families/kist/", "families/chest/"],
    ["items/by/family/kist/", "items/by/family/chest/"],
    ["articles/draft/", "articles/essay/"],
  ])("at %s leads to %s, without a script as well", (former, present) => {
    const page = read(`${former}index.html`);
    const to = `${"../".repeat(former.split("/").length - 1)}${present}`;
    expect(page).toContain(`<noscript><meta http-equiv="refresh" content="0; url=${to}"></noscript>`);
    expect(page).toContain(`<a href="${to}">`);
    expect(existsSync(path.join(out, present, "index.html"))).toBe(true);
    const [, script = ""] = /<script>([^<]+)<\/script>/.exec(page) ?? [];
    expect(script).toContain("location.hash");
    // Content Security Policy Level 3, 6.7.2.3: an inline script runs where its own digest is listed.
    const digest = createHash("sha256").update(script).digest("base64");
    expect(page).toMatch(new RegExp(`script-src [^;]*'sha256-${digest.replaceAll("+", "\\+")}'`));
  });

  it.each([
    ["data/items/uno.json", "data/items/one.json"],
    ["iiif/uno/manifest.json", "iiif/one/manifest.json"],
    ["data/variants/chest-one.json", "data/variants/chest-a.json"],
    ["data/families/coffer.json", "data/families/chest.json"],
    ["data/articles/draft.json", "data/articles/essay.json"],
  ])("gives %s the bytes of %s", (former, present) => {
    expect(read(former)).toBe(read(present));
  });

  it("is no id of what extends the variant that had it", () => {
    expect(JSON.parse(read("data/variants/chest-b.json"))).toMatchObject({ formerly: [] });
  });

  // RFC 4287, 4.2.6: an entry that is relocated or published again keeps its id.
  it("stays that of its entry in the feed, the oldest first", () => {
    const feed = read("feed.xml");
    expect(feed).toContain("<id>https://example.org/items/zuno/</id>");
    expect(feed).toContain('<link rel="alternate" href="https://example.org/items/one/"/>');
  });

  it("is in no list of pages", () => {
    expect(read("sitemap.xml")).not.toMatch(/uno|duo|chest-one|coffer|draft/);
  });
});

describe("fittedcase check", () => {
  const told = async (more: Record<string, string>) =>
    (await runHere(["check"], writeCollection({ ...renamed, ...more }))).out;

  it("finds no dead link where a former address leads on", async () => {
    const links = [
      "../../items/uno/card/",
      "../../data/items/uno.json",
      "../../iiif/uno/manifest.json",
      "../../variants/chest-one/",
      "../../sightings/chest-one/",
      "../../items/by/variant/chest-one/",
      "../../families/coffer/",
      "../../data/families/kist.json",
    ];
    const text = links.map((link) => `[there](${link})`).join("\n\n");
    expect(await told({ "content/articles/more.md": `---\ntitle: More\n---\n${text}\n` })).not.toContain(
      "dead-link",
    );
  });

  const box = {
    "schemas/reference/box/family.yaml": "name: Boxes\nfeatures: {}\n",
    "schemas/reference/box/box-a.yaml": `name: Box A\n${parts}`,
  };
  it.each([
    [
      "an item's that is another's",
      { "content/items/uno/index.md": item("").replace("chest-a", "box-a") },
      '"uno", which leads to the item "uno"',
    ],
    [
      "an item's that another had, too",
      { "content/items/new/index.md": item("formerly: [uno]").replace("chest-a", "box-a") },
      '"uno", which leads to "new"',
    ],
    [
      "a variant's that is another's",
      { "schemas/reference/box/chest-one.yaml": `name: One\n${parts}` },
      '"chest-one", which leads to the variant "chest-one"',
    ],
    [
      "a variant's that another had, too",
      { "schemas/reference/box/box-a.yaml": `name: Box A\nformerly: [chest-one]\n${parts}` },
      '"chest-one", which leads to "',
    ],
    [
      "a family's that is another's",
      { "schemas/reference/coffer/family.yaml": "name: Coffers\nfeatures: {}\n" },
      '"coffer", which leads to the family "coffer"',
    ],
    [
      "a family's that another had, too",
      { "schemas/reference/box/family.yaml": "name: Boxes\nfeatures: {}\nformerly: [kist]\n" },
      '"kist", which leads to "',
    ],
  ])("refuses %s, across families as within one, and so does build", async (_, more, found) => {
    const root = writeCollection({ ...renamed, ...box, ...more });
    const checked = await runHere(["check"], root);
    expect(checked.out).toContain("duplicate-id");
    expect(checked.out).toContain(found);
    expect(checked.out).toContain("1 error");
    const built = await runHere(["build", "--out", path.join(scratch(), "site")], root);
    expect(built.code).toBe(1);
    expect(built.err).toContain(found);
  });

  const now = (id: string) => `It is now called "${id}".`;
  it.each<[string, Record<string, string>, string, string]>([
    [
      "an item",
      { "content/items/new/index.md": item("").replace("chest-a", "chest-one") },
      "unknown-variant",
      "chest-a",
    ],
    [
      "a row of the log",
      { "content/sightings/log.csv": "seen,variant,kind\n2001,chest-one,offer\n" },
      "unknown-variant",
      "chest-a",
    ],
    [
      "a variant that extends it",
      { "schemas/reference/chest/chest-b.yaml": "name: Chest B\nextends: chest-one\n" },
      "unknown-variant",
      "chest-a",
    ],
    [
      "a figure of it",
      { "content/articles/new.md": "---\ntitle: N\n---\n<figure:variants/chest-one/sightings>\n" },
      "unknown-figure",
      "chest-a",
    ],
    [
      "a figure of an item",
      { "content/articles/new.md": "---\ntitle: N\n---\n<figure:items/uno/documentedYears>\n" },
      "unknown-figure",
      "one",
    ],
    [
      "what a text takes for granted",
      { "content/articles/new.md": "---\ntitle: N\n---\n```expect\nitems/uno/verdict is consistent\n```\n" },
      "unknown-figure",
      "one",
    ],
    [
      "a drawing",
      { "content/articles/new.md": "---\ntitle: N\n---\n<plot:items/duo/case-plan>\n" },
      "unknown-plot",
      "two",
    ],
    [
      "a table of variants",
      { "content/articles/new.md": "---\ntitle: N\n---\n<table:variants/coffer>\n" },
      "unknown-table",
      "chest",
    ],
    [
      "a column of one",
      { "content/articles/new.md": "---\ntitle: N\n---\n<table:variants/chest?variant=chest-one,chest-b>\n" },
      "unknown-table",
      "chest-a",
    ],
    [
      "a condition of a table",
      { "content/articles/new.md": "---\ntitle: N\n---\n<table:items?variant=chest-one>\n" },
      "unknown-table",
      "chest-a",
    ],
  ])(
    "says what is called otherwise now, where %s still names it, and --fix writes that",
    async (_, more, code, id) => {
      const root = writeCollection({ ...renamed, ...more });
      const { out } = await runHere(["check"], root);
      expect(out).toContain(code);
      expect(out).toContain(now(id));
      expect(out).toContain("1 error");
      const mended = await runHere(["check", "--fix"], root);
      expect(mended.out).toContain(`with "${id}".`);
      expect(mended.code).toBe(0);
    },
  );
});

it("a former address of the owner's own site asks search engines to stay out, as every page of it does", async () => {
  const out = path.join(scratch(), "own");
  await runHere(["build", "--private", "--root", writeCollection(renamed), "--out", out], "/");
  for (const file of ["items/uno/index.html", "families/kist/index.html", "articles/draft/index.html"]) {
    const page = readFileSync(path.join(out, file), "utf8");
    expect(page).toContain('<meta name="robots" content="noindex">');
    expect(page).not.toContain("canonical");
  }
});
