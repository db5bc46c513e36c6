import { renameSync, rmSync } from "node:fs";
import path from "node:path";
import { type EditedCollection, type Edits, idOf } from "./edited-collection.ts";

const folderOf = (file: string): string => (file.endsWith("/index.md") ? path.posix.dirname(file) : file);

/** Edits of items and of what lies beside them. */
export function itemEdits(edited: EditedCollection, pictures: readonly Uint8Array[]): Edits {
  const { at, read, write, replace, random, step, item, items, variant, namesIn } = edited;
  const inFrontMatter = (file: string, line: string) =>
    replace(file, /^(variant: .*)$/m, `$1\n${line.replaceAll("$", "$$$$")}`);
  const withFolder = () => random.pick(items().filter((file) => file.endsWith("/index.md")));
  /** In folders of items, and of items that are files of their own. */
  const pictured = () =>
    namesIn("content/items")
      .filter((name) => !name.endsWith(".md"))
      .map((name) => `content/items/${name}`)
      .flatMap((folder) =>
        namesIn(folder).flatMap((name) => (name.endsWith(".png") ? `${folder}/${name}` : [])),
      );
  const renamed = (file: string, id: string): string => {
    const to = file.endsWith("/index.md") ? `content/items/${id}` : `content/items/${id}.md`;
    renameSync(at(folderOf(file)), at(to));
    return file.endsWith("/index.md") ? `${to}/index.md` : to;
  };
  return {
    "a word in a text": () => {
      const file = item();
      write(file, `${read(file)}Word ${step}.\n`);
    },
    "a part found absent": () => replace(item(), /^( {2}part-\d+): present$/m, "$1: absent"),
    "a part not examined after all": () => replace(item(), /^ {2}part-\d+: present\n/m, ""),
    "a part found": () =>
      replace(item(), /^( {2}part-\d+): absent$/m, "$1: { state: present, note: Found. }"),
    "a mistake": () => replace(item(), /^ {2}part-\d+: present$/m, "  part-99: present"),
    "a title": () => replace(item(), /^title: .*$/m, `title: Outfit named in step ${step}`),
    "a set number": () => replace(item(), /^set: .*$/m, `set: "${1 + random.below(900)}"`),
    "a mark that names the set of another": () => {
      const set = /^set: (.*)$/m.exec(read(item()))?.[1];
      if (set !== undefined) replace(item(), /marks: \["\d+"\]/, `marks: [${set}]`);
    },
    "a serial": () => replace(item(), /^serial: ([A-Z]+).*$/m, `serial: $1${1001 + random.below(300)}`),
    "a status": () =>
      replace(item(), /^status: .*$/m, `status: ${random.pick(["offered", "sold", "reference"])}`),
    "a feature": () =>
      replace(item(), /feature-(\d+): \w+/, `feature-$1: ${random.pick(["plain", "ribbed", "pierced"])}`),
    "a feature not looked at": () => replace(item(), /feature-\d+: \w+, /, ""),
    "an item no example": () => inFrontMatter(item(), "census: false"),
    "a serial shown": () => inFrontMatter(item(), "publish: { serial: shown }"),
    "an item added": () =>
      write(
        `content/items/new-${step}/index.md`,
        read(item()).replace(/^example: .*$/m, `example: new-${step}`),
      ),
    "an item added, of the same example": () => write(`content/items/same-${step}.md`, read(item())),
    "an item renamed": () => void renamed(item(), `renamed-${step}`),
    "an item renamed, with its former address": () => {
      const file = item();
      inFrontMatter(renamed(file, `called-${step}`), `formerly: [${idOf(file)}]`);
    },
    "two items exchanged": () => {
      const [one, other] = [item(), item()];
      const text = read(one);
      write(one, read(other));
      write(other, text);
    },
    "an item deleted": () => {
      if (items().length > 4) rmSync(at(folderOf(item())), { recursive: true });
    },
    "an item that is a file of its own": () => {
      const file = withFolder();
      // Its photographs stay where they are.
      write(`content/items/${idOf(file)}.md`, read(file).replace(/\bfile: /g, `file: ${idOf(file)}/`));
      rmSync(at(file));
    },
    "an item of another variant": () => replace(item(), /^variant: .*$/m, `variant: ${idOf(variant())}`),
    "an item that tells of a variant": () => {
      const file = item();
      write(file, `${read(file)}\nOf these <figure:variants/${idOf(variant())}/survivors>.\n`);
    },
    "an item that tells of an item": () => {
      const file = item();
      write(file, `${read(file)}\nBeside it <figure:items/${idOf(item())}/asComplete>.\n`);
    },
    "a photograph": () => {
      const file = withFolder();
      if (/^photos:/m.test(read(file))) return;
      write(`${folderOf(file)}/view-${step}.png`, random.pick(pictures));
      inFrontMatter(
        file,
        `photos: [{ file: view-${step}.png, alt: A view, callouts: [{ part: part-1, at: [0.2, 0.3] }] }]`,
      );
    },
    "another photograph of the same name": () => {
      if (pictured().length > 0) write(random.pick(pictured()), random.pick(pictures));
    },
    "a photograph that is none": () => {
      if (random.chance(0.3) && pictured().length > 0) write(random.pick(pictured()), "No picture.");
    },
    "a photograph not shown": () => {
      const file = items().find((each) => /^photos:/m.test(read(each)));
      if (file) replace(file, /^photos: .*\n/m, "");
    },
    "a photograph deleted": () => {
      if (random.chance(0.3) && pictured().length > 0) rmSync(at(random.pick(pictured())));
    },
  };
}
