/** Text broken between words into lines of at most `width`; a word that is longer stands alone. */
export function wrappedLines(text: string, width: number): string[] {
  const lines: string[] = [];
  for (const paragraph of text.trim().split(/\n+/)) {
    let line = "";
    for (const word of paragraph.split(/[ \t]+/).filter((each) => each !== "")) {
      if (line === "") line = word;
      else if (line.length + 1 + word.length <= width) line += ` ${word}`;
      else {
        lines.push(line);
        line = word;
      }
    }
    lines.push(line);
  }
  return lines;
}
