import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import type { Random } from "../benchmarks/generate/random.ts";

/** What can be done to a collection, by what it is called. */
export type Edits = Readonly<Record<string, () => void>>;

/** A collection in a folder, as an edit sees it: files by what they are, chosen at random. */
export interface EditedCollection {
  readonly root: string;
  readonly random: Random;
  /** Different at every edit. */
  readonly step: number;
  readonly at: (file: string) => string;
  readonly read: (file: string) => string;
  readonly write: (file: string, text: string | Uint8Array) => void;
  readonly replace: (file: string, from: RegExp, to: string) => void;
  readonly namesIn: (folder: string) => string[];
  /** The file of an item, relative to the root. */
  readonly item: () => string;
  readonly items: () => string[];
  readonly variant: () => string;
  readonly variants: () => string[];
  readonly family: () => string;
  readonly log: () => string;
}

export const idOf = (file: string): string =>
  file.endsWith("/index.md")
    ? path.basename(path.dirname(file))
    : path.basename(file).replace(/\.(?:md|yaml)$/, "");

export function editedCollection(root: string, random: Random, step: number): EditedCollection {
  const at = (file: string) => path.join(root, file);
  const read = (file: string) => readFileSync(at(file), "utf8");
  const write = (file: string, text: string | Uint8Array) => {
    mkdirSync(path.dirname(at(file)), { recursive: true });
    writeFileSync(at(file), text);
  };
  const namesIn = (folder: string) => (existsSync(at(folder)) ? readdirSync(at(folder)).sort() : []);
  const items = () =>
    namesIn("content/items").flatMap((name) => {
      const file = name.endsWith(".md") ? `content/items/${name}` : `content/items/${name}/index.md`;
      return existsSync(at(file)) ? [file] : [];
    });
  const families = () => namesIn("schemas/reference");
  const variants = () =>
    families().flatMap((family) =>
      namesIn(`schemas/reference/${family}`)
        .filter((name) => name !== "family.yaml")
        .map((name) => `schemas/reference/${family}/${name}`),
    );
  return {
    root,
    random,
    step,
    at,
    read,
    write,
    replace: (file, from, to) => write(file, read(file).replace(from, to)),
    namesIn,
    items,
    item: () => random.pick(items()),
    variants,
    variant: () => random.pick(variants()),
    family: () => random.pick(families()),
    log: () => `content/sightings/${random.pick(namesIn("content/sightings"))}`,
  };
}
