import {
  appendFileSync,
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { buildSite } from "../../shared/site/build/build-site.ts";
import { randomFrom } from "../benchmarks/generate/random.ts";
import { generateCollection } from "../benchmarks/generate-collection.ts";
import { item, smallCollection, writeFiles } from "../collections/collection.ts";
import { differences, siteFiles } from "../collections/site-files.ts";
import { generated, pictures } from "./generated.ts";
import { randomEdit } from "./random-edits.ts";

/** As many as somebody asks for: EDITS=500, and SEED=7 for other ones. */
const edits = Number(process.env.EDITS ?? 25);
const seed = Number(process.env.SEED ?? 1);

/** When each file of a site was written, and which it is: a file that is only linked keeps both. */
const stampsOf = (site: string): Map<string, string> =>
  new Map(
    [...siteFiles(site).keys()]
      .filter((file) => statSync(path.join(site, file), { throwIfNoEntry: false }))
      .map((file) => {
        const { ino, mtimeMs } = statSync(path.join(site, file));
        return [file, `${ino} ${mtimeMs}`];
      }),
  );

describe("a site that is built on the one that stands", () => {
  it(
    `is the same as one built anew, byte for byte, after each of ${edits} edits`,
    async () => {
      const root = generated();
      const scratch = mkdtempSync(path.join(tmpdir(), "fittedcase-edited-"));
      const out = path.join(scratch, "site");
      const random = randomFrom(seed);
      await buildSite(root, out, "public");
      const done: string[] = [];
      const shown = await pictures();
      const sound = path.join(scratch, "sound");
      const remember = () => {
        rmSync(sound, { recursive: true, force: true });
        cpSync(root, sound, { recursive: true, filter: (file) => !file.includes(".cache") });
      };
      remember();
      let built = 0;
      let spared = 0;
      for (let step = 0; step < edits; step++) {
        done.push(randomEdit(root, random, step, shown));
        const fresh = path.join(scratch, `fresh-${step}`);
        const before = siteFiles(out);
        const [onStanding, anew] = [
          await buildSite(root, out, "public"),
          await buildSite(root, fresh, "public"),
        ];
        const told = `${step}: ${done.slice(-3).join("; ")}`;
        expect(onStanding.written === null, told).toBe(anew.written === null);
        if (anew.written) {
          expect(differences(siteFiles(out), siteFiles(fresh)), told).toEqual([]);
          // The two have files in common, and nothing was written into those of the site that stood.
          const spare = path.join(scratch, ".site.builds/spare");
          if (existsSync(spare) && (onStanding.written?.rewritten ?? 0) > 0) {
            expect(differences(siteFiles(spare), before), told).toEqual([]);
            spared++;
          }
          expect(onStanding.written?.warnings, told).toBe(anew.written.warnings);
          remember();
          built++;
        } else {
          // Nothing is written of what has errors; and the mistake is taken back.
          expect(differences(siteFiles(out), before), told).toEqual([]);
          for (const folder of ["content", "schemas", "templates"])
            rmSync(path.join(root, folder), { recursive: true, force: true });
          cpSync(sound, root, { recursive: true });
        }
        rmSync(fresh, { recursive: true, force: true });
        rmSync(path.join(scratch, `.fresh-${step}.builds`), { recursive: true, force: true });
      }
      // Most edits are no mistakes.
      expect(built).toBeGreaterThan(edits / 2);
      expect(spared).toBeGreaterThan(edits / 4);
    },
    edits * 20_000 + 60_000,
  );

  it("does not take what a build had made, before it failed, for what stands", async () => {
    const root = mkdtempSync(path.join(tmpdir(), "fittedcase-edits-"));
    generateCollection({ folder: root, items: 60, itemsInVariant: 3, seed: 5 });
    const scratch = mkdtempSync(path.join(tmpdir(), "fittedcase-edited-"));
    const out = path.join(scratch, "site");
    expect((await buildSite(root, out, "public")).written).not.toBeNull();
    const items = path.join(root, "content/items");
    const inFamily = (family: number): string => {
      const variants = readdirSync(path.join(root, `schemas/reference/family-${family}`));
      const found = readdirSync(items)
        .map((id) => path.join(items, id, "index.md"))
        .find((file) =>
          variants.includes(`${/^variant: (.*)$/m.exec(readFileSync(file, "utf8"))?.[1]}.yaml`),
        );
      if (found === undefined) throw new Error("Found no item of that family.");
      return found;
    };
    const [first, last] = [inFamily(1), inFamily(readdirSync(path.join(root, "schemas/reference")).length)];
    const sound = readFileSync(last, "utf8");
    writeFileSync(first, `${readFileSync(first, "utf8")}One more word.\n`);
    writeFileSync(last, sound.replace(/^title:/m, "titel:"));
    expect((await buildSite(root, out, "public")).written).toBeNull();
    writeFileSync(last, sound);
    expect((await buildSite(root, out, "public")).written).not.toBeNull();
    await buildSite(root, path.join(scratch, "fresh"), "public");
    expect(differences(siteFiles(out), siteFiles(path.join(scratch, "fresh")))).toEqual([]);
  });

  it("writes no file where nothing has changed, and none but those that an edit changes", async () => {
    const root = generated();
    const out = path.join(mkdtempSync(path.join(tmpdir(), "fittedcase-edited-")), "site");
    const first = await buildSite(root, out, "public");
    const before = stampsOf(out);
    const again = await buildSite(root, out, "public");
    expect(again.written).toMatchObject({ rewritten: 0, unchanged: first.written?.rewritten });
    expect(stampsOf(out)).toEqual(before);

    const contents = siteFiles(out);
    const [item = ""] = readdirSync(path.join(root, "content/items"));
    const file = `content/items/${item}/index.md`;
    writeFiles(root, { [file]: `${readFileSync(path.join(root, file), "utf8")}One more word.\n` });
    const edited = await buildSite(root, out, "public");
    const after = stampsOf(out);
    const rewritten = [...after].filter(([name, stamp]) => before.get(name) !== stamp).map(([name]) => name);
    const changed = differences(siteFiles(out), contents).filter((name) => after.has(name));
    expect(rewritten.sort()).toEqual(changed.sort());
    expect(edited.written?.rewritten).toBe(rewritten.length);
    expect(rewritten).toContain(`items/${item}/index.html`);
    expect(rewritten.length).toBeLessThan(20);
  });

  /** A site that was made from nothing, and its spare. */
  const standing = async () => {
    const root = generated();
    const scratch = mkdtempSync(path.join(tmpdir(), "fittedcase-edited-"));
    const out = path.join(scratch, "site");
    await buildSite(root, out, "public");
    const items = readdirSync(path.join(root, "content/items"));
    const edit = (id = items[0]) =>
      appendFileSync(path.join(root, `content/items/${id}/index.md`), "One more word.\n");
    return { root, scratch, out, items, edit, spare: path.join(scratch, ".site.builds/spare") };
  };

  it("is made in a twin of the first, which has the very same files", async () => {
    const { root, out, edit, spare } = await standing();
    expect(stampsOf(spare)).toEqual(stampsOf(out));
    const { ino } = statSync(spare);
    edit();
    await buildSite(root, out, "public");
    expect(statSync(out).ino).toBe(ino);
  });

  it("is as it should be where somebody has been at the spare", async () => {
    const { root, scratch, out, items, edit, spare } = await standing();
    const page = (id = "") => path.join(spare, "items", id, "index.html");
    const exchanged = (file: string) => {
      rmSync(file);
      writeFileSync(file, "Another page.");
    };
    const ways: Readonly<Record<string, () => void>> = {
      "took a page away": () => rmSync(page(items[1])),
      "took a folder away": () => rmSync(path.dirname(page(items[1])), { recursive: true }),
      "took all away": () => rmSync(spare, { recursive: true }),
      "put a page in the place of another": () => exchanged(page(items[1])),
      "put something in the place of the home page": () => exchanged(path.join(spare, "index.html")),
      "added a page": () => writeFileSync(path.join(spare, "items/more.html"), "One more page."),
      "added a folder": () => writeFiles(spare, { "more/index.html": "One more page." }),
      "wrote into the page that was edited last": () => writeFileSync(page(items[0]), "Another page."),
    };
    for (const [name, way] of Object.entries(ways)) {
      edit();
      await buildSite(root, out, "public");
      expect(existsSync(spare), name).toBe(true);
      way();
      edit();
      await buildSite(root, out, "public");
      const fresh = path.join(scratch, "fresh");
      await buildSite(root, fresh, "public");
      expect(differences(siteFiles(out), siteFiles(fresh)), name).toEqual([]);
    }
  });

  it("is made anew where somebody, or a disk that lost its power, has been at the one that stands", async () => {
    const { root, out, items } = await standing();
    const fresh = siteFiles(out);
    const page = path.join(out, `items/${items[0]}/index.html`);
    const sitemap = path.join(out, "sitemap.xml");
    const ways: Readonly<Record<string, () => void>> = {
      "emptied a file": () => writeFileSync(sitemap, ""),
      "wrote something else of the same length": () => writeFileSync(page, readFileSync(page).fill("x")),
      "added a line": () => appendFileSync(page, "One more line."),
      "took a file away": () => rmSync(sitemap),
      "put a file in the place of another": () => {
        rmSync(page);
        writeFileSync(page, "Another page.");
      },
    };
    for (const [name, way] of Object.entries(ways)) {
      way();
      await buildSite(root, out, "public");
      expect(differences(siteFiles(out), fresh), name).toEqual([]);
    }
  });

  it("is not taken for that of another collection, which stood there in between", async () => {
    const [one, other] = [generated(), generated()];
    const out = path.join(mkdtempSync(path.join(tmpdir(), "fittedcase-edited-")), "site");
    await buildSite(one, out, "public");
    const before = siteFiles(out);
    const [id = ""] = readdirSync(path.join(other, "content/items"));
    // As often as it takes to have a folder in the place of the first.
    for (const word of ["One", "Two"]) {
      appendFileSync(path.join(other, `content/items/${id}/index.md`), `${word} more.\n`);
      await buildSite(other, out, "public");
    }
    await buildSite(one, out, "public");
    expect(differences(siteFiles(out), before)).toEqual([]);
  });

  it.each([
    ["in a folder of its item's folder", "content/items/own/index.md", "near/view.png"],
    ["beside an item that is a file of its own", "content/items/own.md", "own-view.png"],
    ["in a folder beside such an item", "content/items/own.md", "own/view.png"],
    ["deep below such an item, by a name that YAML escapes", "content/items/own.md", "views/of/vi\\x65w.png"],
  ])("has the photograph that was put in the place of another, %s", async (_, file, name) => {
    const root = mkdtempSync(path.join(tmpdir(), "fittedcase-edits-"));
    const [one, other] = await pictures();
    const picture = path.posix.join(path.posix.dirname(file), name.replace("\\x65", "e"));
    writeFiles(root, {
      ...smallCollection("parts: { sextant: { standing: core } }\n"),
      [file]: item(`photos: [{ file: "${name}", alt: The case }]`),
      [picture]: one ?? "",
    });
    const scratch = mkdtempSync(path.join(tmpdir(), "fittedcase-edited-"));
    const out = path.join(scratch, "site");
    expect((await buildSite(root, out, "public")).written).not.toBeNull();
    const before = siteFiles(out);
    writeFiles(root, { [picture]: other ?? "" });
    await buildSite(root, out, "public");
    await buildSite(root, path.join(scratch, "fresh"), "public");
    expect(differences(siteFiles(out), siteFiles(path.join(scratch, "fresh")))).toEqual([]);
    expect(differences(siteFiles(out), before)).toContain("items/own/index.html");
  });

  it("leads on from where an item was, and has the item there again when it comes back", async () => {
    const { root, scratch, out, items, edit } = await standing();
    const [former = "", other] = items;
    const folder = path.join(root, "content/items");
    const text = readFileSync(path.join(folder, former, "index.md"), "utf8");
    const steps = [
      () => {
        renameSync(path.join(folder, former), path.join(folder, "called"));
        writeFileSync(
          path.join(folder, "called/index.md"),
          text.replace("---\n", `---\nformerly: [${former}]\n`),
        );
      },
      () => edit(other),
      () => edit(other),
      () => {
        renameSync(path.join(folder, "called"), path.join(folder, former));
        writeFileSync(path.join(folder, former, "index.md"), text);
      },
      () => edit(other),
      () => edit(other),
    ];
    for (const [at, step] of steps.entries()) {
      step();
      await buildSite(root, out, "public");
      const fresh = path.join(scratch, "fresh");
      await buildSite(root, fresh, "public");
      expect(differences(siteFiles(out), siteFiles(fresh)), `step ${at}`).toEqual([]);
    }
  });
});
