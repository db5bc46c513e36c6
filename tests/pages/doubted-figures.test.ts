import { readFileSync } from "node:fs";
import path from "node:path";
import { expect, it } from "vitest";
import { buildSite } from "../../shared/site/build/build-site.ts";
import { smallCollection, writeCollection } from "../collections/collection.ts";

const rows = (list: string, ...serials: string[]) =>
  serials.map((serial) => `2001,chest-a,${serial},register,record,${list},`);

const pageOf = async (variant: string, log: readonly string[]) => {
  const root = writeCollection(
    smallCollection(variant, {
      "content/sources.yaml": "- { id: register, title: A register }\n",
      "content/sightings/log.csv": ["seen,variant,serial,source,kind,list,present", ...log, ""].join("\n"),
    }),
  );
  const out = path.join(root, "_site");
  await buildSite(root, out, "public");
  return readFileSync(path.join(out, "variants/chest-a/index.html"), "utf8");
};
const words = (html: string) => html.replace(/<[^>]*>/g, " ").replace(/\s+/g, " ");
const summaries = (page: string) =>
  [...page.matchAll(/<summary>(.*?)<\/summary>/gs)].map(([, summary]) => words(summary ?? ""));

// Chapman 1951, by hand: lists of 3 and 3 with 2 in both give 4 · 4 / 3 - 1 = 4.3; at most 8; three more are known from elsewhere.
it("a figure that is less than what is known says so without being opened", async () => {
  const page = await pageOf("parts: { lamp: { standing: issued } }\n", [
    ...rows("ports", "1", "2", "3"),
    ...rows("depots", "2", "3", "4"),
    ...rows("", "11", "12", "13"),
  ]);
  const said = summaries(page);
  const twoLists = said.find((summary) => summary.includes("two lists"));
  expect(twoLists).toMatch(/^\s*(about )?4/);
  expect(twoLists).toContain("At least 7 are known");
});

const level = "parts: { lamp: {}, key: {} }\nlevels: [{ id: lit, name: Lit, needs: { parts: [lamp] } }]\n";
const offers = (...of: (readonly [string, string])[]) =>
  of.map(([serial, present]) => `2001,chest-a,${serial},register,offer,,${present}`);

it("a wait that leaves out as many offers as it counts says so without being opened, and one that leaves out fewer when it is", async () => {
  const waitOf = async (...of: (readonly [string, string])[]) => {
    const page = await pageOf(level, offers(...of));
    const told = "it is not recorded whether";
    return [summaries(page).filter((each) => each.includes(told)).length, words(page).includes(told)];
  };
  // Offers a year and the wait of the one level.
  expect(await waitOf(["1", "lamp"], ["2", ""])).toEqual([2, true]);
  expect(await waitOf(["1", "lamp"], ["2", "lamp"], ["3", ""])).toEqual([0, true]);
  expect(await waitOf(["1", "lamp"], ["2", "lamp"])).toEqual([0, false]);
});

// Bonferroni, by hand: 0.95 + 0.95 - 1.
it("an interval made from two estimates is at a confidence of at least 90%", async () => {
  const seen = rows("", "A2", "A2", "A6", "A9");
  const open = words(await pageOf(`${level}serials: [{ prefix: A, from: 1, source: register }]\n`, seen));
  expect(open).toContain("Interval at a confidence of at least 90%");
  expect(open).toContain("Interval at a confidence of 95%");
  const closed = words(
    await pageOf("parts: {}\nserials: [{ prefix: A, from: 1, to: 9, source: register }]\n", seen),
  );
  expect(closed).not.toContain("at least 90%");
});
