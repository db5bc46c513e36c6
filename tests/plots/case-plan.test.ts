import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type CasePlanPart, casePlan, casePlanThumbnail } from "../../shared/plots/case-plan/case-plan.ts";
import type { PartSummary } from "../../shared/publication/published.ts";
import {
  all,
  type Element,
  labelBoxes,
  numberOf,
  overlaps,
  parseMarkup,
  rectangleOf,
  textOf,
  transformed,
  within,
} from "./drawing.ts";
import { cutTray, mostAbreast, name, part, stateWord, summaries, unitsOf, words } from "./given.ts";
import { expectSound } from "./sound-drawing.ts";

const draw = (parts: readonly CasePlanPart[]) =>
  casePlan(parts, { idPrefix: "plan", label: "Case plan", words, stateWord });

/** WCAG 2.2, 2.5.8 Target Size (Minimum): 24 by 24 CSS pixels; the narrow drawing is 288 across at 320. */
const target = 24;

const compartment = (link: Element) => {
  const [pit] = all(link, "rect");
  if (!pit) throw new Error("a link without a compartment");
  return transformed(rectangleOf(pit), link.attributes.get("transform"));
};

/** Of a link in SVG: its title, else what is written in it (SVG Accessibility API Mappings 1.0, 8.1). */
const accessibleName = (link: Element): string => {
  const [title] = all(link, "title");
  return title ? textOf(title) : all(link, "text").map(textOf).join(" ");
};

function expectFitted(markup: string, count: number): void {
  const drawings = expectSound(markup, "plan");
  expect(drawings).toHaveLength(2);
  for (const svg of drawings) {
    expect(svg.attributes.get("role")).toBe("group");
    const links = all(svg, "a");
    expect(links).toHaveLength(count);
    const boxes = links.map(compartment);
    for (const [at, box] of boxes.entries()) {
      expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(target);
      expect(boxes.slice(at + 1).some((other) => overlaps(box, other))).toBe(false);
    }
    const sheet = { x: 0, y: 0, width: numberOf(svg, "width"), height: numberOf(svg, "height") };
    for (const box of boxes) expect(within(box, sheet)).toBe(true);
    const labels = labelBoxes(svg);
    links.forEach((link, at) => {
      const box = boxes[at];
      const own = labels.filter(({ element }) => all(link, "text").includes(element));
      expect(own.length).toBeGreaterThan(0);
      for (const label of own)
        if (box && !within(label, box)) expect.fail(`"${label.text}" leaves its compartment`);
    });
  }
}

