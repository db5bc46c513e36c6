import { existsSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { writeCollection } from "../collections/collection.ts";
import { repository } from "../commands/run.ts";
import { runHere } from "../commands/run-here.ts";

const readme = readFileSync(path.join(repository, "README.md"), "utf8");

/** The fenced blocks of a document, each with its language. */
const blocks = [...readme.matchAll(/^```(\w+)\n([\s\S]*?)^```$/gm)].map(([, language, text]) => ({
  language: language ?? "",
  text: text ?? "",
}));

const block = (language: string, containing: string): string => {
  const found = blocks.find((each) => each.language === language && each.text.includes(containing));
  if (!found) throw new Error(`The README has no ${language} block with "${containing}".`);
  return found.text;
};

describe("the README", () => {
  it("opens with the job in one paragraph", () => {
    const [title, first] = readme.split("\n\n");
    expect(title).toBe("# Fittedcase");
    expect(first).toMatch(/^Somebody opens a case/);
  });

  it("gives the two commands on one line each, first to build and then to test", () => {
    const [build, test] = blocks.filter(({ language }) => language === "sh");
    expect(build?.text).toBe("npm ci && npm run build\n");
    expect(test?.text).toBe("npm ci && npm test\n");
  });

  it("asks for the Node.js that the package asks for, which is no older than what it needs does", () => {
    const { packages } = JSON.parse(readFileSync(path.join(repository, "package-lock.json"), "utf8")) as {
      packages: Readonly<Record<string, { dev?: boolean; engines?: { node?: string } }>>;
    };
    const least = /^>=(\d+)\.(\d+)$/.exec(packages[""]?.engines?.node ?? "");
    expect(readme).toContain(`[Node.js](https://nodejs.org) ${least?.[1]}.${least?.[2]} or later`);
    const asked = Object.entries(packages).flatMap(([name, { dev, engines }]) => {
      const [, major, minor = 0] = /^(?:>=|\^) ?(\d+)(?:\.(\d+))?/.exec(engines?.node ?? "") ?? [];
      return dev || name === "" || major === undefined ? [] : Number(major) * 1000 + Number(minor);
    });
    expect(Math.max(...asked)).toBeLessThanOrEqual(Number(least?.[1]) * 1000 + Number(least?.[2]));
    // What colours the terminal is there from 20.12 on (Node.js, util.styleText).
    expect(Number(least?.[1]) * 1000 + Number(least?.[2])).toBeGreaterThanOrEqual(20_012);
  });

  it("has a test command that the continuous integration runs", () => {
    expect(readFileSync(path.join(repository, ".ci/run"), "utf8")).toContain("npm ci && npm test");
  });

  it("shows records that are sound, taken together", async () => {
    const root = writeCollection({
      "content/collection.yaml": block("yaml", "content/collection.yaml"),
      "content/sources.yaml":
        "- { id: works-ledger, title: Ledger }\n- { id: sale-lists, title: Lists }\n- { id: museum-inventory, title: Inventory }\n",
      "content/items/pilot-118/index.md": block("markdown", "variant: pilot-mk2"),
      "content/sightings/log.csv": block("csv", "seen,variant"),
      "schemas/reference/pilot/family.yaml":
        "name: Pilotage outfits\nfeatures: { arc: { name: Arc, values: [silver, platinum] } }\n",
      "schemas/reference/pilot/pilot-mk2.yaml": block("yaml", "pilot-mk2.yaml"),
    });
    const { code, out } = await runHere(["check"], root);
    expect(out).toMatch(/^(?:.*warning[\s\S]*)?0 errors/m);
    expect(code).toBe(0);
  });

  it("leads from an empty folder to a page: every command runs, one after another", async () => {
    let folder = mkdtempSync(path.join(tmpdir(), "fittedcase-readme-"));
    const lines = blocks
      .filter(({ language }) => language === "bash")
      .flatMap(({ text }) => text.trim().split("\n"));
    expect(lines.length).toBeGreaterThan(10);
    for (const line of lines) {
      const words = [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare ?? "");
      if (words[0] === "cd") {
        folder = path.join(folder, words[1] ?? "");
        writeFileSync(path.join(folder, "old-list.csv"), block("csv", "Kind of mention"));
        continue;
      }
      expect(words.slice(0, 2)).toEqual(["npx", "fittedcase"]);
      const ran = await runHere(words.slice(2), folder);
      expect({ line, code: ran.code, err: ran.err }).toEqual({ line, code: 0, err: "" });
    }
    expect(existsSync(path.join(folder, "_site/index.html"))).toBe(true);
    expect(existsSync(path.join(folder, "checklist-attic-case.html"))).toBe(true);
    expect(readFileSync(path.join(folder, "sightings.csv"), "utf8")).toContain(
      "1998-05-03,grain-case-first,G 12",
    );
    // Importing again adds nothing twice.
    const again = await runHere(
      ["import", "sightings", "old-list.csv", "--map", "old-list.map.yaml"],
      folder,
    );
    expect(again.out).toMatch(/2 .*already/);
  });

  it("shows the settings of an editor as the command prints them", async () => {
    const settings = JSON.parse(block("json", "yaml.schemas")) as { "yaml.schemas": Record<string, unknown> };
    const root = mkdtempSync(path.join(tmpdir(), "fittedcase-readme-"));
    await runHere(["init", root, "--yes"], root);
    const { out } = await runHere(["schemas"], root);
    const printed = JSON.parse(out.slice(out.indexOf("{"))) as typeof settings;
    expect(printed["yaml.schemas"]).toMatchObject(settings["yaml.schemas"]);
  });

  it("names only options that the commands have", async () => {
    for (const [, name = "", options = ""] of readme.matchAll(/npx fittedcase ([a-z]+)([^`\n]*)/g)) {
      const { out } = await runHere([name, "--help"], repository);
      for (const [option] of options.replace(/#.*/, "").matchAll(/--[a-z-]+/g))
        expect(out, name).toContain(option);
    }
  });

  it("names no command that does not exist", async () => {
    const named = new Set([...readme.matchAll(/npx fittedcase (\w+)/g)].map(([, name]) => name ?? ""));
    const { out } = await runHere(["--help"], repository);
    for (const name of [...named].filter((each) => /^[a-z]+$/.test(each)))
      expect(out).toContain(`fittedcase ${name}`);
  });
});
