import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { assessCollection } from "../../../shared/assessments/assess-collection.ts";
import { concernsOf } from "../../../shared/assessments/concerns.ts";
import type { Path, SourceDocument } from "../../../shared/source/document.ts";
import { date, families, line, observations, part, range, variant } from "./given.ts";
import { collection, item } from "./given-collection.ts";

/** A record that says of each of its values where it stands: the path to it is the text. */
const document = (file: string): SourceDocument => ({
  file,
  data: {},
  body: "",
  locate: (path: Path, at = "value") => ({
    place: { file, line: 1, column: 1, endLine: 1, endColumn: 2 },
    text: `${at} ${path.join(".")}`,
  }),
});

const ranges = [
  range({ prefix: "E", from: 1, made: date("1890/1899") }),
  range({ prefix: "F", from: 1, made: date("1900/1910") }),
  range({ prefix: "L", from: 1, made: date("1911/1920") }),
  range({ prefix: "N", from: 1 }),
];
const serials = fc.array(fc.constantFrom("E1", "F1", "L1", "L2", "N1", "X1", undefined), { maxLength: 3 });

describe("what its author should look at again", () => {
  it("is each observed value that the variant is not found with, and each part made after the last of issue", () => {
    fc.assert(
      fc.property(
        families,
        observations,
        fc.record({ lens: serials, hook: serials }),
        fc.constantFrom(undefined, "A1", "Z1"),
        ({ features, variants }, seen, written, serial) => {
          const [claimed, ...others] = variants;
          if (!claimed) return;
          const dated = {
            ...claimed,
            issued: date("1901/1905"),
            serials: [range({ prefix: "A", from: 1 })],
            parts: new Map(["lens", "hook"].map((id) => [id, part(id, { serials: ranges })])),
          };
          const given = collection({
            families: [{ id: "chest", features }],
            variants: [dated, ...others],
            items: [
              item("one", {
                variant: "v0",
                serial,
                features: seen,
                parts: new Map(
                  Object.entries(written).map(([id, marked]) => [
                    id,
                    marked.map((each) => line("present", { serial: each })),
                  ]),
                ),
                document: document("one.md"),
              }),
            ],
          });
          const concerns = concernsOf(given, assessCollection(given));

          const strange = [...seen].filter(
            ([id, value]) => claimed.features.get(id)?.includes(value) === false,
          );
          const later = Object.entries(written).filter(([, marked]) =>
            marked.some((each) => each?.[0] === "L"),
          );
          expect(concerns.map(({ code, found, expected }) => [code, found, expected])).toEqual([
            ...strange.map(([id, value]) => [
              "feature-contradicts",
              `"${value}"`,
              `${(claimed.features.get(id) ?? []).map((each) => `"${each}"`).join(" or ")}, as "v0" is found with`,
            ]),
            ...later
              .slice(0, 1)
              .map(() => [
                "part-later-than-issue",
                later.length === 1
                  ? "a part made 1911/1920"
                  : `parts made later: ${later.map(([id]) => `"${id}" (1911/1920)`).join(", ")}`,
                `${later.length === 1 ? "one" : "parts"} made no later than the issue of the variant, 1901/1905`,
              ]),
          ]);
          // A value is shown where it stands, a part by its name; and nothing of it stops a build.
          expect(concerns.map(({ frame }) => frame.match(/(value|key) \S+/)?.[0])).toEqual([
            ...strange.map(([id]) => `value features.${id}`),
            ...later.slice(0, 1).map(([id]) => `key parts.${id}`),
          ]);
          for (const { severity, file } of concerns) expect([severity, file]).toEqual(["warning", "one.md"]);
        },
      ),
    );
  });

  it("is told of each item by itself, in whatever order they stand", () => {
    const held = ["iron", "brass", undefined];
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...held), { maxLength: 6 }), (locks) => {
        const items = locks.map((lock, at) =>
          item(`i${at}`, {
            features: new Map(lock === undefined ? [] : [["lock", lock]]),
            document: document(`i${at}.md`),
          }),
        );
        const told = (of: typeof items) => {
          const given = collection({
            variants: [variant("a", { features: new Map([["lock", ["iron"]]]) })],
            items: of,
          });
          return concernsOf(given, assessCollection(given)).map(({ file }) => file);
        };
        const wrong = items.filter((_, at) => locks[at] === "brass").map(({ id }) => `${id}.md`);
        expect(told(items)).toEqual(wrong);
        expect(told(items.toReversed())).toEqual(wrong.toReversed());
      }),
    );
  });

  it("is nothing where an item was not assessed", () => {
    const given = collection({
      variants: [variant("a", { features: new Map([["lock", ["iron"]]]) })],
      items: [item("one", { features: new Map([["lock", "brass"]]), document: document("one.md") })],
    });
    expect(concernsOf(given, { ...assessCollection(given), items: new Map() })).toEqual([]);
  });
});
