import { describe, expect, it } from "vitest";
import { dataOf, type Files } from "../collections/collection.ts";

interface Reallocation {
  moves: { part: string; units: number; from: string; to: string }[];
  gain: number;
  items: { item: string; before: number; after: number }[];
}

const reference = `name: A
parts:
  body: { standing: core, weight: 2 }
  lens: { standing: issued, quantity: 2 }
  hook: { standing: issued }
`;

function collection(items: Record<string, string>): Files {
  return {
    "content/collection.yaml": "title: T\nurl: https://example.org/\n",
    "schemas/reference/chest/family.yaml": "name: Chests\n",
    "schemas/reference/chest/a.yaml": reference,
    ...Object.fromEntries(
      Object.entries(items).map(([id, parts]) => [
        `content/items/${id}/index.md`,
        `---\ntitle: ${id}\nvariant: a\nset: "${id.length}"\nparts: ${parts}\n---\n`,
      ]),
    ),
  };
}

const reallocationOf = (items: Record<string, string>) =>
  (dataOf(collection(items)).get("/data/variants/a.json") as { reallocation: Reallocation | null })
    .reallocation;

describe("what would make it whole", () => {
  it("lists what is missing by what each part would add", () => {
    const one = dataOf(
      collection({ one: "{ body: absent, lens: { state: present, quantity: 1, rest: absent } }" }),
    ).get("/data/items/one.json") as { wants: { part: string; units: number; gain: number }[] };
    // Weights 2, 1, 1: the body is half of it all, one lens of two an eighth. The hook was not examined.
    expect(one.wants).toEqual([
      { part: "body", units: 1, gain: 0.5, neededFor: [] },
      { part: "lens", units: 1, gain: 0.125, neededFor: [] },
    ]);
  });

  it("lets two incomplete examples complete each other with what they have to spare", () => {
    const found = reallocationOf({
      east: "{ body: present, lens: { state: present, quantity: 3 }, hook: absent }",
      west: "{ body: present, lens: { state: present, quantity: 1, rest: absent }, hook: [present, { state: present, belongs: spare }] }",
    });
    expect(found?.moves).toEqual([
      { part: "hook", units: 1, from: "west", to: "east" },
      { part: "lens", units: 1, from: "east", to: "west" },
    ]);
    expect(found?.items.map(({ item, after }) => [item, after])).toEqual([
      ["east", 1],
      ["west", 1],
    ]);
    expect(found?.gain).toBeCloseTo(0.25 + 0.125, 12);
  });

  it("moves nothing that its own case needs, and nothing that belongs to its set", () => {
    expect(reallocationOf({ east: "{ hook: absent }", west: "{ hook: present }" })).toBeNull();
    expect(
      reallocationOf({
        east: "{ hook: absent }",
        west: "{ hook: { state: present, quantity: 2, belongs: set } }",
      }),
    ).toBeNull();
  });

  it("moves nothing out of, nor into, what is not at hand", () => {
    const spare = "{ hook: { state: present, quantity: 2 } }";
    for (const status of ["sold", "reference", "lost", "stolen", "destroyed"]) {
      expect(reallocationOf({ donor: `${spare}\nstatus: ${status}`, other: "{ hook: absent }" })).toBeNull();
      expect(reallocationOf({ donor: spare, other: `{ hook: absent }\nstatus: ${status}` })).toBeNull();
    }
    const offered = reallocationOf({ donor: `${spare}\nstatus: offered`, other: "{ hook: absent }" });
    expect(offered?.moves).toEqual([{ part: "hook", units: 1, from: "donor", to: "other" }]);
  });

  it("sends a spare to where it gains most", () => {
    // The middle one was never issued a body, so a hook is a larger share of what it should have.
    const found = reallocationOf({
      donor: "{ hook: { state: present, quantity: 2 } }",
      middle: "{ body: not-issued, hook: absent }",
      other: "{ hook: absent }",
    });
    expect(found?.moves).toEqual([{ part: "hook", units: 1, from: "donor", to: "middle" }]);
    expect(found?.gain).toBeCloseTo(0.5, 12);
  });
});
