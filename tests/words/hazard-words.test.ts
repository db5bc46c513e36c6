import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { smallCollection, writeCollection } from "../collections/collection.ts";
import { siteFiles } from "../collections/site-files.ts";
import { repository } from "../commands/run.ts";
import { runHere } from "../commands/run-here.ts";

interface Entry {
  readonly name: string;
  readonly caution: string;
  readonly in: { readonly de: { readonly name: string; readonly caution: string } };
}

const register = Object.entries(
  parse(readFileSync(path.join(repository, "schemas/hazards.yaml"), "utf8")) as Record<string, Entry>,
);

/** Every text file of a site whose case holds one thing of each hazard, and glue, which only its own register knows. */
async function siteIn(language: string): Promise<Map<string, string>> {
  const parts = [...register.map(([id]) => id), "glue"].map((id) => `  ${id}-jar: { hazards: [${id}] }\n`);
  const root = writeCollection(
    smallCollection(`parts:\n${parts.join("")}`, {
      "content/collection.yaml": `title: T\nurl: https://example.org/\nlanguage: ${language}\n`,
      "content/items/one.md":
        "---\ntitle: One\nvariant: chest-a\nparts: { mercury-jar: present, glue-jar: present }\n---\n",
      "content/items/two.md": "---\ntitle: Two\nvariant: chest-a\n---\n",
      "schemas/hazards.yaml": `glue:
  name: Hot glue
  caution: Let it cool.
  in: { de: { name: Heißer Leim }, it: { caution: Lasciare raffreddare. } }
  source: A leaflet
`,
    }),
  );
  const out = path.join(root, "site");
  const { code, err } = await runHere(["build", "--root", root, "--out", out], root);
  expect({ code, err }).toMatchObject({ code: 0 });
  return new Map([...siteFiles(out)].map(([file, bytes]) => [file, bytes.toString("utf8")]));
}

const filesWith = (files: ReadonlyMap<string, string>, text: string) =>
  [...files].filter(([, written]) => written.includes(text)).map(([file]) => file);

describe("the cautions of the register", () => {
  it.each(["de", "de-AT"])("are German on a site in %s, and nowhere English", async (language) => {
    const files = await siteIn(language);
    const item = files.get("items/one/index.html") ?? "";
    const variant = files.get("variants/chest-a/index.html") ?? "";
    const data = JSON.parse(files.get("data/items/one.json") ?? "{}");
    for (const [
      id,
      {
        caution,
        in: { de },
      },
    ] of register) {
      expect(filesWith(files, caution), id).toEqual([]);
      expect(variant).toContain(de.caution);
      expect(variant).toContain(de.name);
      expect(item).toContain(de.caution);
      expect(data.hazards).toContainEqual(
        expect.objectContaining({ id, name: de.name, caution: de.caution }),
      );
    }
    // The choices of the finder.
    expect(files.get("items/index.html")).toContain('<option value="mercury">Quecksilber</option>');
    // What a register does not say in German stays as it is.
    expect(item).toContain("Heißer Leim");
    expect(item).toContain("Let it cool.");
  });

  it.each(["en", "fr"])("are as the register has them on a site in %s", async (language) => {
    const files = await siteIn(language);
    for (const [
      id,
      {
        caution,
        in: { de },
      },
    ] of register) {
      expect(filesWith(files, de.caution), id).toEqual([]);
      expect(files.get("variants/chest-a/index.html")?.replaceAll("’", "'")).toContain(caution);
    }
    expect(files.get("items/one/index.html")).toContain("Hot glue");
  });
});
