// The plain-Node limit: reads each item, splits and parses its front matter, renders its Markdown and writes the
// same number of files and the same bytes as the build wrote. One thread, and nothing else.
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import matter from "gray-matter";
import yaml from "js-yaml";
import MarkdownIt from "markdown-it";

const [root, out, files, bytes] = process.argv.slice(2);
const markdown = new MarkdownIt();
const engines = { yaml: (text) => yaml.load(text, { schema: yaml.JSON_SCHEMA }) };
const items = path.join(root, "content/items");
const names = readdirSync(items);
const filesEach = Math.max(1, Math.round(Number(files) / names.length));
const bytesEach = Math.round(Number(bytes) / (names.length * filesEach));

for (const name of names) {
  const text = readFileSync(path.join(items, name, "index.md"), "utf8");
  const { data, content } = matter(text, { engines });
  const page = `<!doctype html><title>${data.title}</title><main>${markdown.render(content)}</main>`;
  const filled = page.padEnd(bytesEach, "x").slice(0, bytesEach);
  const folder = path.join(out, name);
  mkdirSync(folder, { recursive: true });
  for (let file = 0; file < filesEach; file++) writeFileSync(path.join(folder, `${file}.html`), filled);
}
