import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { checkCollection } from "../../shared/site/checks/check-collection.ts";
import { contentOf } from "../../shared/site/files/file-content.ts";
import { type GroupSite, groupSite } from "../../shared/site/files/group-site.ts";
import { siteFrame } from "../../shared/site/files/site-frame.ts";
import { wholeSite } from "../../shared/site/files/whole-site.ts";
import {
  type FamilyGroup,
  type GroupedCollection,
  groupFamilies,
} from "../../shared/site/groups/family-groups.ts";
import { readTexts } from "../../shared/source/read-texts.ts";
import { type Random, randomFrom } from "../benchmarks/generate/random.ts";
import { generated, pictures } from "./generated.ts";
import { randomEdit } from "./random-edits.ts";

/** As many as somebody asks for: EDITS=500, and SEED=7 for other ones. */
const edits = Number(process.env.EDITS ?? 12);
const seed = Number(process.env.SEED ?? 1);

/** What one record may have of any other, in whatever family. */
function likeAnother(root: string, random: Random, step: number): string {
  const folder = path.join(root, "content/items");
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".md"))
    .map((file) => path.join(folder, file));
  const id = (file: string) =>
    path.basename(file) === "index.md" ? path.basename(path.dirname(file)) : path.basename(file, ".md");
  const [one, other] = [random.pick(files), random.pick(files)];
  const [text, ofOther] = [readFileSync(one, "utf8"), readFileSync(other, "utf8")];
  const line = (key: string) => new RegExp(`^${key}: .*$`, "m").exec(ofOther)?.[0];
  const taken = (key: string) => text.replace(new RegExp(`^${key}: .*$`, "m"), (now) => line(key) ?? now);
  const ways: Readonly<Record<string, () => string>> = {
    serial: () => taken("serial"),
    set: () => taken("set"),
    example: () => taken("example"),
    title: () => taken("title"),
    "present address, as a former one,": () => text.replace("---\n", `---\nformerly: [${id(other)}]\n`),
    "former address": () => text.replace("---\n", `---\nformerly: [old-${step % 3}]\n`),
    "former address, in a record that stands further in": () =>
      text.replace(/^---\n([\s\S]*?\n)---\n/, (_, yaml: string) => {
        const lines = `formerly: [old-${step % 3}]\n${yaml}`.replace(/^(?=.)/gm, "  ");
        return `---\n${lines}---\n`;
      }),
    marks: () =>
      text.replace(/marks: \["\d+"\]/g, `marks: [${/"\d+"/.exec(line("set") ?? "")?.[0] ?? '"1"'}]`),
  };
  const [name, way] = random.pick(Object.entries(ways));
  writeFileSync(one, way());
  return `${name} of another item`;
}

/** A log as a hand or a spreadsheet spoils it: of rows that cannot be read none may be lost in silence. */
function damagedLog(root: string, random: Random): string {
  const folder = path.join(root, "content/sightings");
  const file = path.join(folder, random.pick(readdirSync(folder).filter((name) => name.endsWith(".csv"))));
  const [header = "", ...rows] = readFileSync(file, "utf8").trimEnd().split("\n");
  const at = random.below(rows.length);
  const changed = (row: string) => rows.map((each, place) => (place === at ? row : each));
  const ways: Readonly<Record<string, () => readonly string[]>> = {
    "a row without its last cells": () => [
      header,
      ...changed(rows[at]?.split(",").slice(0, 3).join(",") ?? ""),
    ],
    "a row with a cell too many": () => [header, ...changed(`${rows[at]},,`)],
    "a quotation mark that is never closed": () => [header, ...changed(`${rows[at]},"`)],
    "a header without its last column": () => [header.slice(0, header.lastIndexOf(",")), ...rows],
    "a header with a column twice": () => [header.replace(/,[^,]+$/, ",seen"), ...rows],
  };
  const [name, way] = random.pick(Object.entries(ways));
  writeFileSync(file, `${way().join("\n")}\n`);
  return name;
}

