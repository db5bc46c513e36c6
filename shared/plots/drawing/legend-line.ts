import { stroke, writing } from "./image-drawing.ts";
import { markShape, type Shape } from "./mark-shape.ts";
import { shortened } from "./text-lines.ts";
import { textWidth } from "./text-width.ts";

interface LegendEntry {
  readonly text: string;
  /** What it explains; a remark explains nothing in particular. */
  readonly mark: { readonly shape: Shape; readonly kind: string } | null;
}

const size = 11;
const lineHeight = 15;
const gap = 16;
const indentOf = (entry: LegendEntry): number => (entry.mark ? 13 : 0);

/** Entries one after another, in as many lines as it takes; where it takes several, remarks begin on their own. */
export function legendLine(
  entries: readonly LegendEntry[],
  across: number,
): { readonly markup: string; readonly height: number } {
  let left = 0;
  let row = 0;
  const widths = entries.map((entry) => indentOf(entry) + textWidth(entry.text, size));
  const isOneLine = widths.reduce((sum, width) => sum + width + gap, -gap) <= across;
  const firstRemark = entries.findIndex(({ mark }) => mark === null);
  const markup = entries.map((entry, index) => {
    const indent = indentOf(entry);
    const text = shortened(entry.text, size, across - indent);
    const width = indent + textWidth(text, size);
    if (left > 0 && (left + width > across || (!isOneLine && index === firstRemark))) {
      left = 0;
      row++;
    }
    const at = { x: left, y: 11 + row * lineHeight };
    left += width + gap;
    const { mark } = entry;
    return (
      (mark ? stroke(mark.kind, markShape(mark.shape, at.x + 4, at.y - 4, 3.2)) : "") +
      writing(text, at.x + indent, at.y, { size, kind: mark ? undefined : "remark" })
    );
  });
  return { markup: markup.join(""), height: entries.length === 0 ? 0 : (row + 1) * lineHeight };
}