describe("casePlan", () => {
  it("fits any parts into their compartments", () => {
    fc.assert(
      fc.property(fc.array(part(), { maxLength: 45 }), (parts) => expectFitted(draw(parts), parts.length)),
      { numRuns: 60 },
    );
  });

  it("fits a tray drawn by the reference, with parts that it forgot", () => {
    const drawn = fc.tuple(cutTray, fc.array(part(), { minLength: 25, maxLength: 25 }), fc.nat({ max: 4 }));
    fc.assert(
      fc.property(drawn, ([boxes, parts, forgotten]) => {
        const placed = boxes.flatMap((plan, at): CasePlanPart[] =>
          parts[at] ? [{ ...parts[at], plan }] : [],
        );
        const loose = parts.slice(0, forgotten).map((each): CasePlanPart => ({ ...each, plan: null }));
        expectFitted(draw([...placed, ...loose]), placed.length + loose.length);
      }),
      { numRuns: 60 },
    );
  });

  it("fits two hundred parts of very different weights", () => {
    const parts = Array.from(
      { length: 200 },
      (_, at): CasePlanPart => ({
        id: `part-${at}`,
        name: "Horizon shade, dark",
        quantity: 1,
        weight: at === 0 ? 1000 : 1,
        plan: null,
        summary: "present",
      }),
    );
    expectFitted(draw(parts), 200);
  });

  const plain = (over: Partial<CasePlanPart>): CasePlanPart => ({
    id: "oil-bottle",
    name: "Oil bottle",
    quantity: 1,
    weight: 1,
    plan: null,
    ...over,
  });

  it("says the state by surface, by word and in the name of the link", () => {
    // "incomplete" and "partly examined" are of several units, and each of these has a state of its own.
    const surfaces = summaries.map((summary) => {
      const [svg] = all(
        parseMarkup(draw([plain({ summary }), plain({ id: "other", summary: "present" })])),
        "svg",
      );
      const link = svg && all(svg, "a")[0];
      if (!link) throw new Error("no link");
      expect(accessibleName(link)).toBe(`Oil bottle ${stateWord(summary)}`);
      expect(link.attributes.get("href")).toBe("#part-oil-bottle");
      expect(all(link, "text").map(textOf)).toEqual(["Oil bottle", stateWord(summary)]);
      return link.attributes.get("class");
    });
    expect(new Set(surfaces).size).toBe(summaries.length);
  });

  /** The layers of the first compartment, from its bottom, each with its texture and its share. */
  const layersOf = (over: Partial<CasePlanPart>) => {
    const [link] = all(parseMarkup(draw([plain(over), plain({ id: "other", summary: "present" })])), "a");
    const [pit] = link ? all(link, "rect") : [];
    if (!link || !pit) throw new Error("no compartment");
    expect(link.attributes.get("class")).toBe("surface-several");
    const { y, height } = rectangleOf(pit);
    return all(link, "path").map((path) => {
      const texture = path.attributes.get("class");
      if (texture !== undefined) {
        const lines = (path.attributes.get("d") ?? "").matchAll(/[ML]\S+ (-?[\d.]+)/g);
        const along = [...lines].map(([, at]) => (y + height - Number(at)) / height);
        return { texture, from: Math.min(...along), to: Math.max(...along) };
      }
      const ends = [...(path.attributes.get("d") ?? "").matchAll(/([Mvq])([^Mvhqz]+)/g)];
      const top = Number(ends[0]?.[2]?.split(" ")[1]);
      // What is drawn downwards from its upper left corner: the line, and the corners at both of its ends.
      const corners = ends.filter(([, kind]) => kind === "q");
      const down = Number(ends[1]?.[2]);
      const roundBelow = corners.length > 0 && Math.abs(top + down + 3 - (y + height)) < 0.2 ? 3 : 0;
      return {
        texture: "filled",
        from: (y + height - top - down - roundBelow) / height,
        to: (y + height - top) / height,
      };
    });
  };

  // Of 10 units 3 are right, 1 is another model, 2 are doubtful and 4 gone: 0.3, 0.1, 0.2, and 0.4 stay empty.
  it("has a band for each state of its units, in its share, and none for what is missing", () => {
    const layers = layersOf({
      summary: "unverified",
      quantity: 10,
      units: unitsOf(10, { present: 3, substitute: 1, unverified: 2, absent: 4 }),
    });
    expect(layers.map(({ texture }) => texture)).toEqual(["filled", "surface-cross", "surface-hatch"]);
    const [there, replaced, doubtful] = layers;
    expect(there?.from).toBeCloseTo(0, 1);
    expect(there?.to).toBeCloseTo(0.3, 2);
    expect(replaced?.from).toBeCloseTo(0.3, 2);
    expect(replaced?.to).toBeCloseTo(0.4, 2);
    expect(doubtful?.from).toBeCloseTo(0.4, 2);
    expect(doubtful?.to).toBeCloseTo(0.6, 2);
  });

  it("has a texture for each band of what is not simply there, within its compartment", () => {
    const units = unitsOf(3, { substitute: 1, unverified: 1, unexamined: 1 });
    const root = parseMarkup(draw([plain({ summary: "unverified", quantity: 3, units })]));
    const textures = all(root, "path").map(({ attributes }) => attributes.get("class"));
    const each = ["surface-cross", "surface-hatch", "surface-dots"];
    expect(textures.toSorted()).toEqual([...each, ...each].toSorted());
    for (const link of all(root, "a")) {
      const [pit] = all(link, "rect").map(rectangleOf);
      for (const path of all(link, "path")) {
        const lines = (path.attributes.get("d") ?? "").matchAll(
          /M(\S+) ([-\d.]+)(?:h([\d.]+)|L(\S+) ([-\d.]+))/g,
        );
        for (const [, x, y, along, toX, toY] of lines) {
          const right = toX === undefined ? Number(x) + Number(along) : Number(toX);
          for (const across of [Number(x), right])
            expect(Math.abs(across)).toBeLessThanOrEqual((pit?.width ?? 0) / 2 + 0.1);
          for (const down of [Number(y), Number(toY ?? y)])
            expect(Math.abs(down)).toBeLessThanOrEqual((pit?.height ?? 0) / 2 + 0.1);
        }
      }
    }
  });

  // What goes beyond those that belong, or never belonged, is told of in words alone: all 2 of 2 are there.
  it("is of one surface where all that belong are in one state", () => {
    const units = unitsOf(2, { present: 2, notIssued: 1, surplus: 1, substitute: 1 });
    const [link] = all(parseMarkup(draw([plain({ summary: "present", quantity: 3, units })])), "a");
    expect(link?.attributes.get("class")).toBe("surface-present");
  });

  it("says how many of its units are in each state", () => {
    const nameOf = (units: CasePlanPart["units"], summary: PartSummary) => {
      const [link] = all(parseMarkup(draw([plain({ summary, quantity: 8, ...(units && { units }) })])), "a");
      return link && accessibleName(link);
    };
    expect(nameOf(unitsOf(8, { present: 5, absent: 3 }), "incomplete")).toBe(
      "Oil bottle ×\u00a08 5\u00a0present, 3\u00a0absent",
    );
    expect(nameOf(unitsOf(8, { absent: 8 }), "absent")).toBe("Oil bottle ×\u00a08 absent");
  });

  it("writes the gravest of several states where it has no room for all, and names them all", () => {
    const units = unitsOf(40, { present: 20, substitute: 5, unverified: 5, absent: 10 });
    const small = plain({ summary: "unverified", quantity: 40, units });
    const rest = Array.from({ length: 30 }, (_, at) => plain({ id: `p${at}`, summary: "present" }));
    const [link] = all(parseMarkup(draw([small, ...rest])), "a");
    const written = (link ? all(link, "text") : []).map(textOf).join(" ");
    expect(written).toBe("Oil bottle ×\u00a040 10\u00a0absent");
    expect(link && accessibleName(link)).toContain(
      "20\u00a0present, 5\u00a0substitute, 5\u00a0unverified, 10\u00a0absent",
    );
  });

  it("is a plan of what was issued where no part has a state", () => {
    const [svg] = all(parseMarkup(draw([plain({ quantity: 2 })])), "svg");
    const [link] = svg ? all(svg, "a") : [];
    expect(link && accessibleName(link)).toBe("Oil bottle ×\u00a02");
    expect(link && all(link, "text").map(textOf)).toEqual(["Oil bottle ×\u00a02"]);
  });

  it("names in its accessible name what is written in the compartment (WCAG 2.2, 2.5.3)", () => {
    fc.assert(
      fc.property(fc.array(part(), { minLength: 1, maxLength: 30 }), (parts) => {
        for (const link of all(parseMarkup(draw(parts)), "a")) {
          const label = accessibleName(link);
          for (const text of all(link, "text").map(textOf)) expect(label).toContain(text);
        }
      }),
      { numRuns: 30 },
    );
  });

  it("keys to a number what has no room, and explains each number once", () => {
    const parts = Array.from({ length: 60 }, (_, at) =>
      plain({ id: `p${at}`, name: `Extraordinarily-long-name ${at}`, summary: "absent" }),
    );
    const root = parseMarkup(draw(parts));
    for (const div of all(root, "div").filter((each) =>
      /plot-(wide|narrow)/.test(each.attributes.get("class") ?? ""),
    )) {
      const written = all(div, "text")
        .filter((text) => text.attributes.get("class") === "key")
        .map(textOf);
      const explained = all(div, "li").map(textOf);
      expect(written.length).toBeGreaterThan(0);
      expect(explained).toHaveLength(written.length);
      const numbers = explained.map((text) => text.replace(/ Extraordinarily.*/, ""));
      expect(numbers.sort()).toEqual([...written].sort());
      for (const number of numbers) expect(number).toMatch(/^\d+( –)?$/);
    }
  });

  it.each([
    ["present", ""],
    ["absent", " –"],
    ["substitute", " ~"],
    ["unverified", " ?"],
    ["unexamined", " …"],
    ["not-issued", " /"],
  ] as const)(
    "has room for a sign of what is %s beside any number, and for the number without",
    (summary, sign) => {
      const parts = Array.from({ length: 150 }, (_, at) =>
        plain({ id: `p${at}`, name: `Extraordinarily-long-name ${at}`, summary }),
      );
      const markup = draw(parts);
      expectFitted(markup, 150);
      const keys = all(parseMarkup(markup), "text").filter((text) => text.attributes.get("class") === "key");
      expect(keys.map(textOf)).toContain(`58${sign}`);
    },
  );

  it("gives a part its share of the tray (areas by weight, partitions aside)", () => {
    const parts = [8, 4, 2, 2].map((weight, at) => plain({ id: `p${at}`, name: `P${at}`, weight }));
    const [svg] = all(parseMarkup(draw(parts)), "svg");
    const areas = (svg ? all(svg, "a") : [])
      .map(compartment)
      .map(({ width, height }) => (width + 5) * (height + 5));
    const [first = 0, second = 0, third = 0, fourth = 0] = areas;
    expect(first / second).toBeCloseTo(2, 1);
    expect(second / third).toBeCloseTo(2, 1);
    expect(third / fourth).toBeCloseTo(1, 1);
  });

  it("keeps what the reference drew to the left, above and in line", () => {
    fc.assert(
      fc.property(cutTray, (plans) => {
        // A telephone has room for so many beside one another; of more the tray is drawn by their weights.
        fc.pre(mostAbreast(plans) <= 8);
        const parts = plans.map((plan, at) => plain({ id: `p${at}`, name: `P${at}`, plan }));
        for (const svg of all(parseMarkup(draw(parts)), "svg")) {
          const boxes = all(svg, "a").map(compartment);
          plans.forEach(([x, y, width, height], a) => {
            plans.forEach(([x2, y2], b) => {
              const [one, other] = [boxes[a], boxes[b]];
              if (!one || !other) return;
              if (x + width <= x2 + 1e-9) expect(one.x + one.width).toBeLessThanOrEqual(other.x + 0.2);
              if (y + height <= y2 + 1e-9) expect(one.y + one.height).toBeLessThanOrEqual(other.y + 0.2);
            });
          });
        }
      }),
      { numRuns: 30 },
    );
  });

  it("is the same for all examples of a variant, whatever their states", () => {
    const shape = (summary: CasePlanPart["summary"]) => {
      const parts = ["Sextant", "Horizon shade", "Oil bottle"].map((each, at) =>
        plain({ id: `p${at}`, name: each, weight: 3 - at, ...(summary ? { summary } : {}) }),
      );
      return all(parseMarkup(draw(parts)), "a").map(compartment);
    };
    expect(shape("absent")).toEqual(shape("present"));
    expect(shape("not-issued")).toEqual(shape("present"));
  });

  it("draws the same twice", () => {
    fc.assert(
      fc.property(fc.array(part(), { maxLength: 12 }), (parts) => {
        expect(draw(parts)).toBe(draw(parts));
      }),
    );
  });

  it("escapes whatever a name holds", () => {
    fc.assert(
      fc.property(name, (each) => {
        const [link] = all(parseMarkup(draw([plain({ name: each })])), "a");
        expect(link && accessibleName(link).split(/\s+/).join(" ")).toBe(each.split(/\s+/).join(" "));
      }),
    );
  });
});

describe("casePlanThumbnail", () => {
  it("is silent, without writing or ids, and small", () => {
    fc.assert(
      fc.property(fc.array(part(), { maxLength: 45 }), (parts) => {
        const markup = casePlanThumbnail(parts);
        const [svg] = all(parseMarkup(markup), "svg");
        expect(svg?.attributes.get("aria-hidden")).toBe("true");
        expect(markup).not.toMatch(/<text|<title|\sid=|style=|NaN|Infinity/);
        expect(all(parseMarkup(markup), "path").length).toBeLessThanOrEqual(5);
      }),
      { numRuns: 60 },
    );
  });
});
