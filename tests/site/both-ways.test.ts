import { mkdirSync, mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import Eleventy from "@11ty/eleventy";
import { describe, expect, it } from "vitest";
import type { Page } from "../../shared/pages/site-pages.ts";
import type { Audience } from "../../shared/publication/published.ts";
import { buildSite } from "../../shared/site/build/build-site.ts";
import { everyFile } from "../../shared/site/eleventy/every-file.ts";
import fittedcase from "../../shared/site/plugin.ts";
import { writeCollection } from "../collections/collection.ts";
import { germanCollection } from "../collections/german-collection.ts";
import { differences, siteFiles } from "../collections/site-files.ts";
import { webmFilm } from "../images/handmade-recordings.ts";

/** A kind that is missing here does not compile. */
const everyKind: Readonly<Record<Page["kind"], true>> = {
  home: true,
  catalogue: true,
  item: true,
  card: true,
  comparisons: true,
  comparison: true,
  families: true,
  family: true,
  variant: true,
  articles: true,
  article: true,
  sources: true,
  "sightings-index": true,
  sightings: true,
  wants: true,
  methods: true,
  fields: true,
  missing: true,
};

async function collection(): Promise<string> {
  const files = germanCollection();
  return writeCollection({
    ...files,
    "content/collection.yaml": `${files["content/collection.yaml"]}field-reference: true\n`,
    "schemas/reference/kiste/family.yaml": "name: Kisten\n",
    "schemas/reference/kiste/kiste-1.yaml": "name: Kiste\nparts: { schloss: { name: Schloss } }\n",
    "content/items/kiste/index.md":
      "---\ntitle: Kiste mit {% raw %} und {{ Klammern }}\nvariant: kiste-1\nparts: { schloss: present }\nvideo: { src: gang.webm, moments: [{ part: schloss, at: '0:04' }] }\n---\n{{ Text }} <%= x %>\n",
    "content/items/kiste/gang.webm": await webmFilm({ seconds: 10 }),
  });
}

/** As in somebody's own Eleventy site that has nothing else, and asks for no layout: Eleventy renders and writes everything. */
async function throughEleventy(root: string, audience: Audience): Promise<string> {
  const host = mkdtempSync(path.join(tmpdir(), "fittedcase-host-"));
  mkdirSync(path.join(host, "source"));
  const cwd = process.cwd();
  process.chdir(host);
  try {
    const eleventy = new Eleventy("source", "_site", {
      configPath: "",
      quietMode: true,
      config: (eleventyConfig) => fittedcase(eleventyConfig, { root, audience }),
    });
    eleventy.disableLogger();
    await eleventy.write();
  } finally {
    process.chdir(cwd);
  }
  return path.join(host, "_site");
}

describe("the command, by way of its own writer, and the plugin, by way of Eleventy", () => {
  it.each(["public", "private"] as const)("give the same files with the same bytes, %s", async (audience) => {
    const root = await collection();
    const site = await everyFile(root, audience);
    if ("problems" in site) throw new Error(JSON.stringify(site.problems));
    const kinds = site.parts.flatMap(({ files }) =>
      [...files].flatMap((file) => (file.kind === "page" ? [file.make().kind] : [])),
    );
    expect(new Set(kinds)).toEqual(new Set(Object.keys(everyKind)));

    const out = path.join(mkdtempSync(path.join(tmpdir(), "fittedcase-command-")), "site");
    expect((await buildSite(root, out, audience)).written).not.toBeNull();
    const [byCommand, byPlugin] = [siteFiles(out), siteFiles(await throughEleventy(root, audience))];
    expect([...byPlugin.keys()].sort()).toEqual([...byCommand.keys()].sort());
    expect(differences(byCommand, byPlugin)).toEqual([]);
    expect(byCommand.size).toBeGreaterThan(100);
  });
});
