import { describe, expect, it } from "vitest";
import { dataOf, type Files } from "../collections/collection.ts";

interface Item {
  identification: {
    verdict: string;
    candidates: { variant: string; contradictions: string[]; unobserved: string[] }[];
    lookNext: string[];
    caveats: string[];
  };
  dating: {
    issued: string | null;
    serial: { made: string | null };
    parts: Record<string, { made: string | null; verdict: string }>;
  };
}

const family = `name: Chests
features:
  lock: { name: Lock, values: [iron, brass, steel], effort: 1 }
  lid: { name: Lid, values: [flat, domed], effort: 2 }
  dovetails: { name: Dovetails, values: [five, six], effort: 3 }
`;

const files = (frontMatter: string): Files => ({
  "content/collection.yaml": "title: T\nurl: https://example.org/\n",
  "schemas/reference/chest/family.yaml": family,
  "schemas/reference/chest/a.yaml": `name: A
issued: 1901/1905
serials: [{ prefix: A, from: 1, to: 100, made: 1901/1903 }]
features: { lock: iron, lid: flat, dovetails: five }
parts:
  scale:
    standing: core
    serials:
      - { from: 1, to: 99, made: 1890/1895 }
      - { from: 100, to: 199, made: 1902/1904 }
      - { from: 200, made: 1906/1910 }
      - { prefix: U, made: 190X }
      - { prefix: N, from: 1 }
`,
  "schemas/reference/chest/b.yaml":
    "name: B\nserials: [{ prefix: B, from: 1 }]\nfeatures: { lock: [iron, brass], lid: domed, dovetails: five }\n",
  "schemas/reference/chest/c.yaml": "name: C\nfeatures: { lock: brass, lid: domed }\n",
  "content/items/one/index.md": `---\ntitle: One\nvariant: a\n${frontMatter}\n---\n`,
});

const itemOf = (frontMatter: string) => dataOf(files(frontMatter)).get("/data/items/one.json") as Item;
const identify = (frontMatter: string) => itemOf(frontMatter).identification;

