import { renameSync, rmSync } from "node:fs";
import { type EditedCollection, type Edits, idOf } from "./edited-collection.ts";

const settings = "content/collection.yaml";

/** Edits of what concerns the whole: settings, sources, logs, articles, scales, templates. */
export function wholeEdits(edited: EditedCollection): Edits {
  const { root, at, read, write, replace, random, step, item, variant, log, namesIn } = edited;
  const set = (key: string, value: string) =>
    write(settings, `${read(settings).replace(new RegExp(`^${key}:.*\n`, "m"), "")}${key}: ${value}\n`);
  const article = () => `content/articles/${random.pick(["essay", "note"])}.md`;
  const serial = () => /^serial: (.*)$/m.exec(read(item()))?.[1] ?? "none";
  const rows = (change: (lines: string[]) => readonly string[]) => {
    const file = log();
    if (file.endsWith(".csv")) write(file, `${change(read(file).trimEnd().split("\r\n")).join("\r\n")}\r\n`);
  };
  return {
    "a sighting": () => rows((lines) => [...lines, random.pick(lines.slice(1))]),
    "a sighting of a serial that nobody saw": () =>
      rows((lines) => [...lines, random.pick(lines.slice(1)).replace(/,[A-Z]+\d+,/, `,ZZ${step},`)]),
    "a sighting taken back": () => rows((lines) => (lines.length > 40 ? lines.slice(0, -1) : lines)),
    "a sighting of a year before all": () => replace(log(), /^2\d\d\d-/m, "1999-"),
    "a sighting put right": () => replace(log(), /,offer,/, ",record,"),
    "sightings in another order": () => rows(([header = "", ...lines]) => [header, ...lines.reverse()]),
    "a log of another name": () => {
      const file = log();
      renameSync(at(file), at(file.replace(/[^/]*(?=\.)/, `log-called-${step}`)));
    },
    "a log of its own": () =>
      write(
        `content/sightings/more-${step % 3}.yaml`,
        `- { seen: 2011, variant: ${idOf(variant())}, kind: offer, source: ledger, serial: Q${step} }\n`,
      ),
    "a log deleted": () => {
      const more = namesIn("content/sightings").filter((name) => name.startsWith("more-"));
      if (more[0]) rmSync(at(`content/sightings/${more[0]}`));
    },
    "the years watched": () => set("watching", random.pick(["2001/2024", "2001/2020", "1995/2026"])),
    "no years watched": () => replace(settings, /^watching: .*\n/m, ""),
    "the title of the collection": () => set("title", `Collection ${step}`),
    "the address of the site": () => set("url", `https://example.org/${step % 3}/`),
    "what of serials is shown": () =>
      set(
        "publish",
        `{ serial: ${random.pick(["masked", "shown", "hidden"])}, price: ${random.pick(["shown", "hidden"])} }`,
      ),
    "the confidence": () => set("confidence", random.pick(["0.9", "0.95", "0.8"])),
    "the language": () => set("language", random.pick(["en", "de"])),
    "the rarity scale": () => set("scale", random.pick(["universal", "sheldon", "own", "none"])),
    "a notice": () => set("notice", `Invented, in step ${step}.`),
    "a notice that tells a serial": () => set("notice", `Lent is ${serial()}, in step ${step}.`),
    "a source that tells a serial": () =>
      replace("content/sources.yaml", /title: [^,]*/, `title: Letter on ${serial()}`),
    "an article that tells a serial": () =>
      write(article(), `---\ntitle: Essay ${step}\n---\nSeen was ${serial()}.\n`),
    "a colour": () => set("theme", `{ accent: "#${random.pick(["7a2e1f", "1f3a7a"])}" }`),
    "a scale of one's own": () =>
      write(
        "schemas/scales/own.yaml",
        read("schemas/scales/own.yaml").replace(/^name: .*$/m, `name: Scale ${step}`),
      ),
    "a source": () => replace("content/sources.yaml", /title: [^,]*/, `title: Ledger ${step}`),
    "a source more": () =>
      write(
        "content/sources.yaml",
        `${read("content/sources.yaml")}- { id: more-${step}, type: book, title: More }\n`,
      ),
    "a source deleted": () =>
      replace("content/sources.yaml", random.pick([/^- \{ id: more-.*\n/m, /^- .*\n/m]), ""),
    "an article that tells of an item": () =>
      write(
        article(),
        `---\ntitle: Essay ${step}\n---\nIts share is <figure:items/${idOf(item())}/asComplete>.\n`,
      ),
    "an article that tells of a variant": () =>
      write(
        article(),
        `---\ntitle: Essay ${step}\n---\nOf these <figure:variants/${idOf(variant())}/survivors>.\n`,
      ),
    "an article of its own": () => write(article(), `---\ntitle: Essay ${step}\n---\nWords [@ledger].\n`),
    "an article deleted": () => rmSync(at(article()), { force: true }),
    "a template of one's own": () =>
      write(
        "templates/parts/links.js",
        `export default (list) => list.map(({ name }) => name + ${step % 2}).join(", ");`,
      ),
    "a style sheet": () => write("templates/styles/99-own.css", `p { margin: ${step}px }`),
    "no template of one's own": () => rmSync(`${root}/templates`, { recursive: true, force: true }),
  };
}
