import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import ts from "typescript";
import { beforeAll, describe, expect, it } from "vitest";
import { benchIndex, benchItem } from "../../shared/commands/serve/bench/bench-html.ts";
import { benchRecord, benchReference } from "../../shared/commands/serve/bench/bench-record.ts";
import { everyFile } from "../../shared/site/eleventy/every-file.ts";
import { germanBench } from "../../shared/words/de/bench.ts";
import { renderPage } from "../../templates/render-page.ts";
import { writeCollection } from "../collections/collection.ts";
import { germanCollection } from "../collections/german-collection.ts";
import { repository } from "../commands/run.ts";
import { runHere } from "../commands/run-here.ts";

const wordsIn = (text: string): string[] => text.toLowerCase().match(/\p{L}{2,}/gu) ?? [];

/** Every word within a literal of a language's files, as their source says them. */
function wordsOf(language: string): Set<string> {
  const folder = path.join(repository, "shared/words", language);
  const words = new Set<string>();
  for (const name of readdirSync(folder)) {
    const source = ts.createSourceFile(
      name,
      readFileSync(path.join(folder, name), "utf8"),
      ts.ScriptTarget.Latest,
      true,
    );
    const walk = (node: ts.Node): void => {
      if (ts.isImportDeclaration(node)) return;
      if (ts.isStringLiteralLike(node) || ts.isTemplateLiteralToken(node)) {
        const isKey = ts.isPropertyAssignment(node.parent) && node.parent.name === node;
        if (!isKey) for (const word of wordsIn(node.text)) words.add(word);
      }
      ts.forEachChild(node, walk);
    };
    walk(source);
  }
  return words;
}

/** What a reader meets: text, and the attributes that are read out or shown. */
function readable(html: string): string {
  const body = html
    .replace(/<script[^>]*>[\s\S]*?<\/script>|<pre[\s\S]*?<\/pre>/g, " ")
    // The letters of a version are of no language.
    .replace(/Fassung [0-9a-f]{12}/g, " ");
  const attributes = [
    ...body.matchAll(
      /\s(?:alt|title|aria-label|aria-description|placeholder|label|data-label|data-place)="([^"]*)"/g,
    ),
    ...body.matchAll(
      /<meta (?:name="description"|property="og:(?:title|description|image:alt)") content="([^"]*)"/g,
    ),
  ].map((match) => match[1] ?? "");
  return [body.replace(/<[^>]*>/g, " "), ...attributes]
    .join("\n")
    .replace(/&[a-z]+;|&#\d+;/g, " ")
    .replace(/https?:\S+/g, " ");
}

/** English words that are names: of journals, of standards, of units of measure; and roots of other languages. */
const names = new Set([
  "iiif",
  "csv",
  "bibtex",
  "csl",
  "json",
  "sha",
  "css",
  "eur",
  "cc",
  "by",
  "low",
  "high",
]);

let root: string;
let pages: ReadonlyMap<string, string>;
let english: ReadonlySet<string>;
let german: ReadonlySet<string>;

beforeAll(async () => {
  root = writeCollection(germanCollection());
  const site = await everyFile(root, "private");
  if ("problems" in site) throw new Error(JSON.stringify(site.problems, null, 2));
  pages = new Map(
    site.parts.flatMap(({ files, site: around }) =>
      [...files].flatMap((file) =>
        file.kind === "page" ? [[file.address, renderPage(file.make(), around)] as const] : [],
      ),
    ),
  );
  english = wordsOf("en");
  german = wordsOf("de");
});

describe("a collection in German", () => {
  it("is known by its words: both languages have many that the other has not", () => {
    expect([...english].filter((word) => !german.has(word)).length).toBeGreaterThan(500);
    expect([...german].filter((word) => !english.has(word)).length).toBeGreaterThan(500);
  });

  it("has no English word of the interface on any kind of page", () => {
    const found = [...pages].flatMap(([address, html]) =>
      wordsIn(readable(html))
        .filter((word) => english.has(word) && !german.has(word) && !names.has(word))
        .map((word) => `${address}: ${word}`),
    );
    expect([...new Set(found)]).toEqual([]);
    expect([...pages.keys()].length).toBeGreaterThan(15);
  });

  it("has none at the bench, on the page for the phone and on the sheets of paper", async () => {
    const reference = benchReference(root);
    const record = benchRecord(root, reference, "nummer-7");
    if (!record) throw new Error("The item is not there.");
    const said = Object.values(germanBench.script);
    const bench = [benchIndex(reference, [record]), benchItem(reference, record, "key", "glas"), ...said];
    for (const id of ["nummer-7", "laterne-2", "laterne"]) {
      expect((await runHere(["checklist", id], root)).code).toBe(0);
      bench.push(readFileSync(path.join(root, `checklist-${id}.html`), "utf8"));
    }
    const found = bench.flatMap((html) =>
      wordsIn(
        readable(html.replace(/<style>[\s\S]*?<\/style>/, " ")).replace(/content\/items\S+/g, " "),
      ).filter((word) => english.has(word) && !german.has(word) && !names.has(word)),
    );
    expect([...new Set(found)]).toEqual([]);
    expect(bench.filter((html) => html.includes('<html lang="de">'))).toHaveLength(5);
    // Of one unit "fehlt", of several "fehlen"; of a date in a range the words of the site.
    expect(bench[2 + said.length]).toContain("1 fehlt");
    expect(bench.at(-1)).toContain("L1 bis L40 (1904 bis 1909)");
  });

  it("says which language it is in, sets its quotation marks, and writes its dates and numbers", () => {
    const item = pages.get("/items/nummer-7/") ?? "";
    expect(item).toContain('<html lang="de">');
    expect(item).toContain("„Dochten“");
    expect(item).toContain("1. August 2009");
    // CLDR: German sets a no-break space before the sign of per cent.
    expect(item).toMatch(/\d\u00a0%/);
  });
});
