import { describe, expect, it } from "vitest";
import { checkCollection } from "../../shared/site/checks/check-collection.ts";
import { type Files, smallCollection, writeCollection } from "../collections/collection.ts";

const overlapsIn = (files: Files) =>
  checkCollection(writeCollection(files))
    .diagnostics.filter(({ code }) => code === "plan-overlap")
    .map(({ file, message }) => `${file}: ${message}`);

const parts = `parts:
  box: { name: Box, plan: [0, 0, 40, 10] }
  lens: { name: Lens, plan: [0, 0, 10, 10] }
  rule: { name: Rule, plan: [10, 0, 10, 10] }
  pen: { name: Pen, plan: [20, 0, 10, 10] }
  cup: { name: Cup, plan: [30, 0, 10, 10] }
`;

describe("compartments that lie over one another", () => {
  it("are one mistake where one of them lies over all", () => {
    const told = overlapsIn(smallCollection(parts));
    expect(told).toHaveLength(1);
    expect(told[0]).toContain(
      'a compartment of "box" that overlaps those of "lens", "rule", "pen" and 1 more',
    );
    expect(told[0]).toContain("none for the part that holds all the others");
  });

  it("are told of once, in the variant that the others are described after", () => {
    const told = overlapsIn(
      smallCollection(parts, {
        "schemas/reference/chest/chest-b.yaml":
          "name: Chest B\nextends: chest-a\nparts: { pen: { name: Quill, plan: [20, 0, 10, 10] } }\n",
      }),
    );
    expect(told).toEqual([expect.stringContaining("chest-a.yaml")]);
  });

  it("are told of where they came together, if what is inherited was sound", () => {
    const told = overlapsIn(
      smallCollection("parts: { lens: { name: Lens, plan: [0, 0, 10, 10] } }\n", {
        "schemas/reference/chest/chest-b.yaml":
          "name: Chest B\nextends: chest-a\nparts: { pen: { name: Pen, plan: [5, 0, 10, 10] } }\n",
      }),
    );
    expect(told).toEqual([expect.stringMatching(/chest-b\.yaml.*"pen".*that of "lens"/)]);
  });
});
