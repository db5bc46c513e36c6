import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Callout, calloutMarks } from "../../shared/plots/case-plan/callout-marks.ts";
import { all, type Element, parseMarkup, textOf } from "./drawing.ts";

const picture = { width: 1600, height: 1067 };

const callout = (number: number, x: number, y: number): Callout => ({
  number,
  part: `part-${number}`,
  at: [x, y],
});

const share = (element: Element, name: string): number => {
  const written = element.attributes.get(name) ?? "";
  expect(written).toMatch(/^\d+(\.\d+)?%$/);
  return Number(written.slice(0, -1)) / 100;
};

const classesOf = (element: Element) => (element.attributes.get("class") ?? "").split(" ");
const ofClass = (root: Element, name: string, className: string) =>
  all(root, name).filter((each) => classesOf(each).includes(className));

/** Where each mark of a drawing stands in a picture of a width, by its number. */
function places(svg: Element, width: number) {
  const height = (width * picture.height) / picture.width;
  return ofClass(svg, "a", "callout").map((mark) => {
    const [target] = ofClass(mark, "circle", "callout-target");
    if (!target) throw new Error("a mark that nothing can hit");
    // WCAG 2.2, 2.5.8: a target of 24 CSS pixels at least.
    expect(2 * Number(target.attributes.get("r"))).toBeGreaterThanOrEqual(24);
    return { number: textOf(mark), x: share(target, "cx") * width, y: share(target, "cy") * height };
  });
}

const anywhere = fc
  .array(fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })), {
    minLength: 1,
    maxLength: 14,
  })
  .map((points) => points.map(([x, y], at) => callout(at + 1, x, y)));

/** The widths at which the style sheet shows each drawing: from its own least width up to the next one's. */
const widths: Readonly<Record<string, readonly number[]>> = {
  narrow: [250, 288, 430, 543],
  wide: [544, 700, 959],
  full: [960, 1344, 2200],
};

describe("the marks of a photograph", () => {
  it("lie clear of one another at every width at which they are shown", () => {
    fc.assert(
      fc.property(anywhere, (callouts) => {
        const root = parseMarkup(calloutMarks(callouts, picture));
        for (const [breadth, shownAt] of Object.entries(widths)) {
          const [svg, more] = ofClass(root, "svg", breadth);
          if (!svg || more) throw new Error(`one drawing for ${breadth}`);
          for (const width of shownAt) {
            const found = places(svg, width);
            expect(found.map(({ number }) => number)).toEqual(callouts.map(({ number }) => String(number)));
            found.forEach((one, at) => {
              for (const other of found.slice(at + 1)) {
                // Two targets of 24 pixels side by side; places are written to a hundredth of a hundredth.
                expect(Math.hypot(one.x - other.x, one.y - other.y)).toBeGreaterThan(24);
              }
            });
          }
        }
      }),
    );
  });

  it("a mark that was moved is led to its spot by a line; one on its spot has none", () => {
    const root = parseMarkup(
      calloutMarks([callout(1, 0.5, 0.5), callout(2, 0.5, 0.5), callout(3, 0.1, 0.2)], picture),
    );
    const [narrow] = ofClass(root, "svg", "narrow");
    if (!narrow) throw new Error("a drawing");
    const leads = ofClass(narrow, "g", "callout-lead");
    expect(leads.map((lead) => lead.attributes.get("data-part"))).toEqual(["part-1", "part-2"]);
    for (const lead of leads) {
      for (const line of all(lead, "line")) {
        expect([share(line, "x1"), share(line, "y1")]).toEqual([0.5, 0.5]);
      }
    }
    const third = places(narrow, 250).find(({ number }) => number === "3");
    expect(third?.x).toBeCloseTo(25, 1);
    // What stands on its spot has a dot there, and its number beside it; at the right-hand edge, to the left of it.
    expect(ofClass(narrow, "circle", "callout-dot")).toHaveLength(1);
    const [edge] = all(parseMarkup(calloutMarks([callout(1, 0.97, 0.5)], picture)), "text");
    expect([edge?.attributes.get("text-anchor"), edge?.attributes.get("dx")]).toEqual(["end", "-5"]);
  });

  it("each leads to the line of its part", () => {
    const root = parseMarkup(calloutMarks([callout(1, 0.5, 0.5)], picture));
    for (const mark of ofClass(root, "a", "callout")) {
      expect(mark.attributes.get("href")).toBe("#part-part-1");
    }
  });

  it("are drawn once where all widths agree", () => {
    expect(all(parseMarkup(calloutMarks([callout(1, 0.5, 0.5)], picture)), "svg")).toHaveLength(1);
    expect(calloutMarks([], picture)).toBe("");
  });

  it("are silent to a screen reader, and no stop of a keyboard: the list below them is both", () => {
    const root = parseMarkup(calloutMarks([callout(1, 0.5, 0.5), callout(2, 0.5, 0.5)], picture));
    for (const svg of all(root, "svg")) expect(svg.attributes.get("aria-hidden")).toBe("true");
    for (const mark of all(root, "a")) expect(mark.attributes.get("tabindex")).toBe("-1");
  });

  it("say nothing that a strict content security policy refuses", () => {
    expect(calloutMarks([callout(1, 0.3, 0.3)], picture)).not.toMatch(/ style="|<script|<style|\son\w+="/);
  });
});
