import { type Attributes, coordinate, element, escapeXml } from "./svg-markup.ts";
import { type Breadth, unitsAcross } from "./two-widths.ts";

interface Drawing {
  readonly idPrefix: string;
  readonly label: string;
  /** The same as the drawing, in sentences. */
  readonly description: string;
  readonly breadth: Breadth;
  readonly height: number;
}

/** A drawing that is one image to whoever cannot see it, with its name and its text equivalent. */
export function imageDrawing(
  { idPrefix, label, description, breadth, height }: Drawing,
  ...content: readonly string[]
): string {
  const width = unitsAcross[breadth];
  const [title, desc] = [`${idPrefix}-title`, `${idPrefix}-desc`];
  return element(
    "svg",
    {
      role: "img",
      "aria-labelledby": title,
      "aria-describedby": desc,
      viewBox: `0 0 ${coordinate(width)} ${coordinate(height)}`,
      width,
      height,
    },
    element("title", { id: title }, escapeXml(label)),
    element("desc", { id: desc }, escapeXml(description)),
    ...content,
  );
}

interface Writing {
  /** Null where what stands around it says so. */
  readonly size?: number | null;
  readonly anchor?: "start" | "middle" | "end";
  readonly kind?: string | undefined;
}

/** One line of writing; its size stands in the drawing because its room was measured with it. */
export const writing = (
  text: string,
  x: number,
  y: number,
  { size = 11.5, anchor = "start", kind }: Writing = {},
): string => {
  const attributes: Attributes = {
    class: kind === undefined ? undefined : `plot-${kind}`,
    x,
    y,
    "font-size": size ?? undefined,
    "text-anchor": anchor === "start" ? undefined : anchor,
  };
  return element("text", attributes, escapeXml(text));
};

export const stroke = (kind: string, d: string): string =>
  d === "" ? "" : element("path", { class: `plot-${kind}`, d });

export const horizontal = (from: number, to: number, y: number): string =>
  `M${coordinate(from)} ${coordinate(y)}H${coordinate(to)}`;

export const vertical = (x: number, from: number, to: number): string =>
  `M${coordinate(x)} ${coordinate(from)}V${coordinate(to)}`;
