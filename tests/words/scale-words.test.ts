import { readFileSync } from "node:fs";
import yaml from "js-yaml";
import { describe, expect, it } from "vitest";
import { item, publishedIn, smallCollection, writeCollection } from "../collections/collection.ts";

interface ShippedClass {
  readonly id: string;
  readonly low: number;
  readonly high: number;
  readonly words: string;
  readonly in: { readonly de: string };
}

const { classes } = yaml.load(
  readFileSync(new URL("../../schemas/scales/universal.yaml", import.meta.url), "utf8"),
) as { classes: readonly ShippedClass[] };

const classesIn = (language: string) => {
  const root = writeCollection(
    smallCollection("parts: { lens: {} }\n", {
      "content/collection.yaml": `title: T\nurl: https://example.org/\nlanguage: ${language}\nscale: universal\n`,
      "content/items/one/index.md": item(""),
    }),
  );
  return publishedIn(root).scale?.classes ?? [];
};

describe("the words of the classes of a scale", () => {
  // The numbers as Intl has them: "1,001 to 2,000" and "1.001 bis 2.000" (CLDR).
  it.each(classes)("of $id have the same bounds in German", (each) => {
    const number = (value: number) => new Intl.NumberFormat("de").format(value);
    const bounds =
      each.high === 0
        ? "keine"
        : each.low === each.high
          ? number(each.low)
          : `${number(each.low)} bis ${number(each.high)}`;
    expect(each.in.de).toBe(`${each.id.toUpperCase()}, ${bounds} bekannt`);
  });

  it.each(["de", "de-AT"])("are German in a collection in %s", (language) => {
    expect(classesIn(language).map(({ words }) => words)).toEqual(classes.map((each) => each.in.de));
  });

  it.each(["en", "fr"])("are as the scale has them in a collection in %s", (language) => {
    expect(classesIn(language).map(({ words }) => words)).toEqual(classes.map(({ words }) => words));
  });
});
