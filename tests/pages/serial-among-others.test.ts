import { readFileSync } from "node:fs";
import path from "node:path";
import { expect, it } from "vitest";
import { buildSite } from "../../shared/site/build/build-site.ts";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";

/** What the drawing of its serial says to a reader who does not see it; undefined where the page of an item has none. */
async function saidOf(serial: string, publish: string): Promise<string | undefined> {
  const root = writeCollection(
    smallCollection(
      "parts: { lamp: { standing: issued } }\nserials:\n  - { prefix: C, from: 100, to: 200 }\n  - { prefix: D, from: 1, to: 50 }\n",
      {
        "content/sources.yaml": "- { id: register, title: A register }\n",
        "content/sightings/log.csv":
          "seen,variant,serial,source,kind\n2001,chest-a,C110,register,offer\n2002,chest-a,C150,register,offer\n2003,chest-a,D7,register,offer\n",
        "content/items/box/index.md": item(
          `serial: ${serial}\npublish: { serial: ${publish} }\nparts: { lamp: present }`,
        ),
      },
    ),
  );
  const out = path.join(root, "_site");
  await buildSite(root, out, "public");
  const page = readFileSync(path.join(out, "items/box/index.html"), "utf8");
  return /drawing-serial.*?<desc[^>]*>(.*?)<\/desc>/s.exec(page)?.[1];
}

// By hand: of C110, C150 and D7 the first two lie in the range C100 to C200, as C133 does.
it("the serial of an outfit is drawn among those seen in the range that it lies in", async () => {
  const said = await saidOf("C133", "shown");
  expect(said).toContain("C100 to C200");
  expect(said).toContain("2 serials seen");
  expect(said).toContain("this one, C133");
  expect(said).not.toContain("D1");
});

it.each([
  ["C133", "masked"],
  ["C133", "hidden"],
  ["C300", "shown"],
])("no drawing tells of %s where it is %s or lies in no range", async (serial, publish) => {
  expect(await saidOf(serial, publish)).toBeUndefined();
});
