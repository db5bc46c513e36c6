import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import type { Random } from "../benchmarks/generate/random.ts";

const read = (file: string) => readFileSync(file, "utf8");
const write = (file: string, text: string) => {
  mkdirSync(path.dirname(file), { recursive: true });
  writeFileSync(file, text);
};
const replace = (file: string, from: RegExp, to: string) => write(file, read(file).replace(from, to));

/** What a writer does to a collection in a day, as one change each; says what was done. */
export function randomEdit(root: string, random: Random, step: number): string {
  const items = path.join(root, "content/items");
  const reference = path.join(root, "schemas/reference");
  const item = () => random.pick(readdirSync(items));
  const page = (id: string) => path.join(items, id, "index.md");
  const family = () => random.pick(readdirSync(reference));
  const variantFile = () => {
    const of = family();
    const files = readdirSync(path.join(reference, of)).filter((name) => name !== "family.yaml");
    return path.join(reference, of, random.pick(files));
  };
  const log = () =>
    path.join(root, "content/sightings", random.pick(readdirSync(path.join(root, "content/sightings"))));
  const article = path.join(root, "content/articles/essay.md");

  const edits: Readonly<Record<string, () => void>> = {
    "a word in a text": () =>
      write(page(item()), `${read(page(item()))}Word ${step}.\n`.replace(/^(?!---)/, "---")),
    "a part found absent": () => replace(page(item()), /^( {2}part-\d+): present$/m, "$1: absent"),
    "a title": () => replace(page(item()), /^title: .*$/m, `title: Outfit named in step ${step}`),
    "a set number": () => replace(page(item()), /^set: .*$/m, `set: "${1 + random.below(900)}"`),
    "an item added": () =>
      write(page(`new-${step}`), read(page(item())).replace(/^example: .*$/m, `example: new-${step}`)),
    "an item renamed": () => renameSync(path.join(items, item()), path.join(items, `renamed-${step}`)),
    "an item deleted": () => {
      if (readdirSync(items).length > 4) rmSync(path.join(items, item()), { recursive: true });
    },
    "an item of another variant": () => {
      const variant = path.basename(variantFile(), ".yaml");
      replace(page(item()), /^variant: .*$/m, `variant: ${variant}`);
    },
    "a weight in a reference": () => replace(variantFile(), /weight: \d+/, `weight: ${1 + random.below(20)}`),
    "the name of a variant": () => replace(variantFile(), /^name: .*$/m, `name: Pattern of step ${step}`),
    "the maker of a family": () =>
      replace(path.join(reference, family(), "family.yaml"), /^maker: .*$/m, `maker: Maker ${step}`),
    "a sighting": () => {
      const file = log();
      const lines = read(file).trimEnd().split("\r\n");
      write(file, `${[...lines, random.pick(lines.slice(1))].join("\r\n")}\r\n`);
    },
    "a sighting of a year before all": () => {
      const file = log();
      write(file, read(file).replace(/^2\d\d\d-/m, "1999-"));
    },
    "the years watched": () =>
      replace(
        path.join(root, "content/collection.yaml"),
        /^(?:watching: .*\n)?/m,
        random.chance(0.5) ? "" : "watching: 2001/2020\n",
      ),
    "the title of the collection": () =>
      replace(path.join(root, "content/collection.yaml"), /^title: .*$/m, `title: Collection ${step}`),
    "a source": () =>
      replace(path.join(root, "content/sources.yaml"), /title: [^,]*/, `title: Ledger ${step}`),
    "an article that tells of an item": () =>
      write(article, `---\ntitle: Essay ${step}\n---\nIts share is <figure:items/${item()}/asComplete>.\n`),
    "an article of its own": () => write(article, `---\ntitle: Essay ${step}\n---\nWords [@ledger].\n`),
    "an item that tells of a variant": () => {
      const variant = path.basename(variantFile(), ".yaml");
      const of = page(item());
      write(of, `${read(of)}\nOf these <figure:variants/${variant}/survivors>.\n`);
    },
    "a mistake": () => replace(page(item()), /^ {2}part-\d+: present$/m, "  part-99: present"),
    "a template of one's own": () =>
      write(
        path.join(root, "templates/parts/links.js"),
        `export default (list) => list.map(({ name }) => name + ${step % 2}).join(", ");`,
      ),
    "no template of one's own": () => rmSync(path.join(root, "templates"), { recursive: true, force: true }),
    "a style sheet": () => write(path.join(root, "templates/styles/99-own.css"), `p { margin: ${step}px }`),
  };
  if (!existsSync(items)) throw new Error("Found no items to edit.");
  const name = random.pick(Object.keys(edits));
  edits[name]?.();
  return name;
}