describe("identification: does the object agree with its label?", () => {
  it("is confirmed where it agrees and every other variant is contradicted", () => {
    const { verdict, candidates } = identify("features: { lid: flat }");
    expect(verdict).toBe("confirmed");
    expect(candidates).toEqual([
      { variant: "a", name: "A", contradictions: [], unobserved: ["lock", "dovetails"] },
      { variant: "b", name: "B", contradictions: ["lid"], unobserved: ["lock", "dovetails"] },
      { variant: "c", name: "C", contradictions: ["lid"], unobserved: ["lock"] },
    ]);
  });

  it("is confirmed by a serial that no other variant has a range for", () => {
    // C has no known range, so its serials can neither agree nor contradict.
    expect(identify('serial: "A7"')).toMatchObject({ verdict: "consistent" });
    expect(identify('serial: "A7"\nfeatures: { lock: iron }')).toMatchObject({ verdict: "confirmed" });
  });

  it("is contradicted by one feature, or by the serial", () => {
    expect(identify("features: { lid: domed }")).toMatchObject({ verdict: "contradicted", lookNext: [] });
    const { verdict, candidates } = identify('serial: "B9"');
    expect(verdict).toBe("contradicted");
    expect(candidates[0]).toMatchObject({ variant: "a", contradictions: ["serial"] });
    expect(candidates[1]).toMatchObject({ variant: "b", contradictions: [] });
  });

  // Common practice, no source: where two patterns were numbered in one run, the number does not say which it is.
  it("says where the serial lies in the ranges of several variants", () => {
    const shared = (claimed: string) => {
      const all = files("serial: A50\nfeatures: { lock: iron }");
      const b = all["schemas/reference/chest/b.yaml"]
        ?.toString()
        .replace("prefix: B, from: 1", "prefix: A, from: 40, to: 60");
      const item = all["content/items/one/index.md"]?.toString().replace("variant: a", `variant: ${claimed}`);
      const data = dataOf({
        ...all,
        "schemas/reference/chest/b.yaml": b ?? "",
        "content/items/one/index.md": item ?? "",
      });
      return (data.get("/data/items/one.json") as Item).identification;
    };
    const caveats = [
      "Its serial lies in the ranges of 2 variants of the family, and does not alone tell which of them it is.",
    ];
    expect(shared("a")).toMatchObject({ verdict: "consistent", caveats });
    expect(shared("b")).toMatchObject({ verdict: "consistent", caveats });
    expect(identify("serial: A50").caveats).toEqual([]);
  });

  it.each(["A4?3", "A43?", "A4..", "A4[3]", "illegible", "A", "No. A7.?"])(
    "takes a serial that cannot be read in full, %s, for no evidence",
    (serial) => {
      const { verdict, candidates, caveats } = identify(`serial: "${serial}"\nfeatures: { lid: flat }`);
      // As without the serial: the lid alone speaks against b and c.
      expect(verdict).toBe("confirmed");
      expect(candidates.map(({ contradictions }) => contradictions)).toEqual([[], ["lid"], ["lid"]]);
      expect(caveats).toEqual(["Its serial cannot be read in full, and is compared with no range."]);
    },
  );

  it.each(["A101", "433", "A-101", "A 101", "A101/B", "Z1"])(
    "is contradicted by a serial that reads well and lies in no range, %s",
    (serial) => {
      const { candidates, caveats } = identify(`serial: "${serial}"`);
      expect(candidates[0]).toMatchObject({ variant: "a", contradictions: ["serial"] });
      expect(caveats).toEqual([]);
    },
  );

  it("says nothing from nothing, and what to look at next", () => {
    const { verdict, lookNext } = identify("examined: 2026");
    expect(verdict).toBe("consistent");
    // By hand, in bits of doubt left of log2(3) = 1.585. Lid: flat leaves a, domed b or c: 2/3 · 1 = 0.667.
    // Lock: iron 1 and ½, brass ½ and 1: each 1.5/3 · 0.918 = 0.918. Dovetails: five 1, 1, ½ (c may be either):
    // 2.5/3 · 1.522 + 0.5/3 · 0 = 1.268.
    expect(lookNext).toEqual(["lid", "lock", "dovetails"]);
  });

  it("leaves out what cannot tell the remaining variants apart", () => {
    const { verdict, lookNext } = identify("features: { lock: iron }");
    expect(verdict).toBe("consistent");
    // a and b remain; both have five dovetails, and A1 and on share no serial with B1 and on.
    expect(lookNext).toEqual(["serial", "lid"]);
  });
});

describe("dating: does every part belong to the time of issue?", () => {
  const part = (serial: string) =>
    itemOf(`parts: { scale: { state: present, serial: "${serial}" } }`).dating.parts.scale;

  it.each([
    ["50", "1890/1895", "earlier"],
    ["150", "1902/1904", "fits"],
    ["250", "1906/1910", "later"],
    ["U3", "190X", "fits"],
    ["N3", null, "undated"],
    ["Z3", null, "undated"],
  ])("serial %s was made %s: %s", (serial, made, verdict) => {
    expect(part(serial)).toEqual({ made, verdict });
  });

  it("dates the outfit by the range of its serial", () => {
    expect(itemOf('serial: "A7"').dating).toMatchObject({
      issued: "1901/1905",
      serial: { made: "1901/1903" },
    });
    expect(itemOf("examined: 2026").dating.serial.made).toBeNull();
  });

  it("leaves the state of a part made later as the examiner wrote it", () => {
    const item = dataOf(files('parts: { scale: { state: present, serial: "250" } }')).get(
      "/data/items/one.json",
    ) as {
      completeness: { weighted: { low: number } };
    };
    expect(item.completeness.weighted.low).toBe(1);
  });
});
