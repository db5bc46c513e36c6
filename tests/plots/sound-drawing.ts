import { expect } from "vitest";
import {
  all,
  type Element,
  labelBoxes,
  overlaps,
  parseMarkup,
  textOf,
  viewBoxOf,
  within,
} from "./drawing.ts";

/**
 * What holds for every drawing: well formed; nothing that a strict content security policy refuses; ids of its
 * own; no label outside or upon another; no number that went astray. Returns its SVG roots.
 */
export function expectSound(markup: string, idPrefix: string): readonly Element[] {
  const root = parseMarkup(markup);
  expect(markup).not.toMatch(/ style="|<script|<style|\son\w+="/);
  expect(markup).not.toMatch(/NaN|undefined|Infinity|\[object/);
  const ids = everything(root).flatMap((element) => element.attributes.get("id") ?? []);
  expect(new Set(ids).size).toBe(ids.length);
  for (const id of ids) expect(id.startsWith(idPrefix)).toBe(true);
  for (const [, id] of markup.matchAll(/url\(#([^)]+)\)/g)) expect(ids).toContain(id);

  const drawings = all(root, "svg");
  for (const svg of drawings) {
    const boxes = labelBoxes(svg);
    const sheet = viewBoxOf(svg);
    expect(sheet.width).toBeGreaterThan(0);
    expect(sheet.height).toBeGreaterThan(0);
    for (const box of boxes) {
      if (!within(box, sheet)) expect.fail(`"${box.text}" leaves the drawing`);
    }
    boxes.forEach((a, at) => {
      const other = boxes.slice(at + 1).find((b) => overlaps(a, b));
      if (other) expect.fail(`"${a.text}" runs into "${other.text}"`);
    });
  }
  return drawings;
}

/** An image with a name and a text equivalent, which it returns. */
export function expectImage(svg: Element, label: string): string {
  expect(svg.attributes.get("role")).toBe("img");
  const [title] = all(svg, "title");
  const [desc] = all(svg, "desc");
  expect(title && textOf(title)).toBe(label);
  expect(svg.attributes.get("aria-labelledby")).toBe(title?.attributes.get("id"));
  expect(svg.attributes.get("aria-describedby")).toBe(desc?.attributes.get("id"));
  return desc ? textOf(desc) : "";
}

const everything = (element: Element): Element[] =>
  element.children.flatMap((child) => (typeof child === "string" ? [] : [child, ...everything(child)]));
