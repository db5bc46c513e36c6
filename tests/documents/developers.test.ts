import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { expect, it } from "vitest";
import { catalogue } from "../../shared/diagnostics/catalogue.ts";
import { repository } from "../commands/run.ts";

const file = path.join(repository, "DEVELOPERS.md");
const part = /(?<=<!-- catalogue -->\n)[\s\S]*?(?=<!-- end of the catalogue -->)/;

function catalogueAsMarkdown(): string {
  const rows = Object.entries(catalogue).map(
    ([code, { severity, meaning }]) => `| \`${code}\` | ${severity} | ${meaning.replaceAll("|", "\\|")} |`,
  );
  return ["| Code | Severity | Meaning |", "| --- | --- | --- |", ...rows].join("\n");
}

it("DEVELOPERS.md lists every problem that is reported, as the catalogue has it", () => {
  const current = `\n${catalogueAsMarkdown()}\n\n`;
  const guide = readFileSync(file, "utf8");
  if (process.env.GOLDEN === "write" && process.env.CI !== "true")
    writeFileSync(
      file,
      guide.replace(part, () => current),
    );
  expect(part.exec(readFileSync(file, "utf8"))?.[0]).toBe(current);
});

it("DEVELOPERS.md names files that are there", () => {
  const named = [...readFileSync(file, "utf8").matchAll(/`([\w./-]+\.(?:ts|mjs|cjs))`/g)].map(
    ([, name]) => name,
  );
  const files = ["shared", "templates", "tests", "content"].flatMap((folder) =>
    readdirSync(path.join(repository, folder), { recursive: true, encoding: "utf8" }).map(
      (name) => `/${path.join(folder, name)}`,
    ),
  );
  expect(named.length).toBeGreaterThan(20);
  expect(named.filter((name) => !files.some((each) => each.endsWith(`/${name}`)))).toEqual([]);
});
