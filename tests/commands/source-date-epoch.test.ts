import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";
import { run } from "./run.ts";

/** `date -u -d 1984-03-05T23:30:00 +%s` prints 447377400: 1984-03-05 at Greenwich, and the day after farther east. */
const epoch = { SOURCE_DATE_EPOCH: "447377400", TZ: "Pacific/Auckland" };

const collection = (more = {}) => writeCollection(smallCollection("parts: { fork: { name: Fork } }\n", more));

describe("the day that SOURCE_DATE_EPOCH names", () => {
  it("is the one after which a date lies ahead, with a day to spare", async () => {
    const root = collection({
      "content/items/one.md": item("examined: 1984-03-06"),
      "content/items/two.md": item("examined: 1984-03-07"),
    });
    const { code, out } = await run(["check", "--root", root], root, epoch);
    expect(code).toBe(0);
    expect(out.match(/^.*date-ahead.*$/gm)).toEqual(["content/items/two.md:4:11  warning  date-ahead"]);
  });

  it("is the day that a new record is offered, and the year that dates of an import are read from", async () => {
    const root = collection();
    expect((await run(["new", "item", "one", "--variant", "chest-a"], root, epoch)).code).toBe(0);
    const made = readFileSync(path.join(root, "content/items/one/index.md"), "utf8");
    expect(made).toContain("# examined: 1984-03-05\n");

    writeFileSync(path.join(root, "old.csv"), "Seen;Model;Kind\n3.5.71;chest-a;offer\n");
    await run(["import", "sightings", "old.csv"], root, epoch);
    const map = readFileSync(path.join(root, "old.map.yaml"), "utf8");
    expect(map).toContain("two-digit-years-from: 1885\n");
  });

  it.each(["yesterday", "1.5", "-1", "99999999999999999"])("ends a command where it is %s", async (value) => {
    const root = collection();
    const { code, err } = await run(["check"], root, { SOURCE_DATE_EPOCH: value });
    expect(code).toBe(2);
    expect(err).toContain(
      `Found SOURCE_DATE_EPOCH "${value}"; expected whole seconds since 1970, as "date +%s" prints them.`,
    );
  });

  it("is none where the variable is empty", async () => {
    const root = collection({ "content/items/one.md": item("examined: 2020-01-01") });
    const { code, out } = await run(["check"], root, { SOURCE_DATE_EPOCH: "" });
    expect([code, out.includes("date-ahead")]).toEqual([0, false]);
  });
});
