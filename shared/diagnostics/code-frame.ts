import { lineStarts, type Place } from "./place.ts";
import { visible } from "./visible-text.ts";

const widest = 110;

/**
 * The line in question between its neighbours, with carets under the stretch.
 * A long line is cut to a window around the stretch, so that the caret stays in sight.
 */
export function codeFrame(text: string, place: Place): string {
  const starts = lineStarts(text);
  const lineOf = (number: number) => text.slice(starts[number - 1], (starts[number] ?? text.length + 1) - 1);
  const first = Math.max(1, place.line - 1);
  const last = Math.min(starts.length, place.line + 1);
  const gutter = String(last).length;
  const shift = place.column > widest - 20 ? place.column - 40 : 0;
  const frame: string[] = [];
  for (let number = first; number <= last; number++) {
    const raw = lineOf(number).replace(/\r$/, "");
    const shown = visible(raw.slice(shift, shift + widest).replaceAll("\t", " "));
    const marker = number === place.line ? ">" : " ";
    frame.push(`${marker} ${String(number).padStart(gutter)} | ${shown}`.trimEnd());
    if (number === place.line) {
      const end = place.endLine === place.line ? place.endColumn : raw.length + 1;
      const width = Math.max(1, Math.min(end, shift + widest + 1) - place.column);
      frame.push(`  ${" ".repeat(gutter)} | ${" ".repeat(place.column - 1 - shift)}${"^".repeat(width)}`);
    }
  }
  return frame.join("\n");
}
