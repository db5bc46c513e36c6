import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { buildSite } from "../../shared/site/build/build-site.ts";
import { item, smallCollection, writeCollection, writeFiles } from "../collections/collection.ts";
import { differences, siteFiles } from "../collections/site-files.ts";

const article = "content/articles/locks.md";
const text = "---\ntitle: Locks\nauthors: [I. Venn]\nupdated: 2026-03-20\n---\nOf locks.\n";

/** The pages, other than those about articles, that lead to the list of them. */
const leading = (site: string): string[] =>
  [...siteFiles(site)].flatMap(([file, bytes]) =>
    file.endsWith(".html") &&
    !file.startsWith("articles/") &&
    /href="[^"]*\barticles\/"/.test(bytes.toString())
      ? [file]
      : [],
  );

describe("a collection without articles", () => {
  it("has no page that leads to them, from the day of the last to that of the first", async () => {
    const root = writeCollection(
      smallCollection("parts: { lamp: { standing: issued } }\n", {
        "content/items/chest/index.md": item("parts: { lamp: present }"),
      }),
    );
    const scratch = mkdtempSync(path.join(tmpdir(), "fittedcase-articles-"));
    const [out, anew] = [path.join(scratch, "site"), path.join(scratch, "anew")];
    await buildSite(root, out, "public");
    expect(leading(out)).toEqual([]);

    writeFiles(root, { [article]: text });
    await buildSite(root, out, "public");
    await buildSite(root, anew, "public");
    expect(leading(out)).toContain("items/chest/index.html");
    expect(differences(siteFiles(anew), siteFiles(out))).toEqual([]);

    rmSync(path.join(root, article));
    await buildSite(root, out, "public");
    expect(leading(out)).toEqual([]);
  });
});