/** Null where anything of it has errors, as a build of these groups would find. */
async function filesOf(root: string, grouped: GroupedCollection): Promise<Map<string, string> | null> {
  const texts = readTexts(root);
  const frame = await siteFrame(root, "public", texts, grouped);
  if (!frame || frame.refused.length > 0) return null;
  const watched = grouped.watched(frame.collection.settings.watching);
  const sound: Extract<GroupSite, { isSound: true }>[] = [];
  for (const group of grouped.groups) {
    const site = await groupSite(group, { texts, grouped, watched, frame });
    if (!site.isSound) return null;
    sound.push(site);
  }
  const files = sound.flatMap((site) => [...site.files()]);
  const listed = sound.flatMap((site) => site.listed).sort((a, b) => (a.id < b.id ? -1 : 1));
  const addresses = files.map(({ address }) => address);
  const whole = wholeSite(
    frame,
    listed,
    sound.map(({ published }) => published),
    addresses,
  );
  if (whole.diagnostics.some(({ severity }) => severity === "error")) return null;
  const answers = new Map<string, string>();
  for (const file of files)
    if (file.kind !== "copy") answers.set(file.address, String(contentOf(file, frame.site)));
  for (const { address, make } of whole.pages) {
    const page = make();
    answers.set(address, String(contentOf({ kind: "page", address, make: () => page }, whole.siteOf(page))));
  }
  return answers;
}

/** The same collection as one group of all families, with its logs as they were written. */
function uncut(root: string, grouped: GroupedCollection): GroupedCollection {
  const { texts } = readTexts(root);
  const own = new Set(["family", "variant", "item", "sightings"]);
  const all: FamilyGroup = {
    families: grouped.groups.flatMap(({ families }) => families),
    texts: texts.filter(({ kind }) => own.has(kind)),
    compared: new Set(grouped.groups.flatMap(({ compared }) => [...compared])),
  };
  return { ...grouped, groups: [all] };
}

describe("a collection that is cut into groups of families", () => {
  it(
    `has the errors and the files of one that is not, after each of ${edits} edits`,
    async () => {
      const root = generated();
      const sound = path.join(mkdtempSync(path.join(tmpdir(), "fittedcase-uncut-")), "sound");
      const shown = await pictures();
      const random = randomFrom(seed);
      const folders = ["content", "schemas", "templates"];
      const remember = () =>
        cpSync(root, sound, { recursive: true, filter: (file) => !file.includes(".cache") });
      remember();
      const done: string[] = [];
      let cut = 0;
      for (let step = 0; step < edits; step++) {
        const ways = [
          () => likeAnother(root, random, step),
          () => randomEdit(root, random, step, shown),
          () => damagedLog(root, random),
        ];
        done.push(random.pick(ways)());
        const told = `${step}: ${done.slice(-3).join("; ")}`;
        const errors = checkCollection(root).diagnostics.filter(({ severity }) => severity === "error");
        const grouped = groupFamilies(readTexts(root));
        const files = grouped && (await filesOf(root, grouped));
        // A photograph that cannot be shown is no matter of records: only who makes the pages finds it out.
        const isShown = done.at(-1) !== "a photograph that is none";
        if (files === null && isShown) expect(errors.length, told).toBeGreaterThan(0);
        if (files !== null)
          expect(
            errors.map(({ message }) => message),
            told,
          ).toEqual([]);
        if (grouped && files) {
          if (grouped.groups.length > 1) cut++;
          const whole = (await filesOf(root, uncut(root, grouped))) ?? new Map<string, string>();
          expect([...files.keys()].sort(), told).toEqual([...whole.keys()].sort());
          expect(
            [...files].filter(([address, text]) => whole.get(address) !== text).map(([address]) => address),
            told,
          ).toEqual([]);
          rmSync(sound, { recursive: true, force: true });
          remember();
        } else {
          for (const folder of folders) rmSync(path.join(root, folder), { recursive: true, force: true });
          cpSync(sound, root, { recursive: true });
        }
      }
      expect(cut).toBeGreaterThan(edits / 4);
    },
    edits * 20_000 + 60_000,
  );
});
