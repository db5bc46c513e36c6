import {
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { shownAt } from "../../shared/commands/serve/shown.ts";
import { buildSite } from "../../shared/site/build/build-site.ts";
import { LiveSite } from "../../shared/site/live/live-site.ts";
import { randomFrom } from "../benchmarks/generate/random.ts";
import { siteFiles } from "../collections/site-files.ts";
import { generated, pictures } from "./generated.ts";
import { randomEdit } from "./random-edits.ts";

/** As many as somebody asks for: EDITS=500, and SEED=7 for other ones. */
const edits = Number(process.env.EDITS ?? 12);
const seed = Number(process.env.SEED ?? 1);

const folders = ["content", "schemas", "templates"];
const nothingElse = { recursive: true, filter: (file: string) => !file.includes(".cache") };

/** Every file of a collection, by its path from the root. */
function textsOf(root: string): Map<string, string> {
  const texts = new Map<string, string>();
  for (const name of readdirSync(root, { recursive: true, encoding: "utf8" })) {
    if (!folders.includes(name.split(path.sep)[0] ?? "")) continue;
    try {
      texts.set(name, readFileSync(path.join(root, name), "latin1"));
    } catch {
      // A folder.
    }
  }
  return texts;
}

function changedIn(before: ReadonlyMap<string, string>, after: ReadonlyMap<string, string>): Set<string> {
  const names = new Set([...before.keys(), ...after.keys()]);
  return new Set([...names].filter((name) => before.get(name) !== after.get(name)));
}

/** What a preview answers, of all that it or a site built anew may have. */
function answers(out: string, live: LiveSite, files: Iterable<string>): Map<string, Buffer> {
  const found = new Map<string, Buffer>();
  for (const file of files) {
    const shown = shownAt(`/${file.split("/").map(encodeURIComponent).join("/")}`, out, live);
    if (shown) found.set(file, shown.kind === "file" ? readFileSync(shown.file) : Buffer.from(shown.content));
  }
  return found;
}

const unlike = (one: ReadonlyMap<string, Buffer>, other: ReadonlyMap<string, Buffer>): string[] =>
  [...new Set([...one.keys(), ...other.keys()])].filter((name) => {
    const [a, b] = [one.get(name), other.get(name)];
    return !a || !b || !a.equals(b);
  });

/** A mark that is the set number of an outfit of another variant, whose name the page then says. */
function markOfAnother(root: string, items: string): void {
  const texts = readdirSync(items)
    .map((id) => path.join(items, id, "index.md"))
    .filter((file) => existsSync(file));
  const variantIn = (file: string) => /^variant: (.*)$/m.exec(readFileSync(file, "utf8"))?.[1];
  const [first = ""] = texts;
  const family = (file: string) =>
    readdirSync(path.join(root, "schemas/reference")).find((id) =>
      readdirSync(path.join(root, "schemas/reference", id)).includes(`${variantIn(file)}.yaml`),
    );
  const other = texts.find((file) => variantIn(file) !== variantIn(first) && family(file) === family(first));
  const set = other && /^set: "(.*)"$/m.exec(readFileSync(other, "utf8"))?.[1];
  if (set !== undefined)
    writeFileSync(first, readFileSync(first, "utf8").replace(/marks: \["\d+"\]/g, `marks: ["${set}"]`));
}

async function comparing(count: number): Promise<void> {
  const root = generated();
  const shown = await pictures();
  const scratch = mkdtempSync(path.join(tmpdir(), "fittedcase-live-"));
  const out = path.join(scratch, "site");
  const over = async (): Promise<LiveSite> => {
    await buildSite(root, out, "public");
    const found = await LiveSite.over(root, out, "public");
    if (!found) throw new Error("Found nothing of the site that was just built.");
    return found;
  };
  const random = randomFrom(seed);
  let live = await over();
  const done: string[] = [];
  let before = textsOf(root);
  let known = new Set<string>();
  let sound = path.join(scratch, "sound");
  cpSync(root, sound, nothingElse);
  for (let step = 0; step < count; step++) {
    if (step % 8 === 3) {
      markOfAnother(root, path.join(root, "content/items"));
      done.push("a mark of another's set");
    } else done.push(randomEdit(root, random, step, shown));
    const told = `${step}: ${done.slice(-4).join("; ")}`;
    const fresh = path.join(scratch, `fresh-${step}`);
    const anew = await buildSite(root, fresh, "public");
    const after = textsOf(root);
    const standing = new Set([...siteFiles(out).keys(), ...known]);
    const last = answers(out, live, standing);
    const taken = await live.take(changedIn(before, after));
    before = after;
    if (anew.written) {
      const built = siteFiles(fresh);
      const files = new Set([...built.keys(), ...standing]);
      known = new Set(built.keys());
      if (taken === "whole") live = await over();
      else {
        const isMade = await live.makeEdited();
        const edited = answers(out, live, files);
        const ahead = unlike(edited, last);
        if (isMade) done[done.length - 1] += " (ahead)";
        for (const file of ahead)
          expect(edited.get(file)?.equals(built.get(file) ?? Buffer.of()), `${told}: ${file}`).toBe(true);
        while (await live.makeNext(new Set()));
      }
      expect(live.isSettled, told).toBe(true);
      const real = new Map([...built].filter(([file]) => !built.has(`${file}.gz`)));
      expect(unlike(answers(out, live, files), real), told).toEqual([]);
      if (random.chance(0.3)) {
        await buildSite(root, out, "public");
        expect(live.rest(), told).toBe(true);
        expect(live.isAhead, told).toBe(false);
        expect(unlike(answers(out, live, files), real), told).toEqual([]);
      }
      sound = path.join(scratch, `sound-${step}`);
      cpSync(root, sound, nothingElse);
    } else {
      if (taken !== "whole") {
        await live.makeEdited();
        while (await live.makeNext(new Set()));
        expect(live.isSettled, told).toBe(false);
      }
      for (const folder of folders) rmSync(path.join(root, folder), { recursive: true, force: true });
      cpSync(sound, root, { recursive: true });
      const mended = textsOf(root);
      await live.take(changedIn(before, mended));
      before = mended;
      await live.makeEdited();
      while (await live.makeNext(new Set()));
      if (taken !== "whole") {
        expect(live.isSettled, told).toBe(true);
        expect(unlike(answers(out, live, standing), last), told).toEqual([]);
      }
    }
    rmSync(fresh, { recursive: true, force: true });
    rmSync(path.join(scratch, `.fresh-${step}.builds`), { recursive: true, force: true });
  }
  if (process.env.EDITS) process.stdout.write(`${done.join("\n")}\n`);
}

describe("the site of a preview", () => {
  it(
    `answers as one built anew, byte for byte, after each of ${edits} edits`,
    () => comparing(edits),
    edits * 20_000 + 60_000,
  );

  const built = async () => {
    const root = generated();
    const out = path.join(mkdtempSync(path.join(tmpdir(), "fittedcase-live-")), "site");
    await buildSite(root, out, "public");
    const live = await LiveSite.over(root, out, "public");
    if (!live) throw new Error("Found nothing of the site that was just built.");
    const items = path.join(root, "content/items");
    const ids = readdirSync(items).filter((id) => existsSync(path.join(items, id, "index.md")));
    const fileOf = (id: string) => `content/items/${id}/index.md`;
    const read = (id: string) => readFileSync(path.join(root, fileOf(id)), "utf8");
    const variantOf = (id: string) => /^variant: (.*)$/m.exec(read(id))?.[1] ?? "";
    const write = async (id: string, text: string) => {
      writeFileSync(path.join(root, fileOf(id)), text);
      await live.take(new Set([fileOf(id)]));
      return live.makeEdited();
    };
    const textAt = (address: string) => {
      const shown = shownAt(address, out, live);
      if (!shown) return "";
      return String(shown.kind === "file" ? readFileSync(shown.file) : shown.content);
    };
    return { root, out, live, items, ids, read, write, variantOf, textAt };
  };

  it("shows an edited item in the lists before all that depends on it is made, and then no other", async () => {
    const { live, ids, read, write, variantOf, textAt } = await built();
    const [id = ""] = ids;
    const list = `/items/by/variant/${variantOf(id)}/`;
    expect(await write(id, read(id).replace(/^title: .*$/m, "title: The quernstone outfit"))).toBe(true);
    expect(textAt(list)).not.toContain("The quernstone outfit");
    await live.makeNext(new Set([`/items/${id}/`]));
    expect(live.isSettled).toBe(false);
    expect(textAt(list)).toContain("The quernstone outfit");
    const pieces = [];
    while (await live.makeNext(new Set())) pieces.push(textAt(list));
    // The group, what sums up its family, then tables and feed.
    expect(pieces).toHaveLength(3);
    for (const piece of pieces) expect(piece).toBe(textAt(list));
  });

  it("takes the lists back where something else of the family forbids what was edited", async () => {
    const { live, ids, read, write, variantOf, textAt } = await built();
    const [id = ""] = ids;
    const list = `/items/by/variant/${variantOf(id)}/`;
    const before = textAt(list);
    for (const other of ids.filter((each) => variantOf(each) !== variantOf(id))) {
      const text = read(id);
      const edited = text.replace(/^title: .*$/m, `title: The quernstone outfit\nformerly: [${other}]`);
      await write(id, edited);
      while (await live.makeNext(new Set()));
      expect(live.isSettled).toBe(false);
      expect(textAt(list)).toBe(before);
      expect(textAt(`/items/${id}/`)).not.toContain("The quernstone outfit");
      await write(id, text);
      while (await live.makeNext(new Set()));
      expect(live.isSettled).toBe(true);
      expect(textAt(list)).toBe(before);
    }
  });

  it.each(["variant", "family"])("lets no %s have the address of one in another family", async (kind) => {
    const { root, live } = await built();
    const folder = "schemas/reference";
    const [one = "", other = ""] = readdirSync(path.join(root, folder));
    const variantIn = (family: string) =>
      readdirSync(path.join(root, folder, family)).find((name) => name !== "family.yaml") ?? "";
    const file = `${folder}/${one}/${kind === "family" ? "family.yaml" : variantIn(one)}`;
    const taken = kind === "family" ? other : variantIn(other).replace(".yaml", "");
    const text = readFileSync(path.join(root, file), "utf8");
    writeFileSync(path.join(root, file), `formerly: [${taken}]\n${text.replace(/^formerly: .*\n/m, "")}`);
    await live.take(new Set([file]));
    while (await live.makeNext(new Set()));
    expect(live.isSettled).toBe(false);
    writeFileSync(path.join(root, file), text);
    await live.take(new Set([file]));
    while (await live.makeNext(new Set()));
    expect(live.isSettled).toBe(true);
  });

  it("leads on from a former address as soon as an item is renamed", async () => {
    const { root, out, live, items, ids } = await built();
    const [former = ""] = ids;
    const before = textsOf(root);
    renameSync(path.join(items, former), path.join(items, "called"));
    const file = path.join(items, "called/index.md");
    writeFileSync(file, readFileSync(file, "utf8").replace("---\n", `---\nformerly: [${former}]\n`));
    await live.take(changedIn(before, textsOf(root)));
    while (await live.makeNext(new Set()));
    for (const address of [`/items/${former}/`, `/items/${former}`, `/items/${former}/index.html`]) {
      const shown = shownAt(address, out, live);
      expect(shown?.kind === "content" && String(shown.content)).toContain("url=../../items/called/");
    }
    expect(shownAt("/items/called/", out, live)).not.toBeNull();
  });
});
