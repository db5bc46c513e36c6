import { describe, expect, it } from "vitest";
import { dataOf, item, smallCollection } from "../collections/collection.ts";

// The contract's `rest`: without it, nothing is known of the units that a line does not count.
describe("a part of which some units are there", () => {
  it.each([
    ["{ state: present, quantity: 3 }", "partly-examined"],
    ["{ state: present, quantity: 3, rest: absent }", "incomplete"],
    ["{ state: present, quantity: 4 }", "present"],
    ["{ state: absent, quantity: 1 }", "incomplete"],
    ["unknown", "unexamined"],
  ])("%s is %s", (found, summary) => {
    const data = dataOf(
      smallCollection("parts: { pen: { name: Pen, quantity: 4 }, cup: { name: Cup } }\n", {
        "content/items/one.md": item(found === "unknown" ? "parts: {}" : `parts: { pen: ${found} }`),
      }),
    );
    expect(data.get("/data/items/one.json")).toMatchObject({ parts: { pen: { summary } } });
  });
});
