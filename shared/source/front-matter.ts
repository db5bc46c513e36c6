/** Where the YAML of a Markdown file begins and ends. */
interface Stretch {
  readonly start: number;
  readonly end: number;
}

/**
 * Between a first line that begins with three hyphens and the next that does; null where there are no two such lines.
 * That they have nothing else on them is seen to where records are read.
 */
export function frontMatterIn(text: string): Stretch | null {
  const firstEnd = text.indexOf("\n");
  const closing = text.startsWith("---") && firstEnd > 0 ? text.indexOf("\n---", firstEnd) : -1;
  return closing < 0 ? null : { start: firstEnd + 1, end: closing + 1 };
}

/** The YAML itself; empty where there is none. */
export function frontMatterOf(text: string): string {
  const stretch = frontMatterIn(text);
  return stretch ? text.slice(stretch.start, stretch.end) : "";
}
