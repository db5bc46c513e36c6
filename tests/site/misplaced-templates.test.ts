import { expect, it } from "vitest";
import { smallCollection, writeCollection } from "../collections/collection.ts";
import { runHere } from "../commands/run-here.ts";

const template = "export default () => '<p>Ours</p>';\n";

const checked = async (files: Readonly<Record<string, string>>) => {
  const root = writeCollection(smallCollection("parts: { p: {} }\n", files));
  const problems = JSON.parse((await runHere(["check", "--format", "json"], root)).out) as {
    diagnostics: { file: string; code: string; message: string; remedy?: string }[];
  };
  return { root, told: problems.diagnostics.filter(({ file }) => file.startsWith("templates/")) };
};

it.each([
  ["pages/items.js", "pages/item.js"],
  ["pages/item.mjs", "pages/item.js"],
  ["pages/item.ts", "pages/item.js"],
  ["page/item.js", "pages/item.js"],
  ["item.js", "pages/item.js"],
  ["parts/colofon.js", "parts/colophon.js"],
])("a template %s, which stands in for none, is told of", async (file, meant) => {
  const { told } = await checked({ [`templates/${file}`]: template });
  expect(told).toMatchObject([{ file: `templates/${file}`, code: "misplaced-file" }]);
  expect(JSON.stringify(told)).toContain(`Did you mean \\"templates/${meant}\\"?`);
});

it("what stands in for ours, a sheet of styles and what their templates import are not", async () => {
  const { told } = await checked({
    "templates/pages/missing.js": `import { sign } from "../parts/own-sign.js";\nexport default () => sign;\n`,
    "templates/parts/own-sign.js": "export const sign = 'A sign';\n",
    "templates/lib/links.js": template,
    "templates/styles/99-own.css": "h1 { color: teal }\n",
    "templates/.hidden": "",
  });
  expect(told).toEqual([]);
});

it("a build counts it as a check does", async () => {
  const { root } = await checked({ "templates/pages/items.js": template });
  const [check, build] = [await runHere(["check"], root), await runHere(["build"], root)];
  const warnings = (said: string) => /(\d+) warning/.exec(said)?.[1];
  expect(warnings(build.out)).toBe(warnings(check.out));
  expect(check.out).toContain("templates/pages/items.js");
});
