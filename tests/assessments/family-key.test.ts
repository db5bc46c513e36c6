import { describe, expect, it } from "vitest";
import { assessFamilyKey, type KeyStep } from "../../shared/assessments/family-key.ts";
import type { Feature } from "../../shared/records/family.ts";
import type { Variant } from "../../shared/records/variant.ts";

const feature = (id: string, values: string[], effort = 1): [string, Feature] => [
  id,
  { id, name: id, values, effort, look: undefined, note: undefined },
];

const variant = (id: string, features: Record<string, string | string[]>) =>
  ({
    id,
    serials: [],
    features: new Map(Object.entries(features).map(([name, value]) => [name, [value].flat()])),
  }) as unknown as Variant;

/** Follows the key with the answers of one object, as a reader would. */
function follow(step: KeyStep, answers: Record<string, string>): readonly string[] {
  if (step.kind === "end") return step.variants;
  const answer = step.answers.find(({ values }) => values.includes(answers[step.feature] ?? ""));
  return answer ? follow(answer.next, answers) : [];
}

// Published check B9 [R]: 5 variants × 5 binary features; smallest 3 = ⌈log₂ 5⌉, exactly eight sets.
describe("the features that tell a family apart", () => {
  const table = ["11001", "01101", "00111", "10011", "00000"];
  const features = new Map(["c1", "c2", "c3", "c4", "c5"].map((id) => feature(id, ["0", "1"])));
  const variants = table.map((row, at) =>
    variant(`v${at}`, Object.fromEntries([...row].map((value, column) => [`c${column + 1}`, value]))),
  );

  it("lists every smallest set", () => {
    const { sets, proven, complete, effort, unseparated } = assessFamilyKey(features, variants);
    const found = sets.map((set) => set.join("")).sort();
    expect(found).toEqual(
      ["c1c2c3", "c1c2c4", "c1c2c5", "c1c3c4", "c1c4c5", "c2c3c4", "c2c3c5", "c3c4c5"].sort(),
    );
    expect({ proven, complete, effort, unseparated }).toEqual({
      proven: true,
      complete: true,
      effort: 3,
      unseparated: [],
    });
  });

  it("leads every variant to itself through the printed key", () => {
    const { key } = assessFamilyKey(features, variants);
    for (const [at, row] of table.entries()) {
      const answers = Object.fromEntries([...row].map((value, column) => [`c${column + 1}`, value]));
      expect(follow(key, answers)).toEqual([`v${at}`]);
    }
  });

  it("names the pairs that nothing separates, and ends the key with both", () => {
    const twins = [
      variant("a", { lid: "flat" }),
      variant("b", { lid: ["flat", "domed"] }),
      variant("c", { lid: "tin" }),
    ];
    const { unseparated, key } = assessFamilyKey(new Map([feature("lid", ["flat", "domed", "tin"])]), twins);
    expect(unseparated).toEqual([["a", "b"]]);
    expect(follow(key, { lid: "flat" })).toEqual(["a", "b"]);
    expect(follow(key, { lid: "domed" })).toEqual(["b"]);
    expect(follow(key, { lid: "tin" })).toEqual(["c"]);
  });

  it("would rather glance twice than take the lid apart once", () => {
    const both = new Map([
      feature("inside", ["1", "2", "3"], 3),
      feature("x", ["0", "1"]),
      feature("y", ["0", "1"]),
    ]);
    const three = [
      variant("a", { inside: "1", x: "0", y: "0" }),
      variant("b", { inside: "2", x: "0", y: "1" }),
      variant("c", { inside: "3", x: "1", y: "0" }),
    ];
    expect(assessFamilyKey(both, three).sets).toEqual([["x", "y"]]);
  });

  // Common practice, no source: what can be seen at a glance is asked for before anything is taken apart. By hand:
  // `inside` leaves {a} {b} {c d}, 0.5 bits; `x` leaves {a b c} {d}, 1.19 bits; and both are needed.
  it("glances before it takes the lid apart, though the inside would tell more", () => {
    const both = new Map([feature("inside", ["1", "2", "3"], 3), feature("x", ["0", "1"])]);
    const four = [
      variant("a", { inside: "1", x: "0" }),
      variant("b", { inside: "2", x: "0" }),
      variant("c", { inside: "3", x: "0" }),
      variant("d", { inside: "3", x: "1" }),
    ];
    const { sets, key } = assessFamilyKey(both, four);
    expect(sets).toEqual([["inside", "x"]]);
    expect(key).toMatchObject({ kind: "question", feature: "x" });
    expect(follow(key, { x: "1" })).toEqual(["d"]);
    expect(follow(key, { x: "0", inside: "3" })).toEqual(["c"]);
  });
});
