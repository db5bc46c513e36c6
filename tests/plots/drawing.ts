import { textWidth } from "../../shared/plots/drawing/text-width.ts";

/** An element of a drawing, as read back from its text. */
export interface Element {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: (Element | string)[];
  readonly parent: Element | null;
}

const token = /<\/([\w-]+)>|<([\w-]+)((?:\s[\w-]+="[^"<]*")*)\s*(\/?)>|([^<]+)/gy;

/** Reads markup as strictly as XML does; throws where it is not well formed. */
export function parseMarkup(text: string): Element {
  const root: Element = { name: "root", attributes: new Map(), children: [], parent: null };
  let open: Element = root;
  let at = 0;
  token.lastIndex = 0;
  for (let match = token.exec(text); match; match = token.exec(text)) {
    at = token.lastIndex;
    const [, closing, opening, attributes = "", empty, characters] = match;
    if (characters !== undefined) {
      if (/&(?!#\d+;)/.test(characters)) throw new Error(`stray ampersand: ${characters}`);
      open.children.push(decode(characters));
    } else if (closing !== undefined) {
      if (closing !== open.name || !open.parent) throw new Error(`</${closing}> closes <${open.name}>`);
      open = open.parent;
    } else if (opening !== undefined) {
      const pairs = [...attributes.matchAll(/([\w-]+)="([^"]*)"/g)];
      const element: Element = {
        name: opening,
        attributes: new Map(pairs.map(([, key = "", value = ""]) => [key, decode(value)])),
        children: [],
        parent: open,
      };
      if (element.attributes.size !== pairs.length) throw new Error(`an attribute twice: ${match[0]}`);
      open.children.push(element);
      if (empty === "") open = element;
    }
  }
  if (at !== text.length || open !== root)
    throw new Error(`not well formed at ${at}: ${text.slice(at, at + 60)}`);
  return root;
}

const decode = (text: string): string =>
  text.replace(/&#(\d+);/g, (_, code: string) => String.fromCodePoint(Number(code)));

export function all(element: Element, name: string): Element[] {
  return element.children.flatMap((child) =>
    typeof child === "string" ? [] : [...(child.name === name ? [child] : []), ...all(child, name)],
  );
}

export const textOf = (element: Element): string =>
  element.children.map((child) => (typeof child === "string" ? child : textOf(child))).join("");

export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface LabelBox extends Rectangle {
  readonly text: string;
  readonly element: Element;
}

export const numberOf = (element: Element, name: string): number => {
  const value = Number(element.attributes.get(name) ?? 0);
  if (!Number.isFinite(value)) throw new Error(`${name}="${element.attributes.get(name)}"`);
  return value;
};

export const rectangleOf = (element: Element): Rectangle => ({
  x: numberOf(element, "x"),
  y: numberOf(element, "y"),
  width: numberOf(element, "width"),
  height: numberOf(element, "height"),
});

/** What an element says of itself, or the nearest around it. */
function inherited(element: Element, name: string): string | undefined {
  for (let at: Element | null = element; at; at = at.parent) {
    const value = at.attributes.get(name);
    if (value !== undefined) return value;
  }
  return undefined;
}

/** What each line of writing covers: from the height of its letters to below its baseline. */
export function labelBoxes(svg: Element): LabelBox[] {
  return all(svg, "text").map((element) => {
    // A state is set smaller than what it stands below, by the style sheet (styles/60-plots.css).
    const share = element.attributes.get("class") === "state" ? 0.94 : 1;
    const size = Number(inherited(element, "font-size")) * share;
    const text = textOf(element);
    const width = textWidth(text, size);
    const anchor = inherited(element, "text-anchor") ?? "start";
    const shift = anchor === "middle" ? width / 2 : anchor === "end" ? width : 0;
    let box: Rectangle = {
      x: numberOf(element, "x") - shift,
      y: numberOf(element, "y") - size * 0.74,
      width,
      height: size * 0.94,
    };
    for (let around = element.parent; around && around.name !== "svg"; around = around.parent) {
      box = transformed(box, around.attributes.get("transform"));
    }
    return { ...box, text, element };
  });
}

export function transformed(box: Rectangle, transform: string | undefined): Rectangle {
  if (transform === undefined) return box;
  const moved = /^translate\(([-\d.]+) ([-\d.]+)\)$/.exec(transform);
  if (moved) return { ...box, x: box.x + Number(moved[1]), y: box.y + Number(moved[2]) };
  const turned = /^rotate\(-90(?: ([-\d.]+) ([-\d.]+))?\)$/.exec(transform);
  if (!turned) throw new Error(`a transform that is not expected: ${transform}`);
  const [cx, cy] = [Number(turned[1] ?? 0), Number(turned[2] ?? 0)];
  // A quarter turn against the clock takes (x, y) about the middle to (y, -x).
  return {
    x: cx + (box.y - cy),
    y: cy - (box.x + box.width - cx),
    width: box.height,
    height: box.width,
  };
}

export const overlaps = (a: Rectangle, b: Rectangle, tolerance = 0.15): boolean =>
  a.x + a.width > b.x + tolerance &&
  b.x + b.width > a.x + tolerance &&
  a.y + a.height > b.y + tolerance &&
  b.y + b.height > a.y + tolerance;

export const within = (inner: Rectangle, outer: Rectangle, tolerance = 0.15): boolean =>
  inner.x >= outer.x - tolerance &&
  inner.y >= outer.y - tolerance &&
  inner.x + inner.width <= outer.x + outer.width + tolerance &&
  inner.y + inner.height <= outer.y + outer.height + tolerance;

export function viewBoxOf(svg: Element): Rectangle {
  const [x = 0, y = 0, width = 0, height = 0] = (svg.attributes.get("viewBox") ?? "").split(" ").map(Number);
  return { x, y, width, height };
}
