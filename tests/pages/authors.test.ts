import { readFileSync } from "node:fs";
import path from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { checkCollection } from "../../shared/site/checks/check-collection.ts";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";
import { runHere } from "../commands/run-here.ts";

const article = (authors: string) => `---\ntitle: Pegs\nauthors: ${authors}\n---\nText.\n`;
const collectionWith = (authors: string) =>
  writeCollection(
    smallCollection("parts: { p: { name: Peg } }\n", {
      "content/items/one.md": item("serial: H2118\nparts: { p: present }"),
      "content/articles/pegs.md": article(authors),
    }),
  );

describe("the authors of an article", () => {
  let text: (file: string) => string;
  beforeAll(async () => {
    const root = collectionWith(
      `
  - { family: van der Berg, given: Ida }
  - { family: Lindhagen }
  - { literal: Office of Pegs and Holes }
  - R. Ost`,
    );
    const { code } = await runHere(["build", "--root", root], root);
    expect(code).toBe(0);
    text = (file) => readFileSync(path.join(root, "_site", file), "utf8");
  });
  const page = () =>
    text("articles/pegs/index.html")
      .replaceAll("&quot;", '"')
      .replaceAll("&#39;", "'")
      .replaceAll("&amp;", "&");

  it("are named in words as they are spoken", () => {
    const names = "Ida van der Berg, Lindhagen, Office of Pegs and Holes and R. Ost";
    expect(page()).toContain(`By ${names}`);
    expect(text("articles/index.html")).toContain(`By ${names}`);
    expect(page()).toContain(`<dd>${names}. Pegs.`);
  });

  it("are cited by family name, and a body by its whole name", () => {
    // BibTeX, as its own manual has it (Patashnik 1988, 'BibTeXing', section 4; from memory): "von Last, First"; a name
    // within braces is one piece, and so is the "and" in it.
    expect(page()).toContain(
      "author = {van der Berg, Ida and {Lindhagen} and {Office of Pegs and Holes} and R. Ost}",
    );
    // CSL 1.0.2, csl-data.json: a name has family and given, or is a literal.
    const csl = /<code>(\[[^<]*\])<\/code>/.exec(page())?.[1] ?? "[]";
    expect(JSON.parse(csl)).toMatchObject([
      {
        author: [
          { family: "van der Berg", given: "Ida" },
          { family: "Lindhagen" },
          { literal: "Office of Pegs and Holes" },
          { literal: "R. Ost" },
        ],
      },
    ]);
  });

  it("are told to programs as persons, with their names in parts, or as bodies", () => {
    const told = /<script type="application\/ld\+json">(.*?)<\/script>/s.exec(
      text("articles/pegs/index.html"),
    )?.[1];
    // schema.org, from memory: familyName and givenName belong to Person.
    expect(JSON.parse(told ?? "{}").author).toEqual([
      { "@type": "Person", name: "Ida van der Berg", familyName: "van der Berg", givenName: "Ida" },
      { "@type": "Person", name: "Lindhagen", familyName: "Lindhagen" },
      { "@type": "Organization", name: "Office of Pegs and Holes" },
      { "@type": "Person", name: "R. Ost" },
    ]);
  });

  it("stand in the data as they were written", () => {
    expect(JSON.parse(text("data/articles/pegs.json")).authors).toEqual([
      { family: "van der Berg", given: "Ida" },
      { family: "Lindhagen" },
      { literal: "Office of Pegs and Holes" },
      "R. Ost",
    ]);
  });
});

describe("an author who cannot be one", () => {
  const told = (authors: string) =>
    checkCollection(collectionWith(authors)).diagnostics.flatMap(({ code, file, severity }) =>
      severity === "error" ? [`${file} ${code}`] : [],
    );

  it.each([
    ["[{ familiy: Ost }]", "unknown-field"],
    ["[{}]", "wrong-value"],
    ["[7]", "wrong-type"],
    ['[""]', "wrong-value"],
  ])("%s gets one message", (authors, code) => {
    expect(told(authors)).toEqual([`content/articles/pegs.md ${code}`]);
  });

  it("is not told of where it can", () => {
    expect(told("[{ literal: River Office }, I. Venn]")).toEqual([]);
  });
});
