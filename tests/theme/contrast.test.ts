import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { contrastRatio, mixed, oklab } from "../../shared/publication/theme/contrast.ts";
import { ownPalettes, paletteOf, weakPairs } from "../../shared/publication/theme/palette.ts";
import { repository } from "../commands/run.ts";

// WCAG 2.2's own bounds; the greys that WebAIM's guide to contrast gives as just above and just below 4.5 on white,
// and the pure primaries after the formula by hand: red (1.05)/(0.2126 + 0.05), blue (1.05)/(0.0722 + 0.05).
describe("the contrast of two colours", () => {
  it.each([
    ["#000000", "#ffffff", 21],
    ["#ffffff", "#ffffff", 1],
    ["#767676", "#ffffff", 4.54],
    ["#777777", "#ffffff", 4.48],
    ["#ff0000", "#ffffff", 4],
    ["#0000ff", "#ffffff", 8.59],
  ])("%s on %s is %d", (one, other, ratio) => {
    expect(contrastRatio(one, other)).toBeCloseTo(ratio, 2);
    expect(contrastRatio(other, one)).toBe(contrastRatio(one, other));
  });
});

// CSS Color Module Level 4, sample values of oklab(): red, and white, whose lightness is 1.
describe("colours in Oklab", () => {
  it("are as CSS Color 4 has them", () => {
    const [lightness, a, b] = oklab("#ff0000");
    expect(lightness).toBeCloseTo(0.62796, 4);
    expect(a).toBeCloseTo(0.22486, 4);
    expect(b).toBeCloseTo(0.12585, 4);
    expect(oklab("#ffffff")[0]).toBeCloseTo(1, 5);
  });

  it("mix to either end", () => {
    expect(mixed("#17594a", 1, "#f6f5f0")).toBe("#17594a");
    expect(mixed("#17594a", 0, "#f6f5f0")).toBe("#f6f5f0");
  });
});

describe("our own palettes", () => {
  const sheet = readFileSync(path.join(repository, "templates/styles/20-ink.css"), "utf8");
  const [light = "", dark = ""] = [
    sheet.slice(0, sheet.indexOf("@media")),
    sheet.slice(sheet.indexOf("@media")),
  ];

  it.each(["light", "dark"] as const)("are what the style sheet has, %s", (scheme) => {
    for (const [name, colour] of Object.entries(ownPalettes[scheme]))
      expect(scheme === "light" ? light : dark).toContain(`--${name}: ${colour};`);
    expect(paletteOf({}, scheme)).toEqual(ownPalettes[scheme]);
  });

  it("can be read in every pair", () => {
    expect(weakPairs({})).toEqual([]);
  });
});

describe("a theme", () => {
  it("is blamed for what it chose, in its own scheme", () => {
    const pale = weakPairs({ accent: "#9ab8ae" });
    expect(pale.map(({ scheme, property, textName }) => [scheme, property, textName])).toEqual([
      ["light", "accent", "accent"],
      ["light", "accent", "accent"],
    ]);
    expect(
      weakPairs({ "ink-dark": "#555555" }).every(
        ({ scheme, property }) => scheme === "dark" && property === "ink-dark",
      ),
    ).toBe(true);
    expect(weakPairs({ "paper-dark": "#777777" }).map(({ property }) => property)).toContain("paper-dark");
  });

  it("gets softer ink and hairlines of its own colours", () => {
    const { "ink-soft": soft, "paper-deep": deep } = paletteOf({ paper: "#ffffff", ink: "#000000" }, "light");
    expect(contrastRatio(soft, "#ffffff")).toBeGreaterThan(4.5);
    expect(contrastRatio(deep, "#ffffff")).toBeLessThan(1.3);
  });
});
