// The plain-Node limit: reads each item, splits and parses its front matter, renders its Markdown and writes as many
// files of the same sizes as the build wrote. One thread, and nothing else.
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import matter from "gray-matter";
import yaml from "js-yaml";
import MarkdownIt from "markdown-it";

const [root, out, sizesFile] = process.argv.slice(2);
const sizes = JSON.parse(readFileSync(sizesFile, "utf8"));
const markdown = new MarkdownIt();
const engines = { yaml: (text) => yaml.load(text, { schema: yaml.JSON_SCHEMA }) };
const items = path.join(root, "content/items");
const names = readdirSync(items);

for (const [place, name] of names.entries()) {
  const text = readFileSync(path.join(items, name, "index.md"), "utf8");
  const { data, content } = matter(text, { engines });
  const page = `<!doctype html><title>${data.title}</title><main>${markdown.render(content)}</main>`;
  const folder = path.join(out, name);
  mkdirSync(folder, { recursive: true });
  // The files of the site, dealt out among the items.
  for (let file = place; file < sizes.length; file += names.length) {
    const filled = page.length < sizes[file] ? page.padEnd(sizes[file], "x") : page.slice(0, sizes[file]);
    writeFileSync(path.join(folder, `${file}.html`), Buffer.from(filled, "latin1"));
  }
}
