import type { Token } from "markdown-it";
import type { Mark } from "./markdown-parser.ts";

export interface Line {
  readonly start: number;
  readonly text: string;
}

export function linesOf(text: string): Line[] {
  let start = 0;
  return text.split("\n").map((line) => {
    const here = { start, text: line };
    start += line.length + 1;
    return here;
  });
}

/** A line of an inline text: where it begins in it, and where it stands in the file; -1 where that is not seen. */
interface InlineLine {
  readonly start: number;
  readonly at: number;
}

/**
 * From an offset in an inline text to one in the whole text. A line of the inline text is a line of the file
 * without what stands before it (a list's hyphen, a quotation's angle). Where that does not lead to the mark, as
 * in the cell of a table, it is looked for from where the last one was. Each line is looked up once, however many
 * marks stand in it.
 */
export function placer(text: string, lines: readonly Line[]) {
  let from = 0;
  let inline: Token | undefined;
  let own: InlineLine[] = [];
  let row = 0;

  const lookUp = (token: Token, first: number) => {
    inline = token;
    row = 0;
    own = linesOf(token.content).map(({ start, text: written }, at) => {
      const line = lines[first + at];
      const words = written.trim();
      const column = !line
        ? -1
        : token.map
          ? line.text.lastIndexOf(words)
          : line.text.indexOf(words, Math.max(0, from - line.start));
      const lead = written.length - written.trimStart().length;
      return { start: start + lead, at: line && column >= 0 ? line.start + column : -1 };
    });
  };

  return (token: Token, first: number, { raw, offset }: Mark): number => {
    if (token !== inline) lookUp(token, first);
    // Marks come in their order, but for those in the alternative text of a picture, which is counted by itself.
    if ((own[row]?.start ?? 0) > offset) row = 0;
    while ((own[row + 1]?.start ?? Number.POSITIVE_INFINITY) <= offset) row++;
    const line = own[row];
    const beginning = raw.split("\n")[0]?.trimEnd() ?? "";
    if (line && line.at >= 0) {
      const start = line.at + offset - line.start;
      if (start >= from && text.startsWith(beginning, start)) {
        from = start + 1;
        return start;
      }
    }
    const start = text.indexOf(beginning, Math.max(from, lines[first]?.start ?? 0));
    if (start < 0) return lines[first]?.start ?? 0;
    from = start + 1;
    return start;
  };
}
