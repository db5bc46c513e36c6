import { readFileSync } from "node:fs";
import path from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { everyFile } from "../../shared/site/eleventy/every-file.ts";
import { fileOf } from "../../shared/site/files/site-file.ts";
import { renderPage } from "../../templates/render-page.ts";
import { type Files, writeCollection, writeFiles } from "../collections/collection.ts";
import { siteFiles } from "../collections/site-files.ts";
import { type Ran, run } from "./run.ts";

/** More items than one thread is given alone, in two families that know nothing of each other. */
const families = ["lamps", "levels"] as const;
const count = 210;

const item = (family: string, number: number): string =>
  `---\ntitle: Set ${number}\nvariant: ${family}-a\nserial: ${number + 1000}\nparts: { case: present, glass: ${number % 3 === 0 ? "absent" : "present"} }\n---\n\nOne of many.\n`;

function manyItems(): Files {
  const files: Record<string, string> = {
    "content/collection.yaml": "title: Many\nurl: https://example.org/many/\n",
  };
  for (const family of families) {
    files[`schemas/reference/${family}/family.yaml`] = `name: The ${family}\n`;
    files[`schemas/reference/${family}/${family}-a.yaml`] =
      "name: Pattern A\nparts:\n  case: { name: Case, standing: core }\n  glass: { name: Glass }\n";
    for (let number = 0; number < count; number++) {
      files[`content/items/${family}-${number}.md`] = item(family, number);
    }
  }
  files["content/sightings/log.csv"] = [
    "seen,variant,kind,serial",
    ...families.flatMap((family) => ["2001", "2004-05"].map((seen) => `${seen},${family}-a,offer,1500`)),
  ].join("\n");
  return files;
}

describe("a collection of many items, which several threads build", () => {
  let root: string;
  let site: Map<string, Buffer>;
  let built: Ran;

  beforeAll(async () => {
    root = writeCollection(manyItems());
    built = await run(["build", "--root", root], root);
    site = siteFiles(path.join(root, "_site"));
  }, 120_000);

  it("says how many, in one line", () => {
    expect(built.err).toBe("");
    expect(built.code).toBe(0);
    expect(built.out).toContain(`${2 * count} items, `);
  });

  it("has the bytes that one thread makes", { timeout: 60_000 }, async () => {
    const made = await everyFile(root, "public");
    if ("problems" in made) throw new Error(JSON.stringify(made.problems));
    const differing: string[] = [];
    for (const { files, site: around } of made.parts) {
      for (const file of files) {
        const own =
          file.kind === "page"
            ? renderPage(file.make(), around)
            : file.kind === "text"
              ? file.text
              : file.kind === "bytes"
                ? file.bytes
                : readFileSync(file.from);
        if (!site.get(fileOf(file.address))?.equals(Buffer.from(own))) differing.push(file.address);
      }
    }
    expect(differing).toEqual([]);
  });

  it("is told of its errors with their places, and leaves the site that stands", {
    timeout: 60_000,
  }, async () => {
    writeFiles(root, { "content/items/levels-7.md": item("levels", 7).replace("glass:", "glas:") });
    const refused = await run(["build", "--root", root], root);
    expect(refused.code).toBe(1);
    // Four hundred warnings before it: the error is what is read last.
    expect(refused.err).toMatch(/content\/items\/levels-7\.md:5:25 {2}error(?!.*warning {2})/s);
    expect(refused.err).toContain("Nothing was written.");
    expect(siteFiles(path.join(root, "_site")).get("items/levels-7/index.html")).toEqual(
      site.get("items/levels-7/index.html"),
    );
  });

  it("may have a log with many more sightings than items", { timeout: 240_000 }, async () => {
    const rows = Array.from({ length: 60_000 }, (_, at) => `2001,lamps-a,offer,${at + 2000}`);
    const log = ["seen,variant,kind,serial", ...rows].join("\n");
    const many = writeCollection({ ...manyItems(), "content/sightings/log.csv": log });
    const { code, err } = await run(["build", "--root", many], many);
    expect(err).toBe("");
    expect(code).toBe(0);
  });
});
