import { mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import sharp from "sharp";
import { beforeAll, describe, expect, it } from "vitest";
import { typefaces } from "../../templates/typefaces.ts";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";
import { siteFiles } from "../collections/site-files.ts";
import { repository } from "../commands/run.ts";
import { runHere } from "../commands/run-here.ts";

const own = readFileSync(
  path.join(repository, "node_modules/@fontsource/alegreya/files/alegreya-latin-400-normal.woff2"),
);
const sign = (format: "png" | "webp", colour: string) =>
  sharp({ create: { width: 600, height: 300, channels: 4, background: colour } })
    .composite([
      {
        input: { create: { width: 300, height: 300, channels: 4, background: "#12345600" } },
        left: 0,
        top: 0,
        blend: "source",
      },
    ])
    .toFormat(format)
    .withExif({ IFD0: { Copyright: "somebody" } })
    .toBuffer();

const variant = "features: { lock: iron, lid: flat }\nparts: { key: { name: Key, standing: core } }\n";
const collection = (theme: string, more: Record<string, string | Uint8Array> = {}) =>
  writeCollection({
    ...smallCollection(variant),
    "content/collection.yaml": `title: Chests\nurl: https://example.org/\ntheme:\n${theme}`,
    "content/items/one.md": item("parts: { key: present }"),
    ...more,
  });

async function built(root: string): Promise<Map<string, Buffer>> {
  const out = path.join(mkdtempSync(path.join(tmpdir(), "fittedcase-theme-")), "site");
  const { code, err, out: told } = await runHere(["build", "--root", root, "--out", out], root);
  expect(code, err + told).toBe(0);
  return siteFiles(out);
}

describe("a collection with a look of its own", () => {
  let site: Map<string, Buffer>;
  let page: string;
  let style: string;

  beforeAll(async () => {
    const theme = `  paper: "#ffffff"
  accent-dark: "#ffc08a"
  reading: { regular: own.woff2 }
  data: source-sans
  logo: sign.png
  logo-dark: night.webp
`;
    site = await built(
      collection(theme, {
        "content/theme/own.woff2": own,
        "content/theme/sign.png": await sign("png", "#7a2e1f"),
        "content/theme/night.webp": await sign("webp", "#ffeedd"),
      }),
    );
    page = site.get("items/one/index.html")?.toString() ?? "";
    style = [...site].find(([file]) => file.startsWith("assets/style."))?.[1].toString() ?? "";
  });

  it("has its colours on the screen, and neither on paper nor where the reader forces others", () => {
    expect(style).toMatch(
      /@media screen and \(forced-colors: none\) and \(prefers-color-scheme: light\) \{ :root \{ [^}]*--paper: #ffffff;[^}]*--ink: #1a2129;/,
    );
    expect(style).toMatch(/prefers-color-scheme: dark\) \{ :root \{[^}]*--accent: #ffc08a;/);
  });

  it("has its type, fetched at once, and no type of ours that it replaces", () => {
    const preloaded = [
      ...page.matchAll(/rel="preload" as="font" type="font\/woff2" href="\.\.\/\.\.\/([^"]+)"/g),
    ].map((match) => match[1] ?? "");
    expect(preloaded).toHaveLength(4);
    expect(site.get(preloaded[0] ?? "")?.equals(own)).toBe(true);
    expect(preloaded[1]).toBe("assets/fonts/source-sans-3-latin-400-normal.woff2");
    expect(preloaded[3], "of the drawings").toBe(
      "assets/fonts/ibm-plex-sans-condensed-latin-400-normal.woff2",
    );
    for (const file of preloaded) expect(site.has(file), file).toBe(true);
    expect(style).toContain('--font-serif: "Own reading"');
    expect(style).toContain('--font-sans: "Source Sans 3"');
    for (const [, address] of style.matchAll(/url\("(fonts\/[^"]+)"\)/g))
      expect(site.has(`assets/${address}`), address).toBe(true);
  });

  it("has its sign at the head of the page, see-through and without metadata", async () => {
    const [, dark, light] =
      /srcset="\.\.\/\.\.\/([^"]+)"><img src="\.\.\/\.\.\/([^"]+)" width="56" height="28" alt=""/.exec(
        page,
      ) ?? [];
    const bytes = site.get(light ?? "");
    expect(site.has(dark ?? "")).toBe(true);
    const { width, height, exif, hasAlpha } = await sharp(bytes).metadata();
    expect([width, height, exif, hasAlpha]).toEqual([480, 240, undefined, true]);
    // What was hidden below full transparency is gone.
    const { data } = await sharp(bytes).raw().toBuffer({ resolveWithObject: true });
    expect([...data.subarray(0, 4)]).toEqual([0, 0, 0, 0]);
  });
});

describe("what a theme cannot have", () => {
  it("is a drawing as SVG", async () => {
    const root = collection("  logo: sign.svg\n", { "content/theme/sign.svg": "<svg/>" });
    const { code, out } = await runHere(["check", "--root", root], root);
    expect(code).toBe(1);
    expect(out).toContain("content/collection.yaml:4:9");
  });

  it("is an SVG that calls itself something else, nor a file that is not there", async () => {
    const root = collection("  logo: sign.png\n", {
      "content/theme/sign.png": '<svg xmlns="http://www.w3.org/2000/svg"/>',
    });
    const { code, out, err } = await runHere(["build", "--root", root], root);
    expect(code).toBe(1);
    expect(out + err).toContain("content/collection.yaml:4:9  error  unreadable-photograph");
    const gone = collection("  reading: { regular: gone.woff2 }\n");
    const refused = await runHere(["build", "--root", gone], gone);
    expect(refused.code).toBe(1);
    expect(refused.out + refused.err).toContain("unreadable-typeface");
  });

  it("is a family that nobody has", async () => {
    const root = collection("  reading: source-serf\n");
    const { code, out } = await runHere(["check", "--root", root], root);
    expect(code).toBe(1);
    expect(out).toContain("source-serif");
  });
});

describe("the families that come along", () => {
  it("are all there", () => {
    const named = Object.values(typefaces).flatMap(({ files }) => files.map(({ from }) => from));
    for (const from of named)
      expect(readFileSync(path.join(repository, "node_modules", from)).toString("latin1", 0, 4)).toBe("wOF2");
  });
});

describe("a template of the collection's own", () => {
  it("stands in for ours, one file at a time", async () => {
    const site = await built(
      writeCollection({
        ...smallCollection(variant),
        "content/items/one.md": item("parts: { key: present }"),
        "templates/parts/colophon.js":
          'export default (page, site) => site.markup("<footer class=ours>" + site.settings.title + "</footer>");\n',
        "templates/styles/20-ink.css": ":root { --ink: #010203; }\n",
      }),
    );
    const page = site.get("items/one/index.html")?.toString() ?? "";
    expect(page).toContain("<footer class=ours>A test collection</footer>");
    expect(page).toContain('class="running-head"');
    const style = [...site].find(([file]) => file.startsWith("assets/style."))?.[1].toString() ?? "";
    expect(style).toMatch(/--ink: ?#010203/);
    expect(style).not.toContain("#1a2129");
    expect(style).toContain(".running-head");
  });
});
