import { readFileSync } from "node:fs";
import path from "node:path";
import { expect, it } from "vitest";
import { buildCollection } from "../../shared/site/build-collection.ts";
import { smallCollection, writeCollection } from "../collections/collection.ts";

const rows = (list: string, ...serials: string[]) =>
  serials.map((serial) => `2001,chest-a,${serial},register,record,${list}`);

// Chapman 1951, by hand: lists of 3 and 3 with 2 in both give 4 · 4 / 3 - 1 = 4.3; at most 8; three more are known from elsewhere.
it("a figure that is less than what is known says so without being opened", async () => {
  const root = writeCollection(
    smallCollection("parts: { lamp: { standing: issued } }\n", {
      "content/sources.yaml": "- { id: register, title: A register }\n",
      "content/sightings/log.csv": [
        "seen,variant,serial,source,kind,list",
        ...rows("ports", "1", "2", "3"),
        ...rows("depots", "2", "3", "4"),
        ...rows("", "11", "12", "13"),
        "",
      ].join("\n"),
    }),
  );
  const out = path.join(root, "_site");
  await buildCollection(root, out, "public");
  const page = readFileSync(path.join(out, "variants/chest-a/index.html"), "utf8");
  const said = [...page.matchAll(/<summary>(.*?)<\/summary>/gs)].map(([, summary]) =>
    (summary ?? "").replace(/<[^>]*>/g, " ").replace(/\s+/g, " "),
  );
  const twoLists = said.find((summary) => summary.includes("two lists"));
  expect(twoLists).toMatch(/^\s*(about )?4/);
  expect(twoLists).toContain("At least 7 are known");
});
