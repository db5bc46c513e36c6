import { spawn } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { item, smallCollection, writeFiles } from "../collections/collection.ts";
import { repository } from "../commands/run.ts";

const record = (variant: string, text: string) =>
  item("parts: { lamp: present }").replace("chest-a", variant).replace("Text.", text);

const files = {
  "package.json": '{ "private": true, "type": "module" }',
  "eleventy.config.js": `import fittedcase from ${JSON.stringify(
    pathToFileURL(path.join(repository, "dist/shared/site/plugin.js")).href,
  )};
export default async function (eleventyConfig) {
  await eleventyConfig.addPlugin(fittedcase, { root: "cases", at: "/cases/", layout: "base.njk" });
}
`,
  "_includes/base.njk": "<title>{{ title }}</title>{{ fittedcaseHead | safe }}{{ content | safe }}",
  "index.md": "# The ferry\n",
  ...Object.fromEntries(
    Object.entries(
      smallCollection("parts: { lamp: { name: Lamp, standing: issued } }\n", {
        "content/items/lamp-case/index.md": record("chest-a", "Before anything was watched."),
      }),
    ).map(([file, text]) => [`cases/${file}`, text]),
  ),
};

let host: string;
let said = "";
let stop: () => Promise<unknown>;
beforeAll(() => {
  host = mkdtempSync(path.join(tmpdir(), "fittedcase-host-"));
  writeFiles(host, files);
  const eleventy = path.join(repository, "node_modules/@11ty/eleventy/cmd.cjs");
  const child = spawn(process.execPath, [eleventy, "--serve", "--port=0"], { cwd: host });
  for (const stream of [child.stdout, child.stderr]) {
    stream.on("data", (chunk) => {
      said += String(chunk);
    });
  }
  const closed = new Promise((resolve) => child.on("close", resolve));
  stop = () => {
    child.kill("SIGKILL");
    return closed;
  };
});
afterAll(() => stop());

const saidTimes = (words: string) => said.split(words).length - 1;
const written = (name: string) => {
  const file = path.join(host, "_site", name);
  return existsSync(file) ? readFileSync(file, "utf8") : "";
};
const page = () => written("cases/items/lamp-case/index.html");
const save = (name: string, text: string) => writeFileSync(path.join(host, name), text);

/** Eleventy says that it watches before every file is: one is saved until it is seen, and the site of it is done. */
async function awake(): Promise<void> {
  const name = "cases/content/items/lamp-case/index.md";
  for (let time = 0; time < 8 && !page().includes("As it was."); time++) {
    save(name, record("chest-a", "As it was."));
    await new Promise((resolve) => setTimeout(resolve, 3000));
  }
  await expect.poll(() => said.trimEnd().endsWith("Watching…")).toBe(true);
}

describe("the server of somebody else's Eleventy site", () => {
  it("goes on after a mistake in a record, as soon as that is mended, and then comes to rest", async () => {
    await expect.poll(() => said).toContain("Server at");
    await awake();

    save("cases/content/items/lamp-case/index.md", record("halv-33", "As it was."));
    await expect.poll(() => said).toContain('Found "halv-33"; expected');
    // A page of the host's own in the meantime is made with the same configuration again.
    save("index.md", "# The new ferry\n");
    await expect.poll(() => saidTimes("Original error stack trace")).toBe(2);

    save("cases/content/items/lamp-case/index.md", record("chest-a", "As it was mended."));
    await expect.poll(page).toContain("As it was mended.");
    await expect.poll(() => written("index.html")).toContain("The new ferry");
    expect(said).not.toContain("conflict");

    // What is not to happen takes time not to happen: longer than Eleventy waits for a file to be written.
    const changes = saidTimes("File changed:");
    await new Promise((resolve) => setTimeout(resolve, 1500));
    expect(saidTimes("File changed:")).toBe(changes);
    expect(said).not.toMatch(/File (?:changed|added): .*\.cache/);
  });
});
