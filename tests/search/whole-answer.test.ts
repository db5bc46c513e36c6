import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from "vitest";
import { buildSearchIndex } from "../../shared/pages/search/build-search-index.ts";
import { findEntries } from "../../shared/pages/search/find-entries.ts";
import type { SearchIndex } from "../../shared/pages/search/search-index.ts";
import { readState } from "../../shared/pages/search/view-state.ts";
import { cutWordFiles, linesOf } from "../../shared/pages/search/word-files.ts";
import { Fetched } from "../../templates/scripts/finder/fetched.ts";
import { hasAll, wholeAnswer } from "../../templates/scripts/finder/whole-answer.ts";
import { catalogueOf, publishedIn, smallCollection, writeCollection } from "../collections/collection.ts";

const entry = (title: string, more: string, text: string): string =>
  `---\ntitle: ${title}\nvariant: chest-a\n${more}\n---\n${text}\n`;

const home = "http://localhost/assets/search/";
let files: ReadonlyMap<string, unknown>;
/** Addresses that the host does not answer. */
const lost = new Set<string>();
const asked: string[] = [];

beforeAll(() => {
  const root = writeCollection(
    smallCollection("parts:\n  lens: { name: Folding lens, standing: core }\n", {
      "content/items/a.md": entry("The chest of Quernby", "parts: { lens: absent }", "Nothing to tell."),
      "content/items/b.md": entry("Another chest", "status: sold", "Bought at Quernby, as was the first."),
      "content/items/c.md": entry("One more chest", "status: sold", "Seen at Quernby through a window."),
    }),
  );
  const built = buildSearchIndex(catalogueOf(publishedIn(root)));
  const words = new Map(built.files.flatMap((file) => [...linesOf(file)]));
  // As a large catalogue has them: a file for each first letter.
  const shards = cutWordFiles(words, 1);
  const index: SearchIndex = {
    ...built.index,
    details: "details.json",
    shards: shards.map(({ prefix }) => ({ prefix, address: `words-${prefix}.json` })),
  };
  files = new Map<string, unknown>([
    ["index.json", index],
    ["details.json", built.details],
    ...shards.map(({ prefix, ...file }) => [`words-${prefix}.json`, file] as const),
  ]);
});

beforeEach(() => {
  vi.stubGlobal("fetch", async (address: URL) => {
    const name = address.href.slice(home.length);
    asked.push(name);
    if (lost.has(name)) throw new TypeError("Failed to fetch");
    return Response.json(files.get(name));
  });
});
afterEach(() => {
  vi.unstubAllGlobals();
  lost.clear();
  asked.length = 0;
});

const open = () => Fetched.from(new URL(`${home}index.json`));
const answer = async (fetched: Fetched, address: string) => {
  const whole = await wholeAnswer(fetched, readState(address), () => true);
  if (!whole) throw new Error("Nobody waits for the answer.");
  const { ids } = fetched.catalogue;
  return { ...whole, ids: whole.found.entries.map((at) => ids[at] ?? "").sort() };
};
const shardsOf = (fetched: Fetched, letter: string) =>
  fetched.catalogue.index.shards.filter(({ prefix }) => prefix.startsWith(letter));

describe("an answer from several files of words", () => {
  it("is given by those in which the word may be, and by no other", async () => {
    const fetched = await open();
    expect(shardsOf(fetched, "q").length).toBeGreaterThan(0);
    expect(await answer(fetched, "?q=quernby")).toMatchObject({ ids: ["a", "b", "c"], isRead: true });
    expect(asked.slice(1).every((name) => name.startsWith("words-q"))).toBe(true);
  });

  // The slip is in the first letter, so that the word meant is in a file of its own.
  it("to a word that was mended is the answer to the word itself, whatever was asked before", async () => {
    const fetched = await open();
    const mended = await answer(fetched, "?q=wuernby");
    expect(mended.found.instead).toEqual([{ typed: "wuernby", taken: ["quernby"] }]);
    expect(mended.ids).toEqual(["a", "b", "c"]);
  });

  it("says where a text could not be had, mends nothing meanwhile, and asks for it again", async () => {
    const fetched = await open();
    for (const { address } of shardsOf(fetched, "q")) lost.add(address);
    expect(await answer(fetched, "?q=quernby")).toMatchObject({ ids: ["a"], isRead: false });
    expect(await answer(fetched, "?q=quernbi")).toMatchObject({
      ids: [],
      isRead: false,
      found: { instead: [], ofParts: [] },
    });
    expect(await answer(fetched, "?q=wuernby")).toMatchObject({ ids: ["a"], isRead: false });
    lost.clear();
    expect(hasAll(fetched, readState("?q=quernby"))).toBe(false);
    expect(await answer(fetched, "?q=quernby")).toMatchObject({ ids: ["a", "b", "c"], isRead: true });
    expect(hasAll(fetched, readState("?q=quernby"))).toBe(true);
  });

  it("fetches each file once, however often it is asked for", async () => {
    const fetched = await open();
    await Promise.all(["?q=quernby", "?q=quernby+window", "?q=window"].map((each) => answer(fetched, each)));
    expect(new Set(asked).size).toBe(asked.length);
  });

  it("is no longer made once nobody waits for it", async () => {
    const fetched = await open();
    expect(await wholeAnswer(fetched, readState("?q=lens"), () => false)).toBeNull();
    expect(asked).not.toContain("details.json");
  });
});

describe("what takes the details", () => {
  it("has no answer before they are here", async () => {
    const fetched = await open();
    const state = readState("?missing=lens");
    expect(hasAll(fetched, state)).toBe(false);
    expect(findEntries(fetched.searched, state, false).entries).toEqual([]);
    expect((await answer(fetched, "?missing=lens")).ids).toContain("a");
  });

  it("is not answered without them", async () => {
    const fetched = await open();
    lost.add("details.json");
    await expect(answer(fetched, "?missing=lens")).rejects.toThrow();
    lost.clear();
    expect((await answer(fetched, "?missing=lens")).ids).toContain("a");
  });
});
